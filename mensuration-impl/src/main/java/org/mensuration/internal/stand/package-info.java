/** Implementations of the estimates of a stand. */
package org.mensuration.internal.stand;
