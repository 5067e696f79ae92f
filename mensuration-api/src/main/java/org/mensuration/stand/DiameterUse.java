package org.mensuration.stand;

/** How noted diameters enter the arithmetic. Immutable and thread-safe. */
public enum DiameterUse {
  /** As noted. */
  AS_RECORDED("diameters as recorded"),
  /**
   * Floored to the whole centimetre when noted, and used at the middle of it: half a cm is added.
   */
  MID_CENTIMETRE("diameters floored to the centimetre, used at its middle (half a cm added)");

  private final String text;

  DiameterUse(String text) {
    this.text = text;
  }

  /**
   * The choice in words, to be printed beside the figures.
   *
   * @return the words
   */
  public String text() {
    return text;
  }
}
