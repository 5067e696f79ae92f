package org.mensuration.uncertainty;

/**
 * An interval that holds a stated part of the values that a result may have. Numbers in the unit of
 * the result. Immutable and thread-safe.
 *
 * @param lower lower end
 * @param upper upper end, at least the lower one
 * @param confidencePercent the part in per cent, from 50 and below 100
 */
public record CoverageInterval(double lower, double upper, double confidencePercent) {

  /**
   * Checks ends and part.
   *
   * @param lower lower end
   * @param upper upper end, at least the lower one
   * @param confidencePercent the part in per cent, from 50 and below 100
   * @throws IllegalArgumentException if an end is not finite, the ends are out of order or the part
   *     is outside
   */
  public CoverageInterval {
    if (!(lower <= upper && lower > Double.NEGATIVE_INFINITY && upper < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "coverage interval: " + lower + " to " + upper + ", wanted finite ends in order");
    }
    if (!(confidencePercent >= 50 && confidencePercent < 100)) {
      throw new IllegalArgumentException(
          "confidence " + confidencePercent + " %, allowed [50, 100) %, such as 95");
    }
  }

  /**
   * From end to end.
   *
   * @return upper less lower end
   */
  public double length() {
    return upper - lower;
  }
}
