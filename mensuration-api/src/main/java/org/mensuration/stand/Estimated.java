package org.mensuration.stand;

import javax.measure.Quantity;

/**
 * A mean over sample points with its sampling error. Implementations are immutable and thread-safe.
 *
 * <p>One point gives a value and no error: then {@link #degreesOfFreedom()} is zero, and the calls
 * for the error throw and say so.
 *
 * @param <Q> kind of quantity
 */
public interface Estimated<Q extends Quantity<Q>> {

  /**
   * The mean over all points, empty ones as zero.
   *
   * @return the mean
   */
  Quantity<Q> value();

  /**
   * The standard error of the mean: points are the sampling units, not trees.
   *
   * @return the standard error
   * @throws IllegalStateException if there is only one point
   */
  Quantity<Q> standardError();

  /**
   * Degrees of freedom of the standard error.
   *
   * @return points less one; over strata the effective number, which need not be whole
   */
  double degreesOfFreedom();

  /**
   * The standard deviation of the points over their mean.
   *
   * @return in per cent
   * @throws IllegalStateException if there is only one point or the mean is zero
   */
  double coefficientOfVariation();

  /**
   * The interval by Student's t.
   *
   * @param confidencePercent the chance that it holds the mean in per cent, from 50 and below 100,
   *     such as 95
   * @return the interval; its lower end may fall below zero
   * @throws IllegalStateException if there is only one point
   * @throws IllegalArgumentException if the chance is outside
   */
  Interval<Q> interval(double confidencePercent);

  /**
   * Points that would bring the interval of 95 % down to an allowable error.
   *
   * @param allowableErrorPercent half width of the interval over the mean, in per cent
   * @return points in all, at least 2
   * @throws IllegalStateException if there is only one point or the mean is zero
   * @throws IllegalArgumentException if the error is not above zero
   */
  long pointsNeeded(double allowableErrorPercent);
}
