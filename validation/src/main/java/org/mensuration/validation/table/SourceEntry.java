package org.mensuration.validation.table;

import java.util.Objects;

/**
 * One work of the bibliography. Immutable and thread-safe.
 *
 * @param id identifier used in heads
 * @param author author or body
 * @param year year as known
 * @param title title
 * @param publisher publisher or series
 * @param address where it was read
 * @param read how far it was read
 */
public record SourceEntry(
    String id,
    String author,
    String year,
    String title,
    String publisher,
    String address,
    String read) {
  /**
   * Checks that every part is there.
   *
   * @param id identifier used in heads
   * @param author author or body
   * @param year year as known
   * @param title title
   * @param publisher publisher or series
   * @param address where it was read
   * @param read how far it was read
   */
  public SourceEntry {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(author, "author");
    Objects.requireNonNull(year, "year");
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(publisher, "publisher");
    Objects.requireNonNull(address, "address");
    Objects.requireNonNull(read, "read");
  }

  /**
   * Author and year.
   *
   * @return for example {@code E. A. Chase 1913}; the title where no author is known
   */
  public String shortForm() {
    return (author.isBlank() ? title : author) + (year.isBlank() ? "" : " " + year);
  }
}
