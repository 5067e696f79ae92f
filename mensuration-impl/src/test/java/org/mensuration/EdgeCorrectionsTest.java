package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.PER_HECTARE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE_PER_HECTARE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.mensuration.edge.Boundary;
import org.mensuration.edge.EdgeRule;
import org.mensuration.edge.MapTally;
import org.mensuration.edge.MapTree;
import org.mensuration.edge.Position;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;

class EdgeCorrectionsTest {
  private static final AngleGauge GAUGE = AngleGauges.ofFactor(squareMetresPerHectare(4));
  private static final Boundary PLOT = EdgeCorrections.rectangle(at(0, 0), at(40, 30));

  private static Position at(double x, double y) {
    return Position.of(metres(x), metres(y));
  }

  /** At a factor of 4 the limiting distance in m is a quarter of the diameter in cm. */
  private static MapTree tree(String id, double x, double y, double centimetres) {
    return MapTree.of(id, at(x, y), centimetres(centimetres));
  }

  private static MapTally tally(EdgeRule rule, MapTree... trees) {
    return EdgeCorrections.tally(List.of(trees), GAUGE, PLOT, rule);
  }

  private static double area(MapTally tally, String id) {
    return in(tally.countedArea(id).orElseThrow(), SQUARE_METRE);
  }

