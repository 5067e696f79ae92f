package org.mensuration.stem;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;

/**
 * A diameter read at a height of a stem. Immutable and thread-safe; two readings are equal when
 * height and diameter are physically equal, whatever their units.
 *
 * @param height height above the ground, along the stem
 * @param diameter diameter there
 */
public record StemReading(Quantity<Length> height, Quantity<Length> diameter) {

  /**
   * Checks that nothing is null.
   *
   * @param height height above the ground, along the stem
   * @param diameter diameter there
   */
  public StemReading {
    Objects.requireNonNull(height, "height");
    Objects.requireNonNull(diameter, "diameter");
  }

  /**
   * A reading.
   *
   * @param height height above the ground, along the stem
   * @param diameter diameter there
   * @return the reading
   */
  public static StemReading of(Quantity<Length> height, Quantity<Length> diameter) {
    return new StemReading(height, diameter);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof StemReading reading
        && Physical.same(height, reading.height)
        && Physical.same(diameter, reading.diameter);
  }

  @Override
  public int hashCode() {
    return Objects.hash(Physical.hash(height), Physical.hash(diameter));
  }
}
