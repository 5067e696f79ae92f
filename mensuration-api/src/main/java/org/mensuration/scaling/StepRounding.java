package org.mensuration.scaling;

/**
 * How a reading or an amount goes to a class, and what becomes of an exact half.
 *
 * <p>Sources disagree on the half: it goes up (Idaho Board of Scaling Practices, How to determine
 * the scale of a log, Log diameter measurements; fractions of a deduction, USDA Forest Service
 * 1985, FSH 2409.11 s.21), up and down by turns (Wengert 2001, Measuring Logs and Lumber, opening
 * section; Code of Georgia 2-14-80, shared evenly), by turns with the first down (Landowner
 * article: measuring logs), or is not settled (9 V.S.A. 2693).
 */
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
