package org.mensuration.kernel;

/**
 * Density of a stand relative to a scale. Unchecked: NaN in, NaN out. Stateless and thread-safe.
 */
public final class Density {
  private Density() {}

  /**
   * Curtis relative density in feet and inches.
   *
   * @param basalAreaFt2Ac basal area in ft²/ac
   * @param quadraticMeanIn quadratic mean diameter in inches
   * @return relative density of that unit system
   */
  public static double relativeDensityImperial(double basalAreaFt2Ac, double quadraticMeanIn) {
    return basalAreaFt2Ac / Math.sqrt(quadraticMeanIn);
  }

  /**
   * A density index in per cent of its maximum.
   *
   * @param index the index, stems per area
   * @param maximum the maximum, stems of the same area
   * @return per cent
   */
  public static double relativeIndex(double index, double maximum) {
    return 100 * index / maximum;
  }
}
