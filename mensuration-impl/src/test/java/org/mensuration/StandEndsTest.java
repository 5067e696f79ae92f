package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.StemsTest.refused;
import static org.mensuration.units.ForestUnits.CUBIC_METRE;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.ForestUnits.PER_HECTARE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.cubicMetres;
import static org.mensuration.units.Measures.hectares;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;
import static org.mensuration.units.Measures.squareMetres;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.gauge.FixedPlots;
import org.mensuration.gauge.SweepCorrection;
import org.mensuration.height.HeightCurveException;
import org.mensuration.height.HeightCurveForm;
import org.mensuration.height.HeightSample;
import org.mensuration.stand.CombinedVolume;
import org.mensuration.stand.CostedStratum;
import org.mensuration.stand.DominantHeightRule;
import org.mensuration.stand.SampleLayout;
import org.mensuration.stand.StratifiedEstimate;
import org.mensuration.stand.TallyPlan;
import org.mensuration.stand.TreeVolume;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Stands, samples, plots and height curves at the ends of what is allowed; figures by hand. */
class StandEndsTest {
  /** A finite number of kilometres, beyond the largest double in metres. */
  private static final Quantity<Length> ENDLESS =
      Quantities.getQuantity(1e306, MetricPrefix.KILO(Units.METRE));

  private static final AngleGauge FOUR = AngleGauges.ofFactor(squareMetresPerHectare(4));
  private static final TallyPlan PLAN = TallyPlan.of(FOUR);

  private static CountedTree tree(double cm, double heightM) {
    return CountedTree.of(centimetres(cm)).withHeight(metres(heightM));
  }

  private static double dominant(TallyPlan plan, DominantHeightRule rule, CountPoint... points) {
    return in(Stands.dominantHeight(plan, List.of(points), rule).height(), METRE);
  }

  @Test
  void weightsOfEdgesAndSweepsCountForTheDominantHeight() {
    // A tree of 40 cm stands for 100/π stems, twice counted for 63.7; the rest are 20 m high.
    double wanted = 20 + 20 / Math.PI;
    assertThat(
            dominant(
                PLAN,
                DominantHeightRule.HUNDRED_PER_HECTARE,
                CountPoint.of("1", tree(40, 30).withEdgeWeight(2), tree(20, 20))))
        .isCloseTo(wanted, within(1e-12));
    assertThat(
            dominant(
                PLAN,
                DominantHeightRule.HUNDRED_PER_HECTARE,
                CountPoint.of("1", tree(40, 30), tree(20, 20))
                    .correctedBy(SweepCorrection.HALF_SWEEP)))
        .isCloseTo(wanted, within(1e-12));
  }

  @Test
  void aTreeThatIsOutNeedsNothingForTheDominantHeight() {
    assertThat(
            dominant(
                PLAN,
                DominantHeightRule.THICKEST_OF_EACH_POINT,
                CountPoint.of("1", tree(40, 30), CountedTree.unmeasured().out())))
        .isEqualTo(30);
  }

  @Test
  void aPointOfTreesTooThinForItsPlotHasNoThickest() {
    TallyPlan plan =
        TallyPlan.of(FixedAreaPlots.nested(FixedAreaPlots.circle(squareMetres(200), metres(0.12))));
    assertThat(
            dominant(
                plan,
                DominantHeightRule.THICKEST_OF_EACH_POINT,
                CountPoint.of("1", tree(40, 30)),
                CountPoint.of("2", tree(8, 9))))
        .isEqualTo(30);
  }

