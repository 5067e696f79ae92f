package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.SQUARE_METRE_PER_HECTARE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.degrees;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.gauge.SweepCorrection;
import org.mensuration.stand.StandEstimate;
import org.mensuration.stand.TallyPlan;

/** Counts that are corrected for slope and for parts of a sweep. */
class TallyCorrectionsTest {
  private static final AngleGauge FOUR = AngleGauges.ofFactor(squareMetresPerHectare(4));

  @Test
  void anUncompensatedGaugeWeighsBySlope() {
    TallyPlan plan = TallyPlan.of(FOUR.uncompensated());
    CountedTree tree = CountedTree.of(centimetres(30));
    double perTree =
        basalArea(
            Stands.estimate(
                plan,
                List.of(
                    CountPoint.of(
                        "1", tree.withSightSlope(degrees(60)), tree.withSightSlope(degrees(0))))));
    assertThat(perTree).isCloseTo(4 * (4 + 1), within(1e-12)); // 1/cos² 60° is 4
    StandEstimate sweep =
        Stands.estimate(
            plan,
            List.of(
                CountPoint.of("1", tree, tree).correctedBy(AngleGauges.sweepOnSlope(degrees(60)))));
    assertThat(basalArea(sweep)).isCloseTo(16, within(1e-12)); // 1/cos 60° is 2
    assertThat(sweep.remarks()).contains("sweeps corrected, even slope of 60.0 degrees: 1");
    assertThatThrownBy(() -> Stands.estimate(plan, List.of(CountPoint.of("1", tree))))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("point 1, tree 1: the gauge does not allow for slope");
    assertThatThrownBy(
            () ->
                Stands.estimate(
                    plan, List.of(CountPoint.of("1", tree.withSightSlope(degrees(90))))))
        .isInstanceOf(OutOfDomainException.class);
    // A gauge that allows for slope needs none, and a noted one changes nothing.
    assertThat(
            basalArea(
                Stands.estimate(
                    FOUR, List.of(CountPoint.of("1", tree.withSightSlope(degrees(60)))))))
        .isEqualTo(4);
  }

  @Test
  void partSweepsMultiply() {
    CountPoint corner =
        CountPoint.ofDiameters("1", centimetres(30)).correctedBy(SweepCorrection.QUARTER_SWEEP);
    assertThat(basalArea(Stands.estimate(FOUR, List.of(corner)))).isEqualTo(16);
    CountPoint both = corner.correctedBy(SweepCorrection.HALF_SWEEP);
    assertThat(both.sweep()).isEqualTo(new SweepCorrection("quarter sweep, half sweep", 8));
    assertThat(corner.correctedBy(SweepCorrection.NONE)).isEqualTo(corner);
    assertThatThrownBy(() -> new SweepCorrection("no", 0.5)).hasMessageContaining("factor 0.5");
    assertThatThrownBy(() -> new SweepCorrection(" ", 2)).hasMessageContaining("blank");
  }

  static double basalArea(StandEstimate stand) {
    return in(stand.basalArea().value(), SQUARE_METRE_PER_HECTARE);
  }
}
