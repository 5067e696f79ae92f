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
import org.mensuration.internal.source.EdgeWorks;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.Survey;

/** How many units, and totals over strata of known numbers of units. Immutable and thread-safe. */
public final class SurveyFormulas {
  /** Total over strata. */
  public static final BoundFormula STRATIFIED_TOTAL =
      Definition.of("sampling/stratified-total", "Total over strata", Nature.STATISTICAL)
          .list("units", "N", "1", Domain.atLeast(1), "units of the strata")
          .list("mean", "m", "1", Domain.any(), "means of the strata")
          .gives("total", "T", "1", sumOver(times(sym("N"), sym("m")), "N", "m"))
          .definedBy(CountingWorks.AG_S65, "section Estimation and Allocation, item 1")
          .kernelOfArrays(x -> Survey.stratifiedTotal(x[0], x[1]));

  /** Variance of that total. */
  public static final BoundFormula STRATIFIED_TOTAL_VARIANCE =
      Definition.of(
              "sampling/stratified-total-variance",
              "Variance of the total over strata with a finite factor for each",
              Nature.STATISTICAL)
          .list("units", "N", "1", Domain.atLeast(1), "units of the strata")
          .list("fraction", "F", "1", Domain.closed(0, 1), "part of each stratum that was read")
          .list("deviation", "s", "1", Domain.atLeast(0), "standard deviations of the strata")
          .list("sampled", "n", "1", Domain.atLeast(1), "units read of the strata")
          .gives(
              "variance",
              "v",
              "1",
              sumOver(
                  times(
                      times(squared(sym("N")), minus(num(1), sym("F"))),
                      over(squared(sym("s")), sym("n"))),
                  "N",
                  "F",
                  "s",
                  "n"))
          .definedBy(CountingWorks.AG_S65, "section Estimation and Allocation, item 1")
          .note("for units of a known number, such as fixed plots; points have none")
          .kernelOfArrays(x -> Survey.stratifiedTotalVariance(x[0], x[1], x[2], x[3]));

  /** Units for a bound. */
  public static final BoundFormula UNITS_FOR_BOUND =
      Definition.of(
              "sampling/allocation-cost-bound",
              "Units of a stratum for a bound on the error of the total, by unit costs",
              Nature.STATISTICAL)
          .input("stratum_units", "N_h", "1", Domain.atLeast(1), "units of the stratum")
          .input(
              "stratum_deviation",
              "s_h",
              "1",
              Domain.atLeast(0),
              "standard deviation of the stratum")
          .input("stratum_cost", "c_h", "1", Domain.above(0), "cost of a unit of the stratum")
          .list("units", "N", "1", Domain.atLeast(1), "units of the strata")
          .list("deviation", "s", "1", Domain.atLeast(0), "standard deviations of the strata")
          .list("cost", "c", "1", Domain.above(0), "costs of a unit of the strata")
          .input("bound", "B", "1", Domain.above(0), "half width wanted for the total")
          .input("factor", "z", "1", Domain.above(0), "how many standard errors the bound is")
          .gives(
              "units",
              "n_h",
              "1",
              over(
                  times(share(), cost()),
                  plus(
                      over(squared(sym("B")), squared(sym("z"))),
                      sumOver(times(sym("N"), squared(sym("s"))), "N", "s"))))
          .definedBy(CountingWorks.AG_S65, "section Estimation and Allocation, item 2, there z = 2")
          .note("not rounded; rounding to nearest can miss the bound by a hair, so round up")
          .kernelOfArrays(
              x ->
                  Survey.unitsForBound(
                      x[0][0], x[1][0], x[2][0], x[3], x[4], x[5], x[6][0], x[7][0]));

  /** Units for a budget. */
  public static final BoundFormula UNITS_FOR_BUDGET =
      Definition.of(
              "sampling/allocation-cost-budget",
              "Units of a stratum for a budget, by unit costs",
              Nature.STATISTICAL)
          .input("stratum_units", "N_h", "1", Domain.atLeast(1), "units of the stratum")
          .input(
              "stratum_deviation",
              "s_h",
              "1",
              Domain.atLeast(0),
              "standard deviation of the stratum")
          .input("stratum_cost", "c_h", "1", Domain.above(0), "cost of a unit of the stratum")
          .list("units", "N", "1", Domain.atLeast(1), "units of the strata")
          .list("deviation", "s", "1", Domain.atLeast(0), "standard deviations of the strata")
          .list("cost", "c", "1", Domain.above(0), "costs of a unit of the strata")
          .input("budget", "C", "1", Domain.above(0), "what may be spent")
          .gives("units", "n_h", "1", over(times(sym("C"), share()), cost()))
          .definedBy(CountingWorks.AG_S65, "section Estimation and Allocation, item 3")
          .note("not rounded")
          .kernelOfArrays(
              x -> Survey.unitsForBudget(x[0][0], x[1][0], x[2][0], x[3], x[4], x[5], x[6][0]));

