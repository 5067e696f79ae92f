package org.mensuration.formula;

/** How a rounding step of a rule treats what lies between two steps. */
public enum RoundingMode {
  /** Down to the step below. */
  DOWN("down"),
  /** Up to the step above. */
  UP("up"),
  /** To the nearest step, halves up. */
  HALF_UP("nearest, halves up"),
  /** To the nearest step, halves down. */
  HALF_DOWN("nearest, halves down"),
  /** To the nearest step, halves to the even multiple. */
  HALF_EVEN("nearest, halves to even");

  private final String words;

  RoundingMode(String words) {
    this.words = words;
  }

  /**
   * The mode in words.
   *
   * @return for example {@code nearest, halves up}
   */
  public String words() {
    return words;
  }
}
