package org.mensuration.kernel;

/**
 * Fixed plots and lines: lengths in m, areas in m², results per hectare. Unchecked: NaN in, NaN
 * out. Stateless and thread-safe.
 */
public final class PlotAndLine {
  private static final double HECTARE = 10000.0;
  private static final double ROOT_OF_PI = Math.sqrt(Math.PI);

  private PlotAndLine() {}

  /**
   * Radius of a circle of an area.
   *
   * @param areaM2 area in m²
   * @return radius in m
   */
  public static double radius(double areaM2) {
    return Math.sqrt(areaM2) / ROOT_OF_PI;
  }

  /**
   * Horizontal part of a distance measured along a slope.
   *
   * @param slopeDistanceM distance along the slope in m
   * @param slopeDeg slope in degrees
   * @return horizontal distance in m
   */
  public static double horizontalDistance(double slopeDistanceM, double slopeDeg) {
    return slopeDistanceM * Slope.cos(slopeDeg);
  }

  /**
   * Radius along the slope of a circle that has the right area in the map.
   *
   * @param radiusM horizontal radius in m
   * @param slopeDeg slope in degrees
   * @return radius along the slope in m
   */
  public static double slopeRadius(double radiusM, double slopeDeg) {
    return radiusM / Math.sqrt(Slope.cos(slopeDeg));
  }

  /**
   * Radius along the slope of a plot laid out as an ellipse.
   *
   * @param radiusM horizontal radius in m
   * @param slopeDeg slope in degrees
   * @return radius along the slope in m
   */
  public static double ellipseRadiusAlong(double radiusM, double slopeDeg) {
    return radiusM / Slope.cos(slopeDeg);
  }

  /**
   * Correction of a circle laid out on the slope with its horizontal radius.
   *
   * @param slopeDeg slope in degrees
   * @return what results per area are multiplied by
   */
  public static double slopeAreaFactor(double slopeDeg) {
    return 1 / Slope.cos(slopeDeg);
  }

  /**
   * Trees per hectare of one tree on a plot.
   *
   * @param areaM2 area in m²
   * @return trees per hectare
   */
  public static double expansionFactor(double areaM2) {
    return HECTARE / areaM2;
  }

  /**
   * Trees per hectare of one tree chosen from a line by its diameter.
   *
   * @param lineLengthM length of the line in m
   * @param factorM2Ha factor of the gauge in m²/ha
   * @param diameterCm diameter in cm
   * @return trees per hectare
   */
  public static double horizontalLine(double lineLengthM, double factorM2Ha, double diameterCm) {
    return HECTARE / lineLengthM * Math.sqrt(factorM2Ha) / diameterCm;
  }

  /**
   * Trees per hectare of one tree chosen from a point by the angle of its top.
   *
   * @param angleDeg least elevation of the top in degrees
   * @param heightM height above the eye in m
   * @return trees per hectare
   */
  public static double verticalPoint(double angleDeg, double heightM) {
    double ratio = Slope.tanOver(angleDeg, heightM);
    return HECTARE * (ratio * ratio) / Math.PI;
  }

  /**
   * Trees per hectare of one tree chosen from a line by the angle of its top.
   *
   * @param angleDeg least elevation of the top in degrees
   * @param heightM height above the eye in m
   * @param lineLengthM length of the line in m
   * @return trees per hectare
   */
  public static double verticalLine(double angleDeg, double heightM, double lineLengthM) {
    double shorter = Math.min(heightM, lineLengthM);
    double longer = Math.max(heightM, lineLengthM);
    return HECTARE / 2 * Slope.tanOver(angleDeg, shorter) / longer;
  }

  /**
   * Trees per hectare of one tree on a cluster of circular plots.
   *
   * @param radiusM radius of each plot in m
   * @param plots plots of the cluster
   * @return trees per hectare
   */
  public static double clusterExpansion(double radiusM, double plots) {
    return HECTARE / (plots * (Math.PI * (radiusM * radiusM)));
  }
}
