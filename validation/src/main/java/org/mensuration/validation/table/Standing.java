package org.mensuration.validation.table;

import java.util.Optional;

/** How far the rows of a table can serve as evidence. */
public enum Standing {
  /** A table printed in a source that was read. */
  PUBLISHED_TABLE("published-table", true),
  /** A worked example or statement printed in a source that was read. */
  WORKED_EXAMPLE("worked-example", true),
  /** Known to the trade, without a source. */
  COMMON_PRACTICE("common-practice", false),
  /** Recalled, the source not seen. */
  FROM_MEMORY("from-memory", false),
  /** Worked out independently; a test vector and no reference. */
  COMPUTED("computed", false);

  private final String word;
  private final boolean published;

  Standing(String word, boolean published) {
    this.word = word;
    this.published = published;
  }

  /**
   * The word in a table's head.
   *
   * @return for example {@code published-table}
   */
  public String word() {
    return word;
  }

  /**
   * Whether the rows are a published check.
   *
   * @return true for tables and examples that were read
   */
  public boolean published() {
    return published;
  }

  static Optional<Standing> of(String word) {
    for (Standing standing : values()) {
      if (standing.word.equals(word)) {
        return Optional.of(standing);
      }
    }
    return Optional.empty();
  }
}
