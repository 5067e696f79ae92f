/**
 * Sample points near an edge: where trees stand, where the tract ends, and how often a tree counts.
 */
package org.mensuration.edge;
