/** Optical scales that read diameters out of reach. */
package org.mensuration.optics;
