package org.mensuration.internal.stand;

import org.jspecify.annotations.Nullable;
import org.mensuration.internal.statistics.ExactMoments;
import org.mensuration.internal.statistics.ExactSum;

/** The points of a figure that lie beyond the edge; most stands have none. Not thread-safe. */
final class BeyondEdge {
  private @Nullable ExactSum sum;
  private int count;

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
