package org.mensuration.internal.stand;

import java.util.List;
import javax.measure.Quantity;
import org.mensuration.internal.catalogue.SampleSizeFormulas;
import org.mensuration.internal.catalogue.SamplingFormulas;
import org.mensuration.stand.Estimated;
import org.mensuration.stand.Interval;

/**
 * A mean over strata, whose points needed go by Neyman's allocation. Immutable and thread-safe.
 *
 * @param mean mean, error and degrees of freedom
 * @param hectares areas of the strata
 * @param deviations standard deviations of the points of each stratum, in the unit of the mean
 */
record StrataMean<Q extends Quantity<Q>>(
    PointMean<Q> mean, List<Double> hectares, List<Double> deviations) implements Estimated<Q> {

  StrataMean {
    hectares = List.copyOf(hectares);
    deviations = List.copyOf(deviations);
  }

  @Override
  public Quantity<Q> value() {
    return mean.value();
  }

  @Override
  public Quantity<Q> standardError() {
    return mean.standardError();
  }

  @Override
  public double degreesOfFreedom() {
    return mean.degreesOfFreedom();
  }

  @Override
  public double coefficientOfVariation() {
    return mean.coefficientOfVariation();
  }

  @Override
  public Interval<Q> interval(double confidencePercent) {
    return mean.interval(confidencePercent);
  }

  @Override
  public long pointsNeeded(double allowableErrorPercent) {
    coefficientOfVariation(); // says why there is none
    // Over the mean of all strata, so that areas are the right weights.
    return (long)
        SampleSizeFormulas.POINTS_NEEDED_NEYMAN.applyTo(
            hectares.stream().mapToDouble(Double::doubleValue).toArray(),
            deviations.stream()
                .mapToDouble(d -> SamplingFormulas.PERCENT_OF_MEAN.value(d, mean.mean()))
                .toArray(),
            new double[] {allowableErrorPercent},
            new double[] {95});
  }
}
