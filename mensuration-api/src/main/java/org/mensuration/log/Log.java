package org.mensuration.log;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
 * <p>Rules that want a third or a quarter point find it among the readings between the ends; a
 * place within {@value #PLACE} of the length counts as that point, so 0.333 is a third.
 *
 * @param large diameter of the large end
 * @param middle diameter half way between the ends
 * @param small diameter of the small end
 * @param length length between the ends
 * @param bark whether the diameters include the bark
 * @param between other diameters between the ends, from the large end on; the middle is not one
 */
public record Log(
    Optional<Quantity<Length>> large,
    Optional<Quantity<Length>> middle,
    Optional<Quantity<Length>> small,
    Quantity<Length> length,
    BarkBasis bark,
    List<DiameterAt> between) {
  /** Places nearer together than this share of the length are one place. */
  static final double PLACE = 0.001;

  private static final double MIDDLE = 0.5;

  /**
   * Checks that nothing is null and puts the readings in order.
   *
   * @param large diameter of the large end
   * @param middle diameter half way between the ends
   * @param small diameter of the small end
   * @param length length between the ends
   * @param bark whether the diameters include the bark
   * @param between other diameters between the ends
   * @throws IllegalArgumentException if two readings are of one place, or one is of the middle
   */
  public Log {
    Objects.requireNonNull(large, "large");
    Objects.requireNonNull(middle, "middle");
    Objects.requireNonNull(small, "small");
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(bark, "bark");
    between = inOrder(between);
  }

  private static List<DiameterAt> inOrder(List<DiameterAt> readings) {
    if (readings.isEmpty()) {
      return List.of();
    }
    List<DiameterAt> sorted = new ArrayList<>(readings);
    sorted.sort(Comparator.comparingDouble(DiameterAt::share));
    for (int i = 0; i < sorted.size(); i++) {
      double share = sorted.get(i).share();
      if (same(share, MIDDLE)) {
        throw new IllegalArgumentException(
            "the diameter at " + share + " of the length is the middle; give it by withMiddle");
      }
      if (i > 0 && same(share, sorted.get(i - 1).share())) {
        throw new IllegalArgumentException("two diameters at " + share + " of the length");
      }
    }
    return List.copyOf(sorted);
  }

  private static boolean same(double share, double other) {
    return Math.abs(share - other) <= PLACE;
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
        Optional.empty(),
        Optional.empty(),
        Optional.of(small),
        length,
        BarkBasis.UNKNOWN,
        List.of());
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
        Optional.of(large),
        Optional.empty(),
        Optional.of(small),
        length,
        BarkBasis.UNKNOWN,
        List.of());
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
        Optional.empty(),
        Optional.of(middle),
        Optional.empty(),
        length,
        BarkBasis.UNKNOWN,
        List.of());
  }

  /**
   * The same log with its middle measured too.
   *
   * @param middle diameter half way between the ends
   * @return a new log
   */
  public Log withMiddle(Quantity<Length> middle) {
    return new Log(large, Optional.of(middle), small, length, bark, between);
  }

  /**
   * The same log with a diameter somewhere between its ends. At a half it is the middle; a reading
   * already there is replaced.
   *
   * @param share distance from the large end as a share of the length, in (0, 1)
   * @param diameter diameter at that place
   * @return a new log
   * @throws IllegalArgumentException if the share is not in (0, 1)
   */
  public Log withDiameterAt(double share, Quantity<Length> diameter) {
    if (same(share, MIDDLE)) {
      return withMiddle(diameter);
    }
    List<DiameterAt> readings = new ArrayList<>();
    readings.add(new DiameterAt(share, diameter));
    for (DiameterAt reading : between) {
      if (!same(reading.share(), share)) {
        readings.add(reading);
      }
    }
    return new Log(large, middle, small, length, bark, readings);
  }

  /**
   * The diameter measured at a place between the ends.
   *
   * @param share distance from the large end as a share of the length
   * @return the reading within {@value #PLACE} of the length; empty if there is none
   */
  public Optional<Quantity<Length>> diameterAt(double share) {
    if (same(share, MIDDLE)) {
      return middle;
    }
    for (DiameterAt reading : between) {
      if (same(reading.share(), share)) {
        return Optional.of(reading.diameter());
      }
    }
    return Optional.empty();
  }

  /**
   * The same log with its bark basis stated.
   *
   * @param bark whether the diameters include the bark
   * @return a new log
   */
  public Log withBark(BarkBasis bark) {
    return new Log(large, middle, small, length, bark, between);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Log log
        && Physical.same(large, log.large)
        && Physical.same(middle, log.middle)
        && Physical.same(small, log.small)
        && Physical.same(length, log.length)
        && bark == log.bark
        && between.equals(log.between);
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        Physical.hash(large),
        Physical.hash(middle),
        Physical.hash(small),
        Physical.hash(length),
        bark,
        between);
  }
}
