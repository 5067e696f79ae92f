package org.mensuration.validation.check;

import static org.mensuration.validation.check.SurveyCase.mean;

import java.util.Arrays;
import java.util.List;
import org.mensuration.formula.Catalogue;

/** Estimates by strata, ratios and regressions. Stateless and thread-safe. */
final class SurveyProcedures {
  static final List<Procedure> ALL =
      List.of(
          Chain.of("variance-of-mean")
              .checks("sampling/standard-error")
              .number("variance", "1", "variance or covariance of the units")
              .number("count", "1", "units read")
              .gives("variance_of_mean", "1", SurveyProcedures::varianceOfMean),
          Chain.of("growth-per-area")
              .number("first", "1", "mean of a plot at first")
              .number("first_area", "m2", "area of a plot at first")
              .number("second", "1", "mean of a plot later")
              .number("second_area", "m2", "area of a plot later")
              .gives(
                  "growth",
                  "1/ha",
                  (c, x) ->
                      x[2][0] * c.formula("plot/expansion-factor").apply(x[3][0])
                          - x[0][0] * c.formula("plot/expansion-factor").apply(x[1][0])),
          Chain.of("stratified-total-error")
              .list("units", "1", "units of the strata")
              .list("fraction", "1", "part of each stratum that was read")
              .list("deviation", "1", "standard deviations of the strata")
              .list("sampled", "1", "units read of the strata")
              .number("factor", "1", "how many standard errors")
              .gives(
                  "error",
                  "1",
                  (c, x) ->
                      x[4][0]
                          * Math.sqrt(
                              c.formula("sampling/stratified-total-variance")
                                  .applyTo(x[0], x[1], x[2], x[3]))),
          Chain.of("total-from-two-phase-strata")
              .number("units", "1", "units there are")
              .list("count", "1", "units of the first phase in each stratum")
              .list("mean", "1", "means of the second phase")
              .gives(
                  "total",
                  "1",
                  (c, x) -> x[0][0] * c.formula("sampling/stratified-mean").applyTo(x[1], x[2])),
          Chain.of("total-by-ratio")
              .number("known_total", "1", "total of the known variable")
              .list("first", "1", "readings of the known variable")
              .list("second", "1", "readings of the wanted variable")
              .gives(
                  "total",
                  "1",
                  (c, x) -> x[0][0] * c.formula("sampling/ratio-estimate").applyTo(x[1], x[2])),
          Chain.of("double-sampling-second-phase")
              .number("first_cost", "1", "cost of a unit of the first phase")
              .number("second_cost", "1", "cost of a unit of the second phase")
              .number("variance", "1", "variance of what is wanted")
              .number("ratio_variance", "1", "variance about the ratio")
              .number("budget", "1", "what may be spent")
              .gives(
                  "second_units",
                  "1",
                  (c, x) ->
                      (x[4][0]
                              - x[0][0]
                                  * c.formula("sampling/double-sampling-first-phase").applyTo(x))
                          / x[1][0]),
          Chain.of("regression-slope")
              .list("first", "1", "readings of the known variable")
              .list("second", "1", "readings of the wanted variable")
              .gives(
                  "slope",
                  "1",
                  (c, x) ->
                      c.formula("sampling/regression-estimate")
                              .applyTo(x[0], x[1], new double[] {1})
                          - c.formula("sampling/regression-estimate")
                              .applyTo(x[0], x[1], new double[] {0})),
          Chain.of("correlation")
              .checks("sampling/correlation-from-summary")
              .list("first", "1", "readings of one variable")
              .list("second", "1", "readings of the other")
              .gives(
                  "correlation",
                  "1",
                  (c, x) ->
                      c.formula("sampling/correlation-from-summary")
                          .apply(
                              moment(x[0], x[1]),
                              Math.sqrt(moment(x[0], x[0])),
                              Math.sqrt(moment(x[1], x[1])))),
          Chain.of("difference-error")
              .checks("sampling/mean-variance-finite")
              .list("first", "1", "readings of the known variable")
              .list("second", "1", "readings of the wanted variable")
              .number("population", "1", "units there are")
              .gives("standard_error", "1", SurveyProcedures::differenceError),
          Chain.of("mean-of-readings")
              .list("reading", "1", "readings")
              .gives("mean", "1", (c, x) -> mean(x[0])));

  private SurveyProcedures() {}

  private static double varianceOfMean(Catalogue catalogue, double[][] x) {
    double error = catalogue.formula("sampling/standard-error").apply(Math.sqrt(x[0][0]), x[1][0]);
    return error * error;
  }

  private static double differenceError(Catalogue catalogue, double[][] x) {
    double[] differences = new double[x[0].length];
    Arrays.setAll(differences, i -> x[1][i] - x[0][i]);
    return Math.sqrt(
        catalogue
            .formula("sampling/mean-variance-finite")
            .apply(differences.length, x[2][0], Math.sqrt(moment(differences, differences))));
  }

  /** Variance or covariance with the divisor n - 1. */
  private static double moment(double[] left, double[] right) {
    double leftMean = mean(left);
    double rightMean = mean(right);
    double sum = 0;
    for (int i = 0; i < left.length; i++) {
      sum += (left[i] - leftMean) * (right[i] - rightMean);
    }
    return sum / (left.length - 1);
  }
}
