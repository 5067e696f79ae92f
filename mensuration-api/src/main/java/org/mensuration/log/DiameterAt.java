package org.mensuration.log;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;

/**
 * A diameter measured somewhere between the ends of a log. Immutable and thread-safe.
 *
 * @param share distance from the large end as a share of the length, in (0, 1)
 * @param diameter diameter at that place
 */
public record DiameterAt(double share, Quantity<Length> diameter) {
  /**
   * Checks the place.
   *
   * @param share distance from the large end as a share of the length
   * @param diameter diameter at that place
   * @throws IllegalArgumentException if the share is not in (0, 1)
   */
  public DiameterAt {
    Objects.requireNonNull(diameter, "diameter");
    if (!(share > 0 && share < 1)) {
      throw new IllegalArgumentException(
          "a diameter at " + share + " of the length is not between the ends; allowed (0, 1)");
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DiameterAt at
        && Double.compare(share, at.share) == 0
        && Physical.same(diameter, at.diameter);
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(share) + Physical.hash(diameter);
  }
}
