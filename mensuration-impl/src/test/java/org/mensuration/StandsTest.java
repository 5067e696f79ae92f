package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.PER_HECTARE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE_PER_HECTARE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.stand.Interval;
import org.mensuration.stand.StandEstimate;

class StandsTest {
  private static final AngleGauge FOUR = AngleGauges.ofFactor(squareMetresPerHectare(4));

  @Test
  void aStandInTenLines() {
    AngleGauge gauge = AngleGauges.ofFactor(squareMetresPerHectare(4));
    List<CountPoint> points =
        List.of(
            CountPoint.ofDiameters("1", centimetres(31), centimetres(24), centimetres(40)),
            CountPoint.of("2", CountedTree.of(centimetres(28)).half()),
            CountPoint.of("3"));
    StandEstimate stand = Stands.estimate(gauge, points);
    Interval<BasalAreaPerArea> interval = stand.basalArea().interval(95);

    assertThat(in(stand.basalArea().value(), SQUARE_METRE_PER_HECTARE))
        .isCloseTo(14.0 / 3, within(1e-15));
    // s = sqrt((12² + 2² + 0 - 14²/3)/2), t(2) = 4.302653
    double half = 4.302653 * Math.sqrt((148 - 196.0 / 3) / 2) / Math.sqrt(3);
    assertThat(in(interval.upper(), SQUARE_METRE_PER_HECTARE))
        .isCloseTo(14.0 / 3 + half, within(1e-5));
    assertThat(in(interval.lower(), SQUARE_METRE_PER_HECTARE))
        .isCloseTo(14.0 / 3 - half, within(1e-5));
    assertThat(interval).isEqualTo(stand.basalArea().interval(95));
    assertThat(stand.remarks())
        .contains(
            "the 95 % interval of basal area reaches below zero: too few points for so uneven counts");
  }

  @Test
  void publishedPointsOfOneSlide() {
    int[] counts = {12, 15, 11, 14, 13, 16, 12, 15};
    AngleGauge two = AngleGauges.ofFactor(squareMetresPerHectare(2));
    List<CountPoint> points = new ArrayList<>();
    for (int count : counts) {
      points.add(CountPoint.ofCount("point " + points.size(), count));
    }
    StandEstimate stand = Stands.estimate(two, points.stream());
    assertThat(in(stand.basalArea().value(), SQUARE_METRE_PER_HECTARE)).isEqualTo(27.0);
    assertThat(stand.points()).isEqualTo(8);
    assertThat(stand.basalArea().degreesOfFreedom()).isEqualTo(7);
    assertThatThrownBy(stand::stems)
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("point point 0, tree 1 has no diameter");
  }

  @Test
  void meanDiameterIsThatOfEqualTrees() {
    StandEstimate stand =
        Stands.estimate(
            FOUR,
            Stream.of(
                CountPoint.ofDiameters("a", centimetres(30), inches(30 / 2.54)),
                CountPoint.of("b", CountedTree.of(centimetres(30)).withEdgeWeight(2))));
    assertThat(in(stand.quadraticMeanDiameter().get(), CENTIMETRE)).isCloseTo(30, within(1e-12));
    assertThat(in(stand.stems().value(), PER_HECTARE))
        .isCloseTo(8 / (Math.PI * 0.09 / 4), within(1e-11));
    assertThat(in(stand.basalArea().standardError(), SQUARE_METRE_PER_HECTARE)).isZero();
    assertThat(stand.basalArea().pointsNeeded(10)).isEqualTo(2);
  }

  @Test
  void theOrderOfPointsDoesNotMatter() {
    List<CountPoint> points = new ArrayList<>();
    for (int i = 0; i < 50; i++) {
      points.add(CountPoint.ofDiameters("p" + i, centimetres(11 + 0.37 * i)));
    }
    StandEstimate forward = Stands.estimate(FOUR, points);
    Collections.reverse(points);
    StandEstimate backward = Stands.estimate(FOUR, points);
    assertThat(in(backward.stems().value(), PER_HECTARE))
        .isEqualTo(in(forward.stems().value(), PER_HECTARE));
    assertThat(in(backward.stems().standardError(), PER_HECTARE))
        .isEqualTo(in(forward.stems().standardError(), PER_HECTARE));
  }

  @Test
  void onePointHasNoInterval() {
    StandEstimate stand = Stands.estimate(FOUR, List.of(CountPoint.ofCount("only", 6)));
    assertThat(in(stand.basalArea().value(), SQUARE_METRE_PER_HECTARE)).isEqualTo(24);
    assertThat(stand.basalArea().degreesOfFreedom()).isZero();
    assertThatThrownBy(() -> stand.basalArea().interval(95))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("basal area: one point has no standard error and no interval");
    assertThatThrownBy(() -> stand.basalArea().standardError())
        .isInstanceOf(IllegalStateException.class);
    assertThatThrownBy(() -> stand.basalArea().pointsNeeded(10))
        .isInstanceOf(IllegalStateException.class);
  }

  @Test
  void emptyPointsOnly() {
    StandEstimate stand = Stands.estimate(FOUR, List.of(CountPoint.of("1"), CountPoint.of("2")));
    assertThat(in(stand.stems().value(), PER_HECTARE)).isZero();
    assertThat(stand.quadraticMeanDiameter()).isEmpty();
    assertThat(in(stand.basalArea().interval(90).upper(), SQUARE_METRE_PER_HECTARE)).isZero();
    assertThatThrownBy(() -> stand.basalArea().pointsNeeded(10))
        .hasMessageContaining("no tree was counted");
  }

  @Test
  void badPointsAreRefused() {
    assertThatThrownBy(() -> Stands.estimate(FOUR, List.of())).hasMessageContaining("no points");
    assertThatThrownBy(() -> Stands.estimate(FOUR, List.of(CountPoint.of("7"), CountPoint.of("7"))))
        .hasMessageContaining("point 7 is given twice");
    assertThatThrownBy(
            () -> Stands.estimate(FOUR, List.of(CountPoint.ofDiameters("7", centimetres(0)))))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> CountPoint.of(" ")).hasMessageContaining("blank");
    assertThatThrownBy(() -> CountPoint.ofCount("7", -1)).hasMessageContaining("count -1");
    CountedTree tree = CountedTree.of(centimetres(30));
    assertThatThrownBy(() -> new CountedTree(tree.diameter(), 0.3, 1))
        .hasMessageContaining("weight 0.3");
    for (double weight : new double[] {0.99, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> tree.withEdgeWeight(weight)).hasMessageContaining("edge weight");
    }
    for (double confidence : new double[] {0, 0.95, 49.9, 100, Double.NaN}) {
      StandEstimate stand = Stands.estimate(FOUR, List.of(CountPoint.of("1"), CountPoint.of("2")));
      assertThatThrownBy(() -> stand.basalArea().interval(confidence))
          .hasMessageContaining("[50, 100)");
    }
  }

  @Test
  void treesThatAreOutDoNotCount() {
    CountedTree out = CountedTree.unmeasured().out();
    StandEstimate stand = Stands.estimate(FOUR, List.of(CountPoint.of("1", out, out.half())));
    assertThat(in(stand.basalArea().value(), SQUARE_METRE_PER_HECTARE)).isEqualTo(2);
    assertThat(CountedTree.of(inches(10))).isEqualTo(CountedTree.of(centimetres(25.4)));
    assertThat(CountedTree.of(inches(10))).hasSameHashCodeAs(CountedTree.of(inches(10)));
    assertThat(out).isNotEqualTo(out.half());
  }
}
