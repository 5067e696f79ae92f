package org.mensuration.internal.edge;

/** A boundary in numbers: m and m². Implementations are immutable and thread-safe. */
interface Tract {
  /** Whether a place is inside or on the edge. */
  boolean holds(double x, double y);

  /** The area inside. */
  double squareMetres();

  /** How much of a circle lies inside. */
  double overlap(double x, double y, double radius);
}
