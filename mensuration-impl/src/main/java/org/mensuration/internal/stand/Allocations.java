package org.mensuration.internal.stand;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import org.mensuration.internal.catalogue.EstimationFormulas;
import org.mensuration.internal.catalogue.SampleSizeFormulas;
import org.mensuration.internal.catalogue.SurveyFormulas;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.statistics.StrataPoints;
import org.mensuration.kernel.ClassRounding;
import org.mensuration.stand.Allocation;
import org.mensuration.stand.CostedStratum;
import org.mensuration.stand.StratumPlan;
import org.mensuration.stand.StratumWeight;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.UnitReader;

/** Points of strata. Stateless and thread-safe. */
public final class Allocations {
  private static final long FEWEST = 2;

  private static final UnitReader<Area> ACRES = UnitReader.in(ForestUnits.ACRE);

  private Allocations() {}

  /**
   * Points by weight and variation for an error.
   *
   * @param weight what the weights are
   * @param strata the strata
   * @param errorPercent allowable error in per cent
   * @param confidencePercent confidence in per cent
   * @return the allocation
   */
  public static Allocation neymanFor(
      StratumWeight weight,
      List<StratumPlan> strata,
      double errorPercent,
      double confidencePercent) {
    requireEnough(SampleSizeFormulas.POINTS_NEEDED_NEYMAN, strata, errorPercent, confidencePercent);
    return allocation(
        weight,
        strata,
        StrataPoints.neyman(weights(strata), variations(strata)),
        errorPercent,
        confidencePercent);
  }

  /**
   * Points by weight alone for an error.
   *
   * @param weight what the weights are
   * @param strata the strata
   * @param errorPercent allowable error in per cent
   * @param confidencePercent confidence in per cent
   * @return the allocation
   */
  public static Allocation proportionalFor(
      StratumWeight weight,
      List<StratumPlan> strata,
      double errorPercent,
      double confidencePercent) {
    requireEnough(
        SampleSizeFormulas.POINTS_NEEDED_PROPORTIONAL, strata, errorPercent, confidencePercent);
    return allocation(
        weight,
        strata,
        StrataPoints.proportional(weights(strata), variations(strata)),
        errorPercent,
        confidencePercent);
  }

  /** Refuses what the formula refuses, a number beyond counting among it. */
  private static void requireEnough(
      BoundFormula formula, List<StratumPlan> strata, double error, double confidence) {
    requireSome(strata);
    formula.applyTo(
        weights(strata), variations(strata), new double[] {error}, new double[] {confidence});
  }

  private static Allocation allocation(
      StratumWeight weight,
      List<StratumPlan> strata,
      StrataPoints rule,
      double errorPercent,
      double confidencePercent) {
    double points = rule.needed(errorPercent, confidencePercent).nominal();
    List<Allocation.Share> shares = new ArrayList<>();
    for (int i = 0; i < strata.size(); i++) {
      shares.add(
          new Allocation.Share(
              strata.get(i).name(), rule.exact(i, points), (long) rule.rounded(i, points)));
    }
    return new Allocation(weight, shares);
  }

  /**
   * Units for a budget.
   *
   * @param strata the strata
   * @param budget what may be spent
   * @return the allocation
   */
  public static Allocation forBudget(List<CostedStratum> strata, double budget) {
    double[][] columns = columns(strata);
    List<Allocation.Share> shares = new ArrayList<>();
    for (CostedStratum stratum : strata) {
      double exact = units(SurveyFormulas.UNITS_FOR_BUDGET, stratum, columns, budget);
      long units = (long) ClassRounding.down(exact, 1, 1);
      if (!(units >= FEWEST)) {
        throw new IllegalArgumentException(
            "stratum "
                + stratum.name()
                + ": a budget of "
                + budget
                + " pays for "
                + exact
                + " units; an error of its own needs two");
      }
      shares.add(new Allocation.Share(stratum.name(), exact, units));
    }
    return new Allocation(StratumWeight.UNITS, shares);
  }

