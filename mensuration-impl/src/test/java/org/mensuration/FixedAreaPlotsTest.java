package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.CUBIC_METRE_PER_HECTARE;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.ForestUnits.PER_HECTARE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE_PER_HECTARE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.cubicMetres;
import static org.mensuration.units.Measures.degrees;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;
import static org.mensuration.units.Measures.squareMetres;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.gauge.FixedPlots;
import org.mensuration.gauge.LimitPosition;
import org.mensuration.gauge.PlotRadii;
import org.mensuration.gauge.SlopeLayout;
import org.mensuration.gauge.SweepCorrection;
import org.mensuration.stand.DiameterClasses;
import org.mensuration.stand.StandEstimate;
import org.mensuration.stand.StandTally;
import org.mensuration.stand.TallyPlan;

class FixedAreaPlotsTest {
  /** 200 m² from 12 cm and 500 m² from 36 cm: 50 and 20 trees per hectare a tree. */
  private static final FixedPlots NESTED =
      FixedAreaPlots.nested(
          FixedAreaPlots.circle(squareMetres(500), centimetres(36)),
          FixedAreaPlots.circle(squareMetres(200), centimetres(12)));

  @Test
  void eachTreeHasTheFactorOfItsCircle() {
    assertThat(in(NESTED.treeFactor(centimetres(12)), PER_HECTARE)).isEqualTo(50);
    assertThat(in(NESTED.treeFactor(centimetres(35.9)), PER_HECTARE)).isEqualTo(50);
    assertThat(in(NESTED.treeFactor(centimetres(36)), PER_HECTARE)).isEqualTo(20);
    assertThat(in(NESTED.treeFactor(metres(0.36).subtract(metres(1e-17))), PER_HECTARE))
        .isEqualTo(20);
    assertThat(NESTED.circleFor(centimetres(40)))
        .isEqualTo(FixedAreaPlots.circle(squareMetres(500), metres(0.36)))
        .hasSameHashCodeAs(FixedAreaPlots.circle(squareMetres(500), metres(0.36)));
    assertThat(NESTED.circles()).hasSize(2);
    assertThat(in(NESTED.circles().get(0).smallestDiameter(), CENTIMETRE)).isEqualTo(12);
    assertThatThrownBy(() -> NESTED.treeFactor(centimetres(11)))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("what the circles take");
    assertThatThrownBy(() -> FixedAreaPlots.of(squareMetres(100)).treeFactor(centimetres(0)))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("(0, ∞)");
  }

  @Test
  void aTreeIsInUpToTheRadiusOfItsCircle() {
    double radius = Math.sqrt(500 / Math.PI);
    assertThat(NESTED.judge(centimetres(40), metres(radius))).isEqualTo(LimitPosition.AT_LIMIT);
    assertThat(NESTED.judge(centimetres(40), metres(radius - 1e-6))).isEqualTo(LimitPosition.IN);
    assertThat(NESTED.judge(centimetres(30), metres(radius - 1e-6))).isEqualTo(LimitPosition.OUT);
    assertThatThrownBy(() -> NESTED.judge(centimetres(30), metres(-1)))
        .isInstanceOf(OutOfDomainException.class);
  }

  @Test
  void aTreeCountedBeyondItsCircleIsReported() {
    StandTally tally = Stands.tally(TallyPlan.of(NESTED));
    tally.begin("1");
    tally.tree(30, 1, 1); // of the circle of 200 m², 7.98 m wide
    tally.distance(8);
    tally.tree(40, 1, 1); // of that of 500 m², 12.62 m wide
    tally.distance(8);
    tally.end();
    assertThat(tally.estimate().beyondLimit()).isEqualTo(1);
    assertThat(tally.estimate().remarks())
        .contains("point 1, tree 1: counted, but measured at 8.000 m, beyond its limit of 7.979 m");
    assertThat(NESTED.judge(centimetres(30), metres(0))).isEqualTo(LimitPosition.IN);
  }

  @Test
  void plotsAreEqualByTheirCircles() {
    FixedPlots other =
        FixedAreaPlots.nested(
            FixedAreaPlots.circle(squareMetres(200), metres(0.12)),
            FixedAreaPlots.circle(squareMetres(500), centimetres(36)));
    assertThat(NESTED).isEqualTo(other).hasSameHashCodeAs(other);
    assertThat(NESTED).isNotEqualTo(FixedAreaPlots.of(squareMetres(200)));
    assertThat(NESTED.hashCode()).isNotEqualTo(FixedAreaPlots.of(squareMetres(1)).hashCode());
    assertThat(NESTED.toString()).startsWith("nested plots [").contains("500").contains("36");
  }

  @Test
  void badCirclesAreRefused() {
    assertThatThrownBy(() -> FixedAreaPlots.nested()).hasMessageContaining("at least one circle");
    assertThatThrownBy(
            () ->
                FixedAreaPlots.nested(
                    FixedAreaPlots.circle(squareMetres(5), centimetres(12)),
                    FixedAreaPlots.circle(squareMetres(9), metres(0.12))))
        .hasMessageContaining("two circles begin");
    assertThatThrownBy(
            () -> FixedAreaPlots.nested(FixedAreaPlots.circle(squareMetres(5), centimetres(-1))))
        .hasMessageContaining("allowed from 0");
    assertThatThrownBy(() -> FixedAreaPlots.of(squareMetres(0)))
        .isInstanceOf(OutOfDomainException.class);
  }

