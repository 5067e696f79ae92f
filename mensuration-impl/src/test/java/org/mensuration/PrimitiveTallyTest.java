package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mensuration.TallyCorrectionsTest.basalArea;
import static org.mensuration.units.ForestUnits.PER_HECTARE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.cubicMetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.util.List;
import java.util.function.Consumer;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.gauge.LimitPosition;
import org.mensuration.gauge.StemKind;
import org.mensuration.gauge.SweepCorrection;
import org.mensuration.gauge.TreeSelection;
import org.mensuration.quantity.StemsPerArea;
import org.mensuration.stand.DiameterClasses;
import org.mensuration.stand.StandEstimate;
import org.mensuration.stand.StandTally;
import org.mensuration.stand.TallyPlan;

/** The entry on plain numbers, and what a tally refuses. */
class PrimitiveTallyTest {
  private static final AngleGauge FOUR = AngleGauges.ofFactor(squareMetresPerHectare(4));
  private static final TallyPlan PLAN =
      TallyPlan.of(FOUR).tabulatedBy(DiameterClasses.ofWidth(centimetres(10)));

  @Test
  void numbersAndRecordsGiveTheSame() {
    StandEstimate records =
        Stands.estimate(
            PLAN,
            List.of(
                CountPoint.of(
                        "1",
                        CountedTree.of(centimetres(31.5))
                            .withHeight(metres(24))
                            .withVolume(cubicMetres(0.9))
                            .ofSpecies("spruce")
                            .at(metres(9)),
                        CountedTree.of(centimetres(28))
                            .half()
                            .withEdgeWeight(2)
                            .withPredictedHeight(metres(21))
                            .withVolume(cubicMetres(0.6)),
                        CountedTree.of(centimetres(50)).dead())
                    .correctedBy(SweepCorrection.HALF_SWEEP),
                CountPoint.of("2")));
    StandTally tally = Stands.tally(PLAN);
    tally.begin("2");
    tally.end();
    int spruce = tally.speciesNumber("spruce");
    tally.begin("1", SweepCorrection.HALF_SWEEP);
    tally.tree(50, 1, 1);
    tally.stem(StemKind.SINGLE, true);
    tally.tree(28, 0.5, 2);
    tally.height(21, true);
    tally.volume(0.6);
    tally.tree(31.5, 1, 1);
    tally.height(24, false);
    tally.volume(0.9);
    tally.species(spruce);
    tally.distance(9);
    tally.end();
    StandEstimate numbers = tally.estimate();
    assertThat(numbers.stems()).isEqualTo(records.stems());
    assertThat(numbers.basalArea()).isEqualTo(records.basalArea());
    assertThat(numbers.volume()).isEqualTo(records.volume());
    assertThat(numbers.loreyHeight()).isEqualTo(records.loreyHeight());
    assertThat(numbers.table()).isEqualTo(records.table());
    assertThat(numbers.beyondLimit()).isEqualTo(1);
    assertThat(numbers.leftOut()).isEqualTo(1);
    assertThat(numbers.predictedHeights()).isEqualTo(1);
  }

  @Test
  void whatATreeLacksIsNamedByTheFirstPoint() {
    StandTally tally = Stands.tally(PLAN);
    for (String id : List.of("c", "b", "d")) {
      tally.begin(id);
      tally.tree(30, 1, 1);
      tally.unmeasured(1, 1);
      tally.end();
    }
    StandTally other = Stands.tally(PLAN);
    other.begin("a");
    other.unmeasured(0, 1); // out: lacks nothing that is wanted
    other.tree(30, 1, 1);
    other.end();
    tally.merge(other);
    StandEstimate stand = tally.estimate();
    assertThat(basalArea(stand)).isEqualTo(7);
    assertThatThrownBy(stand::stems).hasMessageContaining("point b, tree 2 has no diameter");
    assertThatThrownBy(stand::table).hasMessageContaining("point b, tree 2 has no diameter");
    assertThatThrownBy(stand::volume).hasMessageContaining("point a, tree 2 has no volume");
    assertThatThrownBy(stand::loreyHeight).hasMessageContaining("point a, tree 2 has no height");
    assertThatThrownBy(stand::densityIndexBySummation).hasMessageContaining("did not ask");
    assertThatThrownBy(() -> Stands.estimate(FOUR, List.of(CountPoint.of("1"))).table())
        .hasMessageContaining("no diameter classes");
  }

  @Test
  void anEmptyStandHasNoMeans() {
    StandEstimate stand = Stands.estimate(PLAN, List.of(CountPoint.of("1"), CountPoint.of("2")));
    assertThat(stand.quadraticMeanDiameter()).isEmpty();
    assertThat(stand.arithmeticMeanDiameter()).isEmpty();
    assertThat(stand.loreyHeight()).isEmpty();
    assertThat(stand.relativeDensityMetric()).isEmpty();
    assertThat(in(stand.densityIndex().stems(), PER_HECTARE)).isZero();
    assertThat(stand.table().cells()).isEmpty();
    assertThat(stand.selection()).isEqualTo(FOUR);
  }

