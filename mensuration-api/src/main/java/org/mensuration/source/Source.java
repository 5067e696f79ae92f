package org.mensuration.source;

import java.util.Objects;

/**
 * A work that formulas or figures are cited from. Immutable and thread-safe.
 *
 * @param id short identifier, such as {@code briggs_ch2}
 * @param author who wrote or issued it; empty if the work does not say
 * @param year year of publication as far as it is known, as text
 * @param title title of the work
 * @param publisher publisher or series; empty if none
 * @param address where it can be read; empty if only on paper
 */
public record Source(
    String id, String author, String year, String title, String publisher, String address) {

  /**
   * Checks that the work is identified.
   *
   * @param id short identifier, such as {@code briggs_ch2}
   * @param author who wrote or issued it
   * @param year year of publication as far as it is known, as text
   * @param title title of the work
   * @param publisher publisher or series
   * @param address where it can be read
   * @throws IllegalArgumentException if id or title is blank
   */
  public Source {
    requireText(id, "id");
    requireText(title, "title");
    Objects.requireNonNull(author, "author");
    Objects.requireNonNull(year, "year");
    Objects.requireNonNull(publisher, "publisher");
    Objects.requireNonNull(address, "address");
  }

  private static void requireText(String text, String name) {
    if (Objects.requireNonNull(text, name).trim().isEmpty()) {
      throw new IllegalArgumentException("source: " + name + " is blank");
    }
  }

  /**
   * Author, year and title in one line.
   *
   * @return for example {@code D. Briggs, 1994: Forest Products Measurements}
   */
  public String shortForm() {
    String head = author.trim().isEmpty() ? "" : author;
    if (!year.trim().isEmpty()) {
      head = head.isEmpty() ? year : head + ", " + year;
    }
    return head.isEmpty() ? title : head + ": " + title;
  }
}
