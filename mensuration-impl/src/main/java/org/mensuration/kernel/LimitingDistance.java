package org.mensuration.kernel;

/**
 * How far away a tree is counted. Unchecked: NaN in, NaN out. Stateless and thread-safe.
 *
 * <p>Radius factors are in feet per inch of diameter for a factor in ft²/ac; distances are in m for
 * a diameter in cm and a factor in m²/ha.
 */
public final class LimitingDistance {
  /** Square feet of an acre. */
  private static final double ACRE = 43560.0;

  /** Square metres of a hectare. */
  private static final double HECTARE = 10000.0;

  private LimitingDistance() {}

  /**
   * Radius factor to the centre of the stem.
   *
   * @param factorFt2Ac factor in ft²/ac
   * @return radius factor in ft per in
   */
  public static double radiusFactorToCentre(double factorFt2Ac) {
    return Math.sqrt(ACRE / factorFt2Ac) / 24;
  }

  /**
   * Radius factor to the near face of the stem. The printed difference is made a quotient, which
   * does not cancel near the largest factor.
   *
   * @param factorFt2Ac factor in ft²/ac
   * @return radius factor in ft per in
   */
  public static double radiusFactorToFace(double factorFt2Ac) {
    double root = Math.sqrt(ACRE / factorFt2Ac);
    return (ACRE - factorFt2Ac) / factorFt2Ac / ((root + 1) * 24);
  }

  /**
   * Factor in force when a tree at the limit was checked with a radius factor.
   *
   * @param radiusFactorFtIn radius factor to the centre in ft per in
   * @return factor in ft²/ac
   */
  public static double workingFactor(double radiusFactorFtIn) {
    return ACRE / (576 * (radiusFactorFtIn * radiusFactorFtIn));
  }

  /**
   * Factor in force when a tree at the limit was checked with a radius factor, metric.
   *
   * @param radiusFactorMCm radius factor to the centre in m per cm
   * @return factor in m²/ha
   */
  public static double workingFactorMetric(double radiusFactorMCm) {
    return 0.25 / (radiusFactorMCm * radiusFactorMCm);
  }

  /**
   * Limiting distance to the centre of the stem.
   *
   * @param factorM2Ha factor in m²/ha
   * @param diameterCm diameter in cm
   * @return horizontal distance in m
   */
  public static double toCentre(double factorM2Ha, double diameterCm) {
    return diameterCm / (2 * Math.sqrt(factorM2Ha));
  }

  /**
   * Limiting distance to the near face of the stem. The printed difference is made a quotient,
   * which does not cancel near the largest factor.
   *
   * @param factorM2Ha factor in m²/ha
   * @param diameterCm diameter in cm
   * @return horizontal distance in m
   */
  public static double toFace(double factorM2Ha, double diameterCm) {
    double root = Math.sqrt(factorM2Ha);
    return diameterCm * (HECTARE - factorM2Ha) / (200 * root * (100 + root));
  }

  /**
   * Limiting distance to the centre of the stem along a slope.
   *
   * @param factorM2Ha factor in m²/ha
   * @param diameterCm diameter in cm
   * @param slopeDeg slope of the line from point to stem in degrees
   * @return distance along the slope in m
   */
  public static double alongSlope(double factorM2Ha, double diameterCm, double slopeDeg) {
    return toCentre(factorM2Ha, diameterCm) / Slope.cos(slopeDeg);
  }

  /**
   * Distance to the centre of a leaning stem at breast height.
   *
   * @param footDistanceM horizontal distance to the centre of the stem at the ground in m
   * @param breastHeightM breast height along the stem in m
   * @param leanDeg lean from the vertical in degrees
   * @param directionDeg angle between the line from the point and the lean in degrees, 0 away
   * @return horizontal distance in m
   */
  public static double leaning(
      double footDistanceM, double breastHeightM, double leanDeg, double directionDeg) {
    double shift = breastHeightM * StrictMath.sin(leanDeg * Math.PI / 180);
    // |r - s| and the rest apart: the cosine rule cancels where the stem leans over the point.
    double difference = footDistanceM - shift;
    double root = 2 * Math.sqrt(footDistanceM) * Math.sqrt(shift) * Slope.cos(directionDeg / 2);
    return StrictMath.hypot(difference, root);
  }

  /**
   * Area around a tree from which it is counted.
   *
   * @param factorM2Ha factor in m²/ha
   * @param diameterCm diameter in cm
   * @return area in m²
   */
  public static double inclusionArea(double factorM2Ha, double diameterCm) {
    return Math.PI * (diameterCm * diameterCm) / (4 * factorM2Ha);
  }

  /**
   * Trees per hectare that one counted tree stands for.
   *
   * @param factorM2Ha factor in m²/ha
   * @param diameterCm diameter in cm
   * @return trees per hectare
   */
  public static double treeFactor(double factorM2Ha, double diameterCm) {
    return 40000 * factorM2Ha / (Math.PI * (diameterCm * diameterCm));
  }

  /**
   * Limiting distance from a plot radius factor.
   *
   * @param radiusFactorFtPerIn radius factor in feet per inch
   * @param diameterIn diameter in inches
   * @return distance in feet
   */
  public static double byRadiusFactor(double radiusFactorFtPerIn, double diameterIn) {
    return radiusFactorFtPerIn * diameterIn;
  }
}
