package org.mensuration.internal.optics;

import java.util.Optional;
import org.mensuration.optics.Graduation;

/** What scales ask of their graduation. Stateless and thread-safe. */
final class Graduations {
  private Graduations() {}

  /** The reading itself, if the scale has so many divisions; NaN is left to the formula. */
  static double onScale(Optional<Graduation> graduation, double divisions) {
    if (graduation.isPresent() && divisions > graduation.get().divisions()) {
      throw new IllegalArgumentException(
          "optical scale: a reading of "
              + divisions
              + " divisions, the scale has "
              + graduation.get().divisions());
    }
    return divisions;
  }

  static Graduation stated(Optional<Graduation> graduation) {
    return graduation.orElseThrow(
        () ->
            new IllegalStateException(
                "optical scale: state its graduation to ask for the largest diameter or the"
                    + " resolution"));
  }
}
