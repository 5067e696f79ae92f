package org.mensuration.validation.worked;

import java.util.List;
import org.mensuration.gauge.SweepCorrection;

/** Reads how much of a sweep was made. Stateless and thread-safe. */
final class SweepNotes {
  static final String COLUMN = "sweep";

  private SweepNotes() {}

  static SweepCorrection of(Row row) {
    return switch (row.oneOf(COLUMN, List.of("", "full", "half", "quarter"))) {
      case "half" -> SweepCorrection.HALF_SWEEP;
      case "quarter" -> SweepCorrection.QUARTER_SWEEP;
      default -> SweepCorrection.NONE;
    };
  }

  /** A part sweep counts each tree twice or four times already. */
  static void check(Row row, SweepCorrection sweep, double edgeWeight) {
    if (sweep.factor() > 1 && edgeWeight > 1) {
      throw row.bad("edge_weight", "1 or an empty cell: a " + sweep.name() + " is its own weight");
    }
  }
}
