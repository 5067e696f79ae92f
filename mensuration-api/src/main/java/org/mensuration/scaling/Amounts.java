package org.mensuration.scaling;

import javax.measure.Quantity;
import javax.measure.quantity.Length;

/** Checks of lengths, written as acceptance so that NaN cannot pass. Stateless and thread-safe. */
final class Amounts {
  private Amounts() {}

  static void requireAboveZero(Quantity<Length> length, String what) {
    double value = length.getValue().doubleValue();
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(what + " is " + text(length) + ", allowed above zero");
    }
  }

  static void requireNotNegative(Quantity<Length> length, String what) {
    double value = length.getValue().doubleValue();
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(what + " is " + text(length) + ", allowed zero or more");
    }
  }

  static void requireIn(double value, double least, double most, String what) {
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException(
          what + " is " + value + ", allowed [" + least + ", " + most + "]");
    }
  }

  static String text(Quantity<Length> length) {
    return length.getValue() + " " + length.getUnit();
  }
}
