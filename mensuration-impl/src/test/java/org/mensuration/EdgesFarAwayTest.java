package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.StemsTest.refused;
import static org.mensuration.units.ForestUnits.SQUARE_METRE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE_PER_HECTARE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.util.List;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.mensuration.edge.Boundary;
import org.mensuration.edge.EdgeRule;
import org.mensuration.edge.MapTally;
import org.mensuration.edge.MapTree;
import org.mensuration.edge.Position;
import org.mensuration.gauge.AngleGauge;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Maps in coordinates of a country, far from their origin. */
class EdgesFarAwayTest {
  /** A finite number of kilometres, beyond the largest double in metres. */
  private static final Quantity<Length> ENDLESS =
      Quantities.getQuantity(1e306, MetricPrefix.KILO(Units.METRE));

  /** At a factor of 1 the limiting distance in m is half the diameter in cm. */
  private static final AngleGauge GAUGE = AngleGauges.ofFactor(squareMetresPerHectare(1));

  private static final Boundary TRACT = EdgeCorrections.rectangle(at(4000, 8000), at(4100, 8060));

  private static Position at(double x, double y) {
    return Position.of(metres(x), metres(y));
  }

  private static MapTree tree(double x, double y, double centimetres) {
    return MapTree.of("t", at(x, y), centimetres(centimetres));
  }

  private static MapTally tally(Boundary tract, EdgeRule rule, MapTree tree) {
    return EdgeCorrections.tally(List.of(tree), GAUGE, tract, rule);
  }

  @Test
  void aTallyTellsItsGauge() {
    MapTally tally = tally(TRACT, EdgeRule.NONE, tree(4050, 8030, 10));
    assertThat(in(tally.gauge().factor(), SQUARE_METRE_PER_HECTARE)).isEqualTo(1);
  }

  @Test
  void besideOneSideTheWalkthroughCountsAsMuchAsTheWholeCircle() {
    // What one side cuts off the circle is what it cuts off the half counted twice.
    for (double[] place :
        new double[][] {{4003, 8030}, {4097, 8030}, {4050, 8003}, {4050, 8057}, {4050, 8030}}) {
      MapTally tally = tally(TRACT, EdgeRule.WALKTHROUGH, tree(place[0], place[1], 10));
      assertThat(in(tally.countedArea("t").orElseThrow(), SQUARE_METRE))
          .isCloseTo(Math.PI * 25, within(1e-9));
    }
  }

  @Test
  void onTheSideItselfTheWalkthroughCountsTheHalfInsideTwice() {
    for (double[] place : new double[][] {{4000, 8030}, {4100, 8030}, {4050, 8000}, {4050, 8060}}) {
      MapTally tally = tally(TRACT, EdgeRule.WALKTHROUGH, tree(place[0], place[1], 10));
      assertThat(in(tally.countedArea("t").orElseThrow(), SQUARE_METRE))
          .isCloseTo(Math.PI * 25, within(1e-9));
    }
    MapTally corner = tally(TRACT, EdgeRule.WALKTHROUGH, tree(4000, 8000, 10));
    assertThat(in(corner.countedArea("t").orElseThrow(), SQUARE_METRE))
        .isCloseTo(Math.PI * 25 / 2, within(1e-9));
  }

  @Test
  void theFarSpotOfTheWalkthroughLiesBehindTheTree() {
    MapTally tally = tally(TRACT, EdgeRule.WALKTHROUGH, tree(4003, 8003, 10));
    assertThat(tally.idsFrom(at(4005, 8004))).containsExactly("t");
    assertThat(tally.idsFrom(at(4004, 8005))).containsExactly("t");
    assertThat(tally.idsFrom(at(4006.5, 8004))).containsExactly("t", "t");
    assertThat(tally.idsFrom(at(4004, 8006.5))).containsExactly("t", "t");
  }

  @Test
  void aCircleMayBeAsWideAsTheShorterSideAndNoWider() {
    Boundary high = EdgeCorrections.rectangle(at(4000, 8000), at(4010, 8020));
    Boundary wide = EdgeCorrections.rectangle(at(4000, 8000), at(4020, 8010));
    for (Boundary tract : List.of(high, wide)) {
      assertThat(tally(tract, EdgeRule.MIRAGE, tree(4005, 8005, 20)).idsFrom(at(4005, 8005)))
          .isNotEmpty();
      refused(
          () -> tally(tract, EdgeRule.MIRAGE, tree(4005, 8005, 20.5)),
          "limiting distance of 10.25 m, allowed up to the shorter side of the plot, 10.0 m");
    }
  }

  @Test
  void anImageIsPlacedWithoutRounding() {
    // Above 2¹⁹ m doubles are twice as far apart as below, so a mirrored place may be none of them.
    double side = 524_288;
    double step = Math.ulp(side) / 2;
    Boundary tract = EdgeCorrections.rectangle(at(side - 100, side - 100), at(side, side));
    double before = side - 0.5;
    double middle = side - 50;
    // From the image to the tree: 1/2 m + 3 steps, and 1/2 m - 3 steps, together the limit of 1 m.
    assertThat(
            tally(tract, EdgeRule.MIRAGE, tree(before + 3 * step, middle, 2))
                .idsFrom(at(before - 3 * step, middle)))
        .containsExactly("t", "t");
    assertThat(
            tally(tract, EdgeRule.MIRAGE, tree(before + 2 * step, middle, 2))
                .idsFrom(at(before - 3 * step, middle)))
        .containsExactly("t");
    assertThat(
            tally(tract, EdgeRule.MIRAGE, tree(middle, before + 3 * step, 2))
                .idsFrom(at(middle, before - 3 * step)))
        .containsExactly("t", "t");
    assertThat(
            tally(tract, EdgeRule.MIRAGE, tree(middle, before + 2 * step, 2))
                .idsFrom(at(middle, before - 3 * step)))
        .containsExactly("t");
  }

  @Test
  void aPolygonHasItsAreaAnywhere() {
    // A triangle of 30 m by 40 m less its tip of 3 m by 4 m: a trapezium of 36 m.
    Boundary polygon =
        EdgeCorrections.polygon(
            List.of(at(4000, 8000), at(4030, 8000), at(4003, 8036), at(4000, 8036)));
    assertThat(in(polygon.area(), SQUARE_METRE)).isEqualTo(36 * (30 + 3) / 2.0);
  }

  @Test
  void aPlaceTooFarForANumberIsRefused() {
    MapTally tally = tally(TRACT, EdgeRule.EXTENDED_GRID, tree(4050, 8030, 10));
    refused(
        () -> tally.idsFrom(Position.of(ENDLESS, metres(8000))),
        "point: coordinate Infinity m, wanted a finite number");
    refused(
        () -> tally.idsFrom(Position.of(metres(4000), ENDLESS)),
        "point: coordinate Infinity m, wanted a finite number");
  }

  @Test
  void sidesThatCrossAreNamedInTheOrderGiven() {
    refused(
        () -> EdgeCorrections.polygon(List.of(at(0, 0), at(10, 10), at(10, 0), at(0, 10))),
        "sides from (0.0, 0.0) m and from (10.0, 0.0) m meet");
  }
}
