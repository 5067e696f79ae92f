package org.mensuration.stand;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;

/**
 * A dominant height with the rule that made it. Immutable and thread-safe.
 *
 * @param rule the rule
 * @param height mean height of its trees
 * @param quadraticMeanDiameter quadratic mean diameter of its trees, at which some definitions read
 *     a height curve instead
 */
public record DominantHeight(
    DominantHeightRule rule, Quantity<Length> height, Quantity<Length> quadraticMeanDiameter) {

  @Override
  public boolean equals(Object other) {
    return other instanceof DominantHeight that
        && rule.equals(that.rule)
        && Physical.same(height, that.height)
        && Physical.same(quadraticMeanDiameter, that.quadraticMeanDiameter);
  }

  @Override
  public int hashCode() {
    return Objects.hash(rule, Physical.hash(height), Physical.hash(quadraticMeanDiameter));
  }
}
