package org.mensuration.kernel;

/**
 * How often a counted tree counts because of an edge, and what that gives over a whole tract.
 * Unchecked: NaN in, NaN out. Stateless and thread-safe.
 */
public final class EdgeWeights {
  private EdgeWeights() {}

  /**
   * Weight of a tree by walking through it to the spot as far behind it as the point is before it.
   *
   * @param inside 1 if the spot lies inside the tract, 0 if outside
   * @return 1 or 2
   */
  public static double walkthrough(double inside) {
    return inside < 1 ? 2 : 1;
  }

  /**
   * Weight of the trees of a part sweep.
   *
   * @param shareOfCircle part of the full turn that was swept, above 0 and up to 1
   * @return the weight
   */
  public static double sweep(double shareOfCircle) {
    return 1 / shareOfCircle;
  }

  /**
   * Mean over the points inside of what was counted at points inside and outside.
   *
   * @param value value of each point, inside and outside
   * @param inside 1 for a point inside, 0 for one outside
   * @return sum of the values over the number of points inside
   */
  public static double extendedGridMean(double[] value, double[] inside) {
    return Compensated.sum(value) / Compensated.sum(inside);
  }

  /**
   * Standard error of the mean over the points inside of what was counted inside and outside.
   *
   * @param value value of each point, inside and outside
   * @param inside 1 for a point inside, 0 for one outside
   * @return standard error as of a ratio of means of all points; NaN for one point or none inside
   */
  public static double extendedGridError(double[] value, double[] inside) {
    return Compensated.sum(inside) > 0 ? Estimation.ratioError(inside, value, 0) : Double.NaN;
  }

  /**
   * Basal area per hectare that a rule gives on the average of all points of a tract.
   *
   * @param factorM2Ha factor of the gauge in m²/ha
   * @param countedM2 area of points from which each tree is counted in m²
   * @param tractM2 area of the tract in m²
   * @return basal area in m²/ha
   */
  public static double expectedBasalArea(double factorM2Ha, double[] countedM2, double tractM2) {
    return factorM2Ha * Compensated.sum(countedM2) / tractM2;
  }

  /**
   * Stems per hectare that a rule gives on the average of all points of a tract.
   *
   * @param factorM2Ha factor of the gauge in m²/ha
   * @param diameterCm diameter of each tree in cm
   * @param countedM2 area of points from which each tree is counted in m²
   * @param tractM2 area of the tract in m²
   * @return stems per hectare
   */
  public static double expectedStems(
      double factorM2Ha, double[] diameterCm, double[] countedM2, double tractM2) {
    double[] factors = new double[diameterCm.length];
    for (int i = 0; i < factors.length; i++) {
      factors[i] = factorM2Ha / CountedTrees.basalArea(diameterCm[i]);
    }
    return Compensated.products(factors, countedM2) / tractM2;
  }
}
