package org.mensuration.stand;

import java.util.Objects;

/**
 * A stratum of a known number of units, such as plots that fit into it, before it is sampled.
 * Immutable and thread-safe.
 *
 * @param name name of the stratum
 * @param units units in the stratum
 * @param deviation expected standard deviation of a unit, in one unit of measure for all strata
 * @param cost cost of a sampled unit, in one currency for all strata
 */
public record CostedStratum(String name, double units, double deviation, double cost) {

  /**
   * Checks the numbers.
   *
   * @param name name of the stratum
   * @param units units in the stratum, at least 1
   * @param deviation expected standard deviation of a unit, from 0
   * @param cost cost of a sampled unit, above 0
   * @throws IllegalArgumentException if a number is outside
   */
  public CostedStratum {
    Objects.requireNonNull(name, "name");
    require(name, units >= 1, units, "units", "from 1");
    require(name, deviation >= 0, deviation, "standard deviation", "from 0");
    require(name, cost > 0, cost, "cost", "above 0");
  }

  private static void require(
      String name, boolean allowed, double value, String what, String wanted) {
    if (!(allowed && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "stratum " + name + ": " + what + " " + value + ", allowed " + wanted);
    }
  }
}
