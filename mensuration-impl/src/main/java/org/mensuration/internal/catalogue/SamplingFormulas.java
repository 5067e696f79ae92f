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
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.CountingWorks;
import org.mensuration.internal.source.Works;
import org.mensuration.internal.statistics.StudentT;
import org.mensuration.kernel.Sampling;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;

/** Errors of sample means. Immutable and thread-safe. */
public final class SamplingFormulas {
  private static final Domain NOT_NEGATIVE = Domain.atLeast(0);
  private static final Domain POSITIVE = Domain.above(0);

  /** From 50, so that a share such as 0.95 is refused and not taken for less than one per cent. */
  static final Domain CONFIDENCE = Domain.fromBelow(50, 100);

  /** Standard error. */
  public static final BoundFormula STANDARD_ERROR =
      Definition.of("sampling/standard-error", "Standard error of a mean", Nature.STATISTICAL)
          .input("standard_deviation", "s", "1", NOT_NEGATIVE, "standard deviation of the units")
          .input("count", "n", "1", Domain.wholeFrom(2), "number of units")
          .gives("standard_error", "s_m", "1", over(sym("s"), sqrt(sym("n"))))
          .definedBy(Works.AG_S17, "example 7.6, variance of a mean of 40 plots")
          .note("the deviation has the divisor n - 1; one unit has none")
          .note("without a finite-population factor: points have no finite number")
          .kernel2(Sampling::standardError);

  /** Per cent of a mean. */
  public static final BoundFormula PERCENT_OF_MEAN =
      Definition.of(
              "sampling/percent-of-mean",
              "Standard deviation or standard error in per cent of the mean",
              Nature.STATISTICAL)
          .input("deviation", "s", "1", NOT_NEGATIVE, "standard deviation or standard error")
          .input("mean", "m", "1", POSITIVE, "mean in the same unit")
          .gives("percent", "p", "%", over(times(num(100), sym("s")), sym("m")))
          .cites(Citation.commonPractice("coefficient of variation; relative standard error"))
          .note("of the units it is the coefficient of variation, of their mean the error")
          .kernel2(Sampling::percentOfMean);

  /** Interval of a mean. */
  public static final BoundFormula MEAN_INTERVAL =
      Definition.of("sampling/mean-interval", "Interval of a mean", Nature.STATISTICAL)
          .input("mean", "m", "1", Domain.any(), "mean of the units")
          .input("standard_error", "s_m", "1", NOT_NEGATIVE, "standard error of the mean")
          .input("degrees_of_freedom", "f", "1", Domain.atLeast(1), "degrees of freedom")
          .input("confidence", "C", "%", CONFIDENCE, "chance that the interval holds the mean")
          .gives(
              "half_width",
              "e",
              "1",
              new Equation.Solved("t(f, C) · s_m, t the two-sided quantile of Student's t"))
          .cites(Citation.commonPractice("Student's t with the degrees of freedom of the error"))
          .note("the interval is m - e to m + e; it states the sampling error only")
          .kernel4(
              (mean, error, freedom, confidence) -> StudentT.halfWidth(error, freedom, confidence));

  /** Points needed. */
  public static final BoundFormula POINTS_NEEDED =
      needed("sampling/points-needed", "Points needed for an allowable error")
          .gives(
              "points",
              "n",
              "1",
              new Equation.Solved("smallest n ≥ 2 with n ≥ (t(n - 1, C) · CV/E)²"))
          .definedBy(Works.AG_S15, "step two, there with t = 2")
          .note("found by halving, since repeated substitution can swing between two numbers")
          .kernel3(StudentT::pointsNeeded);

  /** Plots needed of a finite number. */
  public static final BoundFormula POINTS_NEEDED_FINITE =
      needed("sampling/points-needed-finite", "Plots needed in a finite population")
          .input("population", "N", "1", Domain.wholeFrom(2), "plots that fit into the area")
          .gives(
              "points",
              "n",
              "1",
              new Equation.Solved("smallest n ≥ 2 with n ≥ 1/(1/N + (E/(t(n - 1, C) · CV))²)"))
          .definedBy(Works.AG_S15, "step two, there with t = 2")
          .note("for plots of a fixed area only: points have no finite number")
          .kernel4(StudentT::plotsNeeded);

  /** Combined error. */
  public static final BoundFormula COMBINED_ERROR =
      Definition.of(
              "sampling/combined-error",
              "Combined error of count and volume ratio",
              Nature.STATISTICAL)
          .input("count_error", "a", "%", NOT_NEGATIVE, "error of the mean count")
          .input("ratio_error", "b", "%", NOT_NEGATIVE, "error of the mean ratio")
          .gives("error", "e", "%", sqrt(plus(squared(sym("a")), squared(sym("b")))))
          .cites(Citation.fromMemory(Role.DEFINES, Works.AG_M06, "combination of errors"))
          .explainedBy(Works.AG_S35, "abstract, first order of the delta method")
          .note("first order; count and ratio are taken as independent")
          .kernel2(Sampling::combinedError);

