package org.mensuration.internal.stem;

import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.mensuration.kernel.VariableExponentTaper;

/**
 * Volume of a taper curve that has no closed integral. The height is written as H (1 - s³)², so
 * that neither the root of the height near the ground nor the broken power near the tip bends too
 * sharply for Gauss's rule. Unchecked: NaN in, NaN out. Stateless and thread-safe.
 */
public final class TaperIntegral {
  private static final int PLACES = 16;
  private static final double RELATIVE = 1e-12;
  private static final double ABSOLUTE = 1e-300;
  private static final int FEWEST_ROUNDS = 2;
  private static final int MOST_ROUNDS = 60;
  private static final int MOST_EVALUATIONS = 200_000;

  /** Divides π d² with d in cm to give an area in m². */
  private static final double AREA_DIVISOR = 40000.0;

  private static final int LOWER = 2;
  private static final int UPPER = 3;

  private TaperIntegral() {}

  /**
   * Volume of a variable-exponent curve between two heights.
   *
   * @param x breast-height diameter, height of the tip, lower and upper height, relative height of
   *     inflection, a0, a1, a2, b1 to b5
   * @return volume in m³; NaN if the integral does not settle
   */
  public static double variableExponent(double[][] x) {
    double height = x[1][0];
    double from = parameter(x[UPPER][0] / height);
    double to = parameter(x[LOWER][0] / height);
    double[][] at = new double[x.length - 1][];
    System.arraycopy(x, 0, at, 0, LOWER);
    System.arraycopy(x, UPPER + 1, at, LOWER + 1, x.length - UPPER - 1);
    double[] wanted = new double[1];
    at[LOWER] = wanted;
    try {
      double integral =
          new IterativeLegendreGaussIntegrator(
                  PLACES, RELATIVE, ABSOLUTE, FEWEST_ROUNDS, MOST_ROUNDS)
              .integrate(
                  MOST_EVALUATIONS,
                  part -> {
                    double s = from + part * (to - from);
                    double root = (1 - s) * (1 + s + s * s);
                    wanted[0] = root * root * height;
                    double diameter = VariableExponentTaper.diameter(at);
                    return diameter * diameter * (6 * root * (s * s));
                  },
                  0,
                  1);
      return Math.PI * integral * (to - from) * height / AREA_DIVISOR;
    } catch (MathIllegalStateException unsettled) {
      return Double.NaN;
    }
  }

  /** s of a relative height, with z = (1 - s³)². */
  private static double parameter(double z) {
    return StrictMath.cbrt((1 - z) / (1 + Math.sqrt(z)));
  }
}
