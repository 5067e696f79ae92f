package org.mensuration.internal.stand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.gauge.LimitPosition;
import org.mensuration.internal.catalogue.EstimationFormulas;
import org.mensuration.internal.catalogue.MeasurementErrorFormulas;
import org.mensuration.internal.catalogue.SamplingFormulas;
import org.mensuration.internal.catalogue.StandFormulas;
import org.mensuration.stand.CombinedVolume;
import org.mensuration.stand.EstimatedNumber;
import org.mensuration.stand.SampleLayout;
import org.mensuration.stand.StandEstimate;
import org.mensuration.stand.TallyPlan;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;

/** Basal area from many trees times volume over basal area from a few. Stateless, thread-safe. */
public final class DoubleSampling {
  private DoubleSampling() {}

  /**
   * Measured points.
   *
   * @param counts what all points say
   * @param measured the measured points
   * @param layout how they were chosen
   * @return the volume
   */
  public static CombinedVolume byPoints(
      StandEstimate counts, List<CountPoint> measured, SampleLayout layout) {
    double[] basal = new double[measured.size()];
    double[] volume = new double[measured.size()];
    int trees = 0;
    for (int i = 0; i < basal.length; i++) {
      StandEstimate here = estimate(counts.plan(), measured.get(i));
      basal[i] = Measures.in(here.basalArea().value(), ForestUnits.SQUARE_METRE_PER_HECTARE);
      volume[i] = Measures.in(here.volume().value(), ForestUnits.CUBIC_METRE_PER_HECTARE);
      trees += basal[i] > 0 ? 1 : 0;
    }
    if (trees < 2) {
      throw new IllegalArgumentException(
          "measured points with trees: " + trees + "; a ratio with its error needs two");
    }
    // A point without trees adds nothing to either sum: it is no reading of the ratio.
    return combined(
        counts,
        ratio(withTrees(basal, basal, trees), withTrees(volume, basal, trees)),
        layout,
        new ArrayList<>());
  }

  private static StandEstimate estimate(TallyPlan plan, CountPoint point) {
    ExactStandTally tally = ExactStandTally.of(plan);
    // By itself a point has no side of the edge, and the ratio does not ask for it.
    tally.add(new CountPoint(point.id(), point.trees(), point.sweep(), false));
    return tally.figures();
  }

  private static double[] withTrees(double[] values, double[] basal, int trees) {
    double[] kept = new double[trees];
    int next = 0;
    for (int i = 0; i < values.length; i++) {
      if (basal[i] > 0) {
        kept[next++] = values[i];
      }
    }
    return kept;
  }

  /**
   * Trees picked by a larger factor.
   *
   * @param counts what all points say by the smaller factor
   * @param larger the gauge that picks
   * @param measured the picked trees
   * @param layout how they were chosen
   * @return the volume
   */
  public static CombinedVolume byTrees(
      StandEstimate counts, AngleGauge larger, List<CountedTree> measured, SampleLayout layout) {
    double large = Measures.in(larger.factor(), ForestUnits.SQUARE_METRE_PER_HECTARE);
    if (!(counts.selection() instanceof AngleGauge small)
        || !(large > Measures.in(small.factor(), ForestUnits.SQUARE_METRE_PER_HECTARE))) {
      throw new IllegalArgumentException(
          "the second factor " + larger.factor() + " must be larger than that of the count");
    }
    List<Double> weights = new ArrayList<>();
    List<Double> weighted = new ArrayList<>();
    List<String> remarks = new ArrayList<>();
    for (int i = 0; i < measured.size(); i++) {
      CountedTree tree = measured.get(i);
      double weight = tree.weight() * tree.edgeWeight();
      if (!(weight > 0)) {
        continue; // out: not picked
      }
      try {
        weighted.add(weight * VolumeRules.ratioOf(tree));
        weights.add(weight);
      } catch (IllegalArgumentException lacking) {
        throw new IllegalArgumentException(
            "measured tree " + (i + 1) + ": " + lacking.getMessage(), lacking);
      }
      tree.detail()
          .distanceToCentre()
          .filter(d -> larger.judge(VolumeRules.diameter(tree), d) == LimitPosition.OUT)
          .ifPresent(
              d -> remarks.add("measured tree beyond the limit of the second factor, at " + d));
    }
    if (weights.size() < 2) {
      throw new IllegalArgumentException(
          "measured trees: " + weights.size() + "; a mean ratio with its error needs two");
    }
    return combined(counts, ratio(numbers(weights), numbers(weighted)), layout, remarks);
  }

  /** The ratio of means with its error; with equal readings below the line a mean with its own. */
  private static EstimatedNumber ratio(double[] below, double[] above) {
    return new EstimatedNumber(
        SamplingFormulas.RATIO_ESTIMATE.applyTo(below, above),
        EstimationFormulas.RATIO_STANDARD_ERROR.applyTo(below, above, new double[] {0}),
        below.length - 1.0);
  }

  private static double[] numbers(List<Double> list) {
    return list.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static CombinedVolume combined(
      StandEstimate counts, EstimatedNumber ratio, SampleLayout layout, List<String> remarks) {
    double basal = Measures.in(counts.basalArea().value(), ForestUnits.SQUARE_METRE_PER_HECTARE);
    double basalError =
        Measures.in(counts.basalArea().standardError(), ForestUnits.SQUARE_METRE_PER_HECTARE);
    double volume = StandFormulas.VOLUME.value(basal, ratio.value());
    if (!(volume > 0)) {
      throw new IllegalArgumentException("no volume was counted, so there is no error in per cent");
    }
    double countPercent = SamplingFormulas.PERCENT_OF_MEAN.value(basalError, basal);
    double ratioPercent =
        SamplingFormulas.PERCENT_OF_MEAN.value(ratio.standardError(), ratio.value());
    double variance =
        SamplingFormulas.PRODUCT_VARIANCE.value(
            basal, basalError, ratio.value(), ratio.standardError());
    Optional<String> caution = layout.caution();
    caution.ifPresent(text -> remarks.add("measured trees " + text));
    if (!(variance >= 0)) {
      remarks.add("the errors exceed their means: the exact error of the product says nothing");
    }
    remarks.addAll(counts.remarks());
    double percent = SamplingFormulas.COMBINED_ERROR.value(countPercent, ratioPercent);
    double error =
        MeasurementErrorFormulas.COMBINED.applyTo(
            new double[] {ratio.value(), basal}, new double[] {basalError, ratio.standardError()});
    double freedom =
        freedom(countPercent, counts.basalArea().degreesOfFreedom(), ratioPercent, ratio);
    return new ProductVolume(
        new PointMean<>("volume", volume, error, 0, freedom, ForestUnits.CUBIC_METRE_PER_HECTARE),
        countPercent,
        ratioPercent,
        percent,
        SamplingFormulas.PERCENT_OF_MEAN.value(Math.sqrt(Math.max(0, variance)), volume),
        ratio,
        remarks);
  }

  /** Of a product, relative errors take the place of those of a sum. */
  private static double freedom(
      double countPercent, double countFreedom, double ratioPercent, EstimatedNumber ratio) {
    return countPercent > 0 || ratioPercent > 0
        ? EstimationFormulas.EFFECTIVE_FREEDOM.applyTo(
            new double[] {1, 1},
            new double[] {countPercent, ratioPercent},
            new double[] {countFreedom + 1, ratio.degreesOfFreedom() + 1})
        : countFreedom + ratio.degreesOfFreedom();
  }
}
