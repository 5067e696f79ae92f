package org.mensuration.kernel;

/**
 * Taper curves: diameters in cm, heights in m, volumes in m³. Unchecked: NaN in, NaN out. Stateless
 * and thread-safe.
 *
 * <p>Volumes are integrals. A difference of powers is written as the length times a sum, so that a
 * short section keeps its digits.
 */
public final class Taper {
  /** Divides π d² with d in cm to give an area in m². */
  private static final double AREA_DIVISOR = 40000.0;

  /** Places and weight of Gauss's rule of four points, exact up to the seventh power. */
  private static final double OUTER = Math.sqrt(3.0 / 7 + 2 * Math.sqrt(1.2) / 7);

  private static final double INNER = Math.sqrt(3.0 / 7 - 2 * Math.sqrt(1.2) / 7);
  private static final double OUTER_WEIGHT = 0.5 - Math.sqrt(30) / 36;

  private Taper() {}

  /**
   * Diameter of a power curve.
   *
   * @param x reference diameter, reference height, height of the tip, height wanted, exponent
   * @return diameter in cm
   */
  public static double power(double[][] x) {
    return x[0][0] * raised(x[1][0], x[2][0], x[3][0], x[4][0]);
  }

  /** Distance from the tip over that of the reference, to a power; exact digits near one. */
  private static double raised(double reference, double tip, double height, double exponent) {
    double part = (tip - height) / (tip - reference);
    return part > 0.5 && part < 2
        ? StrictMath.exp(exponent * StrictMath.log1p((reference - height) / (tip - reference)))
        : StrictMath.pow(part, exponent);
  }

  /**
   * Height of a diameter on a power curve.
   *
   * @param x reference diameter, reference height, height of the tip, diameter wanted, exponent
   * @return height in m
   */
  public static double powerHeight(double[][] x) {
    double ratio = x[3][0] / x[0][0];
    double log =
        ratio > 0.5 && ratio < 2
            ? StrictMath.log1p((x[3][0] - x[0][0]) / x[0][0])
            : StrictMath.log(ratio);
    return x[1][0] - (x[2][0] - x[1][0]) * StrictMath.expm1(log / x[4][0]);
  }

  /**
   * Volume of a power curve between two heights.
   *
   * @param x reference diameter, reference height, height of the tip, lower and upper height,
   *     exponent
   * @return volume in m³
   */
  public static double powerVolume(double[][] x) {
    double below = x[2][0] - x[3][0];
    double exponent = 2 * x[5][0];
    double square = x[0][0] * x[0][0] * raised(x[1][0], x[2][0], x[3][0], exponent);
    // 1 - (above/below)^(exponent + 1), without losing the digits of a short section
    double share =
        -StrictMath.expm1((exponent + 1) * StrictMath.log1p((x[3][0] - x[4][0]) / below));
    return Math.PI * square * below * share / (AREA_DIVISOR * (exponent + 1));
  }

  /**
   * Diameter of a quadratic curve.
   *
   * @param x breast-height diameter, height of the tip, height wanted, b0, b1, b2
   * @return diameter in cm
   */
  public static double quadratic(double[][] x) {
    double z = x[2][0] / x[1][0];
    return x[0][0] * Math.sqrt(x[3][0] + z * (x[4][0] + z * x[5][0]));
  }

  /**
   * Height at which a quadratic curve falls to a diameter.
   *
   * @param x breast-height diameter, height of the tip, diameter wanted, b0, b1, b2
   * @return height in m
   */
  public static double quadraticHeight(double[][] x) {
    double ratio = x[2][0] / x[0][0];
    double b0 = x[3][0] - ratio * ratio;
    double b1 = x[4][0];
    double root = Math.sqrt(b1 * b1 - 4 * x[5][0] * b0);
    return x[1][0] * falling(b0, b1, x[5][0], root);
  }

  /** The root of b0 + b1 z + b2 z² where the curve falls, without subtracting like numbers. */
  private static double falling(double b0, double b1, double b2, double root) {
    return b1 < 0 ? 2 * b0 / (root - b1) : -(b1 + root) / (2 * b2);
  }

