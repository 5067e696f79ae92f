package org.mensuration.optics;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;

/**
 * Distances from which a diameter can be read well enough. Immutable and thread-safe.
 *
 * @param nearest shortest distance to the axis
 * @param farthest longest distance to the axis
 */
public record DistanceRange(Quantity<Length> nearest, Quantity<Length> farthest) {

  /**
   * Checks that nothing is null.
   *
   * @param nearest shortest distance to the axis
   * @param farthest longest distance to the axis
   */
  public DistanceRange {
    Objects.requireNonNull(nearest, "nearest");
    Objects.requireNonNull(farthest, "farthest");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DistanceRange that
        && Physical.same(nearest, that.nearest)
        && Physical.same(farthest, that.farthest);
  }

  @Override
  public int hashCode() {
    return Objects.hash(Physical.hash(nearest), Physical.hash(farthest));
  }
}
