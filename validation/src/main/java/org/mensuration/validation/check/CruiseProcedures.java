package org.mensuration.validation.check;

import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.ForestUnits.PER_HECTARE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE_PER_HECTARE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.mensuration.AngleGauges;
import org.mensuration.Stands;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.stand.StandEstimate;

/**
 * Lists of trees counted at points: a row without a diameter is a point where none was counted.
 * Stateless and thread-safe.
 */
final class CruiseProcedures {
  private static final int POINT = 0;
  private static final int SPECIES = 1;
  private static final int DIAMETER = 2;
  private static final int HEIGHT = 3;
  private static final int FACTOR = 4;
  private static final int WANTED_POINT = 5;
  private static final int WANTED_SPECIES = 6;

  static final List<Procedure> ALL =
      List.of(
          procedure("cruise-tally", "tally", "1", CruiseProcedures::tally),
          procedure(
              "cruise-basal-area",
              "basal_area",
              "m2/ha",
              x -> in(estimate(x).basalArea().value(), SQUARE_METRE_PER_HECTARE)),
          procedure(
              "cruise-basal-area-error",
              "basal_area_error",
              "m2/ha",
              x -> in(estimate(x).basalArea().standardError(), SQUARE_METRE_PER_HECTARE)),
          procedure(
              "cruise-basal-area-variation",
              "basal_area_variation",
              "%",
              x -> estimate(x).basalArea().coefficientOfVariation()),
          procedure(
              "cruise-stems", "stems", "1/ha", x -> in(estimate(x).stems().value(), PER_HECTARE)),
          procedure(
              "cruise-stems-error",
              "stems_error",
              "1/ha",
              x -> in(estimate(x).stems().standardError(), PER_HECTARE)),
          procedure(
              "cruise-stems-variation",
              "stems_variation",
              "%",
              x -> estimate(x).stems().coefficientOfVariation()),
          procedure(
              "cruise-quadratic-mean",
              "quadratic_mean",
              "cm",
              x -> in(estimate(x).quadraticMeanDiameter().orElseThrow(), CENTIMETRE)),
          procedure(
              "cruise-lorey-height",
              "lorey_height",
              "m",
              x -> in(estimate(x, true).loreyHeight().orElseThrow(), METRE)));

  private CruiseProcedures() {}

  private static Procedure procedure(
      String id, String name, String unit, ToDoubleFunction<double[][]> value) {
    return Chain.of(id)
        .list("point", "1", "numbers of the points")
        .list("species", "1", "species of the trees, by number; 0 for no tree")
        .list("diameter", "cm", "diameters of the trees; 0 for no tree")
        .list("height", "m", "heights of the trees; 0 if not measured")
        .number("factor", "m2/ha", "factor of the gauge")
        .number("wanted_point", "1", "the point; 0 for all")
        .number("wanted_species", "1", "the species; 0 for all")
        .gives(name, unit, (catalogue, x) -> value.applyAsDouble(x));
  }

  private static double tally(double[][] x) {
    return points(x, false).stream().mapToInt(point -> point.trees().size()).sum();
  }

  private static StandEstimate estimate(double[][] x) {
    return estimate(x, false);
  }

  private static StandEstimate estimate(double[][] x, boolean onlyHeights) {
    return Stands.estimate(
        AngleGauges.ofFactor(squareMetresPerHectare(x[FACTOR][0])), points(x, onlyHeights));
  }

  private static List<CountPoint> points(double[][] x, boolean onlyHeights) {
    Map<Double, List<CountedTree>> trees = new LinkedHashMap<>();
    for (int i = 0; i < x[POINT].length; i++) {
      if (x[WANTED_POINT][0] > 0 && x[WANTED_POINT][0] != x[POINT][i]) {
        continue;
      }
      List<CountedTree> here = trees.computeIfAbsent(x[POINT][i], p -> new ArrayList<>());
      boolean wanted = x[WANTED_SPECIES][0] == 0 || x[WANTED_SPECIES][0] == x[SPECIES][i];
      boolean measured = x[HEIGHT][i] > 0;
      if (x[DIAMETER][i] > 0 && wanted && (measured || !onlyHeights)) {
        CountedTree tree = CountedTree.of(centimetres(x[DIAMETER][i]));
        here.add(measured ? tree.withHeight(metres(x[HEIGHT][i])) : tree);
      }
    }
    List<CountPoint> points = new ArrayList<>();
    trees.forEach((id, here) -> points.add(new CountPoint(id.toString(), here)));
    return points;
  }
}
