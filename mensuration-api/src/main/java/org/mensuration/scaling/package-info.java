/**
 * Scaling as it is done in practice: classes, trim, long logs, defects, and every rounding shown.
 */
package org.mensuration.scaling;
