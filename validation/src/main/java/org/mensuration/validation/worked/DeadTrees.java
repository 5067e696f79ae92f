package org.mensuration.validation.worked;

import java.util.Locale;

/** Dead trees on plots and lines, which count or not as at the points. Stateless, thread-safe. */
final class DeadTrees {
  private DeadTrees() {}

  /** Whether the tree of a row is left out; either way it is said. */
  static boolean leftOut(Row row, Stratum stratum, String tree, Cautions cautions) {
    if (!row.text("condition").toLowerCase(Locale.ROOT).equals("dead")) {
      return false;
    }
    boolean counted = stratum.choices().dead();
    cautions.add(
        counted
            ? "Dead trees, in basal area and stems with the living"
            : "Dead trees, left out as the notes say",
        tree);
    return !counted;
  }
}
