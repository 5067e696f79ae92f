package org.mensuration.kernel;

/**
 * Stems and basal area from the distance between neighbours, and the area of a plot. Unchecked: NaN
 * in, NaN out. Stateless and thread-safe.
 */
public final class Spacing {
  private static final double HECTARE = 10000.0;

  private Spacing() {}

  /**
   * Stems per hectare with one stem on each circle of the spacing.
   *
   * @param spacingM distance between neighbours in m
   * @return stems per hectare
   */
  public static double stemsOnCircles(double spacingM) {
    return 4 * HECTARE / (Math.PI * (spacingM * spacingM));
  }

  /**
   * Basal area of a square pattern from spacing over diameter.
   *
   * @param spacingOverDiameter mean spacing over mean diameter, both in one unit
   * @return basal area in m²/ha
   */
  public static double basalAreaFromFactor(double spacingOverDiameter) {
    return 2500 * Math.PI / (spacingOverDiameter * spacingOverDiameter);
  }

  /**
   * Area of a circular plot.
   *
   * @param radiusM horizontal radius in m
   * @return area in m²
   */
  public static double circle(double radiusM) {
    return Math.PI * (radiusM * radiusM);
  }
}
