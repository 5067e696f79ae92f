package org.mensuration.scaling;

import java.util.Objects;

/**
 * Where amounts are rounded. Immutable and thread-safe.
 *
 * @param segment the scale of each segment
 * @param deduction each deduction
 * @param net the net scale of the log
 */
public record Roundings(AmountRounding segment, AmountRounding deduction, AmountRounding net) {
  /**
   * Checks that nothing is null.
   *
   * @param segment the scale of each segment
   * @param deduction each deduction
   * @param net the net scale of the log
   */
  public Roundings {
    Objects.requireNonNull(segment, "segment");
    Objects.requireNonNull(deduction, "deduction");
    Objects.requireNonNull(net, "net");
  }

  /**
   * Nowhere but where the rule itself rounds.
   *
   * @return the roundings
   */
  public static Roundings none() {
    return new Roundings(AmountRounding.none(), AmountRounding.none(), AmountRounding.none());
  }
}
