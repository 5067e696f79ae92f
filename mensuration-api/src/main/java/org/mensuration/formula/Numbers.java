package org.mensuration.formula;

import java.math.BigDecimal;

/** Numbers as text, without exponent or needless zeros, independent of the locale. */
final class Numbers {
  private Numbers() {}

  /** The shortest decimal that stands for the double, in plain notation. */
  static String plain(double value) {
    if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
      return Double.toString(value);
    }
    if (value == 0) {
      return "0";
    }
    BigDecimal decimal = new BigDecimal(Double.toString(value));
    double size = Math.abs(value);
    if (size >= 1e15 || size < 1e-9) {
      return decimal.stripTrailingZeros().toString();
    }
    return decimal.stripTrailingZeros().toPlainString();
  }
}
