package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.CUBIC_METRE_PER_HECTARE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE_PER_HECTARE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.cubicMetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.gauge.StemKind;
import org.mensuration.gauge.SweepCorrection;
import org.mensuration.stand.DiameterClasses;
import org.mensuration.stand.StandEstimate;
import org.mensuration.stand.StandTally;
import org.mensuration.stand.TallyPlan;

/** What is noted of trees stays with them, and what is said beside figures survives merging. */
class TallyNotesTest {
  private static final AngleGauge FOUR = AngleGauges.ofFactor(squareMetresPerHectare(4));
  private static final TallyPlan PLAN =
      TallyPlan.of(FOUR).tabulatedBy(DiameterClasses.ofWidth(centimetres(10)));

  @Test
  void notesDoNotReachTheNextPoint() {
    StandTally tally = Stands.tally(PLAN);
    tally.begin("1");
    tally.tree(30, 1, 1);
    tally.height(25, true);
    tally.volume(0.9);
    tally.distance(9);
    tally.species(tally.speciesNumber("oak"));
    tally.end();
    tally.begin("2");
    tally.tree(30, 1, 1);
    tally.stem(StemKind.FURTHER_OF_FORK, true);
    tally.end();
    tally.begin("3");
    tally.tree(30, 1, 1);
    tally.end();
    StandEstimate stand = tally.estimate();
    assertThat(stand.leftOut()).isEqualTo(1);
    assertThat(stand.predictedHeights()).isEqualTo(1);
    assertThat(stand.beyondLimit()).isEqualTo(1);
    assertThatThrownBy(stand::loreyHeight).hasMessageStartingWith("point 3, tree 1");
    assertThatThrownBy(stand::volume).hasMessageStartingWith("point 3, tree 1");
    assertThat(stand.table().groups()).hasSize(2);
    assertThat(stand.table().groups().get(0).group()).contains("");
  }

  @Test
  void slopesDoNotReachTheNextPoint() {
    StandTally tally = Stands.tally(TallyPlan.of(FOUR.uncompensated()));
    tally.begin("1");
    tally.tree(30, 1, 1);
    tally.sightSlope(60);
    tally.end();
    tally.begin("2");
    tally.tree(30, 1, 1);
    assertThatThrownBy(tally::end).hasMessageContaining("point 2, tree 1");
    tally.abandon();
    assertThat(in(tally.estimate().basalArea().value(), SQUARE_METRE_PER_HECTARE))
        .isCloseTo(16, within(1e-12));
  }

  @Test
  void aRefusedPointLeavesTheTallyAsItWas() {
    StandTally tally = Stands.tally(PLAN);
    CountedTree good = CountedTree.of(centimetres(30));
    CountPoint bad = CountPoint.of("1", good, CountedTree.of(centimetres(-1)));
    assertThatThrownBy(() -> tally.add(bad)).hasMessageContaining("diameter");
    tally.add(CountPoint.of("1", good));
    assertThat(tally.estimate().points()).isEqualTo(1);
    assertThat(in(tally.estimate().basalArea().value(), SQUARE_METRE_PER_HECTARE)).isEqualTo(4);
  }

  @Test
  void zeroIsAVolumeAndADistance() {
    CountedTree tree = CountedTree.of(centimetres(30)).withVolume(cubicMetres(0)).at(metres(0));
    StandEstimate stand = Stands.estimate(PLAN, List.of(CountPoint.of("1", tree)));
    assertThat(in(stand.volume().value(), CUBIC_METRE_PER_HECTARE)).isZero();
    assertThat(stand.beyondLimit()).isZero();
    assertThat(stand.remarks()).noneMatch(line -> line.contains("left out"));
    assertThat(stand.remarks()).noneMatch(line -> line.contains("height curve"));
  }

  @Test
  void whatIsSaidSurvivesMerging() {
    CountedTree tree = CountedTree.of(centimetres(30));
    List<CountPoint> points =
        List.of(
            CountPoint.of("b", tree.at(metres(8)), tree.dead()),
            CountPoint.of("d", tree.withPredictedHeight(metres(20)), tree.dead()),
            CountPoint.of("a", tree.at(metres(9)), CountedTree.unmeasured())
                .correctedBy(SweepCorrection.HALF_SWEEP),
            CountPoint.of("c", CountedTree.unmeasured(), tree.withPredictedHeight(metres(21)))
                .correctedBy(SweepCorrection.HALF_SWEEP));
    StandEstimate one = Stands.estimate(PLAN, points);
    assertThat(one.remarks())
        .contains(
            "stems left out by these choices: 2",
            "heights from a height curve: 2",
            "sweeps corrected, half sweep: 2",
            "trees counted beyond their limit: 2",
            "point a, tree 1: counted, but measured at 9.000 m, beyond its limit of 7.500 m",
            "point b, tree 1: counted, but measured at 8.000 m, beyond its limit of 7.500 m");
    assertThatThrownBy(one::stems).hasMessageStartingWith("point a, tree 2 has no diameter");
    for (int cut = 1; cut < points.size(); cut++) {
      StandTally left = Stands.tally(PLAN);
      points.subList(0, cut).forEach(left::add);
      StandTally right = Stands.tally(PLAN);
      points.subList(cut, points.size()).forEach(right::add);
      left.merge(right);
      StandEstimate merged = left.estimate();
      assertThat(merged.remarks()).isEqualTo(one.remarks());
      assertThat(merged.leftOut()).isEqualTo(2);
      assertThat(merged.predictedHeights()).isEqualTo(2);
      assertThat(merged.beyondLimit()).isEqualTo(2);
      assertThatThrownBy(merged::stems).hasMessageStartingWith("point a, tree 2 has no diameter");
      assertThatThrownBy(merged::volume).hasMessageStartingWith("point a, tree 1");
      assertThatThrownBy(merged::loreyHeight).hasMessageStartingWith("point a, tree 1");
      for (CountPoint again : points) {
        assertThatThrownBy(() -> left.add(again)).hasMessageContaining("is given twice");
      }
    }
  }

  @Test
  void ofManyTreesBeyondTheirLimitTheFirstHundredAreNamed() {
    List<CountPoint> points = new ArrayList<>();
    for (int i = 100; i < 250; i++) {
      points.add(CountPoint.of("p" + i, CountedTree.of(centimetres(30)).at(metres(8))));
    }
    StandEstimate stand = points.parallelStream().collect(Stands.tallying(PLAN));
    assertThat(stand.beyondLimit()).isEqualTo(150);
    assertThat(stand.remarks().stream().filter(line -> line.startsWith("point p"))).hasSize(100);
    assertThat(stand.remarks()).anyMatch(line -> line.startsWith("point p199,"));
    assertThat(stand.remarks()).noneMatch(line -> line.startsWith("point p200,"));
  }
}
