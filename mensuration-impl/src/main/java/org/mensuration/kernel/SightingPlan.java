package org.mensuration.kernel;

/**
 * Where to stand for a diameter: distances that fill divisions, and errors of a reading. Unchecked:
 * NaN in, NaN out. Stateless and thread-safe.
 */
public final class SightingPlan {
  /** A power of two, which changes no digit and keeps products of small numbers from underflow. */
  private static final double SCALE = 0x1p100;

  private SightingPlan() {}

  /**
   * Distance to the axis at which a diameter fills divisions.
   *
   * @param diameterM diameter in m
   * @param ratio ratio of a division
   * @param divisions divisions to be filled
   * @return horizontal distance to the axis in m
   */
  public static double workingDistance(double diameterM, double ratio, double divisions) {
    double seen = ratio * divisions;
    return diameterM * (Math.sqrt(4 + seen * seen) / (2 * seen));
  }

  /**
   * Standard error of a diameter from the errors of the reading and of the distance.
   *
   * @param divisions divisions read
   * @param ratio ratio of a division
   * @param readingError standard error of the reading in divisions
   * @param axisDistanceM distance to the axis in m
   * @param distanceErrorM its standard error in m
   * @return standard error in m
   */
  public static double standardError(
      double divisions,
      double ratio,
      double readingError,
      double axisDistanceM,
      double distanceErrorM) {
    double seen = ratio * divisions;
    double root = Math.sqrt(1 + 0.25 * (seen * seen));
    double scaled = SCALE * axisDistanceM / root / root / root;
    double reading = ratio * (readingError * scaled) / SCALE;
    return StrictMath.hypot(reading, ratio * (divisions * distanceErrorM / root));
  }

  /**
   * Distance at which the two errors of a diameter are equal and their sum is least.
   *
   * @param diameterM diameter in m
   * @param ratio ratio of a division
   * @param readingError standard error of the reading in divisions
   * @param distanceErrorM standard error of the distance in m
   * @return distance in m
   */
  public static double bestDistance(
      double diameterM, double ratio, double readingError, double distanceErrorM) {
    return Math.sqrt(diameterM)
        / Math.sqrt(ratio)
        * (Math.sqrt(distanceErrorM) / Math.sqrt(readingError));
  }

  /**
   * Least standard error of a diameter over all distances.
   *
   * @param diameterM diameter in m
   * @param ratio ratio of a division
   * @param readingError standard error of the reading in divisions
   * @param distanceErrorM standard error of the distance in m
   * @return standard error in m
   */
  public static double leastError(
      double diameterM, double ratio, double readingError, double distanceErrorM) {
    double scaled = SCALE * Math.sqrt(2) * (Math.sqrt(ratio) * (Math.sqrt(diameterM) * SCALE));
    return scaled * (Math.sqrt(readingError) * Math.sqrt(distanceErrorM)) / SCALE / SCALE;
  }

  /**
   * Longest distance that keeps the standard error within a limit.
   *
   * @param diameterM diameter in m
   * @param ratio ratio of a division
   * @param readingError standard error of the reading in divisions
   * @param distanceErrorM standard error of the distance in m
   * @param limitM limit of the standard error in m
   * @return distance in m; NaN if no distance keeps it
   */
  public static double longestDistance(
      double diameterM, double ratio, double readingError, double distanceErrorM, double limitM) {
    double half = half(diameterM, ratio, readingError, distanceErrorM, limitM);
    return SCALE * limitM / ratio / readingError * Math.sqrt(half) / SCALE;
  }

  /**
   * Shortest distance that keeps the standard error within a limit.
   *
   * @param diameterM diameter in m
   * @param ratio ratio of a division
   * @param readingError standard error of the reading in divisions
   * @param distanceErrorM standard error of the distance in m
   * @param limitM limit of the standard error in m
   * @return distance in m; NaN if no distance keeps it
   */
  public static double shortestDistance(
      double diameterM, double ratio, double readingError, double distanceErrorM, double limitM) {
    double half = half(diameterM, ratio, readingError, distanceErrorM, limitM);
    double large = Math.max(diameterM, distanceErrorM);
    double small = Math.min(diameterM, distanceErrorM);
    return large / limitM * small / Math.sqrt(half);
  }

  /** Half of one plus the root; everything is taken as a share of the limit. */
  private static double half(
      double diameterM, double ratio, double readingError, double distanceErrorM, double limitM) {
    double share = 2 * (ratio * (diameterM / limitM)) * (readingError * (distanceErrorM / limitM));
    return 0.5 * (1 + Math.sqrt((1 - share) * (1 + share)));
  }
}
