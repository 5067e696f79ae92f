/** Implementations of the gauges. */
package org.mensuration.internal.gauge;
