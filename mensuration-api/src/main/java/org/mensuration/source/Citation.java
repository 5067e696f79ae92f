package org.mensuration.source;

import java.util.Objects;
import java.util.Optional;

/**
 * One reference of a formula: a work, the place in it, what it is cited for, and how far it was
 * seen. Immutable and thread-safe.
 *
 * @param source the work; empty for common practice and for what is derived here
 * @param locator the place in the work, or the derivation in a few words
 * @param role what the work is cited for
 * @param standing how far the place was seen
 */
public record Citation(Optional<Source> source, Locator locator, Role role, Standing standing) {

  /**
   * Checks that published and remembered citations name a work.
   *
   * @param source the work
   * @param locator the place in the work, or the derivation in a few words
   * @param role what the work is cited for
   * @param standing how far the place was seen
   * @throws IllegalArgumentException if a published citation has no source
   */
  public Citation {
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(locator, "locator");
    Objects.requireNonNull(role, "role");
    Objects.requireNonNull(standing, "standing");
    if (standing == Standing.PUBLISHED && !source.isPresent()) {
      throw new IllegalArgumentException("citation: a published citation needs its source");
    }
  }

  /**
   * A place that was read.
   *
   * @param role what it is cited for
   * @param source the work
   * @param place page, table, equation or example
   * @return the citation
   */
  public static Citation published(Role role, Source source, String place) {
    return new Citation(Optional.of(source), new Locator(place), role, Standing.PUBLISHED);
  }

  /**
   * A work recalled and not seen.
   *
   * @param role what it is cited for
   * @param source the work
   * @param place page, table, equation or example as recalled
   * @return the citation
   */
  public static Citation fromMemory(Role role, Source source, String place) {
    return new Citation(Optional.of(source), new Locator(place), role, Standing.FROM_MEMORY);
  }

  /**
   * A rule recalled without a work to name.
   *
   * @param what the rule in a few words
   * @return the citation, in the role of defining
   */
  public static Citation fromMemory(String what) {
    return new Citation(Optional.empty(), new Locator(what), Role.DEFINES, Standing.FROM_MEMORY);
  }

  /**
   * A fact that the trade uses without citing anybody.
   *
   * @param what the practice in a few words
   * @return the citation, in the role of defining
   */
  public static Citation commonPractice(String what) {
    return new Citation(
        Optional.empty(), new Locator(what), Role.DEFINES, Standing.COMMON_PRACTICE);
  }

  /**
   * A result that follows from geometry or algebra.
   *
   * @param how the derivation in a few words
   * @return the citation, in the role of defining
   */
  public static Citation derived(String how) {
    return new Citation(Optional.empty(), new Locator(how), Role.DEFINES, Standing.DERIVED);
  }

  @Override
  public String toString() {
    String work = source.map(Source::shortForm).map(text -> text + ", ").orElse("");
    String mark = standing == Standing.PUBLISHED ? "" : " (" + standing.words() + ")";
    return work + locator + mark;
  }
}