  /**
   * Volume of a quadratic curve between two heights.
   *
   * @param x breast-height diameter, height of the tip, lower and upper height, b0, b1, b2
   * @return volume in m³
   */
  public static double quadraticVolume(double[][] x) {
    double p = x[2][0] / x[1][0];
    double q = x[3][0] / x[1][0];
    double mean = x[4][0] + x[5][0] * (p + q) / 2 + x[6][0] * (p * p + p * q + q * q) / 3;
    return slice(x[0][0], x[3][0] - x[2][0], mean);
  }

  /** Volume of a slice from the mean of the squared relative diameter over it. */
  private static double slice(double diameter, double length, double mean) {
    return Math.PI * (diameter * diameter) * length * mean / AREA_DIVISOR;
  }

  /**
   * Diameter of a cubic in the relative diameter.
   *
   * @param x breast-height diameter, height of the tip, height wanted, b0, b1, b2, b3
   * @return diameter in cm
   */
  public static double cubic(double[][] x) {
    double z = x[2][0] / x[1][0];
    return x[0][0] * (x[3][0] + z * (x[4][0] + z * (x[5][0] + z * x[6][0])));
  }

  /**
   * Volume of a cubic in the relative diameter between two heights.
   *
   * @param x breast-height diameter, height of the tip, lower and upper height, b0, b1, b2, b3
   * @return volume in m³
   */
  public static double cubicVolume(double[][] x) {
    double p = x[2][0] / x[1][0];
    double q = x[3][0] / x[1][0];
    double middle = (p + q) / 2;
    double half = (q - p) / 2;
    double outer = squareAt(x, middle - OUTER * half) + squareAt(x, middle + OUTER * half);
    double inner = squareAt(x, middle - INNER * half) + squareAt(x, middle + INNER * half);
    double mean = (OUTER_WEIGHT * outer + (1 - OUTER_WEIGHT) * inner) / 2;
    return slice(x[0][0], x[3][0] - x[2][0], mean);
  }

  private static double squareAt(double[][] x, double z) {
    double relative = x[4][0] + z * (x[5][0] + z * (x[6][0] + z * x[7][0]));
    return relative * relative;
  }

  /**
   * Squared relative diameter of a segmented curve.
   *
   * @param z relative height
   * @param b1 coefficient of z - 1
   * @param b2 coefficient of z² - 1
   * @param b3 coefficient of the upper joint
   * @param b4 coefficient of the lower joint
   * @param a1 upper joint
   * @param a2 lower joint
   * @return (d/D)²
   */
  public static double segmentedSquare(
      double z, double b1, double b2, double b3, double b4, double a1, double a2) {
    double upper = Math.max(a1 - z, 0);
    double lower = Math.max(a2 - z, 0);
    return (z - 1) * (b1 + b2 * (z + 1)) + b3 * (upper * upper) + b4 * (lower * lower);
  }

  /**
   * Diameter of a segmented curve.
   *
   * @param x breast-height diameter, height of the tip, height wanted, b1, b2, b3, b4, a1, a2
   * @return diameter in cm
   */
  public static double segmented(double[][] x) {
    double z = x[2][0] / x[1][0];
    return x[0][0]
        * Math.sqrt(segmentedSquare(z, x[3][0], x[4][0], x[5][0], x[6][0], x[7][0], x[8][0]));
  }

  /**
   * Volume of a segmented curve between two heights.
   *
   * @param x breast-height diameter, height of the tip, lower and upper height, b1, b2, b3, b4, a1,
   *     a2
   * @return volume in m³
   */
  public static double segmentedVolume(double[][] x) {
    double p = x[2][0] / x[1][0];
    double q = x[3][0] / x[1][0];
    double length = x[3][0] - x[2][0];
    double mean = x[4][0] * ((p + q) / 2 - 1) + x[5][0] * ((p * p + p * q + q * q) / 3 - 1);
    return slice(x[0][0], length, mean)
        + slice(x[0][0], x[1][0], x[6][0] * joint(x[8][0], p, q) + x[7][0] * joint(x[9][0], p, q));
  }

  /** Integral of the squared distance below a joint, from p to q. */
  private static double joint(double at, double p, double q) {
    double low = Math.max(at - p, 0);
    double high = Math.max(at - q, 0);
    double length = high > 0 ? q - p : low;
    return length * (low * low + low * high + high * high) / 3;
  }
}
