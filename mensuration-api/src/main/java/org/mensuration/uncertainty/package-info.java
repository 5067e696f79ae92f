/** Measured results with their uncertainty: how they are stated, and how it is drawn. */
package org.mensuration.uncertainty;
