package org.mensuration.quantity;

/** Whether a diameter or a volume includes the bark. */
public enum BarkBasis {
  /** Bark included. */
  OVER("over bark"),
  /** Bark left out. */
  UNDER("under bark"),
  /** Not stated. */
  UNKNOWN("bark not stated");

  private final String words;

  BarkBasis(String words) {
    this.words = words;
  }

  /**
   * The basis in words.
   *
   * @return for example {@code under bark}
   */
  public String words() {
    return words;
  }
}
