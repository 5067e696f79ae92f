/** Implementations of the contracts on single stems. */
package org.mensuration.internal.stem;
