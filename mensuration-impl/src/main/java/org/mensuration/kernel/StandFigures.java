package org.mensuration.kernel;

/** Figures of a stand per hectare. Unchecked: NaN in, NaN out. Stateless and thread-safe. */
public final class StandFigures {
  private static final double HECTARE = 10000.0;
  private static final double ROOT_OF_PI = Math.sqrt(Math.PI);
  private static final double ROOT_OF_THREE = Math.sqrt(3);

  private StandFigures() {}

  /**
   * Volume from basal area and volume over basal area.
   *
   * @param basalAreaM2Ha basal area in m²/ha
   * @param ratioM3M2 volume over basal area in m³ per m²
   * @return volume in m³/ha
   */
  public static double volume(double basalAreaM2Ha, double ratioM3M2) {
    return basalAreaM2Ha * ratioM3M2;
  }

  /**
   * Quadratic mean diameter.
   *
   * @param basalAreaM2Ha basal area in m²/ha
   * @param stemsHa stems per hectare
   * @return diameter in cm
   */
  public static double quadraticMeanDiameter(double basalAreaM2Ha, double stemsHa) {
    return 200 * Math.sqrt(basalAreaM2Ha) / (Math.sqrt(stemsHa) * ROOT_OF_PI);
  }

  /**
   * Stems at square spacing.
   *
   * @param spacingM distance between neighbours in m
   * @return stems per hectare
   */
  public static double stemsAtSquareSpacing(double spacingM) {
    return HECTARE / (spacingM * spacingM);
  }

  /**
   * Stems at triangular spacing.
   *
   * @param spacingM distance between neighbours in m
   * @return stems per hectare
   */
  public static double stemsAtTriangularSpacing(double spacingM) {
    return 2 * HECTARE / (ROOT_OF_THREE * (spacingM * spacingM));
  }

  /**
   * Stand density index at the reference diameter of 25.4 cm.
   *
   * @param stemsHa stems per hectare
   * @param diameterCm quadratic mean diameter in cm
   * @return index in stems per hectare
   */
  public static double densityIndex(double stemsHa, double diameterCm) {
    return stemsHa * StrictMath.pow(diameterCm / 25.4, 1.605);
  }

  /**
   * Stand density index added up tree by tree.
   *
   * @param expansionsHa trees per hectare that each tree stands for
   * @param diametersCm diameters in cm
   * @return index in stems per hectare
   */
  public static double densityIndexBySummation(double[] expansionsHa, double[] diametersCm) {
    double[] terms = new double[diametersCm.length];
    for (int i = 0; i < terms.length; i++) {
      terms[i] = densityIndex(expansionsHa[i], diametersCm[i]);
    }
    return Compensated.sum(terms);
  }

  /**
   * Relative density: basal area over the root of the quadratic mean diameter.
   *
   * @param basalAreaM2Ha basal area in m²/ha
   * @param diameterCm quadratic mean diameter in cm
   * @return relative density in its metric form
   */
  public static double relativeDensity(double basalAreaM2Ha, double diameterCm) {
    return basalAreaM2Ha / Math.sqrt(diameterCm);
  }

  /**
   * Mean spacing over dominant height, square pattern.
   *
   * @param stemsHa stems per hectare
   * @param heightM dominant height in m
   * @return relative spacing
   */
  public static double relativeSpacing(double stemsHa, double heightM) {
    return Math.sqrt(HECTARE / stemsHa) / heightM;
  }

  /**
   * Spacing index in per cent, square pattern.
   *
   * @param stemsHa stems per hectare
   * @param heightM dominant height in m
   * @return index in per cent
   */
  public static double spacingIndexSquare(double stemsHa, double heightM) {
    return 100 * Math.sqrt(HECTARE / stemsHa) / heightM;
  }

  /**
   * Spacing index in per cent, triangular pattern.
   *
   * @param stemsHa stems per hectare
   * @param heightM dominant height in m
   * @return index in per cent
   */
  public static double spacingIndexTriangular(double stemsHa, double heightM) {
    return 100 * Math.sqrt(2 * HECTARE / (ROOT_OF_THREE * stemsHa)) / heightM;
  }

  /**
   * Mean height weighted by basal area; the constant of the basal areas cancels.
   *
   * @param diametersCm diameters in cm
   * @param heightsM heights in m
   * @return height in m
   */
  public static double loreyHeight(double[] diametersCm, double[] heightsM) {
    double[] squares = new double[diametersCm.length];
    for (int i = 0; i < squares.length; i++) {
      squares[i] = diametersCm[i] * diametersCm[i];
    }
    return Compensated.products(squares, heightsM) / Compensated.sum(squares);
  }
}
