package org.mensuration.kernel;

/**
 * A taper curve whose exponent changes along the stem. Diameters in cm, heights in m. Unchecked:
 * NaN in, NaN out. Stateless and thread-safe.
 */
public final class VariableExponentTaper {
  /** Keeps the logarithm finite on the ground. */
  private static final double ABOVE_GROUND = 0.001;

  private VariableExponentTaper() {}

  /**
   * Diameter at a height.
   *
   * @param x breast-height diameter, height of the tip, height wanted, relative height of
   *     inflection, a0, a1, a2, b1, b2, b3, b4, b5
   * @return diameter in cm
   */
  public static double diameter(double[][] x) {
    double breast = x[0][0];
    double z = x[2][0] / x[1][0];
    double base = logBase(z, (x[1][0] - x[2][0]) / x[1][0], x[3][0]);
    double power = exponent(z, breast / x[1][0], x);
    double scale = x[5][0] * StrictMath.log(breast) + breast * StrictMath.log(x[6][0]);
    // In two halves, or the rest could vanish before a large factor brings it back.
    double half = StrictMath.exp((scale + base * power) / 2);
    return x[4][0] * half * half;
  }

  /**
   * Logarithm of the base that is raised.
   *
   * @param z relative height
   * @param above 1 - z, by itself, so that the tip keeps its digits
   * @param inflection relative height at which it is zero
   * @return ln((1 - √z)/(1 - √p)), minus infinity at the tip
   */
  public static double logBase(double z, double above, double inflection) {
    double root = Math.sqrt(z);
    double bend = Math.sqrt(inflection);
    double ofBend = (1 - inflection) / (1 + bend);
    double gap = (inflection - z) / (bend + root);
    return Math.abs(gap) < 0.5 * ofBend
        ? StrictMath.log1p(gap / ofBend)
        : StrictMath.log(above / (1 + root) / ofBend);
  }

  /**
   * Multipliers of b1 to b4 in the exponent.
   *
   * @param z relative height
   * @return z², ln(z + 0.001), √z and the exponential of z
   */
  public static double[] terms(double z) {
    return new double[] {z * z, StrictMath.log(z + ABOVE_GROUND), Math.sqrt(z), StrictMath.exp(z)};
  }

  private static double exponent(double z, double slenderness, double[][] x) {
    double[] terms = terms(z);
    double sum = x[11][0] * slenderness;
    for (int i = 0; i < terms.length; i++) {
      sum += x[7 + i][0] * terms[i];
    }
    return sum;
  }
}
