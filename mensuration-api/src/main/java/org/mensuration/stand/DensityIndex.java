package org.mensuration.stand;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;
import org.mensuration.quantity.StemsPerArea;

/**
 * A stand density index: stems per area of the reference diameter. The figure says nothing without
 * both, so they stay together. Immutable and thread-safe.
 *
 * @param stems the index
 * @param referenceDiameter the quadratic mean diameter at which the stems are counted
 */
public record DensityIndex(Quantity<StemsPerArea> stems, Quantity<Length> referenceDiameter) {

  @Override
  public boolean equals(Object other) {
    return other instanceof DensityIndex index
        && Physical.same(stems, index.stems)
        && Physical.same(referenceDiameter, index.referenceDiameter);
  }

  @Override
  public int hashCode() {
    return Objects.hash(Physical.hash(stems), Physical.hash(referenceDiameter));
  }
}
