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
   * Factor of a gauge angle by the rule for small angles.
   *
   * @param angleDeg full angle of the gauge in degrees
   * @return factor in m²/ha
   */
  public static double ofAngleApproximate(double angleDeg) {
    double radians = angleDeg * Math.PI / 180;
    return 2500 * (radians * radians);
  }

  /**
   * Factor that a flat blade of an exact factor has by the rule for small angles.
   *
   * @param factorM2Ha exact factor in m²/ha
   * @return factor in m²/ha by the rule for small angles
   */
  public static double smallAngle(double factorM2Ha) {
    return HECTARE * factorM2Ha / (HECTARE - factorM2Ha);
  }

  /**
   * Factor of a prism by the rule for small angles.
   *
   * @param dioptres strength in prism dioptres
   * @return factor in m²/ha
   */
  public static double ofPrismApproximate(double dioptres) {
    return dioptres * dioptres / 4;
  }

  /**
   * Factor of two prisms joined with their bases on one side. The deviations add; the sine of half
   * their sum is written with the sines and cosines of the halves.
   *
   * @param first strength of one in prism dioptres
   * @param second strength of the other in prism dioptres
   * @return factor in m²/ha
   */
  public static double ofJoinedPrisms(double first, double second) {
    double half = StrictMath.atan(first / 100) / 2 + StrictMath.atan(second / 100) / 2;
    double sine = StrictMath.sin(half);
    return HECTARE * (sine * sine);
  }

  /**
   * Factor of two joined prisms by the rule for small angles.
   *
   * @param firstM2Ha factor of one in m²/ha
   * @param secondM2Ha factor of the other in m²/ha
   * @return factor in m²/ha
   */
  public static double ofJoinedPrismsApproximate(double firstM2Ha, double secondM2Ha) {
    return firstM2Ha + secondM2Ha + 2 * Math.sqrt(firstM2Ha) * Math.sqrt(secondM2Ha);
  }

  /**
   * Factor of divisions of an optical scale.
   *
   * @param divisions divisions that a tree must fill
   * @param ratio width over distance of one division
   * @return factor in m²/ha
   */
  public static double ofDivisions(double divisions, double ratio) {
    double inverse = 2 / (divisions * ratio);
    return HECTARE / (1 + inverse * inverse);
  }

  /**
   * Factor of divisions of an optical scale by the rule for small angles.
   *
   * @param divisions divisions that a tree must fill
   * @param ratio width over distance of one division
   * @return factor in m²/ha
   */
  public static double ofDivisionsApproximate(double divisions, double ratio) {
    double width = divisions * ratio;
    return 2500 * (width * width);
  }

  /**
   * Factor from a flat target measured square to one of its edges. The sine of half the angle is
   * written with roots only.
   *
   * @param widthM width of the target in m
   * @param edgeDistanceM distance from the eye to the edge in m
   * @return factor in m²/ha
   */
  public static double ofTargetEdge(double widthM, double edgeDistanceM) {
    double tangent = widthM / edgeDistanceM;
    double secant = StrictMath.hypot(1, tangent);
    double part = tangent / secant;
    return HECTARE * (part * (tangent / (secant + 1))) / 2;
  }

  /**
   * Width of a flat blade of a factor at a distance from the eye.
   *
   * @param distanceCm distance from the eye to the middle of the blade in cm
   * @param factorM2Ha factor in m²/ha
   * @return width in cm
   */
  public static double bladeWidth(double distanceCm, double factorM2Ha) {
    return 2 * distanceCm * (Math.sqrt(factorM2Ha) / Math.sqrt(HECTARE - factorM2Ha));
  }

  /**
   * Factor in force along a sloping sight of a gauge that does not allow for slope.
   *
   * @param factorM2Ha factor on level ground in m²/ha
   * @param slopeDeg slope of the sight in degrees
   * @return factor in m²/ha
   */
  public static double alongSight(double factorM2Ha, double slopeDeg) {
    double cosine = Slope.cos(slopeDeg);
    return factorM2Ha / (cosine * cosine);
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

  /**
   * Width of a blade for a sight along a slope.
   *
   * @param widthCm width for a level sight in cm
   * @param slopeDeg slope of the sight in degrees
   * @return width in cm
   */
  public static double bladeWidthAlongSight(double widthCm, double slopeDeg) {
    return widthCm * Slope.cos(slopeDeg);
  }
}
