package org.mensuration;

import java.util.List;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.internal.catalogue.EstimationFormulas;
import org.mensuration.internal.catalogue.SamplingFormulas;
import org.mensuration.internal.stand.DoubleSampling;
import org.mensuration.stand.CombinedVolume;
import org.mensuration.stand.EstimatedNumber;
import org.mensuration.stand.SampleLayout;
import org.mensuration.stand.StandEstimate;

/**
 * Estimates that use a second variable or a second sample. Stateless and thread-safe.
 *
 * <p>A part of the population is 0 where it has no finite number, as with points.
 *
 * <p>Equation, limits and sources of an id such as {@code sampling/ratio-estimate}: {@link
 * Catalogues#standard}.
 */
public final class Estimators {
  private Estimators() {}

  /**
   * A ratio of means ({@code sampling/ratio-estimate}, {@code sampling/ratio-standard-error}).
   *
   * @param denominators readings of the denominator, above zero
   * @param numerators readings of the numerator on the same plots in the same order
   * @param fraction part of the population that was read, from 0 and below 1
   * @return the ratio with its error of first order, divisor n - 1
   * @throws OutOfDomainException if a reading is outside, or there is only one
   */
  public static EstimatedNumber ratio(double[] denominators, double[] numerators, double fraction) {
    double ratio = SamplingFormulas.RATIO_ESTIMATE.applyTo(denominators, numerators);
    double error =
        EstimationFormulas.RATIO_STANDARD_ERROR.applyTo(
            denominators, numerators, new double[] {fraction});
    return new EstimatedNumber(ratio, error, denominators.length - 1.0);
  }

  /**
   * A regression estimate of a mean ({@code sampling/regression-estimate}, {@code
   * sampling/regression-standard-error}).
   *
   * @param known readings of the variable whose mean is known
   * @param wanted readings of the variable wanted, on the same plots in the same order
   * @param knownMean mean of the known variable over the population
   * @param fraction part of the population that was read, from 0 and below 1
   * @return the mean with its error, divisor n - 2
   * @throws OutOfDomainException if a reading is not finite, there are fewer than three, or the
   *     known variable does not vary
   */
  public static EstimatedNumber regression(
      double[] known, double[] wanted, double knownMean, double fraction) {
    double error =
        EstimationFormulas.REGRESSION_STANDARD_ERROR.applyTo(
            known, wanted, new double[] {fraction});
    double mean =
        EstimationFormulas.REGRESSION_ESTIMATE.applyTo(known, wanted, new double[] {knownMean});
    return new EstimatedNumber(mean, error, known.length - 2.0);
  }

  /**
   * Counts at all points and volumes of the trees of some of them: mean basal area times the ratio
   * of volume to basal area at the measured points.
   *
   * @param counts what all points say
   * @param measured the measured points, every tree with diameter and volume
   * @param layout how the measured points were chosen
   * @return the volume with its combined error and interval
   * @throws IllegalArgumentException if there are fewer than two points of either kind, no tree, or
   *     a measured tree lacks its volume
   */
  public static CombinedVolume countAndMeasure(
      StandEstimate counts, List<CountPoint> measured, SampleLayout layout) {
    return DoubleSampling.byPoints(counts, measured, layout);
  }

  /**
   * Counts by a small factor, and volumes of the trees that a larger factor picks out: mean basal
   * area times the mean of volume over basal area of the picked trees, each with its weight and
   * edge weight, as in the count.
   *
   * @param counts what all points say by the smaller factor
   * @param larger the gauge that picks the trees to be measured
   * @param measured the picked trees, each with diameter and volume
   * @param layout how the picked trees were chosen: by the gauge alone is at random
   * @return the volume with its combined error and interval
   * @throws IllegalArgumentException if the factor is not the larger one, there are fewer than two
   *     points or trees, or a tree lacks its diameter or volume
   */
  public static CombinedVolume secondFactor(
      StandEstimate counts, AngleGauge larger, List<CountedTree> measured, SampleLayout layout) {
    return DoubleSampling.byTrees(counts, larger, measured, layout);
  }
}
