/**
 * Where a formula or a figure was printed: the work, the place in it, and what the place is cited
 * for.
 */
package org.mensuration.source;
