package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.sqrt;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sumOver;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;
import static org.mensuration.formula.Equations.where;

import java.util.List;
import org.mensuration.formula.Comparison;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.CountingWorks;
import org.mensuration.internal.source.StandWorks;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.Estimation;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;

/** Ratio and regression estimates, allocation, finite populations. Immutable and thread-safe. */
public final class EstimationFormulas {
  private static final Domain NOT_NEGATIVE = Domain.atLeast(0);
  private static final Domain POSITIVE = Domain.above(0);
  private static final Domain READING = Domain.atLeast(1e-9);
  private static final Domain FRACTION = Domain.fromBelow(0, 1);

  /** Standard error, finite. */
  public static final BoundFormula STANDARD_ERROR_FINITE =
      Definition.of(
              "sampling/standard-error-finite",
              "Standard error of a mean of a finite population",
              Nature.STATISTICAL)
          .input("standard_deviation", "s", "1", NOT_NEGATIVE, "standard deviation of the units")
          .input("count", "n", "1", Domain.wholeFrom(2), "number of units")
          .input("population", "N", "1", Domain.atLeast(2), "units that fit into the area")
          .relation("population", Comparison.AT_LEAST, 1, "count", "N ≥ n")
          .gives(
              "standard_error",
              "s_m",
              "1",
              sqrt(
                  times(
                      minus(num(1), over(sym("n"), sym("N"))), over(squared(sym("s")), sym("n")))))
          .definedBy(
              CountingWorks.AG_S65,
              "section Estimation and Allocation, item 1, a finite factor for each stratum")
          .note("for plots of a fixed area only: points have no finite number")
          .kernel3(Estimation::standardErrorFinite);

  /** Weighted variation. */
  public static final BoundFormula WEIGHTED_VARIATION =
      Definition.of(
              "sampling/weighted-variation",
              "Coefficient of variation weighted over strata",
              Nature.STATISTICAL)
          .list("weight", "w", "1", NOT_NEGATIVE, "weights of the strata, by area or by volume")
          .list("coefficient_of_variation", "CV", "%", NOT_NEGATIVE, "variation of the strata")
          .gives(
              "variation",
              "CV_w",
              "%",
              over(sumOver(times(sym("w"), sym("CV")), "w", "CV"), sumOver(sym("w"), "w")))
          .definedBy(Works.AG_S15, "step one")
          .note("the hand-out names volume as the weight and reckons with areas: state which")
          .kernelOfArrays(x -> Estimation.weightedVariation(x[0], x[1]));

  /** Neyman. */
  public static final BoundFormula ALLOCATION_NEYMAN =
      Definition.of(
              "sampling/allocation-neyman",
              "Points of a stratum by Neyman allocation",
              Nature.STATISTICAL)
          .input("total", "n", "1", POSITIVE, "points in all")
          .input("stratum_weight", "w_h", "1", NOT_NEGATIVE, "weight of the stratum")
          .input("stratum_variation", "CV_h", "%", NOT_NEGATIVE, "variation of the stratum")
          .list("weight", "w", "1", NOT_NEGATIVE, "weights of all strata, by area or by volume")
          .list("coefficient_of_variation", "CV", "%", NOT_NEGATIVE, "variation of all strata")
          .gives(
              "points",
              "n_h",
              "1",
              over(
                  times(sym("n"), sym("w_h"), sym("CV_h")),
                  sumOver(times(sym("w"), sym("CV")), "w", "CV")))
          .definedBy(Works.AG_S15, "step three")
          .note("not rounded; equal cost a point")
          .note("weights by area or by volume give other points: state which")
          .kernelOfArrays(x -> Estimation.neyman(x[0][0], x[1][0], x[2][0], x[3], x[4]));

  /** Proportional. */
  public static final BoundFormula ALLOCATION_PROPORTIONAL =
      Definition.of(
              "sampling/allocation-proportional", "Points of a stratum by area", Nature.STATISTICAL)
          .input("total", "n", "1", POSITIVE, "points in all")
          .input("stratum_area", "A_h", "ha", NOT_NEGATIVE, "area of the stratum")
          .list("area", "A", "ha", NOT_NEGATIVE, "areas of all strata")
          .gives("points", "n_h", "1", over(times(sym("n"), sym("A_h")), sumOver(sym("A"), "A")))
          .cites(Citation.commonPractice("points in proportion to area"))
          .note("not rounded")
          .kernelOfArrays(x -> Estimation.proportional(x[0][0], x[1][0], x[2]));

  /** Degrees of freedom over strata. */
  public static final BoundFormula EFFECTIVE_FREEDOM =
      Definition.of(
              "sampling/effective-degrees-of-freedom",
              "Effective degrees of freedom of a standard error over strata",
              Nature.STATISTICAL)
          .list("area", "A", "ha", NOT_NEGATIVE, "areas of the strata")
          .list("standard_error", "s", "1", NOT_NEGATIVE, "standard errors of their means")
          .list("count", "n", "1", Domain.wholeFrom(2), "points of the strata")
          .gives(
              "degrees_of_freedom",
              "f",
              "1",
              over(
                  squared(sumOver(squared(times(sym("A"), sym("s"))), "A", "s")),
                  sumOver(
                      over(squared(squared(times(sym("A"), sym("s")))), minus(sym("n"), num(1))),
                      "A",
                      "s",
                      "n")))
          .cites(Citation.fromMemory(Role.DEFINES, StandWorks.SATTERTHWAITE, "approximate degrees"))
          .note("between the smallest of the strata's and their sum; need not be whole")
          .cites(
              Citation.derived(
                  "of a product of independent means: relative errors as s, each A the same"))
          .kernelOfArrays(x -> Estimation.effectiveFreedom(x[0], x[1], x[2]));

