package org.mensuration.scaling;

import java.util.Objects;
import org.mensuration.quantity.Physical;

/**
 * A step at which a number changed on its way from the reading to the scale. Immutable and
 * thread-safe.
 *
 * @param what what was done, such as {@code small end to its class}
 * @param before number before
 * @param after number after
 * @param unit unit of both
 */
public record ScalingStep(String what, double before, double after, String unit) {
  /**
   * Checks that both are numbers.
   *
   * @param what what was done
   * @param before number before
   * @param after number after
   * @param unit unit of both
   * @throws IllegalArgumentException if a number is not finite
   */
  public ScalingStep {
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(unit, "unit");
    Amounts.requireIn(before, -Double.MAX_VALUE, Double.MAX_VALUE, what + ": before");
    Amounts.requireIn(after, -Double.MAX_VALUE, Double.MAX_VALUE, what + ": after");
  }

  /**
   * Whether the number changed.
   *
   * @return false if the step left it as it was
   */
  public boolean changed() {
    return before != after;
  }

  @Override
  public String toString() {
    return what
        + ": "
        + Physical.shown(before)
        + " "
        + unit
        + " → "
        + Physical.shown(after)
        + " "
        + unit;
  }
}
