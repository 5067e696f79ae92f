package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.CUBIC_METRE_PER_HECTARE;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE_PER_HECTARE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.cubicMetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.quantity.VolumePerArea;
import org.mensuration.stand.Allocation;
import org.mensuration.stand.CombinedVolume;
import org.mensuration.stand.EstimatedNumber;
import org.mensuration.stand.Interval;
import org.mensuration.stand.SampleLayout;
import org.mensuration.stand.StandEstimate;
import org.mensuration.stand.StratumPlan;
import org.mensuration.stand.StratumWeight;

/** Sample sizes, and estimates that use a second variable or a second sample. */
class SamplesTest {
  private static final AngleGauge TWO = AngleGauges.ofFactor(squareMetresPerHectare(2));
  private static final AngleGauge EIGHT = AngleGauges.ofFactor(squareMetresPerHectare(8));

  /** The hand-out: weights by area, 48.5 % and 86 plots of a thousand at t = 2; 21.3 in stand 1. */
  private static final List<StratumPlan> HAND_OUT =
      List.of(
          new StratumPlan("1", 30, 40),
          new StratumPlan("2", 10, 65),
          new StratumPlan("3", 20, 80),
          new StratumPlan("4", 40, 35));

  @Test
  void pointsSatisfyTheirOwnQuantile() {
    assertThat(SampleSizes.points(30, 10, 95)).isEqualTo(38); // substitution swings 37, 38, 37
    assertThat(SampleSizes.plots(30, 10, 95, 100)).isLessThan(38);
    assertThatThrownBy(() -> SampleSizes.points(30, 0, 95))
        .isInstanceOf(OutOfDomainException.class);
  }

