package org.mensuration.validation.check;

import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.PER_HECTARE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE_PER_HECTARE;
import static org.mensuration.units.Measures.in;
import static org.mensuration.validation.check.MapCase.list;
import static org.mensuration.validation.check.MapCase.number;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.mensuration.Stands;
import org.mensuration.edge.MapTally;
import org.mensuration.formula.Catalogue;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.Result;
import org.mensuration.gauge.CountPoint;
import org.mensuration.stand.Estimated;
import org.mensuration.stand.StandEstimate;

/** Tallies on a map from single points, from many points, and from all. Immutable. */
final class MapProcedures {
  private static final int FIRST = MapCase.PARAMETERS.size();

  private static final List<Parameter> POINT =
      List.of(
          number("point_x", "m", "first coordinate of the point"),
          number("point_y", "m", "second coordinate of the point"));

  private static final List<Parameter> POINTS =
      List.of(
          list("points_x", "m", "first coordinates of the points"),
          list("points_y", "m", "second coordinates of the points"));

  static final List<Procedure> ALL =
      List.of(
          procedure("map-tally", new Result("tally", "z", "1"), POINT, x -> from(x).size()),
          procedure(
              "map-tally-differences",
              new Result("differences", "n", "1"),
              with(POINT, list("counted_id", "1", "trees counted, each as often; 0 for none")),
              MapProcedures::differences),
          procedure(
              "map-basal-area",
              new Result("basal_area", "G", "m2/ha"),
              POINT,
              x -> in(at(x).basalArea().value(), SQUARE_METRE_PER_HECTARE)),
          procedure(
              "map-stems",
              new Result("stems", "N", "1/ha"),
              POINT,
              x -> in(at(x).stems().value(), PER_HECTARE)),
          procedure(
              "map-quadratic-mean",
              new Result("quadratic_mean", "D", "cm"),
              POINT,
              x -> in(at(x).quadraticMeanDiameter().orElseThrow(), CENTIMETRE)),
          procedure(
              "map-points-basal-area",
              new Result("basal_area", "G", "m2/ha"),
              POINTS,
              x -> in(all(x).basalArea().value(), SQUARE_METRE_PER_HECTARE)),
          procedure(
              "map-points-basal-area-deviation",
              new Result("deviation", "s", "m2/ha"),
              POINTS,
              x ->
                  deviation(
                      in(all(x).basalArea().value(), SQUARE_METRE_PER_HECTARE),
                      all(x).basalArea())),
          procedure(
              "map-points-basal-area-error",
              new Result("standard_error", "s", "m2/ha"),
              POINTS,
              x -> in(all(x).basalArea().standardError(), SQUARE_METRE_PER_HECTARE)),
          procedure(
              "map-points-stems",
              new Result("stems", "N", "1/ha"),
              POINTS,
              x -> in(all(x).stems().value(), PER_HECTARE)),
          procedure(
              "map-points-stems-deviation",
              new Result("stems_deviation", "s", "1/ha"),
              POINTS,
              x -> deviation(in(all(x).stems().value(), PER_HECTARE), all(x).stems())),
          procedure(
              "map-points-stems-error",
              new Result("stems_error", "s", "1/ha"),
              POINTS,
              x -> in(all(x).stems().standardError(), PER_HECTARE)),
          procedure(
              "map-expected-basal-area",
              new Result("basal_area", "G", "m2/ha"),
              List.of(),
              x ->
                  in(MapCase.tally(x).expectedBasalArea().orElseThrow(), SQUARE_METRE_PER_HECTARE)),
          procedure(
              "map-expected-stems",
              new Result("stems", "N", "1/ha"),
              List.of(),
              x -> in(MapCase.tally(x).expectedStems().orElseThrow(), PER_HECTARE)),
          procedure(
              "map-counted-area",
              new Result("area", "a", "m2"),
              List.of(number("tree", "1", "number of the tree")),
              x ->
                  in(
                      MapCase.tally(x).countedArea(MapCase.id(x[FIRST][0])).orElseThrow(),
                      SQUARE_METRE)));

  private MapProcedures() {}

  private static List<String> from(double[][] x) {
    return MapCase.tally(x).idsFrom(MapCase.place(x[FIRST][0], x[FIRST + 1][0]));
  }

  private static double differences(double[][] x) {
    List<String> found = new ArrayList<>(from(x));
    int differences = 0;
    for (double id : x[FIRST + 2]) {
      if (id > 0 && !found.remove(MapCase.id(id))) {
        differences++;
      }
    }
    return differences + found.size();
  }

  private static StandEstimate at(double[][] x) {
    MapTally tally = MapCase.tally(x);
    return Stands.estimate(
        tally.gauge(), List.of(tally.countFrom("1", MapCase.place(x[FIRST][0], x[FIRST + 1][0]))));
  }

  private static StandEstimate all(double[][] x) {
    MapTally tally = MapCase.tally(x);
    List<CountPoint> points = new ArrayList<>();
    for (int i = 0; i < x[FIRST].length; i++) {
      points.add(
          tally.countFrom(Integer.toString(i + 1), MapCase.place(x[FIRST][i], x[FIRST + 1][i])));
    }
    return Stands.estimate(tally.gauge(), points);
  }

  private static double deviation(double mean, Estimated<?> estimated) {
    return mean * estimated.coefficientOfVariation() / 100;
  }

  private static List<Parameter> with(List<Parameter> first, Parameter last) {
    List<Parameter> all = new ArrayList<>(first);
    all.add(last);
    return all;
  }

  private static Procedure procedure(
      String id, Result result, List<Parameter> further, ToDoubleFunction<double[][]> value) {
    List<Parameter> parameters = new ArrayList<>(MapCase.PARAMETERS);
    parameters.addAll(further);
    return new OnMap(id, List.copyOf(parameters), result, value);
  }

  /** One of them. Immutable and thread-safe. */
  private record OnMap(
      String id, List<Parameter> parameters, Result result, ToDoubleFunction<double[][]> function)
      implements Procedure {
    @Override
    public double value(Catalogue catalogue, double[][] inputs) {
      return function.applyAsDouble(inputs);
    }
  }
}
