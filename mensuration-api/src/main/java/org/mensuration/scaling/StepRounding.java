package org.mensuration.scaling;

/** How a reading or an amount goes to a class, and what becomes of an exact half. */
public enum StepRounding {
  /** Down to the class below. */
  DOWN("down"),
  /** Up to the class above. */
  UP("up"),
  /** To the nearest class, a half up. */
  HALF_UP("nearest, a half up"),
  /** To the nearest class, a half down. */
  HALF_DOWN("nearest, a half down"),
  /** To the nearest class, the first half up, the next down, and so on through the logs. */
  HALF_ALTERNATING_UP_FIRST("nearest, halves by turns, the first up"),
  /** To the nearest class, the first half down, the next up, and so on through the logs. */
  HALF_ALTERNATING_DOWN_FIRST("nearest, halves by turns, the first down"),
  /** To the nearest class; an exact half is refused, because the source does not settle it. */
  HALF_REFUSED("nearest, an exact half is not settled");

  private final String words;

  StepRounding(String words) {
    this.words = words;
  }

  /**
   * The rounding in words.
   *
   * @return for example {@code nearest, a half up}
   */
  public String words() {
    return words;
  }
}
