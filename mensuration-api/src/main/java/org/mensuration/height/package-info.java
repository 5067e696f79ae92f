/** Readings from which heights are computed. */
package org.mensuration.height;
