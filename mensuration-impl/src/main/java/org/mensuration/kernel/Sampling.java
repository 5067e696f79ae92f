package org.mensuration.kernel;

/** Errors of sample means. Unchecked: NaN in, NaN out. Stateless and thread-safe. */
public final class Sampling {
  private Sampling() {}

  /**
   * Standard error of a mean.
   *
   * @param standardDeviation standard deviation of the sampling units
   * @param count number of units
   * @return standard error in the unit of the deviation
   */
  public static double standardError(double standardDeviation, double count) {
    return standardDeviation / Math.sqrt(count);
  }

  /**
   * Error of a product of two independent means, first order.
   *
   * @param countErrorPercent error of the count in per cent
   * @param ratioErrorPercent error of the ratio in per cent
   * @return error of the product in per cent
   */
  public static double combinedError(double countErrorPercent, double ratioErrorPercent) {
    return StrictMath.hypot(countErrorPercent, ratioErrorPercent);
  }

  /**
   * Mean over strata weighted by area.
   *
   * @param areasHa areas in ha
   * @param means means of the strata
   * @return mean in the unit of the means
   */
  public static double stratifiedMean(double[] areasHa, double[] means) {
    return Compensated.products(areasHa, means) / Compensated.sum(areasHa);
  }

  /**
   * Standard error over strata weighted by area.
   *
   * @param areasHa areas in ha
   * @param standardErrors standard errors of the strata
   * @return standard error in the unit of the errors
   */
  public static double stratifiedStandardError(double[] areasHa, double[] standardErrors) {
    double area = Compensated.sum(areasHa);
    double sum = 0;
    double lost = 0;
    for (int i = 0; i < areasHa.length; i++) {
      double part = areasHa[i] / area * standardErrors[i];
      double term = part * part;
      lost += Compensated.lost(sum, term);
      sum += term;
    }
    return Math.sqrt(sum + lost);
  }

  /**
   * Unbiased estimate of the variance of a product of two independent means.
   *
   * @param first first mean
   * @param firstError its standard error
   * @param second second mean
   * @param secondError its standard error
   * @return variance; may fall below zero where the errors exceed the means
   */
  public static double productVariance(
      double first, double firstError, double second, double secondError) {
    return first * first * (secondError * secondError)
        + firstError * firstError * ((second - secondError) * (second + secondError));
  }

  /**
   * Ratio of means.
   *
   * @param first readings below the line
   * @param second readings above the line
   * @return ratio
   */
  public static double ratio(double[] first, double[] second) {
    return Compensated.sum(second) / Compensated.sum(first);
  }

  /**
   * Factor for a wanted count.
   *
   * @param expectedBasalAreaM2Ha expected basal area in m²/ha
   * @param wantedCount count wanted a point
   * @return factor in m²/ha
   */
  public static double factorChoice(double expectedBasalAreaM2Ha, double wantedCount) {
    return expectedBasalAreaM2Ha / wantedCount;
  }
}
