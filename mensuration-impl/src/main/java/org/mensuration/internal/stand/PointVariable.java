package org.mensuration.internal.stand;

import org.mensuration.internal.statistics.ExactMoments;
import org.mensuration.internal.statistics.ExactSum;
import org.mensuration.internal.statistics.PairSum;

/**
 * A figure added up tree by tree inside a point and point by point in the stand. Means come from
 * the sum of all trees, spreads from the rounded sums of the points. Not thread-safe.
 */
final class PointVariable {
  private final PairSum open = new PairSum();
  private final ExactSum total = ExactSum.ofNumbers();
  private final ExactMoments points = new ExactMoments();

  /** Adds a tree to the open point. */
  void add(double term) {
    open.add(term);
  }

  /** The sum of the open point; refuses one beyond the largest number. */
  double here() {
    return open.value();
  }

  /** Adds the open point, which is still to be cleared. */
  void close(double here) {
    open.addTo(total);
    points.add(here);
  }

  /** Leaves nothing of the open point, whether it was added or is given up. */
  void clear() {
    open.clear();
  }

  void merge(PointVariable other) {
    total.add(other.total);
    points.add(other.points);
  }

  ExactSum total() {
    return total;
  }

  int points() {
    return points.count();
  }

  double deviation() {
    return points.count() > 1 ? points.standardDeviation() : 0;
  }
}
