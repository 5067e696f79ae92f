package org.mensuration.kernel;

/**
 * Where a tree stands, and how well its height is known, from two stations in line with it. Angles
 * in degrees, signed from the horizontal. Unchecked: NaN in, NaN out. Stateless and thread-safe.
 */
public final class TwoStations {
  private TwoStations() {}

  /**
   * Horizontal distance from the near station.
   *
   * @param baselineM distance between the stations in m
   * @param farDeg angle to the tip from the far station
   * @param nearDeg angle to the tip from the near station
   * @return distance in m
   */
  public static double distance(double baselineM, double farDeg, double nearDeg) {
    return baselineM * (Slope.sin(farDeg) * Slope.cos(nearDeg) / Slope.sin(nearDeg - farDeg));
  }

  /**
   * Standard error of the height above the eye.
   *
   * @param baselineM distance between the stations in m
   * @param farDeg angle to the tip from the far station
   * @param nearDeg angle to the tip from the near station
   * @param baselineErrorM standard error of the baseline in m
   * @param angleErrorDeg standard error of each angle
   * @return standard error in m
   */
  public static double heightError(
      double baselineM,
      double farDeg,
      double nearDeg,
      double baselineErrorM,
      double angleErrorDeg) {
    double far = Slope.sin(farDeg);
    double near = Slope.sin(nearDeg);
    double between = Slope.sin(nearDeg - farDeg);
    double ofBaseline = baselineErrorM * (far * near / between);
    double slopes = StrictMath.hypot(far * far, near * near) / between / between;
    return StrictMath.hypot(ofBaseline, baselineM * (StrictMath.toRadians(angleErrorDeg) * slopes));
  }
}
