package org.mensuration.internal.stem;

import java.util.Arrays;
import org.mensuration.internal.catalogue.TaperFormulas;
import org.mensuration.internal.catalogue.TaperVolumeFormulas;
import org.mensuration.internal.catalogue.VariableExponentFormulas;
import org.mensuration.stem.TaperCurve;

/** The families of taper curves. Stateless and thread-safe. */
public final class TaperFamily {
  private static final int EXPONENT_TERMS = 5;

  private TaperFamily() {}

  /**
   * A power curve.
   *
   * @param referenceCm diameter at the reference height
   * @param referenceM reference height
   * @param heightM height of the tip
   * @param exponent exponent of the diameter
   * @return the curve
   */
  public static TaperCurve power(
      double referenceCm, double referenceM, double heightM, double exponent) {
    return new FormulaTaper(
        TaperFormulas.POWER,
        TaperVolumeFormulas.POWER,
        new double[] {referenceCm, referenceM, heightM},
        new double[] {exponent});
  }

  /**
   * A quadratic curve.
   *
   * @param dbhCm diameter at breast height
   * @param heightM height of the tip
   * @param b three coefficients
   * @return the curve
   */
  public static TaperCurve quadratic(double dbhCm, double heightM, double... b) {
    return new FormulaTaper(
        TaperFormulas.QUADRATIC,
        TaperVolumeFormulas.QUADRATIC,
        new double[] {dbhCm, heightM},
        b,
        -b[1] / (2 * b[2]));
  }

  /**
   * A cubic curve.
   *
   * @param dbhCm diameter at breast height
   * @param heightM height of the tip
   * @param b four coefficients
   * @return the curve
   */
  public static TaperCurve cubic(double dbhCm, double heightM, double... b) {
    double root = Math.sqrt(b[2] * b[2] - 3 * b[1] * b[3]);
    double[] turns = {(-b[2] - root) / (3 * b[3]), (-b[2] + root) / (3 * b[3]), -b[1] / (2 * b[2])};
    if (b[3] != 0) {
      // The last is the turn of a parabola, which a cubic does not have.
      turns[2] = Double.NaN;
    }
    Arrays.sort(turns);
    return new FormulaTaper(
        TaperFormulas.CUBIC, TaperVolumeFormulas.CUBIC, new double[] {dbhCm, heightM}, b, turns);
  }

  /**
   * A segmented curve.
   *
   * @param dbhCm diameter at breast height
   * @param heightM height of the tip
   * @param b four coefficients, then the upper and the lower joint
   * @return the curve
   */
  public static TaperCurve segmented(double dbhCm, double heightM, double... b) {
    double upper = b[4];
    double lower = b[5];
    double[] turns = {
      lower,
      upper,
      turn(0, lower, b[0] - 2 * b[2] * upper - 2 * b[3] * lower, b[1] + b[2] + b[3]),
      turn(lower, upper, b[0] - 2 * b[2] * upper, b[1] + b[2]),
      turn(upper, 1, b[0], b[1])
    };
    Arrays.sort(turns);
    return new FormulaTaper(
        TaperFormulas.SEGMENTED,
        TaperVolumeFormulas.SEGMENTED,
        new double[] {dbhCm, heightM},
        b,
        turns);
  }

  /**
   * A variable-exponent curve.
   *
   * @param dbhCm diameter at breast height
   * @param heightM height of the tip
   * @param inflection relative height of the inflection
   * @param a0 factor of the diameter at the inflection
   * @param a1 exponent of the diameter at breast height
   * @param a2 base raised to it
   * @param b five coefficients of the exponent
   * @return the curve
   */
  public static TaperCurve variableExponent(
      double dbhCm,
      double heightM,
      double inflection,
      double a0,
      double a1,
      double a2,
      double... b) {
    if (b.length != EXPONENT_TERMS) {
      throw new IllegalArgumentException(
          "variable-exponent taper curve (stem/taper-variable-exponent): "
              + b.length
              + " coefficients of the exponent, allowed "
              + EXPONENT_TERMS
              + ", b1 to b5");
    }
    double[] coefficients = {inflection, a0, a1, a2, b[0], b[1], b[2], b[3], b[4]};
    return new FormulaTaper(
        VariableExponentFormulas.DIAMETER,
        VariableExponentFormulas.VOLUME,
        new double[] {dbhCm, heightM},
        coefficients,
        TurningPoints.of(z -> diameter(z * heightM, dbhCm, heightM, coefficients)));
  }

  private static double diameter(
      double heightAt, double dbhCm, double heightM, double[] coefficients) {
    double[][] inputs = new double[coefficients.length + 3][];
    inputs[0] = new double[] {dbhCm};
    inputs[1] = new double[] {heightM};
    inputs[2] = new double[] {heightAt};
    for (int i = 0; i < coefficients.length; i++) {
      inputs[i + 3] = new double[] {coefficients[i]};
    }
    return VariableExponentFormulas.DIAMETER.applyTo(inputs);
  }

  /** Where a parabola with these coefficients turns, if within a segment. */
  private static double turn(double from, double to, double linear, double quadratic) {
    double at = -linear / (2 * quadratic);
    return at > from && at < to ? at : Double.NaN;
  }
}
