package org.mensuration.internal.edge;

/** How often a stem counts from a point, by one rule for edges. Implementations are immutable. */
interface EdgeCount {
  /** The edge weight; 0 if the stem is not counted. */
  double weight(Stem stem, double pointX, double pointY);

  /** Area of points from which the stem counts, each part as often as it counts there, in m². */
  double area(Stem stem);
}
