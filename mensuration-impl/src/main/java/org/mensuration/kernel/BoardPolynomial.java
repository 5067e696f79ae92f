package org.mensuration.kernel;

/**
 * Board-foot rules that are a polynomial of the diameter times the length, the constants as data:
 * ((a x + b) x + c) L / divisor with x the diameter less a slab. One arithmetic serves the single
 * log and arrays of logs, so that both give the same bits. Diameter in inches, length in feet,
 * result in the feet of the rule. Unchecked: NaN in, NaN out. Immutable and thread-safe.
 */
public final class BoardPolynomial {
  /** Doyle: four inches of slab, a sixteenth of the square. */
  public static final BoardPolynomial DOYLE = new BoardPolynomial(4, 1, 0, 0, 16);

  /** Scribner in its regression form. */
  public static final BoardPolynomial SCRIBNER_FORMULA = new BoardPolynomial(0, 0.79, -2, -4, 16);

  /** Vermont: half the square for twelve feet. */
  public static final BoardPolynomial VERMONT = new BoardPolynomial(0, 1, 0, 0, 24);

  /** Roy: an inch of slab, a twentieth of the square. */
  public static final BoardPolynomial ROY = new BoardPolynomial(1, 1, 0, 0, 20);

  /** Ontario. */
  public static final BoardPolynomial ONTARIO = new BoardPolynomial(0, 0.55, -1.2, 0, 12);

  /** British Columbia: 1 1/2 in of slab, eight elevenths of the circle. */
  public static final BoardPolynomial BRITISH_COLUMBIA =
      new BoardPolynomial(1.5, 2 * Math.PI, 0, 0, 132);

  /** Knouf's rule of thumb for Scribner. */
  public static final BoardPolynomial KNOUF = new BoardPolynomial(0, 1, -3, 0, 20);

  /** Ropp's rule of thumb. */
  public static final BoardPolynomial ROPP = new BoardPolynomial(0, 1, 0, -60, 20);

  /** Blodgett units: pieces sixteen inches across and one foot long. */
  public static final BoardPolynomial BLODGETT = new BoardPolynomial(0, 1, 0, 0, 256);

  private final double slab;
  private final double square;
  private final double linear;
  private final double constant;
  private final double divisor;

  private BoardPolynomial(
      double slab, double square, double linear, double constant, double divisor) {
    this.slab = slab;
    this.square = square;
    this.linear = linear;
    this.constant = constant;
    this.divisor = divisor;
  }

  /**
   * Scale of one log.
   *
   * @param diameterIn diameter in inches
   * @param lengthFt length in feet
   * @return board feet by the rule
   */
  public double scale(double diameterIn, double lengthFt) {
    double x = diameterIn - slab;
    return ((square * x + linear) * x + constant) * lengthFt / divisor;
  }

  /**
   * Scales of many logs, without allocation. All arrays are at least as long as the results.
   *
   * @param diameterIn diameters in inches
   * @param lengthFt lengths in feet
   * @param scale filled with board feet by the rule
   */
  public void scales(double[] diameterIn, double[] lengthFt, double[] scale) {
    for (int i = 0; i < scale.length; i++) {
      scale[i] = scale(diameterIn[i], lengthFt[i]);
    }
  }
}
