package org.mensuration.scaling;

import java.util.Objects;

/**
 * How an amount is rounded. Immutable and thread-safe.
 *
 * @param step to multiples of this in the unit of the rule; zero leaves amounts as they are
 * @param rounding how
 */
public record AmountRounding(double step, StepRounding rounding) {
  /**
   * Checks the step.
   *
   * @param step to multiples of this in the unit of the rule
   * @param rounding how
   * @throws IllegalArgumentException if the step is negative or not finite
   */
  public AmountRounding {
    Objects.requireNonNull(rounding, "rounding");
    Amounts.requireIn(step, 0, Double.MAX_VALUE, "step of a rounding");
  }

  /**
   * None.
   *
   * @return the rounding
   */
  public static AmountRounding none() {
    return new AmountRounding(0, StepRounding.HALF_UP);
  }

  /**
   * To the nearest multiple, a half up.
   *
   * @param step the step
   * @return the rounding
   */
  public static AmountRounding nearest(double step) {
    return new AmountRounding(step, StepRounding.HALF_UP);
  }
}
