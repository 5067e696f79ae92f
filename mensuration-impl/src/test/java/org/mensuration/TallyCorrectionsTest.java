package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.SQUARE_METRE_PER_HECTARE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.degrees;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mensuration.edge.Boundary;
import org.mensuration.edge.EdgeRule;
import org.mensuration.edge.MapTree;
import org.mensuration.edge.Position;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.gauge.SweepCorrection;
import org.mensuration.stand.StandEstimate;
import org.mensuration.stand.StandTally;
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

  @Test
  void aRuleForEdgesNeedsRecordedWeights() {
    TallyPlan plan = TallyPlan.of(FOUR).with(EdgeRule.WALKTHROUGH);
    CountedTree tree = CountedTree.of(centimetres(30));
    String refusal =
        "walkthrough is asked for, but no tree carries a recorded edge weight and there is no"
            + " boundary; record weights (1 away from edges), or count on a map with the boundary";
    List<CountPoint> unrecorded = List.of(CountPoint.of("1", tree), CountPoint.of("2"));
    assertThatThrownBy(() -> Stands.estimate(plan, unrecorded))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage(refusal);
    assertThatThrownBy(() -> unrecorded.parallelStream().collect(Stands.tallying(plan)))
        .hasMessage(refusal);
    // One record shows that the crew saw to edges, be it that none was near.
    List<CountPoint> recorded =
        List.of(CountPoint.of("1", tree), CountPoint.of("2", tree.withEdgeWeight(1)));
    assertThat(basalArea(Stands.estimate(plan, recorded))).isEqualTo(4);
    assertThat(basalArea(recorded.parallelStream().collect(Stands.tallying(plan)))).isEqualTo(4);
    // Where no tree is in there is nothing to weigh.
    assertThat(basalArea(Stands.estimate(plan, List.of(CountPoint.of("1", tree.out()))))).isZero();
    StandTally plain = Stands.tally(plan); // plain numbers come with their weights
    plain.begin("1");
    plain.tree(30, 1, 2);
    plain.end();
    assertThat(basalArea(plain.estimate())).isEqualTo(8);
    assertThat(plain.estimate().remarks())
        .contains(
            "edge weights recorded by walkthrough, which leaves a part of the error where two edges"
                + " are near one tree");
    assertThat(Stands.estimate(FOUR, unrecorded).remarks())
        .contains("edges: no rule; weights count as noted");
  }

  @Test
  void aMapWithItsBoundaryServesARule() {
    Position corner = Position.of(metres(0), metres(0));
    Boundary tract = EdgeCorrections.rectangle(corner, Position.of(metres(50), metres(40)));
    List<MapTree> trees =
        List.of(MapTree.of("a", Position.of(metres(2), metres(20)), centimetres(30)));
    Position point = Position.of(metres(3), metres(20));
    TallyPlan plan = TallyPlan.of(FOUR).with(EdgeRule.MIRAGE);
    CountPoint seen =
        EdgeCorrections.tally(trees, FOUR, tract, EdgeRule.MIRAGE).countFrom("1", point);
    assertThat(basalArea(Stands.estimate(plan, List.of(seen)))).isEqualTo(8);
    CountPoint plain =
        EdgeCorrections.tally(trees, FOUR, tract, EdgeRule.NONE).countFrom("1", point);
    assertThatThrownBy(() -> Stands.estimate(plan, List.of(plain)))
        .hasMessageStartingWith("mirage is asked for");
  }

  @Test
  void rulesThatLeaveNoWeightAreRefused() {
    assertThatThrownBy(() -> TallyPlan.of(FOUR).with(EdgeRule.TOROIDAL))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("toroidal has no weight that a crew could record");
    assertThat(TallyPlan.of(FOUR).with(EdgeRule.MIRAGE).with(EdgeRule.NONE))
        .isEqualTo(TallyPlan.of(FOUR))
        .isNotEqualTo(TallyPlan.of(FOUR).with(EdgeRule.MIRAGE));
  }

  static double basalArea(StandEstimate stand) {
    return in(stand.basalArea().value(), SQUARE_METRE_PER_HECTARE);
  }
}
