package org.mensuration.kernel;

/**
 * Lean and error of tree heights, and the best distance. Angles in degrees, signed from the
 * horizontal. Unchecked: NaN in, NaN out. Stateless and thread-safe.
 */
public final class HeightErrors {
  private HeightErrors() {}

  /**
   * Relative error of a height when the tip stands nearer than the base.
   *
   * @param offsetM horizontal offset of the tip in m, toward the viewer positive
   * @param distanceM horizontal distance to the base in m
   * @return share of the height
   */
  public static double lean(double offsetM, double distanceM) {
    return offsetM / (distanceM - offsetM);
  }

  /**
   * Height that the tangent method gives for a leaning stem.
   *
   * @param heightM true vertical height in m
   * @param offsetM horizontal offset of the tip in m, toward the viewer positive
   * @param distanceM horizontal distance to the base in m
   * @return height measured in m
   */
  public static double measuredOfLeaning(double heightM, double offsetM, double distanceM) {
    return heightM * (distanceM / (distanceM - offsetM));
  }

  /**
   * Vertical height of a leaning stem.
   *
   * @param lengthM length along the stem in m
   * @param leanDeg lean from the vertical
   * @return vertical height in m
   */
  public static double verticalOfLength(double lengthM, double leanDeg) {
    return lengthM * Slope.cos(leanDeg);
  }

  /**
   * Length of a leaning stem from its vertical height.
   *
   * @param heightM vertical height in m
   * @param leanDeg lean from the vertical
   * @return length along the stem in m
   */
  public static double lengthOfVertical(double heightM, double leanDeg) {
    return heightM / Slope.cos(leanDeg);
  }

  /**
   * Length of a stem that leans in the plane of sight.
   *
   * @param slopeDistanceM straight distance from the eye to the base in m
   * @param topDeg angle to the tip
   * @param baseDeg angle to the base
   * @param leanDeg lean from the vertical, away from the viewer positive
   * @return length along the stem in m
   */
  public static double lengthOfLeaning(
      double slopeDistanceM, double topDeg, double baseDeg, double leanDeg) {
    return slopeDistanceM * (Slope.sin(topDeg - baseDeg) / Slope.cos(topDeg + leanDeg));
  }

  /**
   * Standard error of a height by the tangent method.
   *
   * @param distanceM horizontal distance in m
   * @param topDeg angle to the tip
   * @param baseDeg angle to the base
   * @param distanceErrorM standard error of the distance in m
   * @param angleErrorDeg standard error of an angle
   * @return standard error in m
   */
  public static double tangent(
      double distanceM,
      double topDeg,
      double baseDeg,
      double distanceErrorM,
      double angleErrorDeg) {
    double top = Slope.cos(topDeg);
    double base = Slope.cos(baseDeg);
    double tangents = Slope.sin(topDeg - baseDeg) / top / base;
    double squares = StrictMath.hypot(1 / (top * top), 1 / (base * base));
    return StrictMath.hypot(
        distanceErrorM * tangents, distanceM * (StrictMath.toRadians(angleErrorDeg) * squares));
  }

  /**
   * Distance at which the standard error of the tangent method is least.
   *
   * @param aboveEyeM height of the tip above the eye in m
   * @param belowEyeM depth of the base below the eye in m
   * @param distanceErrorM standard error of the distance in m
   * @param angleErrorDeg standard error of an angle
   * @return horizontal distance in m
   */
  public static double bestDistance(
      double aboveEyeM, double belowEyeM, double distanceErrorM, double angleErrorDeg) {
    double above = aboveEyeM * aboveEyeM;
    double below = belowEyeM * belowEyeM;
    double pull = (aboveEyeM + belowEyeM) * (distanceErrorM / StrictMath.toRadians(angleErrorDeg));
    double sum = 0.5 * (above * above + below * below + pull * pull);
    return Math.sqrt(Math.sqrt(sum));
  }
}
