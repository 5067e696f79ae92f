package org.mensuration.internal.stand;

import org.jspecify.annotations.Nullable;
import org.mensuration.edge.EdgeRule;
import org.mensuration.internal.statistics.ExactMoments;
import org.mensuration.internal.statistics.ExactSum;
import org.mensuration.stand.TallyPlan;

/** The points of a figure that lie beyond the edge; most stands have none. Not thread-safe. */
final class BeyondEdge {
  private @Nullable ExactSum sum;
  private int count;

  /** Refuses a point beyond the edge if the plan has none. */
  static void require(TallyPlan plan, String pointId, boolean outside) {
    if (outside && plan.edges() != EdgeRule.EXTENDED_GRID) {
      throw new IllegalArgumentException(
          "point "
              + pointId
              + " lies beyond the edge; only a plan with the rule \"extended grid\" takes such points");
    }
  }

  void add(double value) {
    open().add(value);
    count = Math.addExact(count, 1);
  }

  void add(BeyondEdge other) {
    if (other.sum != null) {
      open().add(other.sum);
      count = Math.addExact(count, other.count);
    }
  }

  private ExactSum open() {
    if (sum == null) {
      sum = ExactSum.ofNumbers();
    }
    return sum;
  }

  int count() {
    return count;
  }

  double deviation(ExactMoments all) {
    return sum == null ? all.standardDeviation() : all.deviationOfExtended(sum, count);
  }
}
