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
   * A deviation or error in per cent of the mean.
   *
   * @param deviation standard deviation or standard error
   * @param mean mean in the same unit
   * @return per cent
   */
  public static double percentOfMean(double deviation, double mean) {
    return 100 * deviation / mean;
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
   * Error of a product of two independent means by the unbiased estimate of its variance.
   *
   * @param countErrorPercent error of the count in per cent, up to 100
   * @param ratioErrorPercent error of the ratio in per cent, up to 100
   * @return error of the product in per cent
   */
  public static double combinedErrorUnbiased(double countErrorPercent, double ratioErrorPercent) {
    double part = countErrorPercent / 100;
    return StrictMath.hypot(
        countErrorPercent, ratioErrorPercent * Math.sqrt((1 - part) * (1 + part)));
  }

  /**
   * True error of a product of two independent means.
   *
   * @param countErrorPercent error of the count in per cent
   * @param ratioErrorPercent error of the ratio in per cent
   * @return error of the product in per cent
   */
  public static double combinedErrorOfTrueMoments(
      double countErrorPercent, double ratioErrorPercent) {
    return StrictMath.hypot(
        countErrorPercent, ratioErrorPercent * StrictMath.hypot(1, countErrorPercent / 100));
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
    double[] parts = new double[areasHa.length];
    for (int i = 0; i < parts.length; i++) {
      parts[i] = areasHa[i] / area * standardErrors[i];
    }
    return Math.sqrt(Compensated.products(parts, parts));
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
   * True variance of a product of two independent means.
   *
   * @param first first mean
   * @param firstError its standard error
   * @param second second mean
   * @param secondError its standard error
   * @return variance
   */
  public static double productVarianceOfTrueMoments(
      double first, double firstError, double second, double secondError) {
    return first * first * (secondError * secondError)
        + firstError * firstError * (second * second + secondError * secondError);
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

  /**
   * Share of the counted trees that a larger second factor picks.
   *
   * @param factorM2Ha factor of the count in m²/ha
   * @param secondFactorM2Ha second factor in m²/ha
   * @return share
   */
  public static double secondFactorShare(double factorM2Ha, double secondFactorM2Ha) {
    return factorM2Ha / secondFactorM2Ha;
  }

  /**
   * Count points to one measured tree at equal cost.
   *
   * @param countVariationPercent coefficient of variation of the basal area of points in per cent
   * @param ratioVariationPercent coefficient of variation of the ratio of trees in per cent
   * @return points to a tree
   */
  public static double countPointsPerMeasuredTree(
      double countVariationPercent, double ratioVariationPercent) {
    return countVariationPercent / ratioVariationPercent;
  }

  /**
   * Points for a tract by its area.
   *
   * @param areaAc area in acres, up to 200
   * @return points, not rounded
   */
  public static double pointsByArea(double areaAc) {
    if (areaAc <= 10) {
      return 10;
    }
    if (areaAc <= 40) {
      return areaAc;
    }
    return areaAc <= 80 ? 20 + 0.5 * areaAc : 40 + 0.25 * areaAc;
  }
}
