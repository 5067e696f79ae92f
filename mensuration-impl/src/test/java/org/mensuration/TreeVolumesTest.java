package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.CUBIC_METRE;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.cubicMetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;
import static org.mensuration.units.Measures.squareMetres;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.gauge.SweepCorrection;
import org.mensuration.stand.DominantHeight;
import org.mensuration.stand.DominantHeightRule;
import org.mensuration.stand.TallyPlan;
import org.mensuration.stand.TreeVolume;

/** Volumes of trees by rules, and dominant heights. */
class TreeVolumesTest {
  private static final CountedTree TREE = CountedTree.of(centimetres(20)).withHeight(metres(15));
  private static final TreeVolume ONE_ENTRY =
      TreeVolumes.table(
          List.of(centimetres(10), centimetres(20), inches(12)),
          centimetres(40),
          List.of(cubicMetres(0.1), cubicMetres(0.4), cubicMetres(1)));

  private static double volume(TreeVolume rule, CountedTree tree) {
    return in(rule.of(tree), CUBIC_METRE);
  }

  @Test
  void functionsAndFactors() {
    double g = Math.PI * 0.01;
    assertThat(volume(TreeVolumes.formFactor(0.5), TREE)).isCloseTo(g * 7.5, within(1e-15));
    assertThat(volume(TreeVolumes.volumeBasalAreaRatio(9), TREE)).isCloseTo(g * 9, within(1e-15));
    assertThat(volume(TreeVolumes.ofDiameter(d -> cubicMetres(in(d, CENTIMETRE) / 100)), TREE))
        .isEqualTo(0.2);
    assertThat(
            volume(TreeVolumes.ofDiameterAndHeight((d, h) -> cubicMetres(in(h, METRE) / 10)), TREE))
        .isEqualTo(1.5);
    CountedTree low = CountedTree.of(centimetres(20));
    assertThatThrownBy(() -> TreeVolumes.formFactor(0.5).of(low)).hasMessageContaining("height");
    assertThatThrownBy(() -> TreeVolumes.formFactor(0)).isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> TreeVolumes.volumeBasalAreaRatio(-1))
        .isInstanceOf(OutOfDomainException.class);
  }

  @Test
  void tablesAnswerWithinTheirLimits() {
    assertThat(volume(ONE_ENTRY, TREE)).isEqualTo(0.4);
    assertThat(volume(ONE_ENTRY, CountedTree.of(centimetres(20 - 1e-12)))).isEqualTo(0.4);
    assertThat(volume(ONE_ENTRY, CountedTree.of(centimetres(19.9)))).isEqualTo(0.1);
    assertThat(volume(ONE_ENTRY, CountedTree.of(centimetres(10)))).isEqualTo(0.1);
    assertThat(volume(ONE_ENTRY, CountedTree.of(centimetres(30.48)))).isEqualTo(1);
    for (double outside : new double[] {9.9, 40, 41}) {
      assertThatThrownBy(() -> ONE_ENTRY.of(CountedTree.of(centimetres(outside))))
          .hasMessageContaining("diameter " + (outside == 9.9 ? "9.9" : (int) outside))
          .hasMessageContaining("outside the volume table, which goes from 0.1 m to below 0.4 m");
    }
    TreeVolume two =
        TreeVolumes.table(
            List.of(centimetres(10), centimetres(20)),
            centimetres(30),
            List.of(metres(10), metres(15)),
            metres(20),
            List.of(
                List.of(cubicMetres(1), cubicMetres(2)), List.of(cubicMetres(3), cubicMetres(4))));
    assertThat(volume(two, TREE)).isEqualTo(4);
    assertThat(volume(two, TREE.withHeight(metres(14)))).isEqualTo(3);
    assertThat(volume(two, CountedTree.of(centimetres(10)).withHeight(metres(19)))).isEqualTo(2);
    assertThatThrownBy(() -> two.of(TREE.withHeight(metres(20)))).hasMessageContaining("height 20");
  }

  @Test
  void tablesAreWhole() {
    assertThatThrownBy(
            () ->
                TreeVolumes.table(
                    List.of(centimetres(10)), centimetres(10), List.of(cubicMetres(1))))
        .hasMessageContaining("must rise");
    assertThatThrownBy(() -> TreeVolumes.table(List.of(), centimetres(10), List.of()))
        .hasMessageContaining("no diameter class");
    assertThatThrownBy(
            () -> TreeVolumes.table(List.of(centimetres(10)), centimetres(20), List.of()))
        .hasMessageContaining("0 cells for 1 classes");
  }

  @Test
  void pointsAreFilledWhereVolumesLack() {
    CountPoint point =
        CountPoint.of("7", TREE.withVolume(cubicMetres(9)), TREE, CountedTree.unmeasured())
            .correctedBy(SweepCorrection.HALF_SWEEP);
    CountPoint filled = TreeVolumes.fill(List.of(point), ONE_ENTRY).get(0);
    assertThat(filled.sweep()).isEqualTo(SweepCorrection.HALF_SWEEP);
    assertThat(filled.id()).isEqualTo("7");
    assertThat(filled.trees().get(0)).isEqualTo(point.trees().get(0));
    assertThat(filled.trees().get(1)).isEqualTo(TREE.withVolume(cubicMetres(0.4)));
    assertThat(filled.trees().get(2)).isEqualTo(CountedTree.unmeasured());
    assertThatThrownBy(
            () ->
                TreeVolumes.fill(
                    List.of(CountPoint.of("7", TREE, CountedTree.of(centimetres(50)))), ONE_ENTRY))
        .hasMessageContaining("point 7, tree 2: diameter 50");
  }

  private static final AngleGauge FOUR = AngleGauges.ofFactor(squareMetresPerHectare(4));
  private static final TallyPlan PLAN = TallyPlan.of(FOUR);

  private static CountedTree tree(double diameter, double height) {
    return CountedTree.of(centimetres(diameter)).withHeight(metres(height));
  }

  private static double dominant(DominantHeightRule rule, TallyPlan plan, CountPoint... points) {
    return in(Stands.dominantHeight(plan, List.of(points), rule).height(), METRE);
  }

  @Test
  void theThickestHundredPerHectare() {
    // 4/g: 40 cm stand for 31.83, 30 cm for 56.59, 20 cm for 127.3 stems per hectare.
    CountPoint point = CountPoint.of("1", tree(20, 15), tree(40, 30), tree(30, 25));
    double thick = 4 / (Math.PI * 0.04);
    double middle = 4 / (Math.PI * 0.0225);
    double expected = (30 * thick + 25 * middle + 15 * (100 - thick - middle)) / 100;
    assertThat(dominant(DominantHeightRule.HUNDRED_PER_HECTARE, PLAN, point))
        .isCloseTo(expected, within(1e-12));
    DominantHeight height =
        Stands.dominantHeight(PLAN, List.of(point), DominantHeightRule.HUNDRED_PER_HECTARE);
    double squares = 1600 * thick + 900 * middle + 400 * (100 - thick - middle);
    assertThat(in(height.quadraticMeanDiameter(), CENTIMETRE))
        .isCloseTo(Math.sqrt(squares / 100), within(1e-12));
    assertThat(height.rule().text()).isEqualTo("mean height of the thickest 100 per hectare");
    assertThat(height)
        .isEqualTo(
            Stands.dominantHeight(PLAN, List.of(point), DominantHeightRule.HUNDRED_PER_HECTARE))
        .hasSameHashCodeAs(height);
    // An empty point halves what the trees stand for: 107.9 are left, of which 100 are wanted.
    assertThat(dominant(DominantHeightRule.HUNDRED_PER_HECTARE, PLAN, point, CountPoint.of("2")))
        .isLessThan(expected);
    // Forty per acre are 98.8 per hectare.
    assertThat(dominant(DominantHeightRule.FORTY_PER_ACRE, PLAN, point))
        .isGreaterThan(expected)
        .isLessThan(expected + 0.2);
  }

  @Test
  void percentagesAndEachPoint() {
    TallyPlan plots = TallyPlan.of(FixedAreaPlots.of(squareMetres(100)));
    CountPoint one = CountPoint.of("1", tree(20, 15), tree(40, 30), tree(30, 25), tree(25, 22));
    CountPoint two = CountPoint.of("2", tree(35, 26), tree(35, 28));
    assertThat(dominant(DominantHeightRule.thickestPercent(50), plots, one))
        .isCloseTo(27.5, within(1e-12));
    assertThat(dominant(DominantHeightRule.thickestPercent(100), plots, one))
        .isCloseTo(23, within(1e-12));
    assertThat(dominant(DominantHeightRule.thickestPercent(37.5), plots, one))
        .isCloseTo((30 + 0.5 * 25) / 1.5, within(1e-12));
    assertThat(
            dominant(
                DominantHeightRule.THICKEST_OF_EACH_POINT, plots, one, two, CountPoint.of("3")))
        .isCloseTo((30 + 27) / 2.0, within(1e-12));
    assertThat(DominantHeightRule.THICKEST_OF_EACH_POINT.text()).contains("each point");
    assertThat(DominantHeightRule.thickestPercent(20).text()).contains("20 % of the stems");
    assertThat(DominantHeightRule.FORTY_PER_ACRE.text()).contains("40 per acre");
  }

  @Test
  void whatDoesNotCountIsNotDominant() {
    TallyPlan plots = TallyPlan.of(FixedAreaPlots.of(squareMetres(100)));
    CountPoint point =
        CountPoint.of("1", tree(50, 40).dead(), tree(45, 39).out(), tree(30, 25), tree(20, 15));
    assertThat(dominant(DominantHeightRule.HUNDRED_PER_HECTARE, plots, point)).isEqualTo(25);
    assertThatThrownBy(
            () ->
                dominant(
                    new DominantHeightRule(DominantHeightRule.Kind.THICKEST_PER_HECTARE, 201),
                    plots,
                    point))
        .hasMessageContaining("only 200.0 stems per hectare");
    assertThatThrownBy(
            () -> dominant(DominantHeightRule.HUNDRED_PER_HECTARE, plots, CountPoint.of("1")))
        .hasMessageContaining("no tree was counted");
    assertThatThrownBy(
            () ->
                dominant(
                    DominantHeightRule.HUNDRED_PER_HECTARE,
                    plots,
                    CountPoint.ofDiameters("1", centimetres(30))))
        .hasMessageContaining("point 1, tree 1 lacks diameter or height");
    for (double bad : new double[] {0, -1, 101, Double.NaN}) {
      assertThatThrownBy(() -> DominantHeightRule.thickestPercent(bad))
          .hasMessageContaining("up to 100");
    }
    assertThatThrownBy(
            () -> new DominantHeightRule(DominantHeightRule.Kind.THICKEST_OF_EACH_POINT, 0.5))
        .hasMessage("dominant height, thickest of each point: 0.5; allowed 1");
  }
}
