package org.mensuration.scaling;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;

/**
 * The classes that diameters or lengths are recorded in: multiples of a width. The scaler reads and
 * shows them in the unit of the width. Immutable and thread-safe.
 *
 * @param width width of a class, such as 1 in or 2 ft
 * @param rounding how a reading goes to its class
 */
public record SizeClass(Quantity<Length> width, StepRounding rounding) {
  /**
   * Checks the width.
   *
   * @param width width of a class
   * @param rounding how a reading goes to its class
   * @throws IllegalArgumentException if the width is not above zero
   */
  public SizeClass {
    Objects.requireNonNull(rounding, "rounding");
    Amounts.requireAboveZero(width, "width of a class");
  }

  /**
   * Classes to whose nearest a reading goes, a half up.
   *
   * @param width width of a class
   * @return the classes
   */
  public static SizeClass nearest(Quantity<Length> width) {
    return new SizeClass(width, StepRounding.HALF_UP);
  }

  /**
   * Full classes only: a reading goes to the class below.
   *
   * @param width width of a class
   * @return the classes
   */
  public static SizeClass full(Quantity<Length> width) {
    return new SizeClass(width, StepRounding.DOWN);
  }

  @Override
  public String toString() {
    return "classes of " + Amounts.text(width) + ", " + rounding.words();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SizeClass classes
        && Physical.same(width, classes.width)
        && rounding.equals(classes.rounding);
  }

  @Override
  public int hashCode() {
    return Objects.hash(Physical.hash(width), rounding);
  }
}
