package org.mensuration.internal.statistics;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Mean and standard deviation of points. Sums are exact and rounded last, so the order of the
 * points does not matter and equal points have a deviation of exactly zero. Not thread-safe.
 */
public final class ExactMoments {
  private BigDecimal sum = BigDecimal.ZERO;
  private BigDecimal squares = BigDecimal.ZERO;
  private int count;

  /** Starts without points. */
  public ExactMoments() {}

  /**
   * Adds a point.
   *
   * @param value its value; finite
   */
  public void add(double value) {
    BigDecimal exact = new BigDecimal(value);
    sum = sum.add(exact);
    squares = squares.add(exact.multiply(exact));
    count++;
  }

  /**
   * The number of points.
   *
   * @return from 0
   */
  public int count() {
    return count;
  }

  /**
   * The mean.
   *
   * @return sum over count; there must be a point
   */
  public double mean() {
    return sum.divide(BigDecimal.valueOf(count), MathContext.DECIMAL128).doubleValue();
  }

  /**
   * The standard deviation with the divisor n - 1.
   *
   * @return the deviation; there must be two points
   */
  public double standardDeviation() {
    BigDecimal points = BigDecimal.valueOf(count);
    BigDecimal spread = points.multiply(squares).subtract(sum.multiply(sum));
    BigDecimal divisor = points.multiply(BigDecimal.valueOf(count - 1L));
    return Math.sqrt(spread.divide(divisor, MathContext.DECIMAL128).doubleValue());
  }
}
