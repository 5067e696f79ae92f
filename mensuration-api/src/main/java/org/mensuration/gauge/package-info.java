/** Angle gauges and what is counted with them at sample points. */
package org.mensuration.gauge;
