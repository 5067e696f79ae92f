package org.mensuration.edge;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;

/**
 * A place on a map. Immutable and thread-safe; two positions are equal when they are physically the
 * same, whatever their units.
 *
 * @param x horizontal distance from the origin along the first axis, such as east
 * @param y horizontal distance from the origin along the second axis, such as north
 */
public record Position(Quantity<Length> x, Quantity<Length> y) {

  /**
   * Checks that both are there.
   *
   * @param x distance along the first axis
   * @param y distance along the second axis
   */
  public Position {
    Objects.requireNonNull(x, "x");
    Objects.requireNonNull(y, "y");
  }

  /**
   * A place.
   *
   * @param x distance along the first axis
   * @param y distance along the second axis
   * @return the position
   */
  public static Position of(Quantity<Length> x, Quantity<Length> y) {
    return new Position(x, y);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Position place
        && Physical.same(x, place.x)
        && Physical.same(y, place.y);
  }

  @Override
  public int hashCode() {
    return 31 * Physical.hash(x) + Physical.hash(y);
  }
}
