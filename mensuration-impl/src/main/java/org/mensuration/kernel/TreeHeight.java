package org.mensuration.kernel;

/**
 * Tree heights from angles and distances. Angles in degrees, signed from the horizontal. Unchecked:
 * NaN in, NaN out. Stateless and thread-safe.
 */
public final class TreeHeight {
  private TreeHeight() {}

  /**
   * Height from the horizontal distance and two angles. The difference of the tangents is written
   * as a quotient, which keeps its digits when the angles are close.
   *
   * @param distanceM horizontal distance in m
   * @param topDeg angle to the tip
   * @param baseDeg angle to the base
   * @return vertical height in m
   */
  public static double tangent(double distanceM, double topDeg, double baseDeg) {
    return distanceM * (Slope.sin(topDeg - baseDeg) / (Slope.cos(topDeg) * Slope.cos(baseDeg)));
  }

  /**
   * Height from the horizontal distance and two readings in per cent.
   *
   * @param distanceM horizontal distance in m
   * @param topPercent reading to the tip
   * @param basePercent reading to the base
   * @return vertical height in m
   */
  public static double percent(double distanceM, double topPercent, double basePercent) {
    return distanceM * (topPercent - basePercent) / 100;
  }

  /**
   * Height from the straight distance between eye and base, and two angles.
   *
   * @param slopeDistanceM distance from the eye to the base in m
   * @param topDeg angle to the tip
   * @param baseDeg angle to the base
   * @return vertical height in m
   */
  public static double tangentSlopeDistance(double slopeDistanceM, double topDeg, double baseDeg) {
    return slopeDistanceM * (Slope.sin(topDeg - baseDeg) / Slope.cos(topDeg));
  }

  /**
   * Height from a distance taped along the ground, its slope, and two angles.
   *
   * @param slopeDistanceM distance along the ground in m
   * @param groundSlopeDeg slope of the ground
   * @param topDeg angle to the tip
   * @param baseDeg angle to the base
   * @return vertical height in m
   */
  public static double tangentGroundSlope(
      double slopeDistanceM, double groundSlopeDeg, double topDeg, double baseDeg) {
    return tangent(slopeDistanceM * Slope.cos(groundSlopeDeg), topDeg, baseDeg);
  }

  /**
   * Height above the eye from two stations in line with the tree. The tangents are written as
   * sines, which keeps the digits when the angles are close.
   *
   * @param baselineM distance between the stations in m
   * @param farDeg angle to the tip from the far station
   * @param nearDeg angle to the tip from the near station
   * @return height above the eye in m
   */
  public static double twoStations(double baselineM, double farDeg, double nearDeg) {
    return baselineM * (Slope.sin(farDeg) * Slope.sin(nearDeg) / Slope.sin(nearDeg - farDeg));
  }
}
