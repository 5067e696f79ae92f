package org.mensuration.log;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.quantity.Physical;

/**
 * A log or stem section as measured. A diameter that was not measured is empty, never zero; zero is
 * the tip of a stem. Immutable and thread-safe; two logs are equal when their measurements are
 * physically equal, whatever their units.
 *
 * @param large diameter of the large end
 * @param middle diameter half way between the ends
 * @param small diameter of the small end
 * @param length length between the ends
 * @param bark whether the diameters include the bark
 */
public record Log(
    Optional<Quantity<Length>> large,
    Optional<Quantity<Length>> middle,
    Optional<Quantity<Length>> small,
    Quantity<Length> length,
    BarkBasis bark) {

  /**
   * Checks that nothing is null.
   *
   * @param large diameter of the large end
   * @param middle diameter half way between the ends
   * @param small diameter of the small end
   * @param length length between the ends
   * @param bark whether the diameters include the bark
   */
  public Log {
    Objects.requireNonNull(large, "large");
    Objects.requireNonNull(middle, "middle");
    Objects.requireNonNull(small, "small");
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(bark, "bark");
  }

  /**
   * A log measured at its small end, as board-foot rules want it.
   *
   * @param small diameter of the small end
   * @param length length of the log
   * @return the log, bark not stated
   */
  public static Log of(Quantity<Length> small, Quantity<Length> length) {
    return new Log(
        Optional.empty(), Optional.empty(), Optional.of(small), length, BarkBasis.UNKNOWN);
  }

  /**
   * A log measured at both ends.
   *
   * @param large diameter of the large end
   * @param small diameter of the small end
   * @param length length of the log
   * @return the log, bark not stated
   */
  public static Log of(Quantity<Length> large, Quantity<Length> small, Quantity<Length> length) {
    return new Log(
        Optional.of(large), Optional.empty(), Optional.of(small), length, BarkBasis.UNKNOWN);
  }

  /**
   * A log measured at its middle.
   *
   * @param middle diameter half way between the ends
   * @param length length of the log
   * @return the log, bark not stated
   */
  public static Log ofMiddle(Quantity<Length> middle, Quantity<Length> length) {
    return new Log(
        Optional.empty(), Optional.of(middle), Optional.empty(), length, BarkBasis.UNKNOWN);
  }

  /**
   * The same log with its middle measured too.
   *
   * @param middle diameter half way between the ends
   * @return a new log
   */
  public Log withMiddle(Quantity<Length> middle) {
    return new Log(large, Optional.of(middle), small, length, bark);
  }

  /**
   * The same log with its bark basis stated.
   *
   * @param bark whether the diameters include the bark
   * @return a new log
   */
  public Log withBark(BarkBasis bark) {
    return new Log(large, middle, small, length, bark);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Log log
        && Physical.same(large, log.large)
        && Physical.same(middle, log.middle)
        && Physical.same(small, log.small)
        && Physical.same(length, log.length)
        && bark == log.bark;
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        Physical.hash(large),
        Physical.hash(middle),
        Physical.hash(small),
        Physical.hash(length),
        bark);
  }
}
