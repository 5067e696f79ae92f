package org.mensuration.kernel;

/**
 * Sampling of units whose number is known: strata, bounds, budgets, ratios and regressions from
 * summary figures. Unchecked: NaN in, NaN out. Stateless and thread-safe.
 */
public final class Survey {
  private Survey() {}

  /**
   * Total over strata.
   *
   * @param units units of each stratum
   * @param mean mean of each stratum
   * @return total
   */
  public static double stratifiedTotal(double[] units, double[] mean) {
    return Compensated.products(units, mean);
  }

  /**
   * Variance of the total over strata, each with its own finite factor.
   *
   * @param units units of each stratum
   * @param fraction part of each stratum that was read
   * @param deviation standard deviation of each stratum
   * @param sampled units read of each stratum
   * @return variance
   */
  public static double stratifiedTotalVariance(
      double[] units, double[] fraction, double[] deviation, double[] sampled) {
    double[] left = new double[units.length];
    double[] right = new double[units.length];
    for (int h = 0; h < units.length; h++) {
      left[h] = units[h] * units[h] * (1 - fraction[h]);
      right[h] = deviation[h] * deviation[h] / sampled[h];
    }
    return Compensated.products(left, right);
  }

  /**
   * Units of one stratum for a bound on the error of the total, by unit costs.
   *
   * @param stratumUnits units of the stratum
   * @param stratumDeviation its standard deviation
   * @param stratumCost its cost of a unit
   * @param units units of all strata
   * @param deviation standard deviations of all strata
   * @param cost costs of a unit of all strata
   * @param bound half width wanted for the total
   * @param factor how many standard errors the bound is
   * @return units, not rounded
   */
  public static double unitsForBound(
      double stratumUnits,
      double stratumDeviation,
      double stratumCost,
      double[] units,
      double[] deviation,
      double[] cost,
      double bound,
      double factor) {
    double[] root = new double[units.length];
    double[] square = new double[units.length];
    for (int h = 0; h < units.length; h++) {
      root[h] = units[h] * deviation[h];
      square[h] = Math.sqrt(cost[h]);
    }
    double spent = Compensated.products(root, square);
    double[] variance = new double[units.length];
    for (int h = 0; h < units.length; h++) {
      variance[h] = root[h] * deviation[h];
    }
    double error = bound / factor;
    return stratumUnits
        * stratumDeviation
        / Math.sqrt(stratumCost)
        * (spent / (error * error + Compensated.sum(variance)));
  }

  /**
   * Units of one stratum for a budget, by unit costs.
   *
   * @param stratumUnits units of the stratum
   * @param stratumDeviation its standard deviation
   * @param stratumCost its cost of a unit
   * @param units units of all strata
   * @param deviation standard deviations of all strata
   * @param cost costs of a unit of all strata
   * @param budget what may be spent
   * @return units, not rounded
   */
  public static double unitsForBudget(
      double stratumUnits,
      double stratumDeviation,
      double stratumCost,
      double[] units,
      double[] deviation,
      double[] cost,
      double budget) {
    double[] root = new double[units.length];
    double[] square = new double[units.length];
    for (int h = 0; h < units.length; h++) {
      root[h] = units[h] * deviation[h];
      square[h] = Math.sqrt(cost[h]);
    }
    return budget
        * (stratumUnits * stratumDeviation / Math.sqrt(stratumCost))
        / Compensated.products(root, square);
  }

  /**
   * Units of a simple random sample for a bound on the error of the mean.
   *
   * @param population units there are
   * @param variance variance of the units
   * @param bound half width wanted for the mean
   * @param factor how many standard errors the bound is
   * @return units, not rounded
   */
  public static double unitsNeeded(
      double population, double variance, double bound, double factor) {
    // Over the deviation, so that small figures do not vanish in their squares.
    double error = bound / factor / Math.sqrt(variance);
    return population / ((population - 1) * (error * error) + 1);
  }

