package org.mensuration;

import org.mensuration.internal.statistics.LastPlace;
import org.mensuration.uncertainty.StatedResult;

/**
 * Measured results as they are written down: the standard uncertainty with one or two significant
 * digits, the estimate to the same decimal place. Numbers in one unit. Stateless and thread-safe.
 *
 * <p>Rounding comes once, at the end; go on reckoning with the numbers themselves. A number stands
 * for the shortest decimal that names it, so 2.675 lies half way between hundredths. An uncertainty
 * within a relative 1e-9 of a limit is on it.
 *
 * <p>Source: JCGM 100:2008, clause 7.2.6, as quoted by a calibration support note: at most two
 * digits, up or to the nearest, the estimate to the same place. How a half is rounded it does not
 * say: here that of an uncertainty goes up, so that it is not understated, and that of an estimate
 * to the even digit, as in IS 2:1960.
 */
public final class StatedResults {

  private StatedResults() {}

  /**
   * The uncertainty to the nearest: 28.05 becomes 28, and an estimate of 10.05762 with 0.027
   * becomes 10.058.
   *
   * @param estimate the estimate, finite
   * @param standardUncertainty its standard uncertainty in the same unit, finite and above 0
   * @param digits significant digits that the uncertainty keeps, 1 or 2
   * @return the result as it is written down
   * @throws IllegalArgumentException if an input is outside
   */
  public static StatedResult nearest(double estimate, double standardUncertainty, int digits) {
    return LastPlace.nearest(estimate, standardUncertainty, digits);
  }

  /**
   * The uncertainty up, where it must not be understated: 10.47 becomes 11.
   *
   * @param estimate the estimate, finite; rounded to the nearest all the same
   * @param standardUncertainty its standard uncertainty in the same unit, finite and above 0
   * @param digits significant digits that the uncertainty keeps, 1 or 2
   * @return the result as it is written down
   * @throws IllegalArgumentException if an input is outside
   */
  public static StatedResult upward(double estimate, double standardUncertainty, int digits) {
    return LastPlace.upward(estimate, standardUncertainty, digits);
  }
}
