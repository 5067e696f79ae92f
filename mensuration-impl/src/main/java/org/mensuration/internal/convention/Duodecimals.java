package org.mensuration.internal.convention;

import org.mensuration.kernel.ClassRounding;

/**
 * Cubic feet as feet, inches, parts and seconds, each a twelfth of the one before. Stateless and
 * thread-safe.
 */
public final class Duodecimals {
  private static final int TWELVE = 12;
  private static final int SECONDS = TWELVE * TWELVE * TWELVE;

  /** Keeps the seconds below a hundred million, as the rounding wants. */
  private static final double MOST = 50_000;

  private Duodecimals() {}

  /**
   * Splits an amount, to the nearest second.
   *
   * @param cubicFeet the amount in cubic feet, from 0 to 50 000
   * @return for example {@code 58 ft 0 in 10 pts 8''}
   * @throws IllegalArgumentException if the amount is outside
   */
  public static String text(double cubicFeet) {
    if (!(cubicFeet >= 0 && cubicFeet <= MOST)) {
      throw new IllegalArgumentException(
          "feet, inches and parts of " + cubicFeet + " ft3, allowed [0, 50000] ft3");
    }
    long seconds = (long) Math.rint(ClassRounding.halfUp(cubicFeet, 1, SECONDS) * SECONDS);
    return seconds / SECONDS
        + " ft "
        + seconds / (TWELVE * TWELVE) % TWELVE
        + " in "
        + seconds / TWELVE % TWELVE
        + " pts "
        + seconds % TWELVE
        + "''";
  }
}
