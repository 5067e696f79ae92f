package org.mensuration.validation.worked;

import java.util.Collection;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import org.mensuration.gauge.SweepCorrection;

/** What the rule for edges asks of the rows of the points; the notes have no map. Stateless. */
final class EdgeNotes {
  /** The status of a point taken beyond the edge. */
  static final String OUTSIDE = "outside";

  private EdgeNotes() {}

  /** A point outside goes with the extended grid, and a part sweep does not. */
  static void checkPlace(Row row, Stratum stratum, boolean outside, SweepCorrection sweep) {
    boolean extended = stratum.choices().extendedGrid();
    if (outside && !extended) {
      throw row.bad(
          "status",
          "taken or not taken: points outside go with the edge rule "
              + StratumChoices.EXTENDED_GRID);
    }
    if (sweep.factor() > 1 && extended) {
      throw row.bad(
          SweepNotes.COLUMN,
          "full or an empty cell: the edge rule is " + StratumChoices.EXTENDED_GRID);
    }
  }

  /** On an extended grid a tree counts once from each point, and critical heights have no mean. */
  static void check(Row row, Stratum stratum, double edgeWeight, OptionalDouble criticalHeight) {
    boolean extended = stratum.choices().extendedGrid();
    if (extended && edgeWeight > 1) {
      throw row.bad(
          "edge_weight", "1 or an empty cell: the edge rule is " + StratumChoices.EXTENDED_GRID);
    }
    if (extended && criticalHeight.isPresent()) {
      throw row.bad(
          "critical_height_m", "an empty cell: the edge rule is " + StratumChoices.EXTENDED_GRID);
    }
  }

  /** A rule needs weights, or points on both sides of the edge. */
  static void require(
      Collection<Stratum> strata, Map<String, StratumTally> tallies, Problems problems) {
    for (Stratum stratum : strata) {
      StratumTally tally = Objects.requireNonNull(tallies.get(stratum.name()));
      StratumChoices choices = stratum.choices();
      boolean met = choices.extendedGrid() ? tally.onBothSides() : tally.edgeRecorded();
      if (!choices.edgeRule().isEmpty() && !met) {
        problems.add(
            choices.row().missed("edge_rule", Problem.quote(choices.edgeRule()), wanted(choices)));
      }
    }
  }

  private static String wanted(StratumChoices choices) {
    if (choices.extendedGrid()) {
      return "points of the stratum with the status taken and others with the status "
          + OUTSIDE
          + " in "
          + PointFile.NAME;
    }
    return "an edge_weight in at least one row of the stratum in "
        + PointFile.NAME
        + ", also where it is 1"
        + (choices.edgeRule().equals("part sweep") ? ", or a sweep that is half or quarter" : "");
  }
}