  @Test
  void weightsOfACrewNeedNoMap() {
    assertThat(EdgeCorrections.walkthroughWeight(true)).isEqualTo(1);
    assertThat(EdgeCorrections.walkthroughWeight(false)).isEqualTo(2);
    assertThat(EdgeCorrections.halfSweepWeight()).isEqualTo(2);
    assertThat(EdgeCorrections.quarterSweepWeight()).isEqualTo(4);
    assertThat(EdgeCorrections.sweepWeight(1)).isEqualTo(1);
    assertThatThrownBy(() -> EdgeCorrections.sweepWeight(0))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> EdgeCorrections.sweepWeight(Double.NaN))
        .isInstanceOf(OutOfDomainException.class);
  }

  @Test
  void mirageCountsATreeNearTheEdgeAgain() {
    MapTree west = tree("w", 1, 15, 20);
    CountPoint point = tally(EdgeRule.MIRAGE, west).countFrom("1", at(3, 15));
    assertThat(point.trees()).containsExactly(CountedTree.of(centimetres(20)).withEdgeWeight(2));
    assertThat(tally(EdgeRule.NONE, west).countFrom("1", at(3, 15)).trees())
        .containsExactly(CountedTree.of(centimetres(20)));
    assertThat(tally(EdgeRule.MIRAGE, west).idsFrom(at(3, 15))).containsExactly("w", "w");
    assertThat(tally(EdgeRule.MIRAGE, west).idsFrom(at(7, 15))).isEmpty();
  }

  @Test
  void onlyFullMirageSeesThroughACorner() {
    MapTree corner = tree("c", 1, 1, 16);
    assertThat(tally(EdgeRule.MIRAGE, corner).idsFrom(at(1, 1))).hasSize(4);
    assertThat(tally(EdgeRule.MIRAGE_SIDES_ONLY, corner).idsFrom(at(1, 1))).hasSize(3);
    MapTree other = tree("o", 39, 29, 16);
    assertThat(tally(EdgeRule.MIRAGE, other).idsFrom(at(39, 29))).hasSize(4);
  }

  @Test
  void toroidalSeesAcrossThePlot() {
    MapTree west = tree("w", 1, 1, 16);
    assertThat(tally(EdgeRule.TOROIDAL, west).idsFrom(at(39, 29))).containsExactly("w");
    assertThat(tally(EdgeRule.NONE, west).idsFrom(at(39, 29))).isEmpty();
  }

  @Test
  void walkthroughCountsTwiceWhereTheFarSpotIsOutside() {
    MapTree west = tree("w", 1, 15, 20);
    MapTally tally = tally(EdgeRule.WALKTHROUGH, west);
    assertThat(tally.countFrom("1", at(3, 15)).trees().get(0).edgeWeight()).isEqualTo(2);
    assertThat(tally.countFrom("1", at(2, 15)).trees().get(0).edgeWeight()).isEqualTo(1);
    assertThat(tally.countFrom("1", at(7, 15)).trees()).isEmpty();
  }

  @Test
  void extendedGridTakesPointsOutside() {
    MapTree west = tree("w", 1, 15, 20);
    assertThat(tally(EdgeRule.EXTENDED_GRID, west).idsFrom(at(-2, 15))).containsExactly("w");
    assertThatThrownBy(() -> tally(EdgeRule.MIRAGE, west).idsFrom(at(-2, 15)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "point (-2.0, 15.0) m lies outside the boundary; mirage takes points inside, only the"
                + " extended grid has points outside");
  }

  @Test
  void ATieSeenFromAMirroredPointIsIn() {
    // From (3, 4) mirrored at the west side the tree at (0, 0) is exactly 5 m away, its limit.
    MapTree edge = tree("e", 0, 0, 20);
    assertThat(tally(EdgeRule.MIRAGE, edge).idsFrom(at(3, 4))).hasSize(4);
    MapTree thinner = tree("e", 0, 0, Math.nextDown(20));
    assertThat(tally(EdgeRule.MIRAGE, thinner).idsFrom(at(3, 4))).isEmpty();
    assertThat(tally(EdgeRule.NONE, edge).idsFrom(at(3, Math.nextUp(4)))).isEmpty();
    assertThat(tally(EdgeRule.NONE, edge).idsFrom(at(3, Math.nextDown(4)))).hasSize(1);
  }

  @Test
  void exactRulesCoverTheWholeCircle() {
    MapTree corner = tree("c", 1, 2, 40);
    double circle = Math.PI * 100;
    assertThat(area(tally(EdgeRule.MIRAGE, corner), "c")).isCloseTo(circle, within(1e-11));
    assertThat(area(tally(EdgeRule.TOROIDAL, corner), "c")).isCloseTo(circle, within(1e-11));
    assertThat(area(tally(EdgeRule.EXTENDED_GRID, corner), "c")).isCloseTo(circle, within(1e-11));
    double none = area(tally(EdgeRule.NONE, corner), "c");
    double sides = area(tally(EdgeRule.MIRAGE_SIDES_ONLY, corner), "c");
    double walked = area(tally(EdgeRule.WALKTHROUGH, corner), "c");
    assertThat(none).isLessThan(sides);
    // What lies beyond both sides of a corner is missing once from mirage at sides, and twice from
    // walkthrough.
    assertThat(circle - walked).isCloseTo(2 * (circle - sides), within(1e-11));
    MapTree inner = tree("i", 20, 15, 40);
    for (EdgeRule rule : EdgeRule.values()) {
      assertThat(area(tally(rule, inner), "i")).as(rule.words()).isCloseTo(circle, within(1e-11));
    }
  }

  @Test
  void aQuarterCircleInACornerIsAQuarter() {
    MapTree corner = tree("c", 0, 0, 40);
    assertThat(area(tally(EdgeRule.NONE, corner), "c")).isCloseTo(Math.PI * 25, within(1e-12));
    assertThat(area(tally(EdgeRule.MIRAGE, corner), "c")).isCloseTo(Math.PI * 100, within(1e-11));
    assertThat(area(tally(EdgeRule.WALKTHROUGH, corner), "c"))
        .isCloseTo(Math.PI * 50, within(1e-11));
    MapTree wide = tree("w", 20, 15, 200);
    assertThat(area(tally(EdgeRule.NONE, wide), "w")).isEqualTo(1200);
  }

  @Test
  void expectationIsTheCensusWhereTheRuleIsExact() {
    MapTree[] trees = {tree("a", 1, 2, 40), tree("b", 39, 15, 25), tree("c", 20, 30, 33)};
    double basalArea = Math.PI * (40 * 40 + 25 * 25 + 33 * 33) / 40000 / 0.12;
    for (EdgeRule rule : List.of(EdgeRule.MIRAGE, EdgeRule.TOROIDAL, EdgeRule.EXTENDED_GRID)) {
      MapTally tally = tally(rule, trees);
      assertThat(in(tally.expectedBasalArea().orElseThrow(), SQUARE_METRE_PER_HECTARE))
          .isCloseTo(basalArea, within(1e-12));
      assertThat(in(tally.expectedStems().orElseThrow(), PER_HECTARE)).isCloseTo(25, within(1e-12));
    }
    assertThat(in(tally(EdgeRule.NONE, trees).expectedStems().orElseThrow(), PER_HECTARE))
        .isLessThan(20);
    assertThat(in(tally(EdgeRule.NONE).expectedStems().orElseThrow(), PER_HECTARE)).isZero();
    assertThat(in(tally(EdgeRule.NONE).expectedBasalArea().orElseThrow(), SQUARE_METRE_PER_HECTARE))
        .isZero();
  }

  /** Too long to be run once a mutant. */
  @Tag("catalogue")
  @Test
  void simulationAgreesWithTheExpectationOfEveryRule() {
    Random random = new Random(20260106);
    List<MapTree> trees = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      double x = 40 * random.nextDouble();
      double y = 30 * random.nextDouble();
      trees.add(tree("t" + i, x, y, 10 + 30 * random.nextDouble()));
    }
    Map<EdgeRule, MapTally> tallies = new EnumMap<>(EdgeRule.class);
    for (EdgeRule rule : EdgeRule.values()) {
      tallies.put(rule, EdgeCorrections.tally(trees, GAUGE, PLOT, rule));
    }
    tallies.remove(EdgeRule.EXTENDED_GRID);
    int points = 4000;
    Map<EdgeRule, double[]> sums = new EnumMap<>(EdgeRule.class);
    for (int p = 0; p < points; p++) {
      Position point = at(40 * random.nextDouble(), 30 * random.nextDouble());
      tallies.forEach(
          (rule, tally) -> {
            double count = tally.idsFrom(point).size();
            double[] sum = sums.computeIfAbsent(rule, r -> new double[2]);
            sum[0] += count;
            sum[1] += count * count;
          });
    }
    tallies.forEach(
        (rule, tally) -> {
          double[] sum = sums.getOrDefault(rule, new double[2]);
          double mean = sum[0] / points;
          double error = Math.sqrt((sum[1] / points - mean * mean) / (points - 1));
          double expected =
              in(tally.expectedBasalArea().orElseThrow(), SQUARE_METRE_PER_HECTARE) / 4;
          assertThat(mean).as(rule.words()).isCloseTo(expected, within(3 * error));
        });
  }

  @ParameterizedTest
  @EnumSource(
      value = EdgeRule.class,
      names = {"NONE", "MIRAGE_SIDES_ONLY", "WALKTHROUGH", "EXTENDED_GRID"})
  void aRectangleGivenAsPolygonCountsAlike(EdgeRule rule) {
    Boundary polygon = EdgeCorrections.polygon(List.of(at(0, 0), at(0, 30), at(40, 30), at(40, 0)));
    Random random = new Random(7);
    List<MapTree> trees = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      trees.add(tree("t" + i, 40 * random.nextDouble(), 30 * random.nextDouble(), 35));
    }
    MapTally one = EdgeCorrections.tally(trees, GAUGE, PLOT, rule);
    MapTally other = EdgeCorrections.tally(trees, GAUGE, polygon, rule);
    for (int i = 0; i < 200; i++) {
      Position point = at(40 * random.nextDouble(), 30 * random.nextDouble());
      assertThat(other.idsFrom(point)).isEqualTo(one.idsFrom(point));
    }
  }

  @Test
  void whatAPolygonDoesNotSupportIsRefusedOrEmpty() {
    Boundary triangle = EdgeCorrections.polygon(List.of(at(0, 0), at(40, 0), at(0, 40)));
    MapTree tree = tree("t", 5, 5, 20);
    for (EdgeRule rule : List.of(EdgeRule.MIRAGE, EdgeRule.TOROIDAL)) {
      assertThatThrownBy(() -> EdgeCorrections.tally(List.of(tree), GAUGE, triangle, rule))
          .hasMessage(
              rule.words()
                  + " needs a rectangle along the axes, the boundary is a polygon; walkthrough and"
                  + " extended grid take any boundary");
    }
    for (EdgeRule rule : List.of(EdgeRule.WALKTHROUGH, EdgeRule.MIRAGE_SIDES_ONLY)) {
      MapTally tally = EdgeCorrections.tally(List.of(tree), GAUGE, triangle, rule);
      assertThat(tally.countedArea("t")).isEmpty();
      assertThat(tally.expectedBasalArea()).isEmpty();
      assertThat(tally.expectedStems()).isEmpty();
      assertThatThrownBy(() -> tally.countedArea("x")).hasMessage("there is no tree x on the map");
    }
    MapTally plain = EdgeCorrections.tally(List.of(tree), GAUGE, triangle, EdgeRule.NONE);
    assertThat(area(plain, "t")).isCloseTo(Math.PI * 25, within(1e-12));
  }

  @Test
  void badMapsAreRefused() {
    MapTree tree = tree("t", 5, 5, 20);
    assertThatThrownBy(() -> tally(EdgeRule.NONE, tree, tree)).hasMessage("tree t is given twice");
    assertThatThrownBy(() -> tally(EdgeRule.NONE, tree("far", 41, 5, 20)))
        .hasMessage(
            "tree far at (41.0, 5.0) m lies outside the boundary; only trees of the tract are"
                + " counted");
    assertThatThrownBy(() -> tally(EdgeRule.MIRAGE, tree("thick", 5, 5, 124)))
        .hasMessage(
            "mirage: tree thick has a limiting distance of 31.0 m, allowed up to the shorter side"
                + " of the plot, 30.0 m");
    assertThat(tally(EdgeRule.MIRAGE, tree("thick", 5, 5, 120)).rule()).isEqualTo(EdgeRule.MIRAGE);
    assertThatThrownBy(() -> tally(EdgeRule.NONE, tree("thin", 5, 5, 0)))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(
            () ->
                tally(
                    EdgeRule.NONE,
                    MapTree.of("nan", Position.of(NanLength.metres(), metres(5)), centimetres(10))))
        .hasMessage("tree nan: coordinate NaN m, wanted a finite number");
    assertThatThrownBy(
            () -> tally(EdgeRule.NONE, tree).idsFrom(Position.of(metres(5), NanLength.metres())))
        .hasMessage("point: coordinate NaN m, wanted a finite number");
    assertThatThrownBy(() -> tally(EdgeRule.NONE, tree).countedArea("x"))
        .hasMessage("there is no tree x on the map");
    assertThatThrownBy(() -> tree(" ", 1, 1, 10)).hasMessageContaining("blank");
  }

  @Test
  void withoutABoundaryThereIsNoCorrection() {
    MapTally plain = EdgeCorrections.tally(List.of(tree("t", -5, 5, 20)), GAUGE);
    assertThat(plain.idsFrom(at(-4, 5))).containsExactly("t");
    assertThat(area(plain, "t")).isCloseTo(Math.PI * 25, within(1e-12));
    assertThat(plain.expectedBasalArea()).isEmpty();
    assertThat(plain.expectedStems()).isEmpty();
  }

  @Test
  void unitsDoNotMatter() {
    MapTree feet = MapTree.of("t", Position.of(feet(10), feet(10)), centimetres(20));
    assertThat(feet)
        .isEqualTo(tree("t", 3.048, 3.048, 20))
        .hasSameHashCodeAs(tree("t", 3.048, 3.048, 20))
        .isNotEqualTo(tree("u", 3.048, 3.048, 20))
        .isNotEqualTo(tree("t", 3.048, 3, 20))
        .isNotEqualTo(tree("t", 3, 3.048, 20))
        .isNotEqualTo(tree("t", 3.048, 3.048, 21))
        .isNotEqualTo("t");
    assertThat(at(1, 2)).isNotEqualTo("t");
  }

  @Test
  void everyRuleSaysWhatItLeaves() {
    assertThat(EdgeRule.MIRAGE.caution()).isEmpty();
    assertThat(EdgeRule.MIRAGE_SIDES_ONLY.caution()).startsWith("biased");
    assertThat(EdgeRule.NONE.caution()).isNotEmpty();
  }
}
