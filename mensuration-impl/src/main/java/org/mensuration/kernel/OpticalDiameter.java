package org.mensuration.kernel;

/**
 * Stem diameters from an optical scale. The ratio is the width seen on a flat scale square to the
 * sight, divided by its distance from the eye. Unchecked: NaN in, NaN out. Stateless and
 * thread-safe.
 */
public final class OpticalDiameter {
  private OpticalDiameter() {}

  /**
   * Width that one division covers at the working distance.
   *
   * @param diameterCm diameter that was measured, in cm
   * @param divisions divisions that it fills
   * @return width of a division in cm
   */
  public static double divisionWidth(double diameterCm, double divisions) {
    return diameterCm / divisions;
  }

  /**
   * Diameter in proportion to a count of divisions.
   *
   * @param widthCm width of a division in cm
   * @param divisions divisions that the stem fills
   * @return diameter in cm
   */
  public static double fromDivisions(double widthCm, double divisions) {
    return widthCm * divisions;
  }

  /**
   * Diameter from a count of divisions on a scale that does not compensate for slope.
   *
   * @param widthCm width of a division in cm, calibrated at the calibration elevation
   * @param divisions divisions that the stem fills
   * @param elevationDeg elevation of the sight in degrees
   * @param calibrationElevationDeg elevation of the calibration in degrees
   * @return diameter in cm
   */
  public static double fromDivisionsElevated(
      double widthCm, double divisions, double elevationDeg, double calibrationElevationDeg) {
    return widthCm * divisions * Slope.cos(calibrationElevationDeg) / Slope.cos(elevationDeg);
  }

  /**
   * Diameter of a circular section from the ratio between its tangent lines, level sight. The sine
   * of the arc tangent is written as a root.
   *
   * @param ratio ratio seen
   * @param axisDistanceM horizontal distance to the axis in m
   * @return diameter in m
   */
  public static double axisDistance(double ratio, double axisDistanceM) {
    return ratio * axisDistanceM / Math.sqrt(1 + 0.25 * (ratio * ratio));
  }

  /**
   * Diameter of a circular section from the ratio between its tangent lines, seen at an elevation
   * on a scale that does not compensate for slope.
   *
   * @param ratio ratio seen
   * @param axisDistanceM horizontal distance to the axis in m
   * @param elevationDeg elevation of the sight in degrees
   * @return diameter in m
   */
  public static double elevated(double ratio, double axisDistanceM, double elevationDeg) {
    double cosine = Slope.cos(elevationDeg);
    return ratio * axisDistanceM / Math.sqrt(cosine * cosine + 0.25 * (ratio * ratio));
  }

  /**
   * Diameter from the ratio between the tangent lines and the distance to the near face.
   *
   * @param ratio ratio seen, level sight or compensated scale
   * @param faceDistanceM horizontal distance to the near face in m
   * @return diameter in m
   */
  public static double faceDistance(double ratio, double faceDistanceM) {
    return faceDistanceM * (0.5 * ratio * (Math.sqrt(4 + ratio * ratio) + ratio));
  }

  /**
   * Diameter from the distance to the near face, seen at an elevation on a scale that does not
   * compensate for slope.
   *
   * @param ratio ratio seen
   * @param faceDistanceM horizontal distance to the near face in m
   * @param elevationDeg elevation of the sight in degrees
   * @return diameter in m
   */
  public static double faceElevated(double ratio, double faceDistanceM, double elevationDeg) {
    return faceDistance(ratio / Slope.cos(elevationDeg), faceDistanceM);
  }

  /**
   * Diameter in proportion to the distance along the line of sight.
   *
   * @param ratio ratio seen
   * @param slopeDistanceM distance from the eye to the axis along the sight in m
   * @return diameter in m
   */
  public static double slopeDistance(double ratio, double slopeDistanceM) {
    return ratio * slopeDistanceM;
  }

  /**
   * Diameter of a stem that leans in the plane of sight, scale square to the sight.
   *
   * @param ratio ratio seen
   * @param slopeDistanceM distance from the eye to the sighted point of the axis in m
   * @param elevationDeg elevation of the sight in degrees
   * @param leanDeg lean in degrees, positive away from the viewer
   * @return diameter in m
   */
  public static double leaning(
      double ratio, double slopeDistanceM, double elevationDeg, double leanDeg) {
    double cosine = Slope.cos(elevationDeg + leanDeg);
    return ratio * slopeDistanceM * (cosine / Math.sqrt(cosine * cosine + 0.25 * (ratio * ratio)));
  }

  /**
   * Diameter of a stem that leans across the sight and was read on a scale held level.
   *
   * @param levelDiameterM diameter read level in m
   * @param leanDeg lean across the sight in degrees
   * @return diameter square to the axis in m
   */
  public static double leanAcross(double levelDiameterM, double leanDeg) {
    return levelDiameterM * Slope.cos(leanDeg);
  }

  /**
   * Diameter from the full angle between the edges.
   *
   * @param angleDeg full angle in degrees
   * @param axisDistanceM horizontal distance to the axis in m
   * @return diameter in m
   */
  public static double angle(double angleDeg, double axisDistanceM) {
    return 2 * axisDistanceM * Slope.sin(0.5 * angleDeg);
  }

  /**
   * Diameter from the full angle between the edges and the distance to the near face. One minus the
   * sine is written as a square, which keeps its digits when the stem fills the view.
   *
   * @param angleDeg full angle in degrees
   * @param faceDistanceM horizontal distance to the near face in m
   * @return diameter in m
   */
  public static double angleFace(double angleDeg, double faceDistanceM) {
    double gap = Slope.sin(0.25 * (180 - angleDeg));
    return faceDistanceM * (Slope.sin(0.5 * angleDeg) / (gap * gap));
  }

  /**
   * Diameter of a stem that tapers like an upright cone, scale square to the sight.
   *
   * @param ratio ratio seen on a scale that does not compensate for slope
   * @param axisDistanceM horizontal distance to the axis in m
   * @param heightAboveEyeM height of the section above the eye in m
   * @param apexHeightM height of the cone's apex above the eye in m
   * @return diameter in m
   */
  public static double tapering(
      double ratio, double axisDistanceM, double heightAboveEyeM, double apexHeightM) {
    double half = 0.5 * ratio * StrictMath.hypot(axisDistanceM, heightAboveEyeM);
    double share = (apexHeightM - heightAboveEyeM) / apexHeightM;
    return axisDistanceM * (2 * share * (half / StrictMath.hypot(axisDistanceM * share, half)));
  }

  /**
   * Distance to the axis from the distance to the near face and the diameter there.
   *
   * @param faceDistanceM horizontal distance to the near face in m
   * @param diameterM diameter at the level of the measurement in m
   * @return horizontal distance to the axis in m
   */
  public static double axisFromFace(double faceDistanceM, double diameterM) {
    return faceDistanceM + 0.5 * diameterM;
  }
}
