package org.mensuration.wood;

import java.math.BigDecimal;
import java.util.Objects;
import org.mensuration.source.Citation;

/**
 * What a source adds to its factors for other wood, such as 0.04 for roughly debarked pieces.
 * Immutable and thread-safe.
 *
 * @param from what its factors convert
 * @param to what comes out
 * @param added what is added to a factor, with the digits printed
 * @param forWood the wood it is for
 * @param citation where it is published
 */
public record FactorAddition(
    WoodMeasure from, WoodMeasure to, BigDecimal added, String forWood, Citation citation) {
  /**
   * Checks that nothing is null.
   *
   * @param from what its factors convert
   * @param to what comes out
   * @param added what is added to a factor
   * @param forWood the wood it is for
   * @param citation where it is published
   */
  public FactorAddition {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    Objects.requireNonNull(added, "added");
    Objects.requireNonNull(forWood, "forWood");
    Objects.requireNonNull(citation, "citation");
  }
}
