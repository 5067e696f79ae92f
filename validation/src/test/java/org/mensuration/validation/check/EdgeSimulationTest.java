package org.mensuration.validation.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.SQUARE_METRE_PER_HECTARE;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.mensuration.AngleGauges;
import org.mensuration.Catalogues;
import org.mensuration.EdgeCorrections;
import org.mensuration.edge.Boundary;
import org.mensuration.edge.EdgeRule;
import org.mensuration.edge.MapTally;
import org.mensuration.edge.MapTree;
import org.mensuration.edge.Position;
import org.mensuration.gauge.AngleGauge;

/** Rules for edges on the map of spruces, a small plot where most circles leave it. */
class EdgeSimulationTest {
  private static final double WIDTH = 56;
  private static final double HEIGHT = 38;
  private static final AngleGauge GAUGE = AngleGauges.ofFactor(squareMetresPerHectare(1));

  /**
   * Of the census, 6.8279 m² on 0.2128 ha, the 25 digits of the census table rounded to a double.
   */
  private static final double BASAL_AREA = 6.827858933495717 / 0.2128;

  /** The widest circle: a diameter of 37 cm at a factor of 1. */
  private static final double REACH = 18.5;

  private static MapTally tally(EdgeRule rule) throws IOException {
    List<MapTree> trees = new ArrayList<>();
    for (String line :
        Files.readAllLines(MeasuredTablesTest.FOLDER.resolve("spruces1987/map.lists"))) {
      String[] cells = line.split(",", -1);
      if (cells.length == 4 && Character.isDigit(cells[0].charAt(0))) {
        trees.add(
            MapTree.of(
                cells[0],
                at(Double.parseDouble(cells[1]), Double.parseDouble(cells[2])),
                metres(Double.parseDouble(cells[3]))));
      }
    }
    assertThat(trees).hasSize(134);
    Boundary plot = EdgeCorrections.rectangle(at(0, 0), at(WIDTH, HEIGHT));
    return EdgeCorrections.tally(trees, GAUGE, plot, rule);
  }

  private static Position at(double x, double y) {
    return Position.of(metres(x), metres(y));
  }

  @Test
  void walkthroughMissesWhatLiesBeyondTwoEdgesAndNoMore() throws IOException {
    MapTally tally = tally(EdgeRule.WALKTHROUGH);
    Random random = new Random(20261);
    int points = 5000;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < points; i++) {
      double count =
          tally.idsFrom(at(WIDTH * random.nextDouble(), HEIGHT * random.nextDouble())).size();
      sum += count;
      squares += count * count;
    }
    double mean = sum / points;
    double error = Math.sqrt((squares / points - mean * mean) / (points - 1));
    double expected = in(tally.expectedBasalArea().orElseThrow(), SQUARE_METRE_PER_HECTARE);
    assertThat(mean).isCloseTo(expected, within(3 * error));
    // In a corner the far spot can lie outside on the other side too. That is missing, twice what
    // mirage at sides misses, and with nothing done at all far more is missing.
    double sides =
        in(
            tally(EdgeRule.MIRAGE_SIDES_ONLY).expectedBasalArea().orElseThrow(),
            SQUARE_METRE_PER_HECTARE);
    double none =
        in(tally(EdgeRule.NONE).expectedBasalArea().orElseThrow(), SQUARE_METRE_PER_HECTARE);
    assertThat(BASAL_AREA - expected).isCloseTo(2 * (BASAL_AREA - sides), within(1e-9));
    assertThat(expected).isBetween(none, BASAL_AREA);
  }

  @Test
  void anExtendedGridGivesTheCensus() throws IOException {
    MapTally tally = tally(EdgeRule.EXTENDED_GRID);
    Random random = new Random(20262);
    int points = 8000;
    double[] value = new double[points];
    double[] inside = new double[points];
    for (int i = 0; i < points; i++) {
      double x = -REACH + (WIDTH + 2 * REACH) * random.nextDouble();
      double y = -REACH + (HEIGHT + 2 * REACH) * random.nextDouble();
      value[i] = tally.idsFrom(at(x, y)).size();
      inside[i] = x >= 0 && x <= WIDTH && y >= 0 && y <= HEIGHT ? 1 : 0;
    }
    double mean = Catalogues.standard().formula("edge/extended-grid-mean").applyTo(value, inside);
    double squares = 0;
    double pointsInside = 0;
    for (int i = 0; i < points; i++) {
      squares += Math.pow(value[i] - mean * inside[i], 2);
      pointsInside += inside[i];
    }
    double error = Math.sqrt(squares * points / (points - 1.0)) / pointsInside;
    assertThat(mean).isCloseTo(BASAL_AREA, within(3 * error));
    assertThat(error).isLessThan(0.03 * BASAL_AREA);
  }
}
