package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mensuration.TallyCorrectionsTest.basalArea;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.cubicMetres;
import static org.mensuration.units.Measures.metres;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.CountChoices;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.gauge.StemKind;
import org.mensuration.stand.DiameterClasses;
import org.mensuration.stand.StandEstimate;
import org.mensuration.stand.StandTally;
import org.mensuration.stand.TallyPlan;

/** Points of many trees, one after the other: nothing of a tree may stick to another. */
class TallyColumnsTest {
  private static final AngleGauge FOUR = AngleGauges.ofFactor(squareMetresPerHectare(4));
  private static final TallyPlan SINGLE_ONLY =
      TallyPlan.of(FOUR).with(new CountChoices(false, false, false));
  private static final int MANY = 40;

  @Test
  void aTreeFarDownTheListLacksWhatWasNotGiven() {
    StandTally tally = Stands.tally(SINGLE_ONLY);
    tally.begin("1");
    for (int i = 1; i <= MANY; i++) {
      tally.tree(30, 1, 1);
      if (i <= 16) {
        tally.volume(0.5);
        tally.height(20, false);
      }
    }
    tally.end();
    StandEstimate stand = tally.estimate();
    assertThat(basalArea(stand)).isEqualTo(4 * MANY);
    assertThatThrownBy(stand::volume).hasMessageContaining("point 1, tree 17 has no volume");
    assertThatThrownBy(stand::loreyHeight).hasMessageContaining("point 1, tree 17 has no height");
    assertThat(stand.leftOut()).isZero();
  }

  @Test
  void aTreeFarDownTheListHasNoSlopeThatWasNotGiven() {
    StandTally tally = Stands.tally(TallyPlan.of(FOUR.uncompensated()));
    tally.begin("1");
    for (int i = 1; i <= MANY; i++) {
      tally.tree(30, 1, 1);
      if (i <= 16) {
        tally.sightSlope(0);
      }
    }
    assertThatThrownBy(tally::end)
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("point 1, tree 17: the gauge does not allow for slope");
  }

  @Test
  void aTreeThatIsOutNeedsNoSlope() {
    StandTally tally = Stands.tally(TallyPlan.of(FOUR.uncompensated()));
    tally.begin("1");
    tally.tree(30, 1, 1);
    tally.sightSlope(0);
    tally.tree(30, 0, 1);
    tally.end();
    assertThat(basalArea(tally.estimate())).isEqualTo(4);
  }

  @Test
  void whatWasNotedOfATreeIsForgottenAtTheNextPoint() {
    StandTally tally = Stands.tally(SINGLE_ONLY);
    tally.begin("1");
    tally.tree(30, 1, 1);
    tally.height(20, true);
    tally.tree(30, 1, 1);
    tally.height(20, true);
    tally.stem(StemKind.FURTHER_OF_COPPICE, true);
    tally.end();
    tally.begin("2");
    for (int i = 0; i < 2; i++) {
      tally.tree(30, 1, 1);
      tally.height(20, false);
    }
    tally.end();
    StandEstimate stand = tally.estimate();
    StandEstimate alone =
        Stands.estimate(
            FOUR,
            List.of(
                CountPoint.of("1", thirty().withPredictedHeight(metres(20))),
                CountPoint.of(
                    "2", thirty().withHeight(metres(20)), thirty().withHeight(metres(20)))));
    assertThat(basalArea(stand)).isEqualTo(basalArea(alone)).isEqualTo(6);
    assertThat(stand.leftOut()).isEqualTo(1);
    assertThat(stand.predictedHeights()).isEqualTo(1);
    assertThat(stand.loreyHeight()).isEqualTo(alone.loreyHeight());
  }

  private static CountedTree thirty() {
    return CountedTree.of(centimetres(30));
  }

  @Test
  void aPointThatIsRefusedLeavesNothingBehind() {
    TallyPlan plan = TallyPlan.of(FOUR).tabulatedBy(DiameterClasses.ofWidth(centimetres(10)));
    List<CountPoint> good =
        List.of(full("1", 31.5, 24, 0.9), full("2", 22.5, 19, 0.3), full("3", 41.5, 27, 1.7));
    StandTally tally = Stands.tally(plan);
    tally.add(good.get(0));
    assertThatThrownBy(
            () ->
                tally.add(
                    CountPoint.of(
                        "x",
                        good.get(1).trees().get(0),
                        CountedTree.of(centimetres(1e300))
                            .withHeight(metres(20))
                            .withVolume(cubicMetres(1)))))
        .isInstanceOf(ArithmeticException.class);
    tally.add(good.get(1));
    tally.add(good.get(2));
    StandEstimate stand = tally.estimate();
    StandEstimate fresh = Stands.estimate(plan, good);
    assertThat(stand.basalArea()).isEqualTo(fresh.basalArea());
    assertThat(stand.stems()).isEqualTo(fresh.stems());
    assertThat(stand.volume()).isEqualTo(fresh.volume());
    assertThat(stand.loreyHeight()).isEqualTo(fresh.loreyHeight());
    assertThat(stand.arithmeticMeanDiameter()).isEqualTo(fresh.arithmeticMeanDiameter());
    assertThat(stand.table()).isEqualTo(fresh.table());
  }

  private static CountPoint full(String id, double cm, double heightM, double volumeM3) {
    return CountPoint.of(
        id,
        CountedTree.of(centimetres(cm))
            .withHeight(metres(heightM))
            .withVolume(cubicMetres(volumeM3)));
  }

  @Test
  void whatIsMissingIsNamedByTheFirstPointThoughItsFirstTreeLacksIt() {
    StandTally tally = Stands.tally(TallyPlan.of(FOUR));
    for (String id : List.of("a", "b")) {
      tally.begin(id);
      tally.unmeasured(1, 1);
      tally.end();
    }
    StandEstimate stand = tally.estimate();
    assertThatThrownBy(stand::stems).hasMessageContaining("point a, tree 1 has no diameter");
  }

  @Test
  void remarksSayOnlyWhatWasMet() {
    StandEstimate two =
        Stands.estimate(
            FOUR,
            List.of(CountPoint.of("1", thirty().at(metres(7))), CountPoint.of("2", thirty())));
    assertThat(two.remarks()).noneMatch(line -> line.contains("one point"));
    assertThat(two.remarks()).noneMatch(line -> line.contains("below zero"));
    assertThat(two.remarks()).noneMatch(line -> line.contains("beyond their limit"));
    assertThat(two.remarks()).noneMatch(line -> line.contains("sweeps corrected"));
    StandEstimate none = Stands.estimate(FOUR, List.of(CountPoint.of("1"), CountPoint.of("2")));
    assertThat(none.remarks()).noneMatch(line -> line.contains("below zero"));
    StandEstimate one = Stands.estimate(FOUR, List.of(CountPoint.of("1", thirty())));
    assertThat(one.remarks()).anyMatch(line -> line.contains("one point: no standard error"));
    // 4 and 0 m²/ha: 2 ± 12.7 · 2
    StandEstimate wild =
        Stands.estimate(FOUR, List.of(CountPoint.of("1", thirty()), CountPoint.of("2")));
    assertThat(wild.remarks()).anyMatch(line -> line.contains("below zero"));
  }
}