  /** Stratified mean. */
  public static final BoundFormula STRATIFIED_MEAN =
      Definition.of(
              "sampling/stratified-mean", "Mean over strata weighted by area", Nature.STATISTICAL)
          .list("area", "A", "ha", NOT_NEGATIVE, "areas of the strata")
          .list("mean", "m", "1", Domain.any(), "means of the strata")
          .gives(
              "mean",
              "M",
              "1",
              over(sumOver(times(sym("A"), sym("m")), "A", "m"), sumOver(sym("A"), "A")))
          .definedBy(
              CountingWorks.AG_S65, "section Estimation and Allocation, item 1, there the total")
          .note("a stratum without area weighs nothing; at least one needs an area")
          .kernelOfArrays(x -> Sampling.stratifiedMean(x[0], x[1]));

  /** Stratified standard error. */
  public static final BoundFormula STRATIFIED_STANDARD_ERROR =
      Definition.of(
              "sampling/stratified-standard-error",
              "Standard error over strata",
              Nature.STATISTICAL)
          .list("area", "A", "ha", NOT_NEGATIVE, "areas of the strata")
          .list("standard_error", "s", "1", NOT_NEGATIVE, "standard errors of the strata")
          .gives(
              "standard_error",
              "S",
              "1",
              where(
                  "A_t",
                  sumOver(sym("A"), "A"),
                  sqrt(
                      sumOver(
                          times(squared(over(sym("A"), sym("A_t"))), squared(sym("s"))),
                          "A",
                          "s"))))
          .definedBy(
              CountingWorks.AG_S65, "section Estimation and Allocation, item 1, there the total")
          .note("areas are known, not estimated; strata are sampled apart")
          .kernelOfArrays(x -> Sampling.stratifiedStandardError(x[0], x[1]));

  /** Variance of a product. */
  public static final BoundFormula PRODUCT_VARIANCE =
      Definition.of(
              "sampling/product-variance",
              "Variance of a product of independent means",
              Nature.STATISTICAL)
          .input("first", "X", "1", Domain.any(), "first mean")
          .input("first_error", "a", "1", NOT_NEGATIVE, "its standard error")
          .input("second", "Y", "1", Domain.any(), "second mean")
          .input("second_error", "b", "1", NOT_NEGATIVE, "its standard error")
          .gives(
              "variance",
              "v",
              "1",
              minus(
                  plus(
                      times(squared(sym("X")), squared(sym("b"))),
                      times(squared(sym("Y")), squared(sym("a")))),
                  times(squared(sym("a")), squared(sym("b")))))
          .cites(Citation.fromMemory(Role.DEFINES, CountingWorks.AG_M07, "unbiased estimator"))
          .note("unbiased form; for true moments the last term is added")
          .note("falls below zero where both errors exceed their means: such data say nothing")
          .kernel4(Sampling::productVariance);

  /** Ratio of means. */
  public static final BoundFormula RATIO_ESTIMATE =
      Definition.of("sampling/ratio-estimate", "Ratio of means", Nature.STATISTICAL)
          .list("first", "x", "1", POSITIVE, "readings below the line")
          .list("second", "y", "1", NOT_NEGATIVE, "readings above the line")
          .gives("ratio", "r", "1", over(sumOver(sym("y"), "y"), sumOver(sym("x"), "x")))
          .definedBy(CountingWorks.AG_S67, "section Population Size Estimation")
          .kernelOfArrays(x -> Sampling.ratio(x[0], x[1]));

  /** Choice of factor. */
  public static final BoundFormula FACTOR_CHOICE =
      Definition.of("sampling/factor-choice", "Factor for a wanted count", Nature.CONVENTION)
          .input("expected_basal_area", "G", "m2/ha", POSITIVE, "basal area expected")
          .input("wanted_count", "z", "1", POSITIVE, "trees wanted at a point")
          .gives("factor", "k", "m2/ha", over(sym("G"), sym("z")))
          .definedBy(Works.AG_S10, "rules one to four, there with six trees a point")
          .note("one factor a stratum; do not change it from point to point to steer the count")
          .kernel2(Sampling::factorChoice);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          STANDARD_ERROR,
          PERCENT_OF_MEAN,
          MEAN_INTERVAL,
          POINTS_NEEDED,
          POINTS_NEEDED_FINITE,
          COMBINED_ERROR,
          STRATIFIED_MEAN,
          STRATIFIED_STANDARD_ERROR,
          PRODUCT_VARIANCE,
          RATIO_ESTIMATE,
          FACTOR_CHOICE);

  private SamplingFormulas() {}

  private static Definition needed(String id, String title) {
    return Definition.of(id, title, Nature.STATISTICAL)
        .input(
            "coefficient_of_variation",
            "CV",
            "%",
            NOT_NEGATIVE,
            "standard deviation of the units over their mean")
        .input("allowable_error", "E", "%", POSITIVE, "half width of the interval over the mean")
        .input("confidence", "C", "%", CONFIDENCE, "chance that the interval holds the mean");
  }
}
