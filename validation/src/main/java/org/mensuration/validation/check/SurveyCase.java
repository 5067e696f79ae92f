package org.mensuration.validation.check;

import java.util.Arrays;
import java.util.List;
import org.mensuration.formula.Catalogue;

/**
 * Strata known by summary figures, each with the estimates that it allows. Stateless and
 * thread-safe.
 */
final class SurveyCase {
  private static final int POPULATION = 0;
  private static final int COUNT = 1;
  private static final int SECOND_MEAN = 2;
  private static final int FIRST_MEAN = 3;
  private static final int FIRST_DEVIATION = 4;
  private static final int SECOND_DEVIATION = 5;
  private static final int COVARIANCE = 6;
  private static final int KNOWN_TOTAL = 7;

  static final List<Procedure> ALL =
      List.of(
          one("summary-ratio", "ratio", SurveyCase::ratio),
          one("summary-slope", "slope", SurveyCase::slope, "sampling/correlation-from-summary"),
          one(
              "summary-mean-variance",
              "mean_variance",
              SurveyCase::plainVariance,
              "sampling/mean-variance-finite"),
          one("summary-ratio-mean", "ratio_mean", SurveyCase::ratioMean),
          one(
              "summary-ratio-variance",
              "ratio_variance",
              SurveyCase::ratioVariance,
              "sampling/ratio-variance-from-summary"),
          one("summary-regression-mean", "regression_mean", SurveyCase::regressionMean),
          one(
              "summary-regression-variance",
              "regression_variance",
              SurveyCase::regressionVariance,
              "sampling/regression-variance-from-summary"),
          all("mixed-strata-total", "total", (c, x) -> total(c, x)),
          all("mixed-strata-total-error", "total_error", (c, x) -> totalError(c, x)),
          all("mixed-strata-mean", "mean", (c, x) -> total(c, x) / units(x)),
          all("mixed-strata-mean-error", "mean_error", (c, x) -> totalError(c, x) / units(x)));

  private SurveyCase() {}

  /** One estimate of one stratum. */
  private interface Estimate {
    double of(Catalogue catalogue, double[] stratum);
  }

  /** One estimate over strata by regression, plain mean and ratio, in this order. */
  private interface Mixed {
    double of(Catalogue catalogue, double[][] strata);
  }

  private static Procedure one(String id, String name, Estimate estimate, String... checked) {
    return inputs(Chain.of(id).checks(checked), false)
        .gives(
            name, "1", (c, x) -> estimate.of(c, Arrays.stream(x).mapToDouble(v -> v[0]).toArray()));
  }

  private static Procedure all(String id, String name, Mixed mixed) {
    return inputs(Chain.of(id), true).gives(name, "1", mixed::of);
  }

  private static Chain.Builder inputs(Chain.Builder chain, boolean lists) {
    String[] names = {
      "population",
      "count",
      "second_mean",
      "first_mean",
      "first_deviation",
      "second_deviation",
      "covariance",
      "known_total"
    };
    for (String name : names) {
      if (lists) {
        chain.list(name, "1", name.replace('_', ' ') + " of the strata");
      } else {
        chain.number(name, "1", name.replace('_', ' ') + " of the stratum");
      }
    }
    return chain;
  }

  static double mean(double[] values) {
    return Arrays.stream(values).sum() / values.length;
  }

  private static double ratio(Catalogue catalogue, double[] s) {
    return catalogue
        .formula("sampling/ratio-estimate")
        .applyTo(new double[] {s[FIRST_MEAN]}, new double[] {s[SECOND_MEAN]});
  }

  private static double correlation(Catalogue catalogue, double[] s) {
    return catalogue
        .formula("sampling/correlation-from-summary")
        .apply(s[COVARIANCE], s[FIRST_DEVIATION], s[SECOND_DEVIATION]);
  }

  private static double slope(Catalogue catalogue, double[] s) {
    return correlation(catalogue, s) * s[SECOND_DEVIATION] / s[FIRST_DEVIATION];
  }

  private static double plainVariance(Catalogue catalogue, double[] s) {
    return catalogue
        .formula("sampling/mean-variance-finite")
        .apply(s[COUNT], s[POPULATION], s[SECOND_DEVIATION]);
  }

  private static double ratioMean(Catalogue catalogue, double[] s) {
    return ratio(catalogue, s) * s[KNOWN_TOTAL] / s[POPULATION];
  }

  private static double ratioVariance(Catalogue catalogue, double[] s) {
    return catalogue
        .formula("sampling/ratio-variance-from-summary")
        .apply(
            s[COUNT],
            s[POPULATION],
            ratio(catalogue, s),
            s[FIRST_DEVIATION],
            s[SECOND_DEVIATION],
            s[COVARIANCE]);
  }

  private static double regressionMean(Catalogue catalogue, double[] s) {
    return catalogue
        .formula("sampling/regression-mean-from-summary")
        .apply(slope(catalogue, s), s[FIRST_MEAN], s[SECOND_MEAN], s[KNOWN_TOTAL] / s[POPULATION]);
  }

  private static double regressionVariance(Catalogue catalogue, double[] s) {
    return catalogue
        .formula("sampling/regression-variance-from-summary")
        .apply(s[COUNT], s[POPULATION], s[SECOND_DEVIATION], correlation(catalogue, s));
  }

  private static double units(double[][] x) {
    return Arrays.stream(x[POPULATION]).sum();
  }

  private static double total(Catalogue catalogue, double[][] x) {
    double[] means = {
      regressionMean(catalogue, stratum(x, 0)),
      stratum(x, 1)[SECOND_MEAN],
      ratioMean(catalogue, stratum(x, 2))
    };
    return catalogue.formula("sampling/stratified-total").applyTo(x[POPULATION], means);
  }

  private static double totalError(Catalogue catalogue, double[][] x) {
    double[] variances = {
      regressionVariance(catalogue, stratum(x, 0)),
      plainVariance(catalogue, stratum(x, 1)),
      ratioVariance(catalogue, stratum(x, 2))
    };
    double[] squares = Arrays.stream(x[POPULATION]).map(n -> n * n).toArray();
    return Math.sqrt(catalogue.formula("sampling/stratified-total").applyTo(squares, variances));
  }

  private static double[] stratum(double[][] x, int stratum) {
    return Arrays.stream(x).mapToDouble(values -> values[stratum]).toArray();
  }
}
