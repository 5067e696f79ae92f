package org.mensuration.height;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;

/**
 * A height and whether it was measured or read from a height curve. Immutable and thread-safe; two
 * are equal when they are physically the same and of the same origin.
 *
 * @param value height from the ground to the tip
 * @param predicted true if a curve gave it, false if it was measured
 */
public record TreeHeight(Quantity<Length> value, boolean predicted) {

  /**
   * Checks that there is a value.
   *
   * @param value height from the ground to the tip
   * @param predicted true if a curve gave it
   */
  public TreeHeight {
    Objects.requireNonNull(value, "value");
  }

  /**
   * A measured height.
   *
   * @param value the height
   * @return the height, marked as measured
   */
  public static TreeHeight measured(Quantity<Length> value) {
    return new TreeHeight(value, false);
  }

  /**
   * A height from a curve.
   *
   * @param value the height
   * @return the height, marked as predicted
   */
  public static TreeHeight predicted(Quantity<Length> value) {
    return new TreeHeight(value, true);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TreeHeight height
        && Physical.same(value, height.value)
        && predicted == height.predicted;
  }

  @Override
  public int hashCode() {
    return 2 * Physical.hash(value) + (predicted ? 1 : 0);
  }
}
