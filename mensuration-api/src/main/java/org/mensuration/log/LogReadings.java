package org.mensuration.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.quantity.Physical;

/**
 * The readings taken on a log before a convention rounds and averages them: one or two crossed
 * readings a place, or the girth of the middle. Immutable and thread-safe; equal when the readings
 * are physically equal in their order.
 *
 * @param large readings of the large end; empty if not measured
 * @param middle readings of the middle; empty if not measured
 * @param small readings of the small end; empty if not measured
 * @param middleGirth girth of the middle; empty if not measured
 * @param length length of the log
 * @param bark whether the readings include the bark
 */
public record LogReadings(
    List<Quantity<Length>> large,
    List<Quantity<Length>> middle,
    List<Quantity<Length>> small,
    Optional<Quantity<Length>> middleGirth,
    Quantity<Length> length,
    BarkBasis bark) {

  /**
   * Copies the readings.
   *
   * @param large readings of the large end
   * @param middle readings of the middle
   * @param small readings of the small end
   * @param middleGirth girth of the middle
   * @param length length of the log
   * @param bark whether the readings include the bark
   */
  public LogReadings {
    large = List.copyOf(large);
    middle = List.copyOf(middle);
    small = List.copyOf(small);
    Objects.requireNonNull(middleGirth, "middleGirth");
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(bark, "bark");
  }

  /**
   * A log with one reading a place.
   *
   * @param log the log
   * @return its readings
   */
  public static LogReadings of(Log log) {
    return new LogReadings(
        list(log.large()),
        list(log.middle()),
        list(log.small()),
        Optional.empty(),
        log.length(),
        log.bark());
  }

  /**
   * Two crossed readings of the middle.
   *
   * @param first one reading
   * @param second the reading at right angles to it
   * @param length length of the log
   * @return the readings, bark not stated
   */
  public static LogReadings crossedMiddle(
      Quantity<Length> first, Quantity<Length> second, Quantity<Length> length) {
    return at(List.of(), List.of(first, second), List.of(), Optional.empty(), length);
  }

  /**
   * Two crossed readings of the small end.
   *
   * @param first one reading
   * @param second the reading at right angles to it
   * @param length length of the log
   * @return the readings, bark not stated
   */
  public static LogReadings crossedSmallEnd(
      Quantity<Length> first, Quantity<Length> second, Quantity<Length> length) {
    return at(List.of(), List.of(), List.of(first, second), Optional.empty(), length);
  }

  /**
   * Two crossed readings of each end.
   *
   * @param large readings of the large end
   * @param small readings of the small end
   * @param length length of the log
   * @return the readings, bark not stated
   */
  public static LogReadings ends(
      List<Quantity<Length>> large, List<Quantity<Length>> small, Quantity<Length> length) {
    return at(large, List.of(), small, Optional.empty(), length);
  }

  /**
   * The girth of the middle.
   *
   * @param girth girth of the middle
   * @param length length of the log
   * @return the readings, bark not stated
   */
  public static LogReadings girth(Quantity<Length> girth, Quantity<Length> length) {
    return at(List.of(), List.of(), List.of(), Optional.of(girth), length);
  }

  private static LogReadings at(
      List<Quantity<Length>> large,
      List<Quantity<Length>> middle,
      List<Quantity<Length>> small,
      Optional<Quantity<Length>> girth,
      Quantity<Length> length) {
    return new LogReadings(large, middle, small, girth, length, BarkBasis.UNKNOWN);
  }

  private static List<Quantity<Length>> list(Optional<Quantity<Length>> reading) {
    List<Quantity<Length>> readings = new ArrayList<>();
    reading.ifPresent(readings::add);
    return readings;
  }

  /**
   * The same readings with their bark basis stated.
   *
   * @param bark whether the readings include the bark
   * @return new readings
   */
  public LogReadings withBark(BarkBasis bark) {
    return new LogReadings(large, middle, small, middleGirth, length, bark);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LogReadings readings
        && same(large, readings.large)
        && same(middle, readings.middle)
        && same(small, readings.small)
        && Physical.same(middleGirth, readings.middleGirth)
        && Physical.same(length, readings.length)
        && bark == readings.bark;
  }

  private static boolean same(List<Quantity<Length>> left, List<Quantity<Length>> right) {
    boolean same = left.size() == right.size();
    for (int i = 0; same && i < left.size(); i++) {
      same = Physical.same(left.get(i), right.get(i));
    }
    return same;
  }

  @Override
  public int hashCode() {
    int hash = Objects.hash(Physical.hash(middleGirth), Physical.hash(length), bark);
    for (List<Quantity<Length>> place : List.of(large, middle, small)) {
      for (Quantity<Length> reading : place) {
        hash = 31 * hash + Physical.hash(reading);
      }
      hash = 31 * hash;
    }
    return hash;
  }
}
