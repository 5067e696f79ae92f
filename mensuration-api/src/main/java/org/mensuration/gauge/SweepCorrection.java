package org.mensuration.gauge;

import java.util.Objects;

/**
 * What a whole sweep is multiplied by, and why: a part sweep, or a slope that the gauge did not
 * allow for. The name is printed beside the figures. Immutable and thread-safe.
 *
 * @param name the reason in words
 * @param factor what each count is multiplied by, at least 1
 */
public record SweepCorrection(String name, double factor) {
  /** A full sweep with nothing to correct. */
  public static final SweepCorrection NONE = new SweepCorrection("full sweep", 1);

  /**
   * Half a sweep from a point on a straight edge. Common practice; biased unless a rule moves
   * points near the edge onto it.
   */
  public static final SweepCorrection HALF_SWEEP = new SweepCorrection("half sweep", 2);

  /**
   * A quarter sweep from a point in a right-angled corner. Common practice; biased unless a rule
   * moves points near the corner into it.
   */
  public static final SweepCorrection QUARTER_SWEEP = new SweepCorrection("quarter sweep", 4);

  /**
   * Checks the name and the factor.
   *
   * @param name the reason in words
   * @param factor at least 1
   * @throws IllegalArgumentException if the name is blank or the factor below 1 or not finite
   */
  public SweepCorrection {
    if (Objects.requireNonNull(name, "name").trim().isEmpty()) {
      throw new IllegalArgumentException("a correction of a sweep needs a name; it is blank");
    }
    if (!(factor >= 1 && factor < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(name + ": factor " + factor + ", allowed from 1");
    }
  }

  /**
   * Both corrections.
   *
   * @param other another reason
   * @return a correction with both names and the product of the factors
   */
  public SweepCorrection and(SweepCorrection other) {
    if (factor == 1) {
      return other;
    }
    return other.factor == 1
        ? this
        : new SweepCorrection(name + ", " + other.name, factor * other.factor);
  }
}
