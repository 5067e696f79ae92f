package org.mensuration.scaling;

/** How a log longer than the longest segment is cut on paper. */
public enum Split {
  /** It is not: a longer log is refused. */
  NONE("not split"),
  /**
   * As few segments as will do, near equal in whole length classes, the longer ones at the butt.
   */
  NEAR_EQUAL("near equal segments"),
  /** Segments of the full length from the small end, the rest at the butt. */
  FULL_FROM_SMALL_END("full segments from the small end, the rest at the butt");

  private final String words;

  Split(String words) {
    this.words = words;
  }

  /**
   * The split in words.
   *
   * @return for example {@code near equal segments}
   */
  public String words() {
    return words;
  }
}
