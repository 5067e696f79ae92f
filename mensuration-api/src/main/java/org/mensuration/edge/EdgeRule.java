package org.mensuration.edge;

/** What is done about trees whose counting circle leaves the tract. */
public enum EdgeRule {
  /** Nothing: trees near the edge are counted too seldom, so the mean is too low. */
  NONE("no correction", "counts trees near an edge too seldom"),

  /**
   * The point is mirrored at every side, and at the corners through the corner; the trees of the
   * tract are counted again from there. On a rectangle the mean over all points is exact. Rectangle
   * only, and the circles must not be wider than its shorter side.
   */
  MIRAGE("mirage", ""),

  /**
   * The point is mirrored at every side but not through corners. Biased: what a circle has beyond a
   * corner is missing. On a polygon a tree counts again where the line of sight from the mirrored
   * point crosses that side.
   */
  MIRAGE_SIDES_ONLY("mirage at sides only", "biased: parts of circles beyond a corner are missing"),

  /**
   * From each counted tree on, as far again on the same line; if that spot lies outside the tract,
   * the tree counts twice. Any boundary, and it needs no map: a crew records the weight. Exact
   * along a straight edge; near a corner a part of the error stays.
   */
  WALKTHROUGH("walkthrough", "leaves a part of the error where two edges are near one tree"),

  /**
   * Points are also laid out beyond the edge, and the trees of the tract counted from there; the
   * sum is divided by the number of points inside. Any boundary.
   */
  EXTENDED_GRID(
      "extended grid", "needs points beyond the edge, at least as far as the circles reach"),

  /**
   * The tract repeats itself beyond its edges. For tests and models, not for field work. Rectangle
   * only, and the circles must not be wider than its shorter side.
   */
  TOROIDAL("toroidal", "for tests only");

  private final String words;
  private final String caution;

  EdgeRule(String words, String caution) {
    this.words = words;
    this.caution = caution;
  }

  /**
   * The name of the rule in print.
   *
   * @return for example {@code walkthrough}
   */
  public String words() {
    return words;
  }

  /**
   * What to print beside a figure that was found with the rule.
   *
   * @return the caution; empty if there is none
   */
  public String caution() {
    return caution;
  }
}
