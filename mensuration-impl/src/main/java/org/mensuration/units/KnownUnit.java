package org.mensuration.units;

import java.math.BigInteger;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * A unit with its exact size: numerator / denominator × π^piPower of its kind's first unit.
 * Immutable and thread-safe.
 */
record KnownUnit<Q extends Quantity<Q>>(
    Unit<Q> unit,
    String symbol,
    Kind kind,
    BigInteger numerator,
    BigInteger denominator,
    int piPower) {

  /** The factor from this unit to another of its kind. */
  Ratio to(KnownUnit<?> other) {
    BigInteger up = numerator.multiply(other.denominator);
    BigInteger down = denominator.multiply(other.numerator);
    BigInteger common = up.gcd(down);
    return Ratio.of(up.divide(common), down.divide(common), piPower - other.piPower);
  }
}
