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
    return widthCm
        * divisions
        * StrictMath.cos(StrictMath.toRadians(calibrationElevationDeg))
        / StrictMath.cos(StrictMath.toRadians(elevationDeg));
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
    double cosine = StrictMath.cos(StrictMath.toRadians(elevationDeg));
    return ratio * axisDistanceM / Math.sqrt(cosine * cosine + 0.25 * (ratio * ratio));
  }
}
