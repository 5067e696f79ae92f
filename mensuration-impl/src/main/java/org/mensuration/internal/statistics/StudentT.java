package org.mensuration.internal.statistics;

import java.util.function.DoublePredicate;
import org.apache.commons.statistics.distribution.TDistribution;

/** Intervals and sample sizes by Student's t. Unchecked. Stateless and thread-safe. */
public final class StudentT {
  private static final double SMALLEST = 2;

  /** Up to here whole numbers are exact. */
  private static final double LARGEST = 0x1p52;

  private StudentT() {}

  /**
   * The two-sided quantile.
   *
   * @param freedom degrees of freedom, above 0
   * @param confidencePercent confidence in per cent, above 0 and below 100
   * @return t; infinite if the confidence is too near to 100 for a number
   */
  public static double quantile(double freedom, double confidencePercent) {
    // The tail is taken from 100, which is exact near 100, where 1 - (1 - tail) is not.
    double tail = (100 - confidencePercent) / 200;
    return TDistribution.of(freedom).inverseSurvivalProbability(tail);
  }

  /**
   * Half the width of the interval of a mean.
   *
   * @param standardError standard error of the mean
   * @param freedom degrees of freedom
   * @param confidencePercent confidence in per cent
   * @return half width in the unit of the error
   */
  public static double halfWidth(double standardError, double freedom, double confidencePercent) {
    return quantile(freedom, confidencePercent) * standardError;
  }

  /**
   * The smallest number of points that satisfies its own t.
   *
   * @param variationPercent coefficient of variation in per cent
   * @param errorPercent allowable error in per cent
   * @param confidencePercent confidence in per cent
   * @return a whole number from 2; infinite if there is none that a double can count
   */
  public static double pointsNeeded(
      double variationPercent, double errorPercent, double confidencePercent) {
    return smallest(
        points -> {
          double root = quantile(points - 1, confidencePercent) * variationPercent / errorPercent;
          return points >= root * root;
        });
  }

  /**
   * The smallest number of plots of a finite population that satisfies its own t.
   *
   * @param variationPercent coefficient of variation in per cent
   * @param errorPercent allowable error in per cent
   * @param confidencePercent confidence in per cent
   * @param population plots of the population
   * @return a whole number from 2 to the population
   */
  public static double plotsNeeded(
      double variationPercent, double errorPercent, double confidencePercent, double population) {
    return smallest(
        plots -> {
          double root = errorPercent / (quantile(plots - 1, confidencePercent) * variationPercent);
          return plots >= population || plots >= 1 / (1 / population + root * root);
        });
  }

  /**
   * The first number from 2 that is enough. Every number above one that is enough is enough too,
   * since t falls as the number grows: so the search doubles and halves and always ends.
   */
  private static double smallest(DoublePredicate enough) {
    double high = SMALLEST;
    while (!enough.test(high)) {
      if (!(high < LARGEST)) {
        return Double.POSITIVE_INFINITY;
      }
      high *= 2;
    }
    double low = high / 2;
    while (high - low > 1) {
      double middle = Math.floor((low + high) / 2);
      if (enough.test(middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }
}