  @Test
  void pointsAreOpenedOnceAndClosed() {
    StandTally tally = Stands.tally(PLAN);
    assertThatThrownBy(() -> tally.tree(30, 1, 1)).hasMessageContaining("no point is open");
    assertThatThrownBy(() -> tally.unmeasured(1, 1)).hasMessageContaining("no point is open");
    assertThatThrownBy(tally::end).hasMessageContaining("no point is open");
    assertThatThrownBy(tally::estimate).hasMessageContaining("no points");
    assertThatThrownBy(() -> tally.begin(" ")).hasMessageContaining("blank");
    tally.begin("1");
    assertThatThrownBy(() -> tally.height(20, false)).hasMessageContaining("no tree was given");
    assertThatThrownBy(() -> tally.begin("2")).hasMessageContaining("point 1 is still open");
    assertThatThrownBy(tally::estimate).hasMessageContaining("point 1 is still open");
    assertThatThrownBy(() -> tally.add(CountPoint.of("2"))).hasMessageContaining("still open");
    assertThatThrownBy(() -> tally.merge(Stands.tally(PLAN))).hasMessageContaining("open point");
    StandTally empty = Stands.tally(PLAN);
    assertThatThrownBy(() -> empty.merge(tally)).hasMessageContaining("open point");
    tally.tree(30, 1, 1);
    tally.end();
    tally.begin("2");
    tally.end();
    assertThatThrownBy(() -> tally.begin("1")).hasMessageContaining("its trees are scattered");
    assertThatThrownBy(() -> tally.merge(tally)).hasMessageContaining("itself");
    StandTally twin = Stands.tally(PLAN);
    twin.add(CountPoint.of("2"));
    assertThatThrownBy(() -> tally.merge(twin)).hasMessageContaining("point 2 is given twice");
    assertThatThrownBy(() -> tally.merge(Stands.tally(TallyPlan.of(FOUR))))
        .hasMessageContaining("same plan");
    assertThat(basalArea(tally.estimate())).isEqualTo(2);
    assertThat(tally.plan()).isEqualTo(PLAN);
  }

  @Test
  void badNumbersAreRefusedAndTheRestStays() {
    StandTally tally = Stands.tally(PLAN);
    tally.begin("1");
    for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> tally.tree(bad, 1, 1)).isInstanceOf(OutOfDomainException.class);
      assertThatThrownBy(() -> tally.tree(30, 1, bad)).hasMessageContaining("edge weight");
    }
    for (double bad : new double[] {-1, 2, 0.25, Double.NaN}) {
      assertThatThrownBy(() -> tally.tree(30, bad, 1)).hasMessageContaining("weight " + bad);
      assertThatThrownBy(() -> tally.unmeasured(bad, 1)).hasMessageContaining("weight " + bad);
    }
    tally.tree(30, 1, 1);
    refuses(tally, value -> tally.height(value, false), "height", 0, -1);
    refuses(tally, tally::volume, "volume", -1);
    refuses(tally, tally::distance, "distance", -1);
    assertThatThrownBy(() -> tally.species(1)).hasMessageContaining("species number");
    assertThatThrownBy(() -> tally.species(-1)).hasMessageContaining("species number");
    assertThatThrownBy(() -> tally.sightSlope(5)).hasMessageContaining("allows for slope");
    tally.end();
    assertThat(basalArea(tally.estimate())).isEqualTo(4);
    tally.begin("2");
    tally.tree(30, 1, 1);
    tally.abandon();
    assertThat(tally.estimate().points()).isEqualTo(1);
    StandTally uncompensated = Stands.tally(TallyPlan.of(FOUR.uncompensated()));
    uncompensated.begin("1");
    uncompensated.tree(30, 1, 1);
    for (double bad : new double[] {90, -90, Double.NaN}) {
      assertThatThrownBy(() -> uncompensated.sightSlope(bad))
          .isInstanceOf(OutOfDomainException.class);
    }
  }

  private static void refuses(
      StandTally tally, Consumer<Double> call, String what, double... more) {
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, more[0]}) {
      assertThatThrownBy(() -> call.accept(bad))
          .hasMessageContaining("point 1: " + what + " " + bad);
    }
    assertThat(tally.plan()).isEqualTo(PLAN);
  }

  @Test
  void aPointWithABadTreeIsNotAddedAtAll() {
    StandTally tally = Stands.tally(PLAN);
    tally.add(CountPoint.ofDiameters("1", centimetres(30)));
    StandEstimate before = tally.estimate();
    assertThatThrownBy(
            () -> tally.add(CountPoint.ofDiameters("2", centimetres(20), centimetres(0))))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(
            () -> tally.add(CountPoint.ofDiameters("2", centimetres(20), centimetres(1e-160))))
        .isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(
            () -> tally.add(CountPoint.ofDiameters("2", centimetres(20), centimetres(1e300))))
        .isInstanceOf(ArithmeticException.class)
        .hasMessageContaining("too far from the classes");
    assertThat(tally.estimate().table()).isEqualTo(before.table());
    assertThat(tally.estimate().stems()).isEqualTo(before.stems());
    tally.add(CountPoint.ofDiameters("2", centimetres(20)));
    assertThat(basalArea(tally.estimate())).isEqualTo(4);
  }

  @Test
  void onlyGaugesAndPlotsChooseTrees() {
    TreeSelection other =
        new TreeSelection() {
          @Override
          public Quantity<StemsPerArea> treeFactor(Quantity<Length> diameter) {
            return FOUR.treeFactor(diameter);
          }

          @Override
          public LimitPosition judge(Quantity<Length> diameter, Quantity<Length> distance) {
            return FOUR.judge(diameter, distance);
          }
        };
    assertThatThrownBy(() -> Stands.tally(TallyPlan.of(other)))
        .hasMessageContaining("angle gauge or on fixed plots");
  }
}
