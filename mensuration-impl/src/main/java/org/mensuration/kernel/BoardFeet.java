package org.mensuration.kernel;

/**
 * Board-foot rules: small-end diameter inside bark in inches, length in feet, result in board feet
 * of the rule. Unchecked: NaN in, NaN out. Stateless and thread-safe. The constants of the rules
 * that are polynomials stand in {@link BoardPolynomial}.
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
    return BoardPolynomial.DOYLE.scale(smallIn, lengthFt);
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
    return sections(smallIn, lengthFt) * 19 / 21;
  }

  private static double sections(double smallIn, double lengthFt) {
    double n = Math.floor(lengthFt / 4);
    double m = n * (n - 1);
    double sections =
        n * section(smallIn) + 0.11 * (smallIn * m) + 0.22 * (m * (2 * n - 1)) / 24 - 0.71 * m / 4;
    double rest = lengthFt / 4 - n;
    return sections + rest * section(smallIn + 0.5 * n);
  }

  /**
   * International 1/8-inch: the sections of {@link #internationalQuarter} without the factor for
   * the wider kerf.
   *
   * @param smallIn small-end diameter in inches
   * @param lengthFt length in feet
   * @return board feet by International 1/8-inch, unrounded
   */
  public static double internationalEighth(double smallIn, double lengthFt) {
    return sections(smallIn, lengthFt);
  }

  /**
   * Scribner in its regression form.
   *
   * @param smallIn small-end diameter in inches
   * @param lengthFt length in feet
   * @return board feet by the Scribner formula
   */
  public static double scribnerFormula(double smallIn, double lengthFt) {
    return BoardPolynomial.SCRIBNER_FORMULA.scale(smallIn, lengthFt);
  }

  /**
   * Vermont: half the square of the diameter for twelve feet.
   *
   * @param smallIn small-end diameter in inches
   * @param lengthFt length in feet
   * @return board feet by the Vermont rule
   */
  public static double vermont(double smallIn, double lengthFt) {
    return BoardPolynomial.VERMONT.scale(smallIn, lengthFt);
  }

  /**
   * Roy.
   *
   * @param smallIn small-end diameter in inches
   * @param lengthFt length in feet
   * @return board feet by Roy
   */
  public static double roy(double smallIn, double lengthFt) {
    return BoardPolynomial.ROY.scale(smallIn, lengthFt);
  }

  /**
   * Ontario.
   *
   * @param smallIn small-end diameter in inches
   * @param lengthFt length in feet
   * @return board feet by the Ontario rule
   */
  public static double ontario(double smallIn, double lengthFt) {
    return BoardPolynomial.ONTARIO.scale(smallIn, lengthFt);
  }

  /**
   * British Columbia.
   *
   * @param smallIn small-end diameter in inches
   * @param lengthFt length in feet
   * @return board feet by the British Columbia rule
   */
  public static double britishColumbia(double smallIn, double lengthFt) {
    return BoardPolynomial.BRITISH_COLUMBIA.scale(smallIn, lengthFt);
  }

  /**
   * Knouf's rule of thumb for Scribner.
   *
   * @param smallIn small-end diameter in inches
   * @param lengthFt length in feet
   * @return board feet by Knouf
   */
  public static double knouf(double smallIn, double lengthFt) {
    return BoardPolynomial.KNOUF.scale(smallIn, lengthFt);
  }

  /**
   * Ropp's rule of thumb.
   *
   * @param smallIn small-end diameter in inches
   * @param lengthFt length in feet
   * @return board feet by Ropp
   */
  public static double ropp(double smallIn, double lengthFt) {
    return BoardPolynomial.ROPP.scale(smallIn, lengthFt);
  }

  /**
   * Blodgett units: pieces sixteen inches across and one foot long.
   *
   * @param diameterIn diameter in inches
   * @param lengthFt length in feet
   * @return Blodgett feet
   */
  public static double blodgett(double diameterIn, double lengthFt) {
    return BoardPolynomial.BLODGETT.scale(diameterIn, lengthFt);
  }

  /**
   * International 1/4-inch in continuous form: the polynomial that the sum over four-foot sections
   * makes of diameter and length, taken at any length.
   *
   * @param smallIn small-end diameter in inches
   * @param lengthFt length in feet
   * @return board feet by the continuous form, unrounded
   */
  public static double internationalQuarterContinuous(double smallIn, double lengthFt) {
    double ofDiameter = (0.04976191 * smallIn - 0.1854762) * smallIn + 0.04222222;
    double ofLength = 0.0002591767 * lengthFt + 0.006220239 * smallIn - 0.01159226;
    return (ofDiameter + ofLength * lengthFt) * lengthFt;
  }

  /**
   * Doyle up to 28 inches and the Scribner formula above.
   *
   * @param smallIn small-end diameter in whole inches
   * @param lengthFt length in feet
   * @return board feet by Doyle-Scribner
   */
  public static double doyleScribner(double smallIn, double lengthFt) {
    return smallIn <= 28 ? doyle(smallIn, lengthFt) : scribnerFormula(smallIn, lengthFt);
  }

  /**
   * Vermont by sections: each section by {@link #vermont} with its own small-end diameter.
   *
   * @param smallIn small-end diameter of each section in inches
   * @param lengthFt length of each section in feet; as many
   * @return board feet by the Vermont rule
   */
  public static double vermontSections(double[] smallIn, double[] lengthFt) {
    double sum = 0;
    for (int i = 0; i < smallIn.length; i++) {
      sum += vermont(smallIn[i], lengthFt[i]);
    }
    return sum;
  }

  /**
   * Blodgett in board feet by the diameter of the middle: 115 units to the thousand.
   *
   * @param middleIn diameter half way between the ends in inches
   * @param lengthFt length in feet
   * @return board feet by Blodgett
   */
  public static double blodgettMiddle(double middleIn, double lengthFt) {
    return blodgett(middleIn, lengthFt) * 1000 / 115;
  }

  /**
   * Blodgett in board feet by the diameter of the small end: 106 units to the thousand.
   *
   * @param smallIn small-end diameter in inches
   * @param lengthFt length in feet
   * @return board feet by Blodgett
   */
  public static double blodgettSmallEnd(double smallIn, double lengthFt) {
    return blodgett(smallIn, lengthFt) * 1000 / 106;
  }

  /**
   * To the nearest step of a printed table, a half up.
   *
   * @param boardFeet the amount
   * @param step step of the table, such as 5 or 10
   * @return the amount as printed
   */
  public static double nearest(double boardFeet, double step) {
    return Math.floor(boardFeet / step + 0.5) * step;
  }

  /** One section by the 1/8-inch rule; factored, as the two terms nearly cancel in thin logs. */
  private static double section(double smallIn) {
    return smallIn * (0.22 * smallIn - 0.71);
  }
}
