package org.mensuration.validation.check;

import static org.mensuration.validation.check.MapCase.list;
import static org.mensuration.validation.check.MapCase.number;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.mensuration.DrawnUncertainty;
import org.mensuration.formula.Parameter;
import org.mensuration.uncertainty.DrawnResult;
import org.mensuration.uncertainty.InputDistribution;
import org.mensuration.uncertainty.InputDistribution.Normal;
import org.mensuration.uncertainty.InputDistribution.Rectangular;

/**
 * Results drawn with a seed and a number of draws that the table states, so that a figure comes out
 * the same each time. Stateless and thread-safe.
 */
final class DrawnProcedures {
  private static final double CONFIDENCE_PERCENT = 95;

  /** Density of air at which conventional masses are stated, kg/m³. */
  private static final double REFERENCE_AIR = 1.2;

  private static final List<Parameter> RECTANGULAR_SUM =
      List.of(list("half_width", "1", "half-widths of rectangular inputs about nought"));

  private static final List<Parameter> MASS =
      List.of(
          number("reference", "1", "conventional mass of the reference weight"),
          number("reference_error", "1", "its standard uncertainty"),
          number("added", "1", "conventional mass of the small weight added"),
          number("added_error", "1", "its standard uncertainty"),
          number("nominal", "1", "nominal mass, of which the deviation is wanted"),
          number("air", "1", "density of the air"),
          number("air_half_width", "1", "its half-width, rectangular"),
          number("density", "1", "density of the weight"),
          number("density_half_width", "1", "its half-width, rectangular"),
          number("reference_density", "1", "density of the reference weight"),
          number("reference_density_half_width", "1", "its half-width, rectangular"));

  static final List<Procedure> ALL = all();

  private DrawnProcedures() {}

  private static List<Procedure> all() {
    List<Procedure> all = new ArrayList<>();
    all.addAll(figures("drawn-rectangular-sum", RECTANGULAR_SUM, DrawnProcedures::rectangularSum));
    all.addAll(figures("drawn-mass", MASS, DrawnProcedures::mass));
    all.addAll(
        figures(
            "drawn-end-gauge",
            EndGauge.PARAMETERS,
            x ->
                EndGauge.drawn(
                    x,
                    draws(x, EndGauge.PARAMETERS),
                    seed(x, EndGauge.PARAMETERS),
                    CONFIDENCE_PERCENT)));
    return List.copyOf(all);
  }

  /** One procedure a figure, since a column has one. */
  private static List<Procedure> figures(
      String id, List<Parameter> parameters, Function<double[][], DrawnResult> drawing) {
    return List.of(
        figure(id + "-mean", parameters, drawing, DrawnResult::mean),
        figure(id + "-error", parameters, drawing, DrawnResult::standardUncertainty),
        figure(id + "-symmetric-lower", parameters, drawing, r -> r.symmetric().lower()),
        figure(id + "-symmetric-upper", parameters, drawing, r -> r.symmetric().upper()),
        figure(id + "-shortest-lower", parameters, drawing, r -> r.shortest().lower()),
        figure(id + "-shortest-upper", parameters, drawing, r -> r.shortest().upper()),
        figure(id + "-shortest-length", parameters, drawing, r -> r.shortest().length()));
  }

  private static Procedure figure(
      String id,
      List<Parameter> parameters,
      Function<double[][], DrawnResult> drawing,
      ToDoubleFunction<DrawnResult> figure) {
    return Chain.of(id)
        .all(parameters)
        .number("draws", "1", "values drawn")
        .number("seed", "1", "where the generator starts")
        .gives("drawn", "1", (c, x) -> figure.applyAsDouble(drawing.apply(x)));
  }

  private static int draws(double[][] x, List<Parameter> parameters) {
    return (int) x[parameters.size()][0];
  }

  private static long seed(double[][] x, List<Parameter> parameters) {
    return (long) x[parameters.size() + 1][0];
  }

  private static DrawnResult rectangularSum(double[][] x) {
    List<InputDistribution> inputs = new ArrayList<>();
    for (double halfWidth : x[0]) {
      inputs.add(new Rectangular(0, halfWidth));
    }
    return DrawnUncertainty.through(
        y -> {
          double sum = 0;
          for (double value : y) {
            sum += value;
          }
          return sum;
        },
        inputs,
        draws(x, RECTANGULAR_SUM),
        seed(x, RECTANGULAR_SUM),
        CONFIDENCE_PERCENT);
  }

  /** Deviation of a weight from its nominal mass, weighed in air against a reference. */
  private static DrawnResult mass(double[][] x) {
    double nominal = x[4][0];
    return DrawnUncertainty.through(
        y -> (y[0] + y[1]) * (1 + (y[2] - REFERENCE_AIR) * (1 / y[3] - 1 / y[4])) - nominal,
        List.of(
            new Normal(x[0][0], x[1][0]),
            new Normal(x[2][0], x[3][0]),
            new Rectangular(x[5][0], x[6][0]),
            new Rectangular(x[7][0], x[8][0]),
            new Rectangular(x[9][0], x[10][0])),
        draws(x, MASS),
        seed(x, MASS),
        CONFIDENCE_PERCENT);
  }
}
