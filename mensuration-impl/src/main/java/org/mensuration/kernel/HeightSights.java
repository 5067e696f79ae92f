package org.mensuration.kernel;

/**
 * Heights from straight distances, a staff, similar triangles and other scales than degrees. Angles
 * in degrees, signed from the horizontal. Unchecked: NaN in, NaN out. Stateless and thread-safe.
 */
public final class HeightSights {
  /** Horizontal feet at which a topographic scale reads feet. */
  private static final double TOPOGRAPHIC = 66;

  private HeightSights() {}

  /**
   * Height of a point above the eye.
   *
   * @param distanceM horizontal distance in m
   * @param angleDeg angle to the point
   * @return height in m, below the eye negative
   */
  public static double aboveEye(double distanceM, double angleDeg) {
    return distanceM * tangent(angleDeg);
  }

  /**
   * Height of a point above the eye from the straight distance to it.
   *
   * @param straightM straight distance to the point in m
   * @param angleDeg angle to the point
   * @return height in m, below the eye negative
   */
  public static double aboveEyeStraight(double straightM, double angleDeg) {
    return straightM * Slope.sin(angleDeg);
  }

  /**
   * Height of a point above the eye from the straight distance to the base.
   *
   * @param slopeDistanceM straight distance to the base in m
   * @param baseDeg angle to the base
   * @param angleDeg angle to the point
   * @return height in m, below the eye negative
   */
  public static double aboveEyeFromBase(double slopeDistanceM, double baseDeg, double angleDeg) {
    return slopeDistanceM * (Slope.cos(baseDeg) * tangent(angleDeg));
  }

  /**
   * Height on level ground from the angle to the tip and the height of the eye.
   *
   * @param distanceM horizontal distance in m
   * @param topDeg angle to the tip
   * @param eyeHeightM height of the eye above the base in m
   * @return vertical height in m
   */
  public static double levelGround(double distanceM, double topDeg, double eyeHeightM) {
    return distanceM * tangent(topDeg) + eyeHeightM;
  }

  /**
   * Height from two readings of a topographic scale.
   *
   * @param distanceFt horizontal distance in ft
   * @param topReading reading to the tip
   * @param baseReading reading to the base
   * @return vertical height in ft
   */
  public static double topographic(double distanceFt, double topReading, double baseReading) {
    return distanceFt * (topReading - baseReading) / TOPOGRAPHIC;
  }

  /**
   * Height from the straight distances to tip and base.
   *
   * @param topDistanceM distance to the tip in m
   * @param topDeg angle to the tip
   * @param baseDistanceM distance to the base in m
   * @param baseDeg angle to the base
   * @return vertical height in m
   */
  public static double sine(
      double topDistanceM, double topDeg, double baseDistanceM, double baseDeg) {
    return topDistanceM * Slope.sin(topDeg) - baseDistanceM * Slope.sin(baseDeg);
  }

  /**
   * Height from straight distances when the base is hidden.
   *
   * @param topDistanceM distance to the tip in m
   * @param topDeg angle to the tip
   * @param visibleDistanceM distance to a visible point of the stem in m
   * @param visibleDeg angle to that point
   * @param baseDeg angle to the base
   * @return vertical height in m
   */
  public static double sineHiddenBase(
      double topDistanceM,
      double topDeg,
      double visibleDistanceM,
      double visibleDeg,
      double baseDeg) {
    return topDistanceM * Slope.sin(topDeg)
        - visibleDistanceM * Slope.cos(visibleDeg) * tangent(baseDeg);
  }

  /**
   * Height from a staff at the stem. The differences of tangents are written as sines, which keeps
   * the digits of a short staff.
   *
   * @param staffM length of the staff in m
   * @param topDeg angle to the tip
   * @param staffTopDeg angle to the top of the staff
   * @param baseDeg angle to the base
   * @return vertical height in m
   */
  public static double staff(double staffM, double topDeg, double staffTopDeg, double baseDeg) {
    return staffM
        * (Slope.sin(topDeg - baseDeg) / Slope.sin(staffTopDeg - baseDeg))
        * (Slope.cos(staffTopDeg) / Slope.cos(topDeg));
  }

