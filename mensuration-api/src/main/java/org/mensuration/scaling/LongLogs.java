package org.mensuration.scaling;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;

/**
 * What becomes of logs longer than a scale may be taken at once. Immutable and thread-safe.
 *
 * @param longest longest segment, without trim; empty if the convention sets none
 * @param split how longer logs are cut on paper
 * @param taper where the diameters of the lower segments come from
 */
public record LongLogs(Optional<Quantity<Length>> longest, Split split, Taper taper) {
  /**
   * Checks the length.
   *
   * @param longest longest segment, without trim
   * @param split how longer logs are cut on paper
   * @param taper where the diameters of the lower segments come from
   * @throws IllegalArgumentException if the length is not above zero, or logs are to be split but
   *     there is none
   */
  public LongLogs {
    Objects.requireNonNull(split, "split");
    Objects.requireNonNull(taper, "taper");
    longest.ifPresent(length -> Amounts.requireAboveZero(length, "longest segment"));
    if (!longest.isPresent() && split != Split.NONE) {
      throw new IllegalArgumentException(
          "long logs: " + split.words() + " needs a longest segment");
    }
  }

  /**
   * No limit: every log is scaled in one piece.
   *
   * @return the custom
   */
  public static LongLogs inOnePiece() {
    return new LongLogs(Optional.empty(), Split.NONE, Taper.none());
  }

  /**
   * Longer logs are refused.
   *
   * @param longest longest log
   * @return the custom
   */
  public static LongLogs refusedAbove(Quantity<Length> longest) {
    return new LongLogs(Optional.of(longest), Split.NONE, Taper.none());
  }

  /**
   * Longer logs are cut on paper.
   *
   * @param longest longest segment
   * @param split how they are cut
   * @param taper where the diameters of the lower segments come from
   * @return the custom
   */
  public static LongLogs split(Quantity<Length> longest, Split split, Taper taper) {
    return new LongLogs(Optional.of(longest), split, taper);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LongLogs custom
        && Physical.same(longest, custom.longest)
        && split.equals(custom.split)
        && taper.equals(custom.taper);
  }

  @Override
  public int hashCode() {
    return Objects.hash(Physical.hash(longest), split, taper);
  }
}
