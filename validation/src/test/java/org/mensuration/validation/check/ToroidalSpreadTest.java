package org.mensuration.validation.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.PER_HECTARE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE_PER_HECTARE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mensuration.AngleGauges;
import org.mensuration.EdgeCorrections;
import org.mensuration.Stands;
import org.mensuration.edge.EdgeRule;
import org.mensuration.edge.MapTally;
import org.mensuration.edge.MapTree;
import org.mensuration.edge.Position;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.CountPoint;
import org.mensuration.stand.StandEstimate;

/**
 * How points differ: the standard deviation of one toroidal point from seeded random points beside
 * the exact one, which was worked out to twelve digits from the areas that the circles of each two
 * trees share.
 */
class ToroidalSpreadTest {
  private static final int POINTS = 3000;

  @ParameterizedTest
  @CsvSource({
    "longleaf1988, 0, 0, 200, 200, 0.01, 1, 4.64086246001, 309.36280978",
    "longleaf1988, 0, 0, 200, 200, 0.01, 2, 6.04104897898, 382.868462489",
    "longleaf1988, 0, 0, 200, 200, 0.01, 4, 7.84499034234, 486.533473018",
    "spruces1987, 0, 0, 56, 38, 1, 1, 3.10839126593, 86.3103006492",
    "spruces1987, 0, 0, 56, 38, 1, 2, 4.63446857709, 121.884710157",
    "spruces1987, 0, 0, 56, 38, 1, 4, 6.73968833338, 164.608752641",
    "finpines2004, -5, -8, 5, 2, 0.01, 1, 3.67075445641, 9648.28423301",
    "finpines2004, -5, -8, 5, 2, 0.01, 2, 5.26069909891, 13763.2772063",
    "finpines2004, -5, -8, 5, 2, 0.01, 4, 7.29490437618, 18930.3947372"
  })
  void pointsDifferAsTheCirclesSay(
      String map,
      double west,
      double south,
      double east,
      double north,
      double diameterUnitM,
      double factor,
      double basalAreaDeviation,
      double stemsDeviation)
      throws IOException {
    AngleGauge gauge = AngleGauges.ofFactor(squareMetresPerHectare(factor));
    MapTally tally =
        EdgeCorrections.tally(
            trees(map, diameterUnitM),
            gauge,
            EdgeCorrections.rectangle(at(west, south), at(east, north)),
            EdgeRule.TOROIDAL);
    Random random = new Random(1987);
    List<CountPoint> points = new ArrayList<>();
    for (int i = 0; i < POINTS; i++) {
      double x = west + (east - west) * random.nextDouble();
      double y = south + (north - south) * random.nextDouble();
      points.add(tally.countFrom("point " + i, at(x, y)));
    }
    StandEstimate all = Stands.estimate(gauge, points);
    holds(
        in(all.basalArea().standardError(), SQUARE_METRE_PER_HECTARE),
        basalAreaDeviation,
        0.1,
        each(gauge, points, one -> in(one.basalArea().value(), SQUARE_METRE_PER_HECTARE)));
    holds(
        in(all.stems().standardError(), PER_HECTARE),
        stemsDeviation,
        0.5, // the thinnest trees are met seldom and stand for many
        each(gauge, points, one -> in(one.stems().value(), PER_HECTARE)));
  }

  /** The variance of the points lies within three of its standard errors, from fourth moments. */
  private static void holds(
      double standardError, double exactDeviation, double largestError, double[] values) {
    double variance = standardError * standardError * POINTS;
    double mean = 0;
    for (double value : values) {
      mean += value / POINTS;
    }
    double fourth = 0;
    for (double value : values) {
      fourth += Math.pow(value - mean, 4) / POINTS;
    }
    double error = Math.sqrt((fourth - variance * variance) / POINTS);
    assertThat(variance).isCloseTo(exactDeviation * exactDeviation, within(3 * error));
    assertThat(error).isLessThan(largestError * variance);
  }

  private static double[] each(
      AngleGauge gauge, List<CountPoint> points, ToDoubleFunction<StandEstimate> figure) {
    return points.stream()
        .mapToDouble(point -> figure.applyAsDouble(Stands.estimate(gauge, List.of(point))))
        .toArray();
  }

  private static List<MapTree> trees(String map, double diameterUnitM) throws IOException {
    List<MapTree> trees = new ArrayList<>();
    for (String line : Files.readAllLines(MeasuredTablesTest.FOLDER.resolve(map + "/map.lists"))) {
      String[] cells = line.split(",", -1);
      if (cells.length == 4 && Character.isDigit(cells[0].charAt(0))) {
        trees.add(
            MapTree.of(
                cells[0],
                at(Double.parseDouble(cells[1]), Double.parseDouble(cells[2])),
                diameterUnitM == 1
                    ? metres(Double.parseDouble(cells[3]))
                    : centimetres(Double.parseDouble(cells[3]))));
      }
    }
    assertThat(trees).hasSizeGreaterThan(100);
    return trees;
  }

  private static Position at(double x, double y) {
    return Position.of(metres(x), metres(y));
  }
}
