/** Diameters and sections of stems, and the heights at which they are measured. */
package org.mensuration.diameter;
