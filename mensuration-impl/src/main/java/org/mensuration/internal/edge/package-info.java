/** Boundaries, mirrored points and tallies on a map. */
package org.mensuration.internal.edge;
