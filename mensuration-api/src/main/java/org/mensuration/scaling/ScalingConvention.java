package org.mensuration.scaling;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;
import org.mensuration.source.Citation;

/**
 * The customs around a rule: what is read, what is dropped, how long logs are cut, where amounts
 * are rounded. Immutable and thread-safe.
 *
 * @param name its name
 * @param diameters classes of the diameters
 * @param lengths classes of the lengths
 * @param trim length that is left out of the scale, once a log
 * @param longLogs what becomes of long logs
 * @param minimums the least that is scaled
 * @param roundings where amounts are rounded
 * @param citations where its parts are stated; empty for a caller's own
 * @param notes what the sources leave open
 */
public record ScalingConvention(
    String name,
    SizeClass diameters,
    SizeClass lengths,
    Quantity<Length> trim,
    LongLogs longLogs,
    Minimums minimums,
    Roundings roundings,
    List<Citation> citations,
    List<String> notes) {
  /**
   * Checks that it has a name and that trim is a length.
   *
   * @param name its name
   * @param diameters classes of the diameters
   * @param lengths classes of the lengths
   * @param trim length that is left out of the scale, once a log
   * @param longLogs what becomes of long logs
   * @param minimums the least that is scaled
   * @param roundings where amounts are rounded
   * @param citations where its parts are stated
   * @param notes what the sources leave open
   * @throws IllegalArgumentException if the name is blank or the trim negative
   */
  public ScalingConvention {
    if (name.trim().isEmpty()) {
      throw new IllegalArgumentException("scaling convention: the name is blank");
    }
    Objects.requireNonNull(diameters, "diameters");
    Objects.requireNonNull(lengths, "lengths");
    Amounts.requireNotNegative(trim, name + ": trim");
    Objects.requireNonNull(longLogs, "longLogs");
    Objects.requireNonNull(minimums, "minimums");
    Objects.requireNonNull(roundings, "roundings");
    citations = List.copyOf(citations);
    notes = List.copyOf(notes);
  }

  /**
   * A convention of classes only: no trim, logs in one piece, no minimums, no rounding of amounts.
   * The rest is added with the methods that begin with {@code with}.
   *
   * @param name its name
   * @param diameters classes of the diameters
   * @param lengths classes of the lengths
   * @return the convention
   */
  public static ScalingConvention of(String name, SizeClass diameters, SizeClass lengths) {
    return new ScalingConvention(
        name,
        diameters,
        lengths,
        lengths.width().multiply(0),
        LongLogs.inOnePiece(),
        Minimums.none(),
        Roundings.none(),
        List.of(),
        List.of());
  }

  /**
   * The same under another name, as a changed convention needs one.
   *
   * @param other the name
   * @return a new convention
   */
  public ScalingConvention named(String other) {
    return new ScalingConvention(
        other, diameters, lengths, trim, longLogs, minimums, roundings, citations, notes);
  }

  /**
   * The same with other classes of the diameters.
   *
   * @param other the classes
   * @return a new convention
   */
  public ScalingConvention withDiameters(SizeClass other) {
    return new ScalingConvention(
        name, other, lengths, trim, longLogs, minimums, roundings, citations, notes);
  }

  /**
   * The same with other classes of the lengths.
   *
   * @param other the classes
   * @return a new convention
   */
  public ScalingConvention withLengths(SizeClass other) {
    return new ScalingConvention(
        name, diameters, other, trim, longLogs, minimums, roundings, citations, notes);
  }

  /**
   * The same with another trim.
   *
   * @param other length that is left out of the scale, once a log
   * @return a new convention
   */
  public ScalingConvention withTrim(Quantity<Length> other) {
    return new ScalingConvention(
        name, diameters, lengths, other, longLogs, minimums, roundings, citations, notes);
  }

  /**
   * The same with another custom for long logs.
   *
   * @param other the custom
   * @return a new convention
   */
  public ScalingConvention withLongLogs(LongLogs other) {
    return new ScalingConvention(
        name, diameters, lengths, trim, other, minimums, roundings, citations, notes);
  }

  /**
   * The same with other minimums.
   *
   * @param other the minimums
   * @return a new convention
   */
  public ScalingConvention withMinimums(Minimums other) {
    return new ScalingConvention(
        name, diameters, lengths, trim, longLogs, other, roundings, citations, notes);
  }

  /**
   * The same with other roundings of amounts.
   *
   * @param other the roundings
   * @return a new convention
   */
  public ScalingConvention withRoundings(Roundings other) {
    return new ScalingConvention(
        name, diameters, lengths, trim, longLogs, minimums, other, citations, notes);
  }

  /**
   * The same with its sources and what they leave open.
   *
   * @param sources where its parts are stated
   * @param open what the sources leave open
   * @return a new convention
   */
  public ScalingConvention citing(List<Citation> sources, List<String> open) {
    return new ScalingConvention(
        name, diameters, lengths, trim, longLogs, minimums, roundings, sources, open);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ScalingConvention convention
        && Physical.same(trim, convention.trim)
        && name.equals(convention.name)
        && diameters.equals(convention.diameters)
        && lengths.equals(convention.lengths)
        && longLogs.equals(convention.longLogs)
        && minimums.equals(convention.minimums)
        && roundings.equals(convention.roundings)
        && citations.equals(convention.citations)
        && notes.equals(convention.notes);
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        Physical.hash(trim),
        name,
        diameters,
        lengths,
        longLogs,
        minimums,
        roundings,
        citations,
        notes);
  }
}
