package org.mensuration.kernel;

/**
 * Estimates that use a second variable, allocation of points to strata, finite populations.
 * Unchecked: NaN in, NaN out. Stateless and thread-safe.
 */
public final class Estimation {
  private Estimation() {}

  /**
   * Standard error of a mean of a finite population.
   *
   * @param standardDeviation standard deviation of the sampling units
   * @param count number of units
   * @param population units of the population
   * @return standard error in the unit of the deviation
   */
  public static double standardErrorFinite(
      double standardDeviation, double count, double population) {
    return standardDeviation * Math.sqrt((population - count) / count / population);
  }

  /**
   * Weighted mean of coefficients of variation.
   *
   * @param weights weights of the strata
   * @param variationsPercent coefficients of variation in per cent
   * @return in per cent
   */
  public static double weightedVariation(double[] weights, double[] variationsPercent) {
    return Compensated.products(weights, variationsPercent) / Compensated.sum(weights);
  }

  /**
   * Points of a stratum by Neyman's allocation.
   *
   * @param total points in all
   * @param weight weight of the stratum
   * @param variationPercent coefficient of variation of the stratum in per cent
   * @param weights weights of all strata
   * @param variationsPercent coefficients of variation of all strata in per cent
   * @return points, not rounded
   */
  public static double neyman(
      double total,
      double weight,
      double variationPercent,
      double[] weights,
      double[] variationsPercent) {
    return total * (weight * variationPercent / Compensated.products(weights, variationsPercent));
  }

  /**
   * Points of a stratum by area.
   *
   * @param total points in all
   * @param area area of the stratum
   * @param areas areas of all strata
   * @return points, not rounded
   */
  public static double proportional(double total, double area, double[] areas) {
    return total * (area / Compensated.sum(areas));
  }

  /**
   * Effective degrees of freedom of a standard error over strata.
   *
   * @param areas areas of the strata
   * @param standardErrors standard errors of their means
   * @param counts points of the strata
   * @return degrees of freedom, not rounded
   */
  public static double effectiveFreedom(double[] areas, double[] standardErrors, double[] counts) {
    double largest = 0;
    for (int i = 0; i < areas.length; i++) {
      largest = Math.max(largest, areas[i] * standardErrors[i]);
    }
    // Shares of the largest part keep the fourth powers within range.
    double above = 0;
    double below = 0;
    for (int i = 0; i < areas.length; i++) {
      double part = areas[i] * standardErrors[i] / largest;
      double square = part * part;
      above += square;
      below += square * square / (counts[i] - 1);
    }
    return above * above / below;
  }

  /**
   * Standard error of a ratio of means.
   *
   * @param first readings below the line
   * @param second readings above the line
   * @param fraction part of the population that was read
   * @return standard error of the ratio
   */
  public static double ratioError(double[] first, double[] second, double fraction) {
    int n = first.length;
    double[] firstBefore = sumsBefore(first);
    double[] secondBefore = sumsBefore(second);
    double[] residuals = new double[n];
    double firstAfter = 0;
    double secondAfter = 0;
    double largest = 0;
    for (int i = n - 1; i >= 0; i--) {
      // The sums without reading i: the printed residual y - r x cancels where one reading rules.
      double others = firstBefore[i] + firstAfter;
      residuals[i] =
          Compensated.crossDifference(second[i], others, first[i], secondBefore[i] + secondAfter);
      largest = Math.max(largest, Math.abs(residuals[i]));
      firstAfter += first[i];
      secondAfter += second[i];
    }
    if (largest == 0) {
      return n > 1 ? 0 : Double.NaN; // one reading says nothing of its error
    }
    double squares = 0;
    for (double residual : residuals) {
      double part = residual / largest;
      squares += part * part;
    }
    double root = Math.sqrt((1 - fraction) * n * squares / (n - 1.0));
    return largest / firstAfter * root / firstAfter;
  }

  private static double[] sumsBefore(double[] terms) {
    double[] sums = new double[terms.length];
    for (int i = 1; i < terms.length; i++) {
      sums[i] = sums[i - 1] + terms[i - 1];
    }
    return sums;
  }

  /**
   * Regression estimate of a mean.
   *
   * @param first readings of the variable that is known for the population
   * @param second readings of the variable wanted
   * @param populationMean mean of the first variable over the population
   * @return mean of the second variable
   */
  public static double regression(double[] first, double[] second, double populationMean) {
    double firstMean = Compensated.sum(first) / first.length;
    double secondMean = Compensated.sum(second) / second.length;
    double slope = slope(first, second, firstMean, secondMean);
    return secondMean + slope * (populationMean - firstMean);
  }

  /**
   * Standard error of a regression estimate, with the divisor n - 2.
   *
   * @param first readings of the variable that is known for the population
   * @param second readings of the variable wanted
   * @param fraction part of the population that was read
   * @return standard error
   */
  public static double regressionError(double[] first, double[] second, double fraction) {
    int n = first.length;
    double firstMean = Compensated.sum(first) / n;
    double secondMean = Compensated.sum(second) / n;
    double slope = slope(first, second, firstMean, secondMean);
    double squares = 0;
    for (int i = 0; i < n; i++) {
      double residual = second[i] - secondMean - slope * (first[i] - firstMean);
      squares += residual * residual;
    }
    return Math.sqrt((1 - fraction) * squares / (n * (n - 2.0)));
  }

  private static double slope(
      double[] first, double[] second, double firstMean, double secondMean) {
    double products = 0;
    double squares = 0;
    for (int i = 0; i < first.length; i++) {
      double difference = first[i] - firstMean;
      products += difference * (second[i] - secondMean);
      squares += difference * difference;
    }
    return products / squares;
  }
}