  /** Error of a ratio. */
  public static final BoundFormula RATIO_STANDARD_ERROR =
      Definition.of(
              "sampling/ratio-standard-error",
              "Standard error of a ratio of means",
              Nature.STATISTICAL)
          .list("first", "x", "1", READING, "readings below the line")
          .list("second", "y", "1", NOT_NEGATIVE, "readings above the line")
          .input("fraction", "F", "1", FRACTION, "part of the population that was read")
          .gives(
              "standard_error",
              "s_r",
              "1",
              where(
                  "n",
                  new Equation.ReadingCount("x"),
                  where(
                      "r",
                      over(sumOver(sym("y"), "y"), sumOver(sym("x"), "x")),
                      over(
                          sqrt(
                              times(
                                  over(minus(num(1), sym("F")), sym("n")),
                                  over(
                                      sumOver(
                                          squared(minus(sym("y"), times(sym("r"), sym("x")))),
                                          "x",
                                          "y"),
                                      minus(sym("n"), num(1))))),
                          over(sumOver(sym("x"), "x"), sym("n"))))))
          .cites(
              Citation.derived(
                  "(1/n - 1/N)(s_y² + r² s_x² - 2 r s_xy) of a ratio estimate, over the mean of x"))
          .explainedBy(StandWorks.AG_S69, "block R8, variance of the ratio estimate")
          .note("a reading below 1e-9 is no reading: it leaves no digits of the residuals")
          .note("first order; the fraction is zero for points, which have no finite number")
          .kernelOfArrays(x -> Estimation.ratioError(x[0], x[1], x[2][0]));

  /** Regression estimate. */
  public static final BoundFormula REGRESSION_ESTIMATE =
      Definition.of(
              "sampling/regression-estimate", "Regression estimate of a mean", Nature.STATISTICAL)
          .list("first", "x", "1", Domain.any(), "readings of what is known for the population")
          .list("second", "y", "1", Domain.any(), "readings of what is wanted")
          .input("population_mean", "X", "1", Domain.any(), "mean of the first over the population")
          .gives(
              "mean",
              "m",
              "1",
              where(
                  "x_m",
                  mean("x"),
                  where(
                      "y_m",
                      mean("y"),
                      plus(sym("y_m"), times(slope(), minus(sym("X"), sym("x_m")))))))
          .definedBy(StandWorks.AG_S68, "exercise 4 of the solutions (dead trees)")
          .note("at least two unlike readings of the first variable are needed")
          .kernelOfArrays(x -> Estimation.regression(x[0], x[1], x[2][0]));

  /** Error of a regression estimate. */
  public static final BoundFormula REGRESSION_STANDARD_ERROR =
      Definition.of(
              "sampling/regression-standard-error",
              "Standard error of a regression estimate, divisor n - 2",
              Nature.STATISTICAL)
          .list("first", "x", "1", Domain.any(), "readings of what is known for the population")
          .list("second", "y", "1", Domain.any(), "readings of what is wanted")
          .input("fraction", "F", "1", FRACTION, "part of the population that was read")
          .gives(
              "standard_error",
              "s_m",
              "1",
              where(
                  "x_m",
                  mean("x"),
                  where(
                      "y_m",
                      mean("y"),
                      where("b", slope(), where("n", new Equation.ReadingCount("x"), error())))))
          .definedBy(StandWorks.AG_S68, "exercise 4 of the solutions (dead trees)")
          .note("the divisor n - 1 is in print too and gives less: 0.4080 for 0.4168 there")
          .note("the fraction is zero for points, which have no finite number")
          .kernelOfArrays(x -> Estimation.regressionError(x[0], x[1], x[2][0]));

  /** The topic's second part. */
  public static final List<BoundFormula> ALL =
      List.of(
          STANDARD_ERROR_FINITE,
          WEIGHTED_VARIATION,
          ALLOCATION_NEYMAN,
          ALLOCATION_PROPORTIONAL,
          EFFECTIVE_FREEDOM,
          RATIO_STANDARD_ERROR,
          REGRESSION_ESTIMATE,
          REGRESSION_STANDARD_ERROR);

  private EstimationFormulas() {}

  private static Equation mean(String list) {
    return over(sumOver(sym(list), list), new Equation.ReadingCount(list));
  }

  private static Equation slope() {
    return over(
        sumOver(times(minus(sym("x"), sym("x_m")), minus(sym("y"), sym("y_m"))), "x", "y"),
        sumOver(squared(minus(sym("x"), sym("x_m"))), "x"));
  }

  private static Equation error() {
    Equation predicted = plus(sym("y_m"), times(sym("b"), minus(sym("x"), sym("x_m"))));
    return sqrt(
        times(
            over(minus(num(1), sym("F")), sym("n")),
            over(sumOver(squared(minus(sym("y"), predicted)), "x", "y"), minus(sym("n"), num(2)))));
  }
}
