package org.mensuration.kernel;

/**
 * What one counted tree adds to sums per hectare when trees are chosen along a line or by the angle
 * to their tops, and how far such a choice reaches. Unchecked: NaN in, NaN out. Stateless and
 * thread-safe.
 */
public final class LineSums {
  private static final double HECTARE = 10000.0;

  private LineSums() {}

  /**
   * Sum of diameters per hectare from a horizontal line.
   *
   * @param lineLengthM length of the line in m, seen to both sides
   * @param factorM2Ha factor of the gauge in m²/ha
   * @param count trees counted
   * @return sum of diameters in cm/ha
   */
  public static double diameterSum(double lineLengthM, double factorM2Ha, double count) {
    return count * HECTARE * Math.sqrt(factorM2Ha) / lineLengthM;
  }

  /**
   * Distance up to which a tree is chosen by the angle to its top.
   *
   * @param angleDeg least elevation of the top in degrees
   * @param heightM height of the top above the eye in m
   * @return distance in m
   */
  public static double verticalDistance(double angleDeg, double heightM) {
    return 1 / Slope.tanOver(angleDeg, heightM);
  }

  /**
   * Sum of squared heights per hectare from a point.
   *
   * @param angleDeg least elevation of the top in degrees
   * @param count trees counted
   * @return sum of squared heights in m²/ha
   */
  public static double squaredHeightSum(double angleDeg, double count) {
    double tangent = Slope.tan(angleDeg);
    return count * HECTARE * tangent * tangent / Math.PI;
  }

  /**
   * Sum of heights per hectare from a line.
   *
   * @param angleDeg least elevation of the top in degrees
   * @param lineLengthM length of the line in m, seen to both sides
   * @param count trees counted
   * @return sum of heights in m/ha
   */
  public static double heightSum(double angleDeg, double lineLengthM, double count) {
    return count * (HECTARE / 2 * Slope.tanOver(angleDeg, lineLengthM));
  }
}
