package org.mensuration.formula;

/**
 * The values for which an input has a meaning: an interval, its ends included or not, perhaps of
 * whole numbers only. Immutable and thread-safe.
 *
 * @param lower lower end; may be negative infinity
 * @param lowerIncluded whether the lower end itself is allowed
 * @param upper upper end; may be positive infinity
 * @param upperIncluded whether the upper end itself is allowed
 * @param whole whether only whole numbers are allowed
 */
public record Domain(
    double lower, boolean lowerIncluded, double upper, boolean upperIncluded, boolean whole) {

  /**
   * Checks that the interval is one.
   *
   * @param lower lower end
   * @param lowerIncluded whether the lower end itself is allowed
   * @param upper upper end
   * @param upperIncluded whether the upper end itself is allowed
   * @param whole whether only whole numbers are allowed
   * @throws IllegalArgumentException if an end is NaN, the ends are out of order, or an infinite
   *     end is said to be included
   */
  public Domain {
    if (!(lower <= upper)) {
      throw new IllegalArgumentException("domain: " + lower + " to " + upper + " is no interval");
    }
    if ((lowerIncluded && Double.isInfinite(lower))
        || (upperIncluded && Double.isInfinite(upper))) {
      throw new IllegalArgumentException("domain: an infinite end cannot be included");
    }
  }

  /**
   * Numbers above a limit.
   *
   * @param lower the limit, itself not allowed
   * @return the domain
   */
  public static Domain above(double lower) {
    return new Domain(lower, false, Double.POSITIVE_INFINITY, false, false);
  }

  /**
   * Numbers from a limit upwards.
   *
   * @param lower the limit, itself allowed
   * @return the domain
   */
  public static Domain atLeast(double lower) {
    return new Domain(lower, true, Double.POSITIVE_INFINITY, false, false);
  }

  /**
   * Numbers between two limits, both allowed.
   *
   * @param lower lower limit
   * @param upper upper limit
   * @return the domain
   */
  public static Domain closed(double lower, double upper) {
    return new Domain(lower, true, upper, true, false);
  }

  /**
   * Numbers between two limits, neither allowed.
   *
   * @param lower lower limit
   * @param upper upper limit
   * @return the domain
   */
  public static Domain open(double lower, double upper) {
    return new Domain(lower, false, upper, false, false);
  }

  /**
   * Numbers above a lower limit, up to and including an upper limit.
   *
   * @param lower lower limit, itself not allowed
   * @param upper upper limit, itself allowed
   * @return the domain
   */
  public static Domain aboveUpTo(double lower, double upper) {
    return new Domain(lower, false, upper, true, false);
  }

  /**
   * Numbers from a lower limit, itself allowed, to below an upper limit.
   *
   * @param lower lower limit, itself allowed
   * @param upper upper limit, itself not allowed
   * @return the domain
   */
  public static Domain fromBelow(double lower, double upper) {
    return new Domain(lower, true, upper, false, false);
  }

  /**
   * Every finite number.
   *
   * @return the domain
   */
  public static Domain any() {
    return new Domain(Double.NEGATIVE_INFINITY, false, Double.POSITIVE_INFINITY, false, false);
  }

  /**
   * Whole numbers from a limit upwards.
   *
   * @param lower the limit, itself allowed
   * @return the domain
   */
  public static Domain wholeFrom(int lower) {
    return new Domain(lower, true, Double.POSITIVE_INFINITY, false, true);
  }

  /**
   * Whether a value lies in the domain. NaN never does.
   *
   * @param value the value
   * @return true if it lies inside
   */
  public boolean contains(double value) {
    // Written as acceptance, so that NaN cannot pass.
    return (lowerIncluded ? value >= lower : value > lower)
        && (upperIncluded ? value <= upper : value < upper)
        && (!whole || value == Math.rint(value));
  }

  @Override
  public String toString() {
    String interval =
        (lowerIncluded ? "[" : "(")
            + number(lower)
            + ", "
            + number(upper)
            + (upperIncluded ? "]" : ")");
    return whole ? interval + ", whole numbers" : interval;
  }

  private static String number(double end) {
    if (Double.isInfinite(end)) {
      return end > 0 ? "∞" : "-∞";
    }
    return Numbers.plain(end);
  }
}
