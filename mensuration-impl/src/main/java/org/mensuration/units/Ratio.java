package org.mensuration.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/**
 * A conversion as multiplier and divisor. Where both whole numbers are exact doubles, a value is
 * multiplied and then divided, so that readings such as whole feet come out correctly rounded;
 * otherwise the quotient is rounded once into the multiplier. Immutable and thread-safe.
 */
record Ratio(double multiplier, double divisor) {
  private static final int EXACT_BITS = 53;

  static Ratio of(BigInteger up, BigInteger down, int piPower) {
    double multiplier;
    double divisor;
    if (up.bitLength() <= EXACT_BITS && down.bitLength() <= EXACT_BITS) {
      multiplier = up.doubleValue();
      divisor = down.doubleValue();
    } else {
      multiplier =
          new BigDecimal(up).divide(new BigDecimal(down), MathContext.DECIMAL128).doubleValue();
      divisor = 1;
    }
    for (int i = 0; i < piPower; i++) {
      multiplier *= Math.PI;
    }
    for (int i = 0; i > piPower; i--) {
      divisor *= Math.PI;
    }
    return new Ratio(multiplier, divisor);
  }

  double apply(double value) {
    return value * multiplier / divisor;
  }
}
