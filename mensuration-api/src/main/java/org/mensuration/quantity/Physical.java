package org.mensuration.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import javax.measure.Quantity;

/**
 * Compares quantities by what they measure, not by the unit they are written in, 1 m is 100 cm, and
 * shows numbers in reports. Stateless and thread-safe.
 */
public final class Physical {
  private static final MathContext SHOWN = new MathContext(10);

  private Physical() {}

  /**
   * Whether two quantities are equal in the system unit of their kind.
   *
   * @param left one quantity
   * @param right another of the same kind
   * @param <Q> kind of quantity
   * @return true if their values in the system unit are the same double
   */
  public static <Q extends Quantity<Q>> boolean same(Quantity<Q> left, Quantity<Q> right) {
    return Double.compare(system(left), system(right)) == 0;
  }

  /**
   * Whether two quantities are both missing or equal.
   *
   * @param left one quantity or none
   * @param right another of the same kind or none
   * @param <Q> kind of quantity
   * @return true if both are empty or both are physically the same
   */
  public static <Q extends Quantity<Q>> boolean same(
      Optional<Quantity<Q>> left, Optional<Quantity<Q>> right) {
    return left.isPresent() == right.isPresent()
        && (!left.isPresent() || same(left.get(), right.get()));
  }

  /**
   * A hash that agrees with {@link #same(Quantity, Quantity)}.
   *
   * @param quantity the quantity
   * @param <Q> kind of quantity
   * @return the hash
   */
  public static <Q extends Quantity<Q>> int hash(Quantity<Q> quantity) {
    return Double.hashCode(system(quantity));
  }

  /**
   * A hash that agrees with {@link #same(Optional, Optional)}.
   *
   * @param quantity the quantity or none
   * @param <Q> kind of quantity
   * @return the hash
   */
  public static <Q extends Quantity<Q>> int hash(Optional<Quantity<Q>> quantity) {
    return quantity.isPresent() ? hash(quantity.get()) : 0;
  }

  /**
   * A number as a report shows it: ten digits, which leaves out what converting units left in the
   * last ones. Independent of the locale.
   *
   * @param value the number
   * @return its digits, such as {@code 16.16666667} or {@code 64.0}
   */
  public static String shown(double value) {
    return Math.abs(value) <= Double.MAX_VALUE
        ? Double.toString(new BigDecimal(value).round(SHOWN).doubleValue())
        : Double.toString(value);
  }

  private static <Q extends Quantity<Q>> double system(Quantity<Q> quantity) {
    return quantity.toSystemUnit().getValue().doubleValue();
  }
}