  /** Units for a bound on the mean. */
  public static final BoundFormula UNITS_NEEDED =
      Definition.of(
              "sampling/units-for-bound",
              "Units of a simple random sample for a bound on the error of the mean",
              Nature.STATISTICAL)
          .input("population", "N", "1", Domain.atLeast(1), "units there are")
          .input("variance", "v", "1", Domain.above(0), "variance of the units")
          .input("bound", "B", "1", Domain.above(0), "half width wanted for the mean")
          .input("factor", "z", "1", Domain.above(0), "how many standard errors the bound is")
          .gives(
              "units",
              "n",
              "1",
              over(
                  times(sym("N"), sym("v")),
                  plus(
                      over(times(minus(sym("N"), num(1)), squared(sym("B"))), squared(sym("z"))),
                      sym("v"))))
          .definedBy(EdgeWorks.AG_S66, "section Sample Size Selection, item 1, there z = 2")
          .note("not rounded; for a bound on the total divide it by N first")
          .kernel4(Survey::unitsNeeded);

  /** Plots with a given t. */
  public static final BoundFormula PLOTS_WITH_GIVEN_T =
      Definition.of(
              "sampling/plots-for-given-t",
              "Plots of a finite population for an allowable error with a given t",
              Nature.STATISTICAL)
          .input(
              "coefficient_of_variation",
              "CV",
              "%",
              Domain.above(0),
              "standard deviation of the plots over their mean")
          .input(
              "allowable_error",
              "E",
              "%",
              Domain.above(0),
              "half width of the interval over the mean")
          .input("t", "t", "1", Domain.above(0), "quantile taken")
          .input("population", "N", "1", Domain.above(0), "plots that fit into the area")
          .gives(
              "plots",
              "n",
              "1",
              over(
                  num(1),
                  plus(
                      over(num(1), sym("N")), squared(over(sym("E"), times(sym("t"), sym("CV")))))))
          .definedBy(Works.AG_S15, "step two, there t = 2")
          .note("not rounded; t of the number found differs from a given one, see points needed")
          .kernel4(Survey::plotsWithGivenT);

  /** First phase of double sampling. */
  public static final BoundFormula FIRST_PHASE =
      Definition.of(
              "sampling/double-sampling-first-phase",
              "Units of the first phase of double sampling with a ratio for a budget",
              Nature.STATISTICAL)
          .input("first_cost", "c_x", "1", Domain.above(0), "cost of a unit of the first phase")
          .input("second_cost", "c_y", "1", Domain.above(0), "cost of a unit of the second phase")
          .input("variance", "v_y", "1", Domain.above(0), "variance of what is wanted")
          .input("ratio_variance", "v_r", "1", Domain.above(0), "variance about the ratio")
          .input("budget", "C", "1", Domain.above(0), "what may be spent")
          .relation("ratio_variance", Comparison.LESS, 1, "variance", "v_r < v_y")
          .gives(
              "units",
              "n_1",
              "1",
              where(
                  "q",
                  sqrt(
                      over(
                          over(sym("c_x"), sym("c_y")),
                          minus(over(sym("v_y"), sym("v_r")), num(1)))),
                  over(sym("C"), plus(sym("c_x"), times(sym("c_y"), sym("q"))))))
          .definedBy(CountingWorks.AG_S67, "section Shorebirds Double Sampling Allocation")
          .note("not rounded; the second phase takes what is left of the budget")
          .kernelOfArrays(x -> Survey.firstPhase(x[0][0], x[1][0], x[2][0], x[3][0], x[4][0]));

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          STRATIFIED_TOTAL,
          STRATIFIED_TOTAL_VARIANCE,
          UNITS_FOR_BOUND,
          UNITS_FOR_BUDGET,
          UNITS_NEEDED,
          PLOTS_WITH_GIVEN_T,
          FIRST_PHASE);

  private SurveyFormulas() {}

  private static Equation share() {
    return over(times(sym("N_h"), sym("s_h")), sqrt(sym("c_h")));
  }

  private static Equation cost() {
    return sumOver(times(sym("N"), sym("s"), sqrt(sym("c"))), "N", "s", "c");
  }
}
