/** Optical scales, cameras and their calibration. */
package org.mensuration.internal.optics;
