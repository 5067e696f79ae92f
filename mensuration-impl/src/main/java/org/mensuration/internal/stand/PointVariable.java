package org.mensuration.internal.stand;

import org.mensuration.internal.statistics.ExactMoments;
import org.mensuration.internal.statistics.ExactSum;
import org.mensuration.internal.statistics.PairSum;

/**
 * A figure added up tree by tree inside a point and point by point in the stand. Means come from
 * the sum of all trees, spreads from the rounded sums of the points; of points beyond the edge
 * these are added up by themselves too. Not thread-safe.
 */
final class PointVariable {
  private final PairSum open = new PairSum();
  private final ExactSum total = ExactSum.ofNumbers();
  private final ExactMoments points = new ExactMoments();
  private final BeyondEdge beyond = new BeyondEdge();

  /** Adds a tree to the open point. */
  void add(double term) {
    open.add(term);
  }

  /** The sum of the open point; refuses one beyond the largest number. */
  double here() {
    return open.value();
  }

  /** Adds the open point, which is still to be cleared. */
  void close(double here, boolean outside) {
    open.addTo(total);
    if (outside) {
      beyond.add(here);
    }
    points.add(here);
  }

  /** Leaves nothing of the open point, whether it was added or is given up. */
  void clear() {
    open.clear();
  }

  void merge(PointVariable other) {
    total.add(other.total);
    points.add(other.points);
    beyond.add(other.beyond);
  }

  ExactSum total() {
    return total;
  }

  int points() {
    return points.count();
  }

  int pointsBeyondEdge() {
    return beyond.count();
  }

  /** The mean of the figure over the points inside. */
  double mean(double unit) {
    return ExactMoments.mean(total, unit, points.count() - beyond.count());
  }

  /** So that over the root of the number of points it gives the standard error of the mean. */
  double deviation() {
    return points.count() > 1 ? beyond.deviation(points) : 0;
  }
}
