package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.ACRE;
import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.CUBIC_METRE;
import static org.mensuration.units.ForestUnits.CUBIC_METRE_PER_HECTARE;
import static org.mensuration.units.ForestUnits.HECTARE;
import static org.mensuration.units.ForestUnits.PER_HECTARE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE_PER_HECTARE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.cubicMetres;
import static org.mensuration.units.Measures.hectares;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.stand.Estimated;
import org.mensuration.stand.StratifiedEstimate;
import org.mensuration.stand.Stratum;
import org.mensuration.stand.TallyPlan;
import org.mensuration.units.Measures;

class StrataTest {
  private static final AngleGauge TWO = AngleGauges.ofFactor(squareMetresPerHectare(2));
  private static final TallyPlan PLAN = TallyPlan.of(TWO);

  private static Stratum stratum(String name, double hectares, int... counts) {
    List<CountPoint> points = new ArrayList<>();
    for (int count : counts) {
      List<CountedTree> trees = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        trees.add(CountedTree.of(centimetres(20)).withVolume(cubicMetres(0.25)));
      }
      points.add(new CountPoint("p" + points.size(), trees));
    }
    return Stands.stratum(name, hectares(hectares), PLAN, points);
  }

  private static StratifiedEstimate two() {
    return Stands.stratified(List.of(stratum("a", 10, 10, 12, 14), stratum("b", 30, 4, 8)));
  }

  @Test
  void strataAreWeighedByArea() {
    StratifiedEstimate stand = two();
    Estimated<BasalAreaPerArea> basal = stand.basalArea();
    assertThat(in(basal.value(), SQUARE_METRE_PER_HECTARE))
        .isCloseTo((10 * 24 + 30 * 12) / 40.0, within(1e-13));
    // Standard errors by hand: a 2·2/√3, b 2·√8/√2.
    double a = 4 / Math.sqrt(3);
    double b = 4;
    double error = Math.sqrt(a * a / 16 + b * b * 9 / 16);
    assertThat(in(basal.standardError(), SQUARE_METRE_PER_HECTARE)).isCloseTo(error, within(1e-12));
    double freedom = Math.pow(error, 4) / (Math.pow(a / 4, 4) / 2 + Math.pow(b * 3 / 4, 4) / 1);
    assertThat(basal.degreesOfFreedom()).isCloseTo(freedom, within(1e-12));
    double deviation = (10 * 4 + 30 * 2 * Math.sqrt(8)) / 40;
    assertThat(basal.coefficientOfVariation()).isCloseTo(100 * deviation / 15, within(1e-12));
    assertThat(basal.pointsNeeded(20)).isEqualTo(SampleSizes.points(100 * deviation / 15, 20, 95));
    assertThat(in(basal.interval(90).upper(), SQUARE_METRE_PER_HECTARE)).isGreaterThan(15 + error);
    assertThat(in(stand.area(), HECTARE)).isEqualTo(40);
    assertThat(stand.strata()).hasSize(2);
  }

  @Test
  void totalsAreMeansTimesArea() {
    StratifiedEstimate stand = two();
    assertThat(in(stand.totalBasalArea().value(), SQUARE_METRE)).isCloseTo(600, within(1e-11));
    assertThat(in(stand.totalBasalArea().standardError(), SQUARE_METRE))
        .isCloseTo(
            40 * in(stand.basalArea().standardError(), SQUARE_METRE_PER_HECTARE), within(1e-11));
    double stems = 15 / (Math.PI * 0.01);
    assertThat(in(stand.stems().value(), PER_HECTARE)).isCloseTo(stems, within(1e-10));
    assertThat(stand.totalStems().value()).isCloseTo(40 * stems, within(1e-8));
    assertThat(stand.totalStems().standardError())
        .isCloseTo(40 * in(stand.stems().standardError(), PER_HECTARE), within(1e-8));
    assertThat(stand.totalStems().degreesOfFreedom()).isEqualTo(stand.stems().degreesOfFreedom());
    assertThat(in(stand.volume().value(), CUBIC_METRE_PER_HECTARE))
        .isCloseTo(stems / 4, within(1e-10));
    assertThat(in(stand.totalVolume().value(), CUBIC_METRE)).isCloseTo(10 * stems, within(1e-9));
    assertThat(stand.totalVolume().coefficientOfVariation())
        .isCloseTo(stand.volume().coefficientOfVariation(), within(1e-10));
    assertThat(in(stand.quadraticMeanDiameter().get(), CENTIMETRE)).isCloseTo(20, within(1e-12));
    assertThat(stand.remarks()).contains("a: diameters as recorded", "b: dead trees: not counted");
  }

  @Test
  void acresAndHectaresWeighAlike() {
    double acres = in(hectares(10), ACRE);
    Stratum a = stratum("a", 10, 10, 12, 14);
    Stratum inAcres = new Stratum("a", Measures.acres(acres), a.estimate());
    StratifiedEstimate stand = Stands.stratified(List.of(inAcres, stratum("b", 30, 4, 8)));
    assertThat(in(stand.basalArea().value(), SQUARE_METRE_PER_HECTARE))
        .isCloseTo(15, within(1e-12));
    assertThat(new Stratum("a", hectares(10), a.estimate())).isEqualTo(a).hasSameHashCodeAs(a);
    assertThat(a).isNotEqualTo(new Stratum("a", hectares(11), a.estimate()));
  }

  @Test
  void oneStratumIsTheStandItself() {
    Stratum only = stratum("all", 12.5, 10, 12, 14, 3);
    StratifiedEstimate stand = Stands.stratified(List.of(only));
    assertThat(in(stand.basalArea().value(), SQUARE_METRE_PER_HECTARE))
        .isEqualTo(in(only.estimate().basalArea().value(), SQUARE_METRE_PER_HECTARE));
    assertThat(stand.basalArea().degreesOfFreedom()).isEqualTo(3);
    assertThat(stand.basalArea().coefficientOfVariation())
        .isCloseTo(only.estimate().basalArea().coefficientOfVariation(), within(1e-11));
  }

  @Test
  void equalPointsGiveNoErrorAndAllTheirFreedom() {
    StratifiedEstimate stand =
        Stands.stratified(List.of(stratum("a", 10, 5, 5, 5), stratum("b", 30, 4, 4)));
    assertThat(in(stand.basalArea().standardError(), SQUARE_METRE_PER_HECTARE)).isZero();
    assertThat(stand.basalArea().degreesOfFreedom()).isEqualTo(3);
    StratifiedEstimate empty = Stands.stratified(List.of(stratum("a", 10, 0, 0)));
    assertThat(empty.quadraticMeanDiameter()).isEmpty();
  }

  @Test
  void badStrataAreRefused() {
    assertThatThrownBy(() -> stratum("a", 10)).hasMessageContaining("stratum a has no points");
    assertThatThrownBy(() -> stratum("a", 0, 3)).hasMessageContaining("stratum a: area");
    assertThatThrownBy(() -> stratum(" ", 1, 3)).hasMessageContaining("blank");
    assertThatThrownBy(() -> Stands.stratified(List.of())).hasMessageContaining("no strata");
    assertThatThrownBy(
            () -> Stands.stratified(List.of(stratum("a", 1, 3, 4), stratum("a", 2, 3, 5))))
        .hasMessageContaining("stratum a is given twice");
    StratifiedEstimate single =
        Stands.stratified(List.of(stratum("a", 10, 10, 12, 14), stratum("b", 30, 4)));
    assertThat(in(single.basalArea().value(), SQUARE_METRE_PER_HECTARE))
        .isCloseTo(12, within(1e-13));
    assertThatThrownBy(() -> single.basalArea().interval(95))
        .hasMessageContaining("a stratum has one point");
    assertThat(single.totalStems().degreesOfFreedom()).isZero();
    Stratum unmeasured =
        Stands.stratum("u", hectares(1), PLAN, List.of(CountPoint.ofCount("1", 2)));
    assertThatThrownBy(() -> Stands.stratified(List.of(unmeasured)).stems())
        .hasMessageContaining("stratum u: point 1, tree 1 has no diameter");
  }
}