  /**
   * Height from a pole at the stem and a ruler held at the eye.
   *
   * @param poleM length of the pole in m
   * @param poleImageCm length that covers the pole in cm
   * @param treeImageCm length that covers the tree in cm
   * @return vertical height in m
   */
  public static double similarTriangles(double poleM, double poleImageCm, double treeImageCm) {
    return poleM * (treeImageCm / poleImageCm);
  }

  /**
   * Place of the pole's top on a ruler that spans the tree.
   *
   * @param rulerCm length of the ruler in cm
   * @param poleM length of the pole in m
   * @param heightM height of the tree in m
   * @return length from the base end in cm
   */
  public static double rulerMark(double rulerCm, double poleM, double heightM) {
    return rulerCm * (poleM / heightM);
  }

  /**
   * Height from a mark on the stem, by a stick that covers the tree.
   *
   * @param markHeightM height of the mark in m
   * @param stickCm length of the stick that covers the tree in cm
   * @param stickToMarkCm length of it that covers the stem up to the mark in cm
   * @return vertical height in m
   */
  public static double fraction(double markHeightM, double stickCm, double stickToMarkCm) {
    return markHeightM * (stickCm / stickToMarkCm);
  }

  /**
   * Height from the length of a shadow.
   *
   * @param treeShadowM shadow of the tree in m
   * @param staffM length of a staff in m
   * @param staffShadowM shadow of the staff in m
   * @return vertical height in m
   */
  public static double shadow(double treeShadowM, double staffM, double staffShadowM) {
    return treeShadowM * (staffM / staffShadowM);
  }

  /**
   * Height from the intercept on an upright rod.
   *
   * @param multiplier constant of the instrument
   * @param interceptM length of rod between the hairs in m
   * @param elevationDeg elevation of the sight
   * @return height of the sighted mark above the eye in m
   */
  public static double rod(double multiplier, double interceptM, double elevationDeg) {
    return multiplier * interceptM * (Slope.sin(elevationDeg) * Slope.cos(elevationDeg));
  }

  /**
   * Angle of a per-cent reading.
   *
   * @param percent reading
   * @return angle in degrees
   */
  public static double angleOfPercent(double percent) {
    return StrictMath.toDegrees(StrictMath.atan(percent / 100));
  }

  /**
   * Per-cent reading of an angle.
   *
   * @param angleDeg angle
   * @return reading in per cent
   */
  public static double percentOfAngle(double angleDeg) {
    return 100 * tangent(angleDeg);
  }

  /**
   * Topographic reading of an angle.
   *
   * @param angleDeg angle
   * @return reading
   */
  public static double topographicOfAngle(double angleDeg) {
    return TOPOGRAPHIC * tangent(angleDeg);
  }

  /**
   * Height from a scale graduated for one distance and read at another.
   *
   * @param readingM height read in m
   * @param distanceM distance of the reading in m
   * @param scaleDistanceM distance of the graduation in m
   * @return height in m
   */
  public static double atOtherDistance(double readingM, double distanceM, double scaleDistanceM) {
    return readingM * (distanceM / scaleDistanceM);
  }

  /**
   * Horizontal part of a straight distance.
   *
   * @param slopeDistanceM straight distance in m
   * @param angleDeg its elevation
   * @return horizontal distance in m
   */
  public static double horizontal(double slopeDistanceM, double angleDeg) {
    return slopeDistanceM * Slope.cos(angleDeg);
  }

  /**
   * Straight distance of a horizontal distance along a per-cent slope.
   *
   * @param horizontalM horizontal distance in m
   * @param percent slope in per cent
   * @return distance along the slope in m
   */
  public static double alongPercent(double horizontalM, double percent) {
    return horizontalM * StrictMath.hypot(1, percent / 100);
  }

  private static double tangent(double deg) {
    return Slope.sin(deg) / Slope.cos(deg);
  }
}
