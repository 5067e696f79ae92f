package org.mensuration.validation.worked;

import java.util.OptionalDouble;

/**
 * Points out readings that are rarely true, such as a slipped decimal. They stay in; the limits are
 * wide and follow nothing published. Stateless and thread-safe.
 */
final class Uncommon {
  private static final double DIAMETER_CM = 250;
  private static final double HEIGHT_M = 80;

  /** Height over diameter in m/cm. */
  private static final double SQUAT = 0.15;

  private static final double SLENDER = 2;

  private Uncommon() {}

  static void look(Cautions cautions, TreeKey tree, OptionalDouble dbhCm, OptionalDouble heightM) {
    double dbh = dbhCm.orElse(0);
    double height = heightM.orElse(0);
    if (dbh > DIAMETER_CM || height > HEIGHT_M) {
      cautions.add("Uncommon sizes, taken as noted; look at these rows again", tree.toString());
    } else if (dbh > 0 && height > 0 && !(height >= SQUAT * dbh && height <= SLENDER * dbh)) {
      cautions.add(
          "Uncommonly slender or squat trees, taken as noted; look at these rows again",
          tree.toString());
    }
  }
}
