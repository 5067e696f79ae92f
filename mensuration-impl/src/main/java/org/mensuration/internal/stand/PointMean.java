package org.mensuration.internal.stand;

import javax.measure.Quantity;
import javax.measure.Unit;
import org.mensuration.internal.catalogue.SamplingFormulas;
import org.mensuration.stand.Estimated;
import org.mensuration.stand.Interval;
import org.mensuration.units.Measures;

/**
 * A mean with its standard error in one unit. Immutable and thread-safe.
 *
 * @param what what is estimated, for messages
 * @param mean mean in the unit
 * @param error standard error in the unit; 0 without degrees of freedom
 * @param deviation standard deviation of the sampling units in the unit
 * @param degreesOfFreedom degrees of freedom of the error; 0 for one point
 * @param unit the unit
 */
public record PointMean<Q extends Quantity<Q>>(
    String what, double mean, double error, double deviation, double degreesOfFreedom, Unit<Q> unit)
    implements Estimated<Q> {

  /**
   * A mean of points of one stratum.
   *
   * @param what what is estimated
   * @param points number of points
   * @param mean mean in the unit
   * @param deviation standard deviation of the points in the unit
   * @param unit the unit
   * @param <Q> kind of quantity
   * @return the mean
   */
  static <Q extends Quantity<Q>> PointMean<Q> of(
      String what, int points, double mean, double deviation, Unit<Q> unit) {
    double error = points > 1 ? SamplingFormulas.STANDARD_ERROR.value(deviation, points) : 0;
    return new PointMean<>(what, mean, error, deviation, points - 1, unit);
  }

  @Override
  public Quantity<Q> value() {
    return Measures.of(mean, unit);
  }

  @Override
  public Quantity<Q> standardError() {
    requireSpread();
    return Measures.of(error, unit);
  }

  @Override
  public double coefficientOfVariation() {
    requireSpread();
    if (!(mean > 0)) {
      throw new IllegalStateException(
          what + ": no tree was counted, so there is no error in per cent of the mean");
    }
    return SamplingFormulas.PERCENT_OF_MEAN.value(deviation, mean);
  }

  @Override
  public Interval<Q> interval(double confidencePercent) {
    requireSpread();
    double half =
        SamplingFormulas.MEAN_INTERVAL.value(mean, error, degreesOfFreedom, confidencePercent);
    return new Interval<>(
        Measures.of(mean - half, unit), Measures.of(mean + half, unit), confidencePercent);
  }

  @Override
  public long pointsNeeded(double allowableErrorPercent) {
    return (long)
        SamplingFormulas.POINTS_NEEDED.value(coefficientOfVariation(), allowableErrorPercent, 95);
  }

  /** Whether the interval of 95 % does: a sample too small for its spread. */
  boolean reachesBelowZero() {
    return degreesOfFreedom > 0
        && mean - SamplingFormulas.MEAN_INTERVAL.value(mean, error, degreesOfFreedom, 95) < 0;
  }

  private void requireSpread() {
    if (!(degreesOfFreedom > 0)) {
      throw new IllegalStateException(
          what + ": one point has no standard error and no interval; take at least two points");
    }
  }
}