  /** One circular plot of 500 m² with eight trees, published with 160/ha and 11.47 m²/ha. */
  @Test
  void publishedPlotOfEightTrees() {
    FixedPlots plots = FixedAreaPlots.of(squareMetres(500));
    StandTally tally =
        Stands.tally(TallyPlan.of(plots).tabulatedBy(DiameterClasses.ofWidth(centimetres(10))));
    tally.begin("1");
    for (double d : new double[] {28.4, 34.7, 22.6, 41.2, 31.5, 18.9, 16.8, 38.1}) {
      tally.tree(d, 1, 1);
    }
    tally.end();
    StandEstimate stand = tally.estimate();
    assertThat(in(stand.stems().value(), PER_HECTARE)).isEqualTo(160);
    assertThat(in(stand.basalArea().value(), SQUARE_METRE_PER_HECTARE))
        .isCloseTo(11.47, within(0.005));
    assertThat(in(stand.arithmeticMeanDiameter().get(), CENTIMETRE))
        .isCloseTo(29.03, within(0.005 + 1e-9));
    assertThat(in(stand.table().total().basalArea(), SQUARE_METRE_PER_HECTARE))
        .isEqualTo(in(stand.basalArea().value(), SQUARE_METRE_PER_HECTARE));
  }

  @Test
  void aNestedTally() {
    CountPoint point =
        CountPoint.of(
            "1",
            CountedTree.of(centimetres(20)).withHeight(metres(15)).withVolume(cubicMetres(0.2)),
            CountedTree.of(centimetres(40)).withHeight(metres(25)).withVolume(cubicMetres(1.4)),
            CountedTree.of(centimetres(9)).withHeight(metres(8)));
    StandEstimate stand = Stands.estimate(NESTED, List.of(point, CountPoint.of("2")));
    assertThat(in(stand.stems().value(), PER_HECTARE)).isEqualTo(35);
    double thin = 50 * Math.PI * 0.01;
    double thick = 20 * Math.PI * 0.04;
    assertThat(in(stand.basalArea().value(), SQUARE_METRE_PER_HECTARE))
        .isCloseTo((thin + thick) / 2, within(1e-14));
    assertThat(in(stand.volume().value(), CUBIC_METRE_PER_HECTARE)).isCloseTo(19, within(1e-13));
    assertThat(in(stand.loreyHeight().get(), METRE))
        .isCloseTo((thin * 15 + thick * 25) / (thin + thick), within(1e-12));
    assertThat(stand.leftOut()).isEqualTo(1);
    CountPoint far = CountPoint.of("1", CountedTree.of(centimetres(20)).at(metres(9)));
    assertThat(Stands.estimate(NESTED, List.of(far)).beyondLimit()).isEqualTo(1);
    assertThatThrownBy(() -> Stands.estimate(NESTED, List.of(CountPoint.ofCount("1", 1))))
        .hasMessageContaining("without diameter says nothing on fixed plots");
    assertThat(FixedAreaPlots.nested(NESTED.circles().toArray(new FixedPlots.Circle[0])))
        .isEqualTo(NESTED)
        .hasSameHashCodeAs(NESTED)
        .hasToString(NESTED.toString());
  }

  /**
   * At 50 % slope the factors of the radius are 1.118 along the ellipse and 1.057 on the circle.
   */
  @Test
  void layoutsOnASlope() {
    double slope = Math.toDegrees(Math.atan(0.5));
    double radius = Math.sqrt(500 / Math.PI);
    PlotRadii ellipse = onSlope(slope, SlopeLayout.ELLIPSE);
    assertThat(in(ellipse.across(), METRE)).isCloseTo(radius, within(1e-13));
    assertThat(in(ellipse.along(), METRE) / radius).isCloseTo(1.118, within(0.0005));
    PlotRadii circle = onSlope(slope, SlopeLayout.CIRCLE_ON_SLOPE);
    assertThat(in(circle.along(), METRE) / radius).isCloseTo(1.057, within(0.0005));
    assertThat(circle.across()).isEqualTo(circle.along());
    PlotRadii plain = onSlope(slope, SlopeLayout.UNCORRECTED);
    assertThat(in(plain.along(), METRE)).isCloseTo(radius, within(1e-13));
    assertThat(plain.correction().factor()).isCloseTo(Math.sqrt(1.25), within(1e-14));
    PlotRadii level = onSlope(slope, SlopeLayout.HORIZONTAL);
    assertThat(level.correction()).isEqualTo(SweepCorrection.NONE);
    assertThat(in(level.along(), METRE)).isCloseTo(radius, within(1e-13));
    // Both corrected layouts have the right area in the map.
    double cosine = 1 / Math.sqrt(1.25);
    assertThat(Math.PI * in(ellipse.across(), METRE) * in(ellipse.along(), METRE) * cosine)
        .isCloseTo(500, within(1e-10));
    assertThat(Math.PI * in(circle.across(), METRE) * in(circle.along(), METRE) * cosine)
        .isCloseTo(500, within(1e-10));
    assertThat(onSlope(slope, SlopeLayout.ELLIPSE)).isEqualTo(ellipse).hasSameHashCodeAs(ellipse);
    assertThat(ellipse).isNotEqualTo(circle);
  }

  private static PlotRadii onSlope(double slope, SlopeLayout layout) {
    return FixedAreaPlots.onSlope(squareMetres(500), degrees(slope), layout);
  }
}
