package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Comparison;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.EdgeWorks;
import org.mensuration.kernel.Survey;

/** Estimates from means, deviations and covariances. Immutable and thread-safe. */
public final class SummaryFormulas {
  /** Variance of a mean. */
  public static final BoundFormula MEAN_VARIANCE =
      Definition.of(
              "sampling/mean-variance-finite",
              "Variance of a mean with the finite factor",
              Nature.STATISTICAL)
          .input("count", "n", "1", Domain.wholeFrom(1), "units read")
          .input("population", "N", "1", Domain.above(0), "units there are")
          .input(
              "second_deviation", "s_y", "1", Domain.atLeast(0), "standard deviation of the units")
          .relation("population", Comparison.AT_LEAST, 1, "count", "N ≥ n")
          .gives(
              "variance",
              "v",
              "1",
              times(minus(over(num(1), sym("n")), over(num(1), sym("N"))), squared(sym("s_y"))))
          .definedBy(EdgeWorks.AG_S69, "block R8, after example 7.9 of Portela and Villeta")
          .kernel3(Survey::meanVariance);

  /** Variance by a ratio. */
  public static final BoundFormula RATIO_VARIANCE =
      Definition.of(
              "sampling/ratio-variance-from-summary",
              "Variance of a mean estimated by a ratio, from summary figures",
              Nature.STATISTICAL)
          .input("count", "n", "1", Domain.wholeFrom(1), "units read")
          .input("population", "N", "1", Domain.above(0), "units there are")
          .input("ratio", "R", "1", Domain.any(), "ratio of the means")
          .input(
              "first_deviation",
              "s_x",
              "1",
              Domain.atLeast(0),
              "standard deviation of the known variable")
          .input(
              "second_deviation",
              "s_y",
              "1",
              Domain.atLeast(0),
              "standard deviation of the wanted variable")
          .input("covariance", "c", "1", Domain.any(), "their covariance")
          .relation("population", Comparison.AT_LEAST, 1, "count", "N ≥ n")
          .gives(
              "variance",
              "v",
              "1",
              times(
                  minus(over(num(1), sym("n")), over(num(1), sym("N"))),
                  minus(
                      plus(squared(sym("s_y")), times(squared(sym("R")), squared(sym("s_x")))),
                      times(num(2), sym("R"), sym("c")))))
          .definedBy(EdgeWorks.AG_S69, "block R8, after example 7.9 of Portela and Villeta")
          .note("without the factor of the squared means of the known variable")
          .note(
              "can exceed the variance of the plain mean; below zero where the covariance is larger than the deviations allow")
          .kernelOfArrays(
              x -> Survey.ratioVariance(x[0][0], x[1][0], x[2][0], x[3][0], x[4][0], x[5][0]));

  /** Correlation. */
  public static final BoundFormula CORRELATION =
      Definition.of(
              "sampling/correlation-from-summary",
              "Correlation from summary figures",
              Nature.STATISTICAL)
          .input("covariance", "c", "1", Domain.any(), "covariance of two variables")
          .input("first_deviation", "s_x", "1", Domain.above(0), "standard deviation of one")
          .input("second_deviation", "s_y", "1", Domain.above(0), "standard deviation of the other")
          .gives("correlation", "r", "1", over(sym("c"), times(sym("s_x"), sym("s_y"))))
          .definedBy(EdgeWorks.AG_S69, "block R8, after example 7.9 of Portela and Villeta")
          .kernel3(Survey::correlation);

  /** Variance by a regression. */
  public static final BoundFormula REGRESSION_VARIANCE =
      Definition.of(
              "sampling/regression-variance-from-summary",
              "Variance of a mean estimated by a regression, from summary figures",
              Nature.STATISTICAL)
          .input("count", "n", "1", Domain.wholeFrom(1), "units read")
          .input("population", "N", "1", Domain.above(0), "units there are")
          .input(
              "second_deviation",
              "s_y",
              "1",
              Domain.atLeast(0),
              "standard deviation of the wanted variable")
          .input("correlation", "r", "1", Domain.closed(-1, 1), "correlation of the two variables")
          .relation("population", Comparison.AT_LEAST, 1, "count", "N ≥ n")
          .gives(
              "variance",
              "v",
              "1",
              times(
                  minus(over(num(1), sym("n")), over(num(1), sym("N"))),
                  minus(num(1), squared(sym("r"))),
                  squared(sym("s_y"))))
          .definedBy(EdgeWorks.AG_S69, "block R8, after example 7.9 of Portela and Villeta")
          .note(
              "no correction for the two coefficients of the line: the divisor of the deviation is n - 1")
          .kernel4(Survey::regressionVariance);

  /** Mean by a regression. */
  public static final BoundFormula REGRESSION_MEAN =
      Definition.of(
              "sampling/regression-mean-from-summary",
              "Mean moved along a straight line, from summary figures",
              Nature.STATISTICAL)
          .input("slope", "b", "1", Domain.any(), "slope of the line")
          .input(
              "first_mean",
              "x",
              "1",
              Domain.any(),
              "mean of the known variable over the units read")
          .input(
              "second_mean",
              "y",
              "1",
              Domain.any(),
              "mean of the wanted variable over the units read")
          .input(
              "population_mean",
              "X",
              "1",
              Domain.any(),
              "mean of the known variable over all units")
          .gives("mean", "m", "1", plus(sym("y"), times(sym("b"), minus(sym("X"), sym("x")))))
          .definedBy(EdgeWorks.AG_S69, "block R8, after example 7.9 of Portela and Villeta")
          .note("with a slope of one it is the difference estimate")
          .kernel4(Survey::regressionMean);

  /** Variance of a difference. */
  public static final BoundFormula DIFFERENCE_VARIANCE =
      Definition.of(
              "sampling/difference-variance",
              "Variance of a difference of multiples of correlated terms",
              Nature.STATISTICAL)
          .input("first_factor", "a", "1", Domain.any(), "first factor")
          .input("first_variance", "v_x", "1", Domain.atLeast(0), "variance of the first term")
          .input("second_factor", "b", "1", Domain.any(), "second factor")
          .input("second_variance", "v_y", "1", Domain.atLeast(0), "variance of the second term")
          .input("covariance", "c", "1", Domain.any(), "their covariance")
          .gives(
              "variance",
              "v",
              "1",
              minus(
                  plus(times(squared(sym("a")), sym("v_x")), times(squared(sym("b")), sym("v_y"))),
                  times(num(2), sym("a"), sym("b"), sym("c"))))
          .definedBy(EdgeWorks.AG_S17, "example 7.6")
          .note("for a total take the area as the first factor and zero as the second")
          .kernelOfArrays(
              x -> Survey.differenceVariance(x[0][0], x[1][0], x[2][0], x[3][0], x[4][0]));

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          MEAN_VARIANCE,
          RATIO_VARIANCE,
          CORRELATION,
          REGRESSION_VARIANCE,
          REGRESSION_MEAN,
          DIFFERENCE_VARIANCE);

  private SummaryFormulas() {}
}
