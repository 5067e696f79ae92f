package org.mensuration.log;

import java.util.Objects;
import org.mensuration.quantity.Physical;

/**
 * One step of a convention: a reading or an amount and what it was turned into. Immutable and
 * thread-safe.
 *
 * @param what what was rounded, such as {@code middle diameter}
 * @param before the value before
 * @param after the value after
 * @param unit unit of both
 */
public record RoundingStep(String what, double before, double after, String unit) {
  /**
   * Checks that it is named.
   *
   * @param what what was rounded
   * @param before the value before
   * @param after the value after
   * @param unit unit of both
   */
  public RoundingStep {
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(unit, "unit");
  }

  @Override
  public String toString() {
    return what
        + " "
        + Physical.shown(before)
        + " "
        + unit
        + " counts as "
        + Physical.shown(after)
        + " "
        + unit;
  }
}
