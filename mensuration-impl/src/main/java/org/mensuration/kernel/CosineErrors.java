package org.mensuration.kernel;

/**
 * Relative errors of a cosine that was forgotten or taken twice. Angles in degrees from the
 * horizontal. Written with the sine of half the angle, so that a small slope keeps its digits.
 * Unchecked: NaN in, NaN out. Stateless and thread-safe.
 */
public final class CosineErrors {
  private CosineErrors() {}

  /**
   * Error of a diameter that was sighted upward without the cosine.
   *
   * @param elevationDeg elevation of the sight
   * @return share of the diameter, not above zero
   */
  public static double omitted(double elevationDeg) {
    return -twiceSquaredHalfSine(elevationDeg);
  }

  /**
   * Error of a diameter that was divided by a cosine on a scale that compensates.
   *
   * @param elevationDeg elevation of the sight
   * @return share of the diameter, not below zero
   */
  public static double twice(double elevationDeg) {
    return twiceSquaredHalfSine(elevationDeg) / Slope.cos(elevationDeg);
  }

  /**
   * Error of a height when the distance along a slope is taken as horizontal.
   *
   * @param slopeDeg slope
   * @return error in per cent, not below zero
   */
  public static double slopeAsHorizontal(double slopeDeg) {
    return 100 * twice(slopeDeg);
  }

  private static double twiceSquaredHalfSine(double deg) {
    double sine = StrictMath.sin(StrictMath.toRadians(deg) / 2);
    return 2 * sine * sine;
  }
}
