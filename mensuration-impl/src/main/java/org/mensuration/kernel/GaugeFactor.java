package org.mensuration.kernel;

/**
 * Factor of an angle gauge: factors in m²/ha of a hectare of 10 000 m². Unchecked: NaN in, NaN out.
 * Stateless and thread-safe.
 */
public final class GaugeFactor {
  /** Square metres of a hectare. */
  private static final double HECTARE = 10000.0;

  private GaugeFactor() {}

  /**
   * Factor of a gauge angle.
   *
   * @param angleDeg full angle of the gauge in degrees
   * @return factor in m²/ha
   */
  public static double ofAngle(double angleDeg) {
    double sine = StrictMath.sin(angleDeg * Math.PI / 360);
    return HECTARE * (sine * sine);
  }

  /**
   * Angle of a factor. The arc tangent keeps its precision where the arc sine has none.
   *
   * @param factorM2Ha factor in m²/ha
   * @return full angle of the gauge in degrees
   */
  public static double angle(double factorM2Ha) {
    return StrictMath.atan2(Math.sqrt(factorM2Ha), Math.sqrt(HECTARE - factorM2Ha)) * 360 / Math.PI;
  }

  /**
   * Factor of a flat blade square to the sight.
   *
   * @param widthCm width of the blade in cm
   * @param distanceCm distance from the eye to the middle of the blade in cm
   * @return factor in m²/ha
   */
  public static double ofFlatBlade(double widthCm, double distanceCm) {
    double ratio = distanceCm / widthCm;
    return HECTARE / (1 + 4 * (ratio * ratio));
  }

  /**
   * Factor of a flat blade by the rule for small angles.
   *
   * @param widthCm width of the blade in cm
   * @param distanceCm distance from the eye to the blade in cm
   * @return factor in m²/ha
   */
  public static double ofFlatBladeApproximate(double widthCm, double distanceCm) {
    double ratio = widthCm / distanceCm;
    return 2500 * (ratio * ratio);
  }

  /**
   * Factor from a round target that just fills the gauge.
   *
   * @param widthM diameter of the target in m
   * @param faceDistanceM distance from the eye to its near face in m
   * @return factor in m²/ha
   */
  public static double ofTargetFace(double widthM, double faceDistanceM) {
    double ratio = widthM / (2 * faceDistanceM + widthM);
    return HECTARE * (ratio * ratio);
  }

  /**
   * Factor of a prism. The sine of half the deviation is written with roots only.
   *
   * @param dioptres strength in prism dioptres
   * @return factor in m²/ha
   */
  public static double ofPrism(double dioptres) {
    double tangent = dioptres / 100;
    double secant = Math.sqrt(1 + tangent * tangent);
    return HECTARE * (tangent * tangent) / (2 * secant * (secant + 1));
  }

  /**
   * Distance from the eye at which a flat blade has a factor.
   *
   * @param widthCm width of the blade in cm
   * @param factorM2Ha factor in m²/ha
   * @return distance in cm
   */
  public static double bladeDistance(double widthCm, double factorM2Ha) {
    return widthCm / 2 * Math.sqrt((HECTARE - factorM2Ha) / factorM2Ha);
  }

  /**
   * Correction of a whole sweep made without allowing for an even slope.
   *
   * @param slopeDeg steepest slope in degrees
   * @return what the count is multiplied by
   */
  public static double sweepSlope(double slopeDeg) {
    return 1 / Slope.cos(slopeDeg);
  }
}
