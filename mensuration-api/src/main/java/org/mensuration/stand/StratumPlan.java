package org.mensuration.stand;

/**
 * What is known of a stratum before it is sampled. Immutable and thread-safe.
 *
 * @param name name of the stratum
 * @param weight its area or volume, in the same unit for all strata
 * @param variationPercent expected coefficient of variation of its points in per cent
 */
public record StratumPlan(String name, double weight, double variationPercent) {

  /**
   * Checks the numbers.
   *
   * @param name name of the stratum
   * @param weight its area or volume
   * @param variationPercent expected coefficient of variation in per cent
   * @throws IllegalArgumentException if a number is negative or not finite
   */
  public StratumPlan {
    if (!(weight >= 0
        && weight < Double.POSITIVE_INFINITY
        && variationPercent >= 0
        && variationPercent < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "stratum "
              + name
              + ": weight "
              + weight
              + ", variation "
              + variationPercent
              + " %; allowed from 0");
    }
  }
}
