package org.mensuration.internal.statistics;

import org.mensuration.kernel.ClassRounding;
import org.mensuration.kernel.Estimation;
import org.mensuration.kernel.Sampling;

/**
 * Points needed over strata: the shares of each stratum are rounded up, and the t is that of the
 * estimate over the strata. Unchecked. Immutable and thread-safe.
 */
public final class StrataPoints {
  private static final double FEWEST = 2;

  /** So many degrees of freedom that t is that of the normal distribution. */
  private static final double NORMAL = 1e15;

  private static final double LARGEST = 0x1p52;

  /** How far above the number of the normal distribution is looked. */
  private static final int MOST_STEPS = 100_000;

  private final double[] weights;
  private final double[] variations;
  private final double[] shares;

  private StrataPoints(double[] weights, double[] variationsPercent, double[] shares) {
    this.weights = weights;
    this.variations = variationsPercent;
    this.shares = shares;
  }

  /**
   * Shares by weight and variation; equal ones if nothing varies.
   *
   * @param weights weights of the strata
   * @param variationsPercent their coefficients of variation in per cent
   * @return the rule
   */
  public static StrataPoints neyman(double[] weights, double[] variationsPercent) {
    double[] shares = new double[weights.length];
    for (int i = 0; i < shares.length; i++) {
      shares[i] =
          Estimation.neyman(1, weights[i], variationsPercent[i], weights, variationsPercent);
      if (!(shares[i] >= 0)) {
        shares[i] = 1.0 / shares.length;
      }
    }
    return new StrataPoints(weights.clone(), variationsPercent.clone(), shares);
  }

  /**
   * Shares by weight alone.
   *
   * @param weights weights of the strata
   * @param variationsPercent their coefficients of variation in per cent
   * @return the rule
   */
  public static StrataPoints proportional(double[] weights, double[] variationsPercent) {
    double[] shares = new double[weights.length];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = Estimation.proportional(1, weights[i], weights);
    }
    return new StrataPoints(weights.clone(), variationsPercent.clone(), shares);
  }

  /**
   * A number of points before and after rounding.
   *
   * @param nominal points whose shares are rounded up; infinite if none is enough
   * @param total sum of the shares after rounding
   */
  public record Points(double nominal, double total) {}

  /**
   * The smallest number that satisfies its own t. No number is enough that would not be enough with
   * the t of the normal distribution, so the search begins there. Above it each number is tried,
   * since the degrees of freedom need not rise with the number.
   *
   * @param errorPercent half width over the mean in per cent
   * @param confidencePercent confidence in per cent
   * @return the points
   */
  public Points needed(double errorPercent, double confidencePercent) {
    double normal = StudentT.quantile(NORMAL, confidencePercent);
    double high = 1;
    while (!(normal * error(counts(high)) <= errorPercent)) {
      if (!(high < LARGEST)) {
        return none();
      }
      high *= 2;
    }
    double low = Math.floor(high / 2);
    while (high - low > 1) {
      double middle = Math.floor((low + high) / 2);
      if (normal * error(counts(middle)) <= errorPercent) {
        high = middle;
      } else {
        low = middle;
      }
    }
    for (int step = 0; step < MOST_STEPS; step++) {
      double[] counts = counts(high + step);
      if (halfWidth(counts, confidencePercent) <= errorPercent) {
        double total = 0;
        for (double count : counts) {
          total += count;
        }
        return new Points(high + step, total);
      }
    }
    return none();
  }

  private static Points none() {
    return new Points(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  private double[] counts(double points) {
    double[] counts = new double[shares.length];
    for (int i = 0; i < counts.length; i++) {
      counts[i] = rounded(i, points);
    }
    return counts;
  }

  /**
   * The share of a stratum.
   *
   * @param stratum its number
   * @param points points in all before rounding
   * @return its points before rounding
   */
  public double exact(int stratum, double points) {
    return points * shares[stratum];
  }

  /**
   * The share of a stratum, rounded up.
   *
   * @param stratum its number
   * @param points points in all before rounding
   * @return its points, at least 2
   */
  public double rounded(int stratum, double points) {
    return Math.max(FEWEST, ClassRounding.up(exact(stratum, points), 1, 1));
  }

  private double halfWidth(double[] counts, double confidencePercent) {
    double error = error(counts);
    if (error == 0) {
      return 0;
    }
    // Over the largest, so that no fourth power vanishes or overflows.
    double[] errors = errors(counts);
    double freedom = Estimation.effectiveFreedom(overLargest(weights), overLargest(errors), counts);
    return StudentT.halfWidth(error, freedom, confidencePercent);
  }

  private static double[] overLargest(double[] values) {
    double largest = 0;
    for (double value : values) {
      largest = Math.max(largest, value);
    }
    double[] shares = new double[values.length];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = values[i] / largest;
    }
    return shares;
  }

  private double error(double[] counts) {
    return Sampling.stratifiedStandardError(weights, errors(counts));
  }

  private double[] errors(double[] counts) {
    double[] errors = new double[counts.length];
    for (int i = 0; i < errors.length; i++) {
      errors[i] = Sampling.standardError(variations[i], counts[i]);
    }
    return errors;
  }
}
