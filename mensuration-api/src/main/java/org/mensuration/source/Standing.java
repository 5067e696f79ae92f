package org.mensuration.source;

/** How far a citation has been seen. */
public enum Standing {
  /** The place was read. */
  PUBLISHED("published"),
  /** Known to the trade; no source is named. */
  COMMON_PRACTICE("common practice, no source"),
  /** Recalled; the place was not read. Replace it by a read source before relying on it. */
  FROM_MEMORY("from memory"),
  /** Follows from geometry or algebra; the derivation is the evidence. */
  DERIVED("derived");

  private final String words;

  Standing(String words) {
    this.words = words;
  }

  /**
   * The standing as it is printed beside a citation.
   *
   * @return lower-case words
   */
  public String words() {
    return words;
  }
}
