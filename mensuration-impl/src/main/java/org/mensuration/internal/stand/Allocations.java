package org.mensuration.internal.stand;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.mensuration.internal.catalogue.EstimationFormulas;
import org.mensuration.kernel.ClassRounding;
import org.mensuration.stand.Allocation;
import org.mensuration.stand.StratumPlan;
import org.mensuration.stand.StratumWeight;

/** Points of strata. Stateless and thread-safe. */
public final class Allocations {
  private static final long FEWEST = 2;

  /** A share nearer to a whole number than this part of it is that number. */
  private Allocations() {}

  /**
   * The coefficient of variation weighted over strata.
   *
   * @param strata the strata
   * @return in per cent
   */
  public static double weightedVariation(List<StratumPlan> strata) {
    requireSome(strata);
    return EstimationFormulas.WEIGHTED_VARIATION.applyTo(
        column(strata, StratumPlan::weight), column(strata, StratumPlan::variationPercent));
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
    double[] weights = column(strata, StratumPlan::weight);
    double[] variations = column(strata, StratumPlan::variationPercent);
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
    double[] weights = column(strata, StratumPlan::weight);
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
      double exact = share.applyAsDouble(stratum);
      double up = ClassRounding.up(exact, 1, 1);
      shares.add(new Allocation.Share(stratum.name(), exact, Math.max(FEWEST, (long) up)));
    }
    return new Allocation(weight, shares);
  }

  private static double[] column(List<StratumPlan> strata, ToDoubleFunction<StratumPlan> figure) {
    return strata.stream().mapToDouble(figure).toArray();
  }

  private static void requireSome(List<StratumPlan> strata) {
    if (strata.isEmpty()) {
      throw new IllegalArgumentException("no strata: an allocation needs at least one");
    }
  }
}
