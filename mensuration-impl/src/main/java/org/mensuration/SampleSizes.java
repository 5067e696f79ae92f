package org.mensuration;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.internal.catalogue.SamplingFormulas;
import org.mensuration.internal.stand.Allocations;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.stand.Allocation;
import org.mensuration.stand.CostedStratum;
import org.mensuration.stand.StratumPlan;
import org.mensuration.stand.StratumWeight;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * How many points, where, and with which factor. Stateless and thread-safe.
 *
 * <p>Equation, limits and sources of an id such as {@code sampling/points-needed}: {@link
 * Catalogues#standard}.
 */
public final class SampleSizes {
  private static final UnitReader<BasalAreaPerArea> FACTORS =
      UnitReader.in(ForestUnits.SQUARE_METRE_PER_HECTARE);

  private SampleSizes() {}

  /**
   * Points needed for an allowable error: the smallest number that satisfies its own t ({@code
   * sampling/points-needed}). Points have no finite number, so there is no finite correction.
   *
   * @param variationPercent coefficient of variation of the points in per cent
   * @param errorPercent half width of the interval over the mean in per cent
   * @param confidencePercent chance that the interval holds the mean, such as 95
   * @return points, at least 2
   * @throws OutOfDomainException if a value is outside
   */
  public static long points(
      double variationPercent, double errorPercent, double confidencePercent) {
    return (long)
        SamplingFormulas.POINTS_NEEDED.value(variationPercent, errorPercent, confidencePercent);
  }

  /**
   * Plots of a fixed area needed for an allowable error, with the finite correction ({@code
   * sampling/points-needed-finite}).
   *
   * @param variationPercent coefficient of variation of the plots in per cent
   * @param errorPercent half width of the interval over the mean in per cent
   * @param confidencePercent chance that the interval holds the mean, such as 95
   * @param population plots that fit into the area
   * @return plots, at least 2
   * @throws OutOfDomainException if a value is outside
   */
  public static long plots(
      double variationPercent, double errorPercent, double confidencePercent, long population) {
    return (long)
        SamplingFormulas.POINTS_NEEDED_FINITE.value(
            variationPercent, errorPercent, confidencePercent, (double) population);
  }

  /**
   * Points needed over strata for an allowable error, allocated by weight and variation ({@code
   * sampling/points-needed-neyman}): the fewest whose shares, rounded up, satisfy the t of the
   * estimate over the strata.
   *
   * @param weight what the weights of the strata are
   * @param strata the strata, each with a weight above zero
   * @param errorPercent half width of the interval over the mean in per cent
   * @param confidencePercent chance that the interval holds the mean, such as 95
   * @return points of each stratum, at least 2
   * @throws IllegalArgumentException if there is no stratum
   * @throws OutOfDomainException if a value is outside
   */
  public static Allocation pointsByNeyman(
      StratumWeight weight,
      List<StratumPlan> strata,
      double errorPercent,
      double confidencePercent) {
    return Allocations.neymanFor(weight, strata, errorPercent, confidencePercent);
  }

  /**
   * Points needed over strata for an allowable error, allocated by weight alone ({@code
   * sampling/points-needed-proportional}): the fewest whose shares, rounded up, satisfy the t of
   * the estimate over the strata.
   *
   * @param weight what the weights of the strata are
   * @param strata the strata, each with a weight above zero
   * @param errorPercent half width of the interval over the mean in per cent
   * @param confidencePercent chance that the interval holds the mean, such as 95
   * @return points of each stratum, at least 2
   * @throws IllegalArgumentException if there is no stratum
   * @throws OutOfDomainException if a value is outside
   */
  public static Allocation pointsInProportion(
      StratumWeight weight,
      List<StratumPlan> strata,
      double errorPercent,
      double confidencePercent) {
    return Allocations.proportionalFor(weight, strata, errorPercent, confidencePercent);
  }

  /**
   * Plots of strata that together spend a budget and give the smallest error of the total ({@code
   * sampling/allocation-cost-budget}).
   *
   * @param strata the strata, each with the cost of a plot
   * @param budget what may be spent, above zero
   * @return plots of each stratum, rounded down so that the budget holds
   * @throws IllegalArgumentException if there is no stratum, or the budget pays for fewer than two
   *     plots of one
   * @throws OutOfDomainException if a value is outside
   */
  public static Allocation plotsForBudget(List<CostedStratum> strata, double budget) {
    return Allocations.forBudget(strata, budget);
  }

  /**
   * Plots of strata that keep the error of the total within a bound at the smallest cost ({@code
   * sampling/allocation-cost-bound}).
   *
   * @param strata the strata, each with the cost of a plot
   * @param bound half width wanted for the total, above zero
   * @param standardErrors how many standard errors the bound is, such as 2
   * @return plots of each stratum, rounded up
   * @throws IllegalArgumentException if there is no stratum
   * @throws OutOfDomainException if a value is outside
   */
  public static Allocation plotsForBound(
      List<CostedStratum> strata, double bound, double standardErrors) {
    return Allocations.forBound(strata, bound, standardErrors);
  }

  /**
   * Points for a tract by its area alone ({@code sampling/points-by-area}): a rule of thumb.
   *
   * @param area area of the tract, up to 200 acres
   * @return points, rounded up
   * @throws OutOfDomainException if the area is outside
   */
  public static long pointsByArea(Quantity<Area> area) {
    return Allocations.byArea(area);
  }

  /**
   * Points allocated to strata by weight and variation ({@code sampling/allocation-neyman}).
   *
   * @param weight what the weights of the strata are: areas and volumes give other points
   * @param strata the strata
   * @param points points in all, above zero
   * @return points of each stratum
   * @throws IllegalArgumentException if there is no stratum
   * @throws OutOfDomainException if a value is outside
   */
  public static Allocation neyman(StratumWeight weight, List<StratumPlan> strata, long points) {
    return Allocations.neyman(weight, strata, points);
  }

  /**
   * Points allocated to strata by weight alone ({@code sampling/allocation-proportional}).
   *
   * @param weight what the weights of the strata are
   * @param strata the strata; their variation is not used
   * @param points points in all, above zero
   * @return points of each stratum
   * @throws IllegalArgumentException if there is no stratum
   * @throws OutOfDomainException if a value is outside
   */
  public static Allocation proportional(
      StratumWeight weight, List<StratumPlan> strata, long points) {
    return Allocations.proportional(weight, strata, points);
  }

  /**
   * The factor that gives a wanted count ({@code sampling/factor-choice}). One factor a stratum: it
   * must not be changed from point to point to steer the count.
   *
   * @param expectedBasalArea basal area expected, above zero
   * @param wantedCount trees wanted at a point, above zero; 4 to 8 are usual
   * @return the factor
   * @throws OutOfDomainException if a value is outside
   */
  public static Quantity<BasalAreaPerArea> factor(
      Quantity<BasalAreaPerArea> expectedBasalArea, double wantedCount) {
    return Measures.squareMetresPerHectare(
        SamplingFormulas.FACTOR_CHOICE.value(FACTORS.read(expectedBasalArea), wantedCount));
  }
}
