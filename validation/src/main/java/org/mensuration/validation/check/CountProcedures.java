package org.mensuration.validation.check;

import java.util.Arrays;
import java.util.List;
import org.mensuration.formula.Catalogue;

/** Plots, counted trees and stand tables by more than one formula. Stateless and thread-safe. */
final class CountProcedures {
  private static final double HALF_TURN = 180;

  static final List<Procedure> ALL =
      List.of(
          Chain.of("slope-plot-radius")
              .checks("plot/slope-radius")
              .number("area", "m2", "horizontal area of the plot")
              .number("slope", "%", "slope of the ground")
              .gives(
                  "radius",
                  "m",
                  (c, x) ->
                      c.formula("plot/slope-radius")
                          .apply(c.formula("plot/radius").apply(x[0][0]), degrees(x[1][0]))),
          Chain.of("plots-that-fit")
              .number("tract_area", "ha", "area of the tract")
              .number("area", "m2", "area of a plot")
              .gives(
                  "plots",
                  "1",
                  (c, x) -> x[0][0] * c.formula("plot/expansion-factor").apply(x[1][0])),
          Chain.of("amount-of-counted-tree")
              .number("factor", "m2/ha", "factor of the gauge")
              .number("diameter", "cm", "diameter of the tree")
              .number("amount", "1", "what one tree holds, in any unit")
              .gives(
                  "per_area",
                  "1/ha",
                  (c, x) -> c.formula("gauge/tree-factor").apply(x[0][0], x[1][0]) * x[2][0]),
          Chain.of("prism-power-of-factor")
              .number("factor", "m2/ha", "factor of the gauge")
              .gives(
                  "dioptres",
                  "1",
                  (c, x) ->
                      100
                          * StrictMath.tan(
                              c.formula("gauge/angle-from-factor").apply(x[0][0])
                                  * Math.PI
                                  / HALF_TURN)),
          Chain.of("relative-density-of-stand")
              .checks("stand/density-index", "stand/relative-density-index")
              .number("stems", "1/ha", "stems of the stand")
              .number("quadratic_mean_diameter", "cm", "quadratic mean diameter")
              .number("maximum", "1/ha", "largest density index")
              .gives(
                  "relative_density",
                  "%",
                  (c, x) ->
                      c.formula("stand/relative-density-index")
                          .apply(
                              c.formula("stand/density-index").apply(x[0][0], x[1][0]), x[2][0])),
          Chain.of("relative-density-ratio")
              .number("basal_area", "m2/ha", "basal area of the stand")
              .number("quadratic_mean_diameter", "cm", "quadratic mean diameter")
              .gives("ratio", "1", CountProcedures::unitsOfRelativeDensity),
          Chain.of("class-basal-area")
              .list("diameter", "cm", "class marks")
              .list("count", "1", "trees of the classes")
              .gives("area", "m2", CountProcedures::classes),
          Chain.of("class-basal-area-per-area")
              .list("diameter", "cm", "class marks or diameters")
              .list("count", "1", "trees of the classes")
              .number("plot_area", "m2", "area of all plots")
              .gives(
                  "basal_area",
                  "m2/ha",
                  (c, x) -> classes(c, x) * c.formula("plot/expansion-factor").apply(x[2][0])),
          Chain.of("class-stems")
              .list("count", "1", "trees of the classes")
              .number("plot_area", "m2", "area of all plots")
              .gives(
                  "stems",
                  "1/ha",
                  (c, x) -> sum(x[0]) * c.formula("plot/expansion-factor").apply(x[1][0])),
          Chain.of("class-mean-basal-area")
              .list("diameter", "cm", "class marks")
              .list("count", "1", "trees of the classes")
              .gives("area", "m2", (c, x) -> classes(c, x) / sum(x[1])),
          Chain.of("class-basal-area-times-height")
              .list("diameter", "cm", "class marks")
              .list("count", "1", "trees of the classes")
              .list("height", "m", "mean heights of the classes")
              .gives("product", "m3", CountProcedures::timesHeight),
          Chain.of("sweep-mean-height")
              .number("factor", "m2/ha", "factor of the gauge")
              .list("diameter", "cm", "diameters of the counted trees")
              .list("height", "m", "their heights")
              .gives("height", "m", CountProcedures::heightOfStems));

  private CountProcedures() {}

  private static double degrees(double percent) {
    return StrictMath.atan(percent / 100) * HALF_TURN / Math.PI;
  }

  private static double sum(double[] values) {
    return Arrays.stream(values).sum();
  }

  private static double classes(Catalogue catalogue, double[][] x) {
    double sum = 0;
    for (int i = 0; i < x[0].length; i++) {
      sum += x[1][i] * catalogue.formula("tree/basal-area").apply(x[0][i]);
    }
    return sum;
  }

  private static double timesHeight(Catalogue catalogue, double[][] x) {
    double sum = 0;
    for (int i = 0; i < x[0].length; i++) {
      sum += x[1][i] * catalogue.formula("tree/basal-area").apply(x[0][i]) * x[2][i];
    }
    return sum;
  }

  /** The mean over the stems that the counted trees stand for. */
  private static double heightOfStems(Catalogue catalogue, double[][] x) {
    double[] stems =
        Arrays.stream(x[1])
            .map(d -> catalogue.formula("gauge/tree-factor").apply(x[0][0], d))
            .toArray();
    return catalogue.formula("sampling/stratified-mean").applyTo(stems, x[2]);
  }

  /** How the imperial figure of one stand goes with its metric figure. */
  private static double unitsOfRelativeDensity(Catalogue catalogue, double[][] x) {
    double imperial =
        catalogue.formula("stand/relative-density-imperial").apply(x[0][0] * 4.356, x[1][0] / 2.54);
    return imperial / catalogue.formula("stand/relative-density").apply(x[0][0], x[1][0]);
  }
}
