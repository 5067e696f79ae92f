package org.mensuration.scaling;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;

/**
 * Where the small-end diameters of the lower segments of a long log come from. Immutable and
 * thread-safe.
 *
 * @param kind how the taper is shared
 * @param rise growth of the diameter over {@code run}, for a stated taper only
 * @param run length over which it grows, for a stated taper only
 */
public record Taper(Kind kind, Optional<Quantity<Length>> rise, Optional<Quantity<Length>> run) {
  /** The ways of sharing taper. */
  public enum Kind {
    /** Every segment takes the diameter of the small end of the log. */
    NONE,
    /** Along a straight line between the ends as measured, then to the class. */
    EVEN,
    /** Whole classes between the classes of the ends, the larger shares at the butt. */
    WHOLE_CLASSES,
    /** By a taper stated beforehand, then to the class. */
    STATED
  }

  /**
   * Checks that a stated taper is stated.
   *
   * @param kind how the taper is shared
   * @param rise growth of the diameter over {@code run}
   * @param run length over which it grows
   * @throws IllegalArgumentException if rise and run are missing from a stated taper or given for
   *     another kind, or are no taper
   */
  public Taper {
    Objects.requireNonNull(kind, "kind");
    if (rise.isPresent() != (kind == Kind.STATED) || run.isPresent() != rise.isPresent()) {
      throw new IllegalArgumentException(
          "taper " + kind + ": a stated taper, and no other, has its rise and its run");
    }
    rise.ifPresent(length -> Amounts.requireNotNegative(length, "rise of the taper"));
    run.ifPresent(length -> Amounts.requireAboveZero(length, "run of the taper"));
  }

  /**
   * No taper: every segment takes the diameter of the small end of the log.
   *
   * @return the taper
   */
  public static Taper none() {
    return new Taper(Kind.NONE, Optional.empty(), Optional.empty());
  }

  /**
   * Along a straight line between the ends as measured.
   *
   * @return the taper; a long log then needs its large end
   */
  public static Taper even() {
    return new Taper(Kind.EVEN, Optional.empty(), Optional.empty());
  }

  /**
   * Whole classes between the classes of the ends, the larger shares at the butt.
   *
   * @return the taper; a long log then needs its large end
   */
  public static Taper wholeClasses() {
    return new Taper(Kind.WHOLE_CLASSES, Optional.empty(), Optional.empty());
  }

  /**
   * A taper stated beforehand, such as half an inch in four feet.
   *
   * @param rise growth of the diameter over {@code run}
   * @param run length over which it grows
   * @return the taper
   */
  public static Taper stated(Quantity<Length> rise, Quantity<Length> run) {
    return new Taper(Kind.STATED, Optional.of(rise), Optional.of(run));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Taper taper
        && Physical.same(rise, taper.rise)
        && Physical.same(run, taper.run)
        && kind.equals(taper.kind);
  }

  @Override
  public int hashCode() {
    return Objects.hash(Physical.hash(rise), Physical.hash(run), kind);
  }
}