  @Test
  void tooFewStemsAreStatedPerHectare() {
    // 100/π stems at each of two points.
    assertThatThrownBy(
            () ->
                dominant(
                    PLAN,
                    DominantHeightRule.HUNDRED_PER_HECTARE,
                    CountPoint.of("1", tree(40, 30)),
                    CountPoint.of("2", tree(40, 30))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("the points stand for only 31.8309886");
  }

  @Test
  void aTotalNeedsAsManyPointsAsItsMean() {
    StratifiedEstimate stand =
        Stands.stratified(
            List.of(
                Stands.stratum("a", hectares(30), PLAN, points("a", 5, 9, 7, 4)),
                Stands.stratum("b", hectares(10), PLAN, points("b", 2, 6, 3, 8))));
    long points = stand.volume().pointsNeeded(12);
    assertThat(points).isGreaterThan(8);
    assertThat(stand.totalVolume().pointsNeeded(12)).isEqualTo(points);
  }

  private static List<CountPoint> points(String stratum, int... counts) {
    CountedTree tree = tree(30, 20).withVolume(cubicMetres(0.7));
    List<CountPoint> points = new ArrayList<>();
    for (int i = 0; i < counts.length; i++) {
      points.add(new CountPoint(stratum + i, Collections.nCopies(counts[i], tree)));
    }
    return points;
  }

  @Test
  void aBudgetForTwoUnitsIsEnough() {
    List<CostedStratum> one = List.of(new CostedStratum("1", 300, 10, 20));
    assertThat(SampleSizes.plotsForBudget(one, 40).shares().get(0).points()).isEqualTo(2);
    refused(() -> SampleSizes.plotsForBudget(one, 39), "a budget of 39.0", "needs two");
  }

  @Test
  void errorsOfZeroAreNoReasonForARemark() {
    CountedTree measured = tree(30, 20).withVolume(cubicMetres(0.7));
    CombinedVolume volume =
        Estimators.secondFactor(
            Stands.estimate(FOUR, List.of(CountPoint.ofCount("1", 5), CountPoint.ofCount("2", 5))),
            AngleGauges.ofFactor(squareMetresPerHectare(16)),
            List.of(measured, measured, measured),
            SampleLayout.RANDOM);
    assertThat(volume.exactErrorPercent()).isZero();
    assertThat(volume.remarks()).noneMatch(line -> line.contains("says nothing"));
  }

  @Test
  void aVolumeTableGivesTheVolumeOfItsClass() {
    TreeVolume table =
        TreeVolumes.table(
            List.of(centimetres(10), centimetres(20)),
            centimetres(30),
            List.of(cubicMetres(0.1), cubicMetres(0.5)));
    assertThat(in(table.of(CountedTree.of(centimetres(19.9))), CUBIC_METRE)).isEqualTo(0.1);
    assertThat(in(table.of(CountedTree.of(centimetres(20))), CUBIC_METRE)).isEqualTo(0.5);
  }

  @Test
  void circlesAreGivenInAnyOrder() {
    FixedPlots plots =
        FixedAreaPlots.nested(
            FixedAreaPlots.circle(squareMetres(500), centimetres(36)),
            FixedAreaPlots.circle(squareMetres(100), centimetres(7)),
            FixedAreaPlots.circle(squareMetres(200), centimetres(12)));
    assertThat(in(plots.treeFactor(centimetres(10)), PER_HECTARE)).isEqualTo(100);
    assertThat(in(plots.treeFactor(centimetres(20)), PER_HECTARE)).isEqualTo(50);
    assertThat(in(plots.treeFactor(centimetres(40)), PER_HECTARE)).isEqualTo(20);
    assertThatThrownBy(() -> plots.treeFactor(ENDLESS))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("Infinity");
    refused(
        () -> FixedAreaPlots.nested(FixedAreaPlots.circle(squareMetres(500), ENDLESS)),
        "smallest diameter of a circle");
  }

  @Test
  void aHeightCurveTakesNoTreeTooLargeForANumber() {
    HeightSample endlessDiameter = HeightSample.of("oak", ENDLESS, metres(20));
    assertThatThrownBy(() -> fit(endlessDiameter))
        .isInstanceOf(HeightCurveException.class)
        .hasMessageContaining("diameter Infinity cm, allowed above zero");
    HeightSample endlessHeight = HeightSample.of("oak", centimetres(30), ENDLESS);
    assertThatThrownBy(() -> fit(endlessHeight))
        .isInstanceOf(HeightCurveException.class)
        .hasMessageContaining("height Infinity m of a tree with a diameter at breast height of 30");
  }

  private static void fit(HeightSample sample) {
    HeightCurves.fit(HeightCurveForm.NASLUND, metres(1.3), "oak", List.of(sample));
  }
}