  @Test
  void allocationByWeightAndVariation() {
    Allocation neyman = SampleSizes.neyman(StratumWeight.AREA, HAND_OUT, 86);
    assertThat(neyman.shares().get(0).exact()).isCloseTo(21.3, within(0.05));
    assertThat(neyman.shares())
        .extracting(Allocation.Share::points)
        .containsExactly(22L, 12L, 29L, 25L);
    assertThat(neyman.points()).isEqualTo(88);
    assertThat(neyman.shares().stream().mapToDouble(Allocation.Share::exact).sum())
        .isCloseTo(86, within(1e-11));
    assertThat(neyman.weight()).isEqualTo(StratumWeight.AREA);
    Allocation proportional = SampleSizes.proportional(StratumWeight.VOLUME, HAND_OUT, 100);
    assertThat(proportional.shares())
        .extracting(Allocation.Share::points)
        .containsExactly(30L, 10L, 20L, 40L);
    assertThat(proportional.weight()).isEqualTo(StratumWeight.VOLUME);
    assertThat(SampleSizes.proportional(StratumWeight.AREA, HAND_OUT, 2).shares())
        .allMatch(share -> share.points() == 2);
    assertThatThrownBy(() -> SampleSizes.neyman(StratumWeight.AREA, List.of(), 5))
        .hasMessageContaining("no strata");
    assertThatThrownBy(() -> SampleSizes.pointsByNeyman(StratumWeight.AREA, List.of(), 5, 95))
        .hasMessageContaining("no strata");
    for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> new StratumPlan("x", bad, 1)).hasMessageContaining("stratum x");
      assertThatThrownBy(() -> new StratumPlan("x", 1, bad)).hasMessageContaining("stratum x");
    }
  }

  @Test
  void theFactorForAWantedCount() {
    assertThat(in(SampleSizes.factor(squareMetresPerHectare(30), 7.5), SQUARE_METRE_PER_HECTARE))
        .isEqualTo(4);
  }

  /** Printed: ratio estimate of the total 11613, with a known total of 542. */
  @Test
  void publishedRatio() {
    double[] below = {6, 7, 5, 9, 6, 1, 4, 4, 4, 8};
    double[] above = {58, 158, 82, 177, 188, 9, 106, 178, 110, 91};
    EstimatedNumber ratio = Estimators.ratio(below, above, 0);
    assertThat(542 * ratio.value()).isCloseTo(11613, within(0.5));
    assertThat(ratio.degreesOfFreedom()).isEqualTo(9);
    double squares = 0;
    for (int i = 0; i < 10; i++) {
      squares += Math.pow(above[i] - ratio.value() * below[i], 2);
    }
    assertThat(ratio.standardError()).isCloseTo(Math.sqrt(squares / 9 / 10) / 5.4, within(1e-12));
    assertThat(Estimators.ratio(below, above, 0.75).standardError())
        .isCloseTo(ratio.standardError() / 2, within(1e-12));
    assertThat(Estimators.ratio(new double[] {1, 2}, new double[] {2, 4}, 0).standardError())
        .isZero();
    assertThatThrownBy(() -> Estimators.ratio(new double[] {1}, new double[] {2}, 0))
        .isInstanceOf(OutOfDomainException.class);
  }

  /** Printed: slope 1.25, 90 in total for ten units whose known total is 42. */
  @Test
  void publishedRegression() {
    double[] known = {3, 4, 6, 6, 6};
    double[] wanted = {4, 14, 8, 9, 15};
    EstimatedNumber mean = Estimators.regression(known, wanted, 4.2, 0.5);
    assertThat(10 * mean.value()).isCloseTo(90, within(1e-12));
    assertThat(mean.degreesOfFreedom()).isEqualTo(3);
    assertThat(mean.standardError()).isGreaterThan(0);
    assertThatThrownBy(() -> Estimators.regression(new double[] {1, 2}, new double[] {3, 4}, 1, 0))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(
            () -> Estimators.regression(new double[] {2, 2, 2}, new double[] {3, 4, 5}, 1, 0))
        .isInstanceOf(OutOfDomainException.class);
  }

  private static StandEstimate counts() {
    List<CountPoint> points = new ArrayList<>();
    for (int count : new int[] {10, 12, 8, 14}) {
      points.add(CountPoint.ofCount("p" + points.size(), count));
    }
    return Stands.estimate(TWO, points);
  }

  private static CountedTree tree(double ratio) {
    return CountedTree.of(centimetres(20)).withVolume(cubicMetres(ratio * Math.PI * 0.01));
  }

  @Test
  void aSecondFactorMultiplies() {
    CombinedVolume volume =
        Estimators.secondFactor(
            counts(), EIGHT, List.of(tree(8), tree(10), tree(12)), SampleLayout.RANDOM);
    assertThat(in(volume.volume(), CUBIC_METRE_PER_HECTARE)).isCloseTo(220, within(1e-10));
    double g = Math.sqrt(20.0 / 3) * 2 / 2; // standard error of 22 m²/ha
    double r = 2 / Math.sqrt(3);
    assertThat(volume.countErrorPercent()).isCloseTo(100 * g / 22, within(1e-11));
    assertThat(volume.ratioErrorPercent()).isCloseTo(10 * r, within(1e-11));
    assertThat(volume.firstOrderErrorPercent())
        .isCloseTo(Math.hypot(100 * g / 22, 10 * r), within(1e-11));
    double variance = 22 * 22 * r * r + 100 * g * g - g * g * r * r;
    assertThat(volume.exactErrorPercent())
        .isCloseTo(100 * Math.sqrt(variance) / 220, within(1e-11));
    assertThat(volume.exactErrorPercent()).isLessThan(volume.firstOrderErrorPercent());
    assertThat(volume.ratio().degreesOfFreedom()).isEqualTo(2);
    assertThat(volume.ratio().value()).isCloseTo(10, within(1e-13));
    assertThat(volume.remarks()).contains("dead trees: not counted");
  }

  /**
   * A tree that counts twice in the basal area counts twice in the ratio; one that is out does not.
   */
  @Test
  void measureTreesKeepTheirWeights() {
    EstimatedNumber ratio =
        Estimators.secondFactor(
                counts(),
                EIGHT,
                List.of(tree(8).withEdgeWeight(2), tree(11), tree(99).out()),
                SampleLayout.RANDOM)
            .ratio();
    assertThat(ratio.value()).isCloseTo((2 * 8 + 11) / 3.0, within(1e-13));
    assertThat(ratio.degreesOfFreedom()).isEqualTo(1);
    // Residuals 2 (8 - 9) and 11 - 9: the root of 2 (4 + 4)/1 over 3.
    assertThat(ratio.standardError()).isCloseTo(4 / 3.0, within(1e-13));
    assertThatThrownBy(
            () ->
                Estimators.secondFactor(
                    counts(), EIGHT, List.of(tree(8), tree(11).out()), SampleLayout.RANDOM))
        .hasMessage("measured trees: 1; a mean ratio with its error needs two");
  }

  /**
   * Errors of 11.7363 % with 3 degrees of freedom and 11.5470 % with 2: (137.741 + 133.333)² over
   * 137.741²/3 + 133.333²/2 is 73481 over 15213, 4.830.
   */
  @Test
  void theCombinedErrorHasTheEffectiveDegreesOfFreedom() {
    CombinedVolume volume =
        Estimators.secondFactor(
            counts(), EIGHT, List.of(tree(8), tree(10), tree(12)), SampleLayout.RANDOM);
    assertThat(volume.degreesOfFreedom()).isCloseTo(4.830, within(5e-4));
    Interval<VolumePerArea> interval = volume.interval(95);
    // Tables print t as 2.776 with 4 and 2.571 with 5; the error is 16.4644 % of 220 or 36.2217.
    double half = in(interval.upper(), CUBIC_METRE_PER_HECTARE) - 220;
    assertThat(half).isBetween(36.2217 * 2.571, 36.2217 * 2.776);
    assertThat(220 - in(interval.lower(), CUBIC_METRE_PER_HECTARE)).isCloseTo(half, within(1e-9));
    assertThatThrownBy(() -> volume.interval(0.95)).isInstanceOf(IllegalArgumentException.class);
  }

  /**
   * Two equal errors with 3 and 1 degrees of freedom: 4/(1/3 + 1) are 3, and tables print 3.182.
   */
  @Test
  void theIntervalTakesTheQuantileOfTheTables() {
    double error = Math.sqrt(5.0 / 3) / 11; // of the count: 20/3 over 4 points, mean 11
    CombinedVolume volume =
        Estimators.secondFactor(
            counts(),
            EIGHT,
            List.of(tree(10 - 10 * error), tree(10 + 10 * error)),
            SampleLayout.RANDOM);
    assertThat(volume.degreesOfFreedom()).isCloseTo(3, within(1e-9));
    double half = in(volume.interval(95).upper(), CUBIC_METRE_PER_HECTARE) - 220;
    assertThat(half / (220 * error * Math.sqrt(2))).isCloseTo(3.182, within(5e-4));
  }

  @Test
  void withoutAnySpreadBothNumbersAreTakenTogether() {
    CombinedVolume volume =
        Estimators.secondFactor(
            Stands.estimate(TWO, List.of(CountPoint.ofCount("1", 9), CountPoint.ofCount("2", 9))),
            EIGHT,
            List.of(tree(10), tree(10), tree(10)),
            SampleLayout.RANDOM);
    assertThat(volume.degreesOfFreedom()).isEqualTo(3);
    assertThat(in(volume.interval(95).lower(), CUBIC_METRE_PER_HECTARE))
        .isCloseTo(180, within(1e-9));
  }

  @Test
  void cautionsAndTreesBeyondTheSecondLimitArePrinted() {
    CombinedVolume volume =
        Estimators.secondFactor(
            counts(),
            EIGHT,
            List.of(tree(8).at(metres(3)), tree(10).at(metres(4))),
            SampleLayout.JUDGEMENT);
    assertThat(volume.remarks())
        .contains("measured tree beyond the limit of the second factor, at 4 m")
        .anyMatch(line -> line.startsWith("measured trees chosen by judgement"));
    CombinedVolume wild =
        Estimators.secondFactor(
            Stands.estimate(
                TWO, List.of(CountPoint.ofCount("1", 1), CountPoint.of("2"), CountPoint.of("3"))),
            EIGHT,
            List.of(tree(0.001), tree(0), tree(0)),
            SampleLayout.RANDOM);
    assertThat(wild.exactErrorPercent()).isGreaterThan(0);
    assertThat(volume).isNotEqualTo(wild).isEqualTo(volume).hasSameHashCodeAs(volume);
  }

  @Test
  void secondFactorsAreLargerAndTreesMeasured() {
    assertThatThrownBy(
            () ->
                Estimators.secondFactor(
                    counts(), TWO, List.of(tree(8), tree(9)), SampleLayout.RANDOM))
        .hasMessageContaining("must be larger");
    assertThatThrownBy(
            () -> Estimators.secondFactor(counts(), EIGHT, List.of(tree(8)), SampleLayout.RANDOM))
        .hasMessageContaining("measured trees: 1");
    assertThatThrownBy(
            () ->
                Estimators.secondFactor(
                    counts(),
                    EIGHT,
                    List.of(tree(8), CountedTree.of(centimetres(20))),
                    SampleLayout.RANDOM))
        .hasMessageContaining("measured tree 2: the tree has no volume");
    assertThatThrownBy(
            () ->
                Estimators.secondFactor(
                    counts(),
                    EIGHT,
                    List.of(tree(8), CountedTree.unmeasured().withVolume(cubicMetres(1))),
                    SampleLayout.RANDOM))
        .hasMessageContaining("measured tree 2: a volume needs a diameter");
    assertThatThrownBy(
            () ->
                Estimators.secondFactor(
                    counts(), EIGHT, List.of(tree(0), tree(0)), SampleLayout.RANDOM))
        .hasMessageContaining("no volume was counted");
  }

  @Test
  void countPointsAndMeasurePoints() {
    List<CountPoint> measured =
        List.of(
            CountPoint.of("m1", tree(8), tree(10)),
            CountPoint.of("m2", tree(9), tree(12), tree(12)),
            CountPoint.of("m3"));
    CombinedVolume volume = Estimators.countAndMeasure(counts(), measured, SampleLayout.SYSTEMATIC);
    EstimatedNumber ratio = Estimators.ratio(new double[] {4, 6}, new double[] {36, 66}, 0);
    assertThat(volume.ratio().value()).isCloseTo(10.2, within(1e-12));
    assertThat(volume.ratio().standardError()).isCloseTo(ratio.standardError(), within(1e-12));
    assertThat(in(volume.volume(), CUBIC_METRE_PER_HECTARE)).isCloseTo(224.4, within(1e-10));
    assertThat(volume.remarks()).anyMatch(line -> line.contains("systematic grid"));
    assertThatThrownBy(
            () -> Estimators.countAndMeasure(counts(), measured.subList(1, 3), SampleLayout.RANDOM))
        .hasMessageContaining("measured points with trees: 1");
    assertThatThrownBy(
            () ->
                Estimators.countAndMeasure(
                    counts(),
                    List.of(measured.get(0), CountPoint.ofDiameters("m", centimetres(20))),
                    SampleLayout.RANDOM))
        .hasMessageContaining("point m, tree 1 has no volume");
  }

  @Test
  void numbersOfAnEstimateAreFinite() {
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> new EstimatedNumber(bad, 1, 1)).hasMessageContaining("is none");
      assertThatThrownBy(() -> new EstimatedNumber(1, bad, 1)).hasMessageContaining("is none");
      assertThatThrownBy(() -> new EstimatedNumber(1, 1, bad)).hasMessageContaining("is none");
    }
    assertThatThrownBy(() -> new EstimatedNumber(1, -1, 1)).hasMessageContaining("is none");
    assertThatThrownBy(() -> new EstimatedNumber(1, 1, -1)).hasMessageContaining("is none");
  }

  @Test
  void aCombinedVolumeSaysWhatToThinkOfItsErrors() {
    List<CountPoint> measured =
        List.of(CountPoint.of("m1", tree(8), tree(10)), CountPoint.of("m2", tree(9), tree(12)));
    assertThat(
            Estimators.countAndMeasure(counts(), measured, SampleLayout.RANDOM)
                .ratio()
                .degreesOfFreedom())
        .isEqualTo(1);
    // Picked trees within the limit of the second factor raise no remark, one beyond it does.
    double limit = in(EIGHT.limitingDistanceToCentre(tree(8).diameter().get()), METRE);
    List<CountedTree> near = List.of(tree(8).at(metres(limit / 2)), tree(10).at(metres(limit)));
    CombinedVolume picked = Estimators.secondFactor(counts(), EIGHT, near, SampleLayout.RANDOM);
    assertThat(picked.remarks()).noneMatch(line -> line.contains("beyond the limit of the second"));
    assertThat(picked.remarks()).noneMatch(line -> line.contains("errors exceed"));
    assertThat(picked.exactErrorPercent()).isPositive().isLessThan(picked.firstOrderErrorPercent());
    List<CountedTree> far = List.of(tree(8).at(metres(2 * limit)), tree(10));
    assertThat(Estimators.secondFactor(counts(), EIGHT, far, SampleLayout.RANDOM).remarks())
        .anyMatch(line -> line.startsWith("measured tree beyond the limit of the second factor"));
  }
}
