package org.mensuration.stand;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;

/**
 * Diameter classes of one width. Class number i goes from {@code origin + i width} to {@code origin
 * + (i + 1) width}. A diameter within a relative 1e-9 of a limit counts as on it. Immutable and
 * thread-safe.
 *
 * @param width width of a class, above zero
 * @param origin lower limit of the class number 0
 * @param closedEnd the end that belongs to the class
 */
public record DiameterClasses(
    Quantity<Length> width, Quantity<Length> origin, ClosedEnd closedEnd) {

  /** The end of a class that belongs to it. */
  public enum ClosedEnd {
    /** A diameter on a limit belongs to the class above. */
    LOWER,
    /** A diameter on a limit belongs to the class below. */
    UPPER
  }

  /**
   * Checks that the width is above zero.
   *
   * @param width width of a class
   * @param origin lower limit of the class number 0
   * @param closedEnd the end that belongs to the class
   * @throws IllegalArgumentException if the width is not above zero or a value not finite
   */
  public DiameterClasses {
    Objects.requireNonNull(closedEnd, "closedEnd");
    double metres = metres(width);
    double from = metres(origin);
    if (!(metres > 0 && metres < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("class width " + width + ", allowed above 0");
    }
    if (!(Math.abs(from) < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("class origin " + origin + " is no length");
    }
  }

  /**
   * Classes whose lower limit belongs to them and whose limits are multiples of the width, such as
   * 0 to below 5 cm, 5 to below 10 cm.
   *
   * @param width width of a class
   * @return the classes
   * @throws IllegalArgumentException if the width is not above zero
   */
  public static DiameterClasses ofWidth(Quantity<Length> width) {
    return new DiameterClasses(width, width.multiply(0), ClosedEnd.LOWER);
  }

  /**
   * Classes whose lower limit belongs to them and whose centres are multiples of the width, such as
   * 7.5 to below 12.5 cm about 10 cm.
   *
   * @param width width of a class
   * @return the classes
   * @throws IllegalArgumentException if the width is not above zero
   */
  public static DiameterClasses centredOnMultiplesOf(Quantity<Length> width) {
    return new DiameterClasses(width, width.divide(-2), ClosedEnd.LOWER);
  }

  private static double metres(Quantity<Length> length) {
    return length.toSystemUnit().getValue().doubleValue();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DiameterClasses classes
        && Physical.same(width, classes.width)
        && Physical.same(origin, classes.origin)
        && closedEnd == classes.closedEnd;
  }

  @Override
  public int hashCode() {
    return Objects.hash(Physical.hash(width), Physical.hash(origin), closedEnd);
  }
}
