package org.mensuration.kernel;

/**
 * Readings beside a limit. A reading within a relative 1e-9 of a limit counts as on it, because
 * converted readings miss exact limits by an ulp. Unchecked; NaN is nowhere. Stateless and
 * thread-safe.
 */
public final class Limits {
  private static final double NEXT_TO_NOTHING = 1e-9;

  private Limits() {}

  /**
   * Whether a reading is on a limit.
   *
   * @param value the reading
   * @param limit the limit
   * @return true if it misses it by next to nothing
   */
  public static boolean on(double value, double limit) {
    return Math.abs(value - limit) <= NEXT_TO_NOTHING * Math.abs(limit);
  }

  /**
   * Whether a reading is on a limit or above it.
   *
   * @param value the reading
   * @param least the limit, not negative
   * @return true if it is
   */
  public static boolean reaches(double value, double least) {
    return value >= least * (1 - NEXT_TO_NOTHING);
  }

  /**
   * Whether a reading is on a limit or below it.
   *
   * @param value the reading
   * @param most the limit, not negative
   * @return true if it is
   */
  public static boolean keepsTo(double value, double most) {
    return value <= most * (1 + NEXT_TO_NOTHING);
  }
}
