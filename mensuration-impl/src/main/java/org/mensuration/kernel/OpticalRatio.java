package org.mensuration.kernel;

/**
 * Ratios of width to distance: of divisions, targets, angles and images, and the distances that
 * follow from them. Unchecked: NaN in, NaN out. Stateless and thread-safe.
 */
public final class OpticalRatio {
  /** A power of two, which changes no digit and keeps quotients of small numbers from underflow. */
  private static final double SCALE = 0x1p100;

  private OpticalRatio() {}

  /**
   * Ratio of a division from a flat target.
   *
   * @param targetWidthM width of the target in m
   * @param distanceM horizontal distance in m
   * @param divisions divisions that it fills
   * @return ratio of a division
   */
  public static double flatTarget(double targetWidthM, double distanceM, double divisions) {
    return SCALE * targetWidthM / distanceM / divisions / SCALE;
  }

  /**
   * Ratio of a division from a round post.
   *
   * @param diameterM diameter of the post in m
   * @param axisDistanceM horizontal distance to its axis in m
   * @param divisions divisions that it fills
   * @return ratio of a division
   */
  public static double roundTarget(double diameterM, double axisDistanceM, double divisions) {
    return 2 * (Silhouette.tangentTimes(SCALE, diameterM, axisDistanceM) / divisions / SCALE);
  }

  /**
   * Ratio of a division of a scale held at a distance from the eye.
   *
   * @param widthCm width of a division on the scale in cm
   * @param eyeDistanceCm distance from the eye to the scale in cm
   * @return ratio of a division
   */
  public static double held(double widthCm, double eyeDistanceCm) {
    return widthCm / eyeDistanceCm;
  }

  /**
   * Ratio of divisions side by side.
   *
   * @param ratio ratio of a division
   * @param divisions number of divisions
   * @return ratio
   */
  public static double ofDivisions(double ratio, double divisions) {
    return ratio * divisions;
  }

  /**
   * Ratio of a division by least squares through the origin.
   *
   * @param divisions divisions read
   * @param ratios ratios of the targets
   * @return ratio of a division
   */
  public static double throughOrigin(double[] divisions, double[] ratios) {
    double products = 0;
    double squares = 0;
    for (int i = 0; i < divisions.length; i++) {
      products += divisions[i] * ratios[i];
      squares += divisions[i] * divisions[i];
    }
    return products / squares;
  }

  /**
   * Ratio of a full angle.
   *
   * @param angleDeg full angle in degrees
   * @return ratio
   */
  public static double fromAngle(double angleDeg) {
    double half = 0.5 * angleDeg;
    return 2 * (Slope.sin(half) / Slope.cos(half));
  }

  /**
   * Full angle of a ratio.
   *
   * @param ratio ratio
   * @return angle in degrees
   */
  public static double toAngle(double ratio) {
    return 2 * StrictMath.toDegrees(StrictMath.atan(0.5 * ratio));
  }

  /**
   * Ratio of a flat gauge of a basal-area factor.
   *
   * @param factorM2PerHa factor in m²/ha
   * @return ratio
   */
  public static double fromFactor(double factorM2PerHa) {
    return 2 * (Math.sqrt(factorM2PerHa) / Math.sqrt(10_000 - factorM2PerHa));
  }

  /**
   * Basal-area factor of a flat gauge.
   *
   * @param ratio ratio
   * @return factor in m²/ha
   */
  public static double toFactor(double ratio) {
    return 10_000 / (1 + 4 / ratio / ratio);
  }

  /**
   * Ratio that a scale without slope compensation shows at an elevation, put back to level.
   *
   * @param ratio ratio seen
   * @param elevationDeg elevation of the sight in degrees
   * @return ratio of a level sight
   */
  public static double compensated(double ratio, double elevationDeg) {
    return ratio / Slope.cos(elevationDeg);
  }

  /**
   * Ratio that a scale without slope compensation shows at an elevation.
   *
   * @param levelRatio ratio of a level sight
   * @param elevationDeg elevation of the sight in degrees
   * @return ratio seen
   */
  public static double uncompensated(double levelRatio, double elevationDeg) {
    return levelRatio * Slope.cos(elevationDeg);
  }

  /**
   * Width that divisions cover at a distance.
   *
   * @param ratio ratio of a division
   * @param divisions number of divisions
   * @param distanceM distance in m
   * @return width in m
   */
  public static double width(double ratio, double divisions, double distanceM) {
    return ratio * divisions * distanceM;
  }

  /**
   * Width that an angle covers at a distance.
   *
   * @param angleDeg angle in degrees
   * @param distanceM distance in m
   * @return width in m
   */
  public static double widthOfAngle(double angleDeg, double distanceM) {
    return distanceM * (Slope.sin(angleDeg) / Slope.cos(angleDeg));
  }

  /**
   * Distance of a target of known width from a reading in thousandths.
   *
   * @param widthM width of the target in m
   * @param thousandths reading in thousandths of the distance
   * @return distance in m
   */
  public static double distanceFromThousandths(double widthM, double thousandths) {
    return 1000 * widthM / thousandths;
  }

  /**
   * Distance of a bar of known width across the sight.
   *
   * @param barM width in m
   * @param angleDeg full angle in degrees
   * @return horizontal distance in m
   */
  public static double distanceFromBar(double barM, double angleDeg) {
    double half = 0.5 * angleDeg;
    return 0.5 * barM * (Slope.cos(half) / Slope.sin(half));
  }

  /**
   * Distance from a base held at the eye, one sight square to it.
   *
   * @param baseM length of the base in m
   * @param parallaxDeg angle by which the other sight leans in, in degrees
   * @return distance in m
   */
  public static double distanceFromOwnBase(double baseM, double parallaxDeg) {
    return baseM / Slope.tan(parallaxDeg);
  }

  /**
   * Standard error of a distance from a base held at the eye.
   *
   * @param baseM length of the base in m
   * @param distanceM distance in m
   * @param angleErrorDeg standard error of the angle in degrees
   * @return standard error in m
   */
  public static double ownBaseError(double baseM, double distanceM, double angleErrorDeg) {
    return StrictMath.toRadians(angleErrorDeg) * (baseM + distanceM * (distanceM / baseM));
  }

  /**
   * Horizontal distance from the intercept on an upright rod.
   *
   * @param multiplier constant of the instrument
   * @param interceptM length of rod between the hairs in m
   * @param elevationDeg elevation of the sight in degrees
   * @return horizontal distance in m
   */
  public static double distanceFromRod(double multiplier, double interceptM, double elevationDeg) {
    double cosine = Slope.cos(elevationDeg);
    return multiplier * interceptM * (cosine * cosine);
  }

  /**
   * Length of the line of sight.
   *
   * @param horizontalM horizontal distance in m
   * @param elevationDeg elevation of the sight in degrees
   * @return distance along the sight in m
   */
  public static double alongSight(double horizontalM, double elevationDeg) {
    return horizontalM / Slope.cos(elevationDeg);
  }
}