  /**
   * Plots of a finite population for an allowable error with a given t.
   *
   * @param variationPercent coefficient of variation in per cent
   * @param errorPercent allowable error in per cent
   * @param t the quantile
   * @param population plots of the population
   * @return plots, not rounded
   */
  public static double plotsWithGivenT(
      double variationPercent, double errorPercent, double t, double population) {
    // By the smaller first, so that no product of small figures vanishes.
    double root = errorPercent / Math.min(t, variationPercent) / Math.max(t, variationPercent);
    return 1 / (1 / population + root * root);
  }

  /**
   * First-phase units of double sampling with a ratio for a budget.
   *
   * @param firstCost cost of a unit of the first phase
   * @param secondCost cost of a unit of the second phase
   * @param variance variance of what is wanted
   * @param ratioVariance variance about the ratio, below the other
   * @param budget what may be spent
   * @return units of the first phase, not rounded
   */
  public static double firstPhase(
      double firstCost, double secondCost, double variance, double ratioVariance, double budget) {
    double first = Math.sqrt(firstCost);
    double second =
        Math.sqrt(secondCost) * Math.sqrt(ratioVariance) / Math.sqrt(variance - ratioVariance);
    return budget / first / (first + second);
  }

  /**
   * Variance of a difference of two multiples of correlated terms.
   *
   * @param a first factor
   * @param firstVariance variance of the first term
   * @param b second factor
   * @param secondVariance variance of the second term
   * @param covariance their covariance
   * @return variance
   */
  public static double differenceVariance(
      double a, double firstVariance, double b, double secondVariance, double covariance) {
    return a * a * firstVariance + b * b * secondVariance - 2 * a * b * covariance;
  }

  /**
   * Variance of a mean with the finite factor.
   *
   * @param count units read
   * @param population units there are
   * @param deviation standard deviation
   * @return variance
   */
  public static double meanVariance(double count, double population, double deviation) {
    return finite(count, population) * (deviation * deviation);
  }

  /**
   * Variance of a mean estimated by a ratio, from summary figures.
   *
   * @param count units read
   * @param population units there are
   * @param ratio the ratio
   * @param firstDeviation standard deviation of the known variable
   * @param secondDeviation standard deviation of the wanted variable
   * @param covariance their covariance
   * @return variance
   */
  public static double ratioVariance(
      double count,
      double population,
      double ratio,
      double firstDeviation,
      double secondDeviation,
      double covariance) {
    return finite(count, population)
        * (secondDeviation * secondDeviation
            + ratio * ratio * (firstDeviation * firstDeviation)
            - 2 * ratio * covariance);
  }

  /**
   * A mean moved along a straight line to the known mean of the other variable.
   *
   * @param slope slope of the line
   * @param firstMean mean of the known variable over the units read
   * @param secondMean mean of the wanted variable over the units read
   * @param populationMean mean of the known variable over all units
   * @return mean
   */
  public static double regressionMean(
      double slope, double firstMean, double secondMean, double populationMean) {
    return secondMean + slope * (populationMean - firstMean);
  }

  /**
   * Variance of a mean estimated by a regression, from summary figures.
   *
   * @param count units read
   * @param population units there are
   * @param secondDeviation standard deviation of the wanted variable
   * @param correlation correlation of the two variables
   * @return variance
   */
  public static double regressionVariance(
      double count, double population, double secondDeviation, double correlation) {
    return finite(count, population)
        * ((1 - correlation) * (1 + correlation))
        * (secondDeviation * secondDeviation);
  }

  /**
   * Correlation from summary figures.
   *
   * @param covariance covariance of two variables
   * @param firstDeviation standard deviation of one
   * @param secondDeviation standard deviation of the other
   * @return correlation
   */
  public static double correlation(
      double covariance, double firstDeviation, double secondDeviation) {
    return covariance / firstDeviation / secondDeviation;
  }

  private static double finite(double count, double population) {
    return (population - count) / population / count;
  }
}