  /**
   * Units for a bound on the error of the total.
   *
   * @param strata the strata
   * @param bound half width wanted
   * @param standardErrors how many standard errors the bound is
   * @return the allocation
   */
  public static Allocation forBound(
      List<CostedStratum> strata, double bound, double standardErrors) {
    double[][] columns = columns(strata);
    List<Allocation.Share> shares = new ArrayList<>();
    for (CostedStratum stratum : strata) {
      double exact = units(SurveyFormulas.UNITS_FOR_BOUND, stratum, columns, bound, standardErrors);
      shares.add(share(stratum.name(), exact));
    }
    return new Allocation(StratumWeight.UNITS, shares);
  }

  /** Units of one stratum among all by a formula that ends in what is wanted. */
  private static double units(
      BoundFormula formula, CostedStratum stratum, double[][] columns, double... wanted) {
    double[][] inputs = new double[6 + wanted.length][];
    inputs[0] = new double[] {stratum.units()};
    inputs[1] = new double[] {stratum.deviation()};
    inputs[2] = new double[] {stratum.cost()};
    System.arraycopy(columns, 0, inputs, 3, 3);
    for (int i = 0; i < wanted.length; i++) {
      inputs[6 + i] = new double[] {wanted[i]};
    }
    return formula.applyTo(inputs);
  }

  /** Units, deviations and costs. */
  private static double[][] columns(List<CostedStratum> strata) {
    requireSome(strata);
    return new double[][] {
      strata.stream().mapToDouble(CostedStratum::units).toArray(),
      strata.stream().mapToDouble(CostedStratum::deviation).toArray(),
      strata.stream().mapToDouble(CostedStratum::cost).toArray()
    };
  }

  /**
   * Points by the area of a tract.
   *
   * @param area the area
   * @return points, rounded up
   */
  public static long byArea(Quantity<Area> area) {
    return (long) ClassRounding.up(SampleSizeFormulas.POINTS_BY_AREA.value(ACRES.read(area)), 1, 1);
  }

  /**
   * Points by weight and variation.
   *
   * @param weight what the weights are
   * @param strata the strata
   * @param points points in all
   * @return the allocation
   */
  public static Allocation neyman(StratumWeight weight, List<StratumPlan> strata, long points) {
    double[] weights = weights(strata);
    double[] variations = variations(strata);
    return allocation(
        weight,
        strata,
        stratum ->
            EstimationFormulas.ALLOCATION_NEYMAN.applyTo(
                new double[] {(double) points},
                new double[] {stratum.weight()},
                new double[] {stratum.variationPercent()},
                weights,
                variations));
  }

  /**
   * Points by weight alone.
   *
   * @param weight what the weights are
   * @param strata the strata
   * @param points points in all
   * @return the allocation
   */
  public static Allocation proportional(
      StratumWeight weight, List<StratumPlan> strata, long points) {
    double[] weights = weights(strata);
    return allocation(
        weight,
        strata,
        stratum ->
            EstimationFormulas.ALLOCATION_PROPORTIONAL.applyTo(
                new double[] {(double) points}, new double[] {stratum.weight()}, weights));
  }

  private static Allocation allocation(
      StratumWeight weight, List<StratumPlan> strata, ToDoubleFunction<StratumPlan> share) {
    requireSome(strata);
    List<Allocation.Share> shares = new ArrayList<>();
    for (StratumPlan stratum : strata) {
      shares.add(share(stratum.name(), share.applyAsDouble(stratum)));
    }
    return new Allocation(weight, shares);
  }

  private static Allocation.Share share(String name, double exact) {
    return new Allocation.Share(
        name, exact, Math.max(FEWEST, (long) ClassRounding.up(exact, 1, 1)));
  }

  private static double[] weights(List<StratumPlan> strata) {
    return strata.stream().mapToDouble(StratumPlan::weight).toArray();
  }

  private static double[] variations(List<StratumPlan> strata) {
    return strata.stream().mapToDouble(StratumPlan::variationPercent).toArray();
  }

  private static void requireSome(List<?> strata) {
    if (strata.isEmpty()) {
      throw new IllegalArgumentException("no strata: an allocation needs at least one");
    }
  }
}
