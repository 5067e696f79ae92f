package org.mensuration.kernel;

/**
 * Trees counted at a point: diameters in cm, factors in m²/ha, results per hectare. Unchecked: NaN
 * in, NaN out. Stateless and thread-safe.
 */
public final class CountedTrees {
  /** Divides π d² with d in cm to give an area in m². */
  private static final double AREA_DIVISOR = 40000.0;

  private CountedTrees() {}

  /**
   * Basal area of a tree.
   *
   * @param diameterCm diameter in cm
   * @return area in m²
   */
  public static double basalArea(double diameterCm) {
    return Math.PI * (diameterCm * diameterCm) / AREA_DIVISOR;
  }

  /**
   * Volume over basal area of a tree.
   *
   * @param volumeM3 volume in m³
   * @param diameterCm diameter in cm
   * @return ratio in m³ per m²
   */
  public static double volumeBasalAreaRatio(double volumeM3, double diameterCm) {
    return AREA_DIVISOR * volumeM3 / (Math.PI * (diameterCm * diameterCm));
  }

  /**
   * Volume of a tree from its form factor.
   *
   * @param diameterCm diameter in cm
   * @param heightM height in m
   * @param formFactor volume over that of the cylinder
   * @return volume in m³
   */
  public static double volumeFromFormFactor(double diameterCm, double heightM, double formFactor) {
    return basalArea(diameterCm) * heightM * formFactor;
  }

  /**
   * Volume of a tree from its volume-basal-area ratio.
   *
   * @param diameterCm diameter in cm
   * @param ratioM3M2 volume over basal area in m³ per m²
   * @return volume in m³
   */
  public static double volumeFromRatio(double diameterCm, double ratioM3M2) {
    return basalArea(diameterCm) * ratioM3M2;
  }

  /**
   * Squares of diameters.
   *
   * @param diametersCm diameters in cm
   * @return squares in cm²
   */
  public static double[] squares(double[] diametersCm) {
    double[] squares = new double[diametersCm.length];
    for (int i = 0; i < squares.length; i++) {
      squares[i] = diametersCm[i] * diametersCm[i];
    }
    return squares;
  }

  /**
   * Basal area per hectare of a count.
   *
   * @param factorM2Ha factor in m²/ha
   * @param count trees counted, halves and edge weights included
   * @return basal area in m²/ha
   */
  public static double basalAreaPerHectare(double factorM2Ha, double count) {
    return factorM2Ha * count;
  }

  /**
   * Stems per hectare of counted trees.
   *
   * @param factorM2Ha factor in m²/ha
   * @param diametersCm diameters in cm
   * @return stems per hectare
   */
  public static double stemsPerHectare(double factorM2Ha, double[] diametersCm) {
    return AREA_DIVISOR * factorM2Ha / Math.PI * inverseSquares(diametersCm);
  }

  /**
   * Sum of what each counted tree carries per square metre of its basal area, times the factor.
   *
   * @param factorM2Ha factor in m²/ha
   * @param ratios volume over basal area in m³ per m², or critical heights in m
   * @return volume in m³/ha
   */
  public static double volumePerHectare(double factorM2Ha, double[] ratios) {
    return factorM2Ha * Compensated.sum(ratios);
  }

  /**
   * Quadratic mean diameter of the stand behind counted trees.
   *
   * @param diametersCm diameters in cm
   * @return diameter in cm
   */
  public static double quadraticMeanDiameter(double[] diametersCm) {
    return Math.sqrt(diametersCm.length / inverseSquares(diametersCm));
  }

  /**
   * Arithmetic mean diameter of the stand behind counted trees.
   *
   * @param diametersCm diameters in cm
   * @return diameter in cm
   */
  public static double arithmeticMeanDiameter(double[] diametersCm) {
    double[] inverses = new double[diametersCm.length];
    for (int i = 0; i < inverses.length; i++) {
      inverses[i] = 1 / diametersCm[i];
    }
    return Compensated.sum(inverses) / inverseSquares(diametersCm);
  }

  private static double inverseSquares(double[] diametersCm) {
    double[] inverses = new double[diametersCm.length];
    for (int i = 0; i < inverses.length; i++) {
      inverses[i] = 1 / (diametersCm[i] * diametersCm[i]);
    }
    return Compensated.sum(inverses);
  }
}
