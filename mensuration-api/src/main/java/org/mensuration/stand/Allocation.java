package org.mensuration.stand;

import java.util.List;
import java.util.Objects;

/**
 * Points of strata. Immutable and thread-safe.
 *
 * @param weight what the strata were weighted by
 * @param shares one a stratum, in their order
 */
public record Allocation(StratumWeight weight, List<Share> shares) {

  /**
   * Copies the shares.
   *
   * @param weight what the strata were weighted by
   * @param shares one a stratum
   */
  public Allocation {
    Objects.requireNonNull(weight, "weight");
    shares = List.copyOf(shares);
  }

  /**
   * The points of one stratum.
   *
   * @param stratum name of the stratum
   * @param exact points before rounding
   * @param points rounded up, and at least 2, so that the stratum has an error of its own
   */
  public record Share(String stratum, double exact, long points) {}

  /**
   * Points in all after rounding.
   *
   * @return the sum over the strata
   */
  public long points() {
    return shares.stream().mapToLong(Share::points).sum();
  }
}
