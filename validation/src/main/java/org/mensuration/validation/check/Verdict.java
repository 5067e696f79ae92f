package org.mensuration.validation.check;

/** What a comparison of one cell found. */
public enum Verdict {
  /** Rounded as the column states, the computed value gives the print. */
  EQUAL_AS_PRINTED("equal as printed"),
  /** Inside what the printed digits and the rounded inputs leave open. */
  WITHIN_STEP("within step"),
  /** A known deviation, of exactly the listed amount. */
  EXPLAINED("explained"),
  /** The cell is itself the data of the rule: shown, and no check. */
  TABULATED("tabulated"),
  /** The rounded inputs leave more than a printed step open, so the cell decides nothing. */
  UNDECIDED("undecided"),
  /** Does not agree. */
  FAILED("failed");

  private final String words;

  Verdict(String words) {
    this.words = words;
  }

  /**
   * The verdict in words.
   *
   * @return for example {@code within step}
   */
  public String words() {
    return words;
  }

  /**
   * Whether the cell supports the formula.
   *
   * @return true for equal, within and explained
   */
  public boolean supports() {
    return this == EQUAL_AS_PRINTED || this == WITHIN_STEP || this == EXPLAINED;
  }
}
