package org.mensuration.kernel;

/**
 * Board-foot rules: small-end diameter inside bark in inches, length in feet, result in board feet
 * of the rule. Unchecked: NaN in, NaN out. Stateless and thread-safe.
 */
public final class BoardFeet {
  private BoardFeet() {}

  /**
   * Doyle: four inches off the diameter, a quarter of the rest squared, times length.
   *
   * @param smallIn small-end diameter in inches
   * @param lengthFt length in feet
   * @return board feet by Doyle
   */
  public static double doyle(double smallIn, double lengthFt) {
    double quarter = (smallIn - 4) / 4;
    return quarter * quarter * lengthFt;
  }

  /**
   * International 1/4-inch: four-foot sections that grow by half an inch, a rest at the butt in
   * proportion. The sum over n sections is written in closed form, since the sum of k is n(n-1)/2
   * and that of k² n(n-1)(2n-1)/6.
   *
   * @param smallIn small-end diameter in inches
   * @param lengthFt length in feet
   * @return board feet by International 1/4-inch, unrounded
   */
  public static double internationalQuarter(double smallIn, double lengthFt) {
    double n = Math.floor(lengthFt / 4);
    double m = n * (n - 1);
    double sections =
        n * section(smallIn) + 0.11 * (smallIn * m) + 0.22 * (m * (2 * n - 1)) / 24 - 0.71 * m / 4;
    double rest = lengthFt / 4 - n;
    return (sections + rest * section(smallIn + 0.5 * n)) * 19 / 21;
  }

  /** One section by the 1/8-inch rule; factored, as the two terms nearly cancel in thin logs. */
  private static double section(double smallIn) {
    return smallIn * (0.22 * smallIn - 0.71);
  }
}
