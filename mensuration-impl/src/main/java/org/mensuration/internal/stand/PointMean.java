package org.mensuration.internal.stand;

import javax.measure.Quantity;
import javax.measure.Unit;
import org.mensuration.internal.catalogue.SamplingFormulas;
import org.mensuration.internal.statistics.ExactMoments;
import org.mensuration.stand.Estimated;
import org.mensuration.stand.Interval;
import org.mensuration.units.Measures;

/**
 * A mean over points in one unit. Immutable and thread-safe.
 *
 * @param what what is estimated, for messages
 * @param points number of points
 * @param mean mean in the unit
 * @param deviation standard deviation of the points in the unit; 0 for one point
 * @param unit the unit
 */
record PointMean<Q extends Quantity<Q>>(
    String what, int points, double mean, double deviation, Unit<Q> unit) implements Estimated<Q> {

  static <Q extends Quantity<Q>> PointMean<Q> of(String what, ExactMoments moments, Unit<Q> unit) {
    int points = moments.count();
    double deviation = points > 1 ? moments.standardDeviation() : 0;
    return new PointMean<>(what, points, moments.mean(), deviation, unit);
  }

  @Override
  public Quantity<Q> value() {
    return Measures.of(mean, unit);
  }

  @Override
  public Quantity<Q> standardError() {
    return Measures.of(error(), unit);
  }

  @Override
  public int degreesOfFreedom() {
    return points - 1;
  }

  @Override
  public double coefficientOfVariation() {
    requireSpread();
    if (!(mean > 0)) {
      throw new IllegalStateException(
          what + ": no tree was counted, so there is no error in per cent of the mean");
    }
    return 100 * deviation / mean;
  }

  @Override
  public Interval<Q> interval(double confidence) {
    double error = error();
    if (!(confidence > 0 && confidence < 1)) {
      throw new IllegalArgumentException(
          what + ": confidence " + confidence + ", allowed (0, 1), such as 0.95");
    }
    double half =
        SamplingFormulas.MEAN_INTERVAL.value(mean, error, degreesOfFreedom(), 100 * confidence);
    return new Interval<>(
        Measures.of(mean - half, unit), Measures.of(mean + half, unit), confidence);
  }

  @Override
  public long pointsNeeded(double allowableErrorPercent) {
    return (long)
        SamplingFormulas.POINTS_NEEDED.value(coefficientOfVariation(), allowableErrorPercent, 95);
  }

  private double error() {
    requireSpread();
    return SamplingFormulas.STANDARD_ERROR.value(deviation, points);
  }

  private void requireSpread() {
    if (points < 2) {
      throw new IllegalStateException(
          what + ": one point has no standard error and no interval; take at least two points");
    }
  }
}
