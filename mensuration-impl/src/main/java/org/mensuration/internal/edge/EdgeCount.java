package org.mensuration.internal.edge;

import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** How often a stem counts from a point, by one rule for edges. Implementations are immutable. */
interface EdgeCount {
  /** The edge weight; 0 if the stem is not counted. */
  double weight(Stem stem, double pointX, double pointY);

  /**
   * Area of points from which a stem counts, each part as often as it counts there, in m²; empty
   * where the rule has no closed form for the tract.
   */
  Optional<ToDoubleFunction<Stem>> areas();
}
