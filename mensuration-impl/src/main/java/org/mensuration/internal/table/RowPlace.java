package org.mensuration.internal.table;

import java.util.function.IntToDoubleFunction;

/**
 * Where a key stands on an axis: on a mark, or a share of the way from one mark to the next.
 * Immutable and thread-safe.
 *
 * @param from the mark, or the mark below; -1 beyond the printed values
 * @param share share of the way to the next mark; zero on a mark
 */
record RowPlace(int from, double share) {
  static RowPlace of(TableAxis axis, double key) {
    int on = axis.find(key);
    if (on >= 0) {
      return new RowPlace(on, 0);
    }
    int below = axis.below(key);
    return below < 0
        ? new RowPlace(below, 0)
        : new RowPlace(below, (key - axis.mark(below)) / (axis.mark(below + 1) - axis.mark(below)));
  }

  /** Linear between the values at the marks; NaN beyond them. */
  double between(IntToDoubleFunction values) {
    if (from < 0) {
      return Double.NaN;
    }
    double left = values.applyAsDouble(from);
    return share == 0 ? left : left + share * (values.applyAsDouble(from + 1) - left);
  }
}
