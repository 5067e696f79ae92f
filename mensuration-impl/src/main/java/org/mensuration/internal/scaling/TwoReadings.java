package org.mensuration.internal.scaling;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.kernel.SizeClasses;
import org.mensuration.scaling.SizeClass;
import org.mensuration.units.Measures;

/** The class of two readings of one end. Stateless and thread-safe. */
public final class TwoReadings {
  private TwoReadings() {}

  /**
   * The class of two readings at right angles.
   *
   * @param first one reading
   * @param second the other reading
   * @param classes the classes
   * @return the class
   * @throws IllegalArgumentException if a reading is negative or not finite
   */
  public static Quantity<Length> classOf(
      Quantity<Length> first, Quantity<Length> second, SizeClass classes) {
    double width = classes.width().getValue().doubleValue();
    return Measures.of(
        SizeClasses.ofTwoReadings(read(first, classes), read(second, classes), width),
        classes.width().getUnit());
  }

  private static double read(Quantity<Length> reading, SizeClass classes) {
    double value = Rounder.inClassUnit("diameter", reading, classes);
    if (!(value >= 0)) {
      throw new IllegalArgumentException(
          "diameter is " + value + " " + Rounder.unit(classes) + ", allowed zero or more");
    }
    return value;
  }
}
