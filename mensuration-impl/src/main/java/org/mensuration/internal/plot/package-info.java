/** Implementations of plots of fixed size. */
package org.mensuration.internal.plot;
