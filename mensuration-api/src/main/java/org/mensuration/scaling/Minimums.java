package org.mensuration.scaling;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;

/**
 * The least that is scaled. Immutable and thread-safe.
 *
 * @param diameter least small-end diameter as measured; empty if none is set
 * @param length least length in its class, without trim; empty if none is set
 * @param netShare least share of the gross scale that must be left; a log below it is a cull; empty
 *     if none is set
 */
public record Minimums(
    Optional<Quantity<Length>> diameter,
    Optional<Quantity<Length>> length,
    OptionalDouble netShare) {
  /**
   * Checks the values.
   *
   * @param diameter least small-end diameter as measured
   * @param length least length in its class, without trim
   * @param netShare least share of the gross scale that must be left
   * @throws IllegalArgumentException if a length is negative or the share outside 0 to 1
   */
  public Minimums {
    diameter.ifPresent(least -> Amounts.requireNotNegative(least, "least diameter"));
    length.ifPresent(least -> Amounts.requireNotNegative(least, "least length"));
    netShare.ifPresent(least -> Amounts.requireIn(least, 0, 1, "least net share"));
  }

  /**
   * None.
   *
   * @return the minimums
   */
  public static Minimums none() {
    return new Minimums(Optional.empty(), Optional.empty(), OptionalDouble.empty());
  }

  /**
   * The same with a least diameter.
   *
   * @param least least small-end diameter as measured
   * @return new minimums
   */
  public Minimums withDiameter(Quantity<Length> least) {
    return new Minimums(Optional.of(least), length, netShare);
  }

  /**
   * The same with a least length.
   *
   * @param least least length in its class, without trim
   * @return new minimums
   */
  public Minimums withLength(Quantity<Length> least) {
    return new Minimums(diameter, Optional.of(least), netShare);
  }

  /**
   * The same with a cull test.
   *
   * @param least least share of the gross scale that must be left, 0 to 1
   * @return new minimums
   */
  public Minimums withNetShare(double least) {
    return new Minimums(diameter, length, OptionalDouble.of(least));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Minimums minimums
        && Physical.same(diameter, minimums.diameter)
        && Physical.same(length, minimums.length)
        && netShare.equals(minimums.netShare);
  }

  @Override
  public int hashCode() {
    return Objects.hash(Physical.hash(diameter), Physical.hash(length), netShare);
  }
}
