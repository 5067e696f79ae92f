package org.mensuration.internal.statistics;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Mean and standard deviation of points. Sums are exact and rounded last, so neither the order of
 * the points nor how parts are merged matters, and equal points have a deviation of exactly zero.
 * Not thread-safe.
 */
public final class ExactMoments {
  private final ExactSum sum = ExactSum.ofNumbers();
  private final ExactSum squares = ExactSum.ofProducts();
  private int count;

  /** Starts without points. */
  public ExactMoments() {}

  /**
   * Adds a point.
   *
   * @param value its value
   * @throws ArithmeticException if it is not finite
   */
  public void add(double value) {
    sum.add(value);
    squares.addProduct(value, value);
    count = Math.addExact(count, 1);
  }

  /**
   * Adds the points of another.
   *
   * @param other not changed in value
   */
  public void add(ExactMoments other) {
    sum.add(other.sum);
    squares.add(other.squares);
    count = Math.addExact(count, other.count);
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
    return mean(sum, 1, count);
  }

  /**
   * The mean of numbers, rounded once.
   *
   * @param values the numbers, at least one
   * @return their mean
   * @throws ArithmeticException if one is not finite
   */
  public static double meanOf(Iterable<Double> values) {
    ExactMoments moments = new ExactMoments();
    for (double value : values) {
      moments.add(value);
    }
    return moments.mean();
  }

  /**
   * A mean of an exact sum, rounded once.
   *
   * @param sum the sum
   * @param unit what one in the sum stands for
   * @param count by what it is divided, above zero
   * @return the mean
   * @throws ArithmeticException if it is beyond the largest number
   */
  public static double mean(ExactSum sum, double unit, int count) {
    return rounded(
        sum.exact()
            .multiply(new BigDecimal(unit))
            .divide(BigDecimal.valueOf(count), MathContext.DECIMAL128));
  }

  /**
   * A ratio of exact sums, rounded once.
   *
   * @param above the sum above the line
   * @param below the sum below the line, not zero
   * @return the ratio
   * @throws ArithmeticException if it is beyond the largest number
   */
  public static double ratio(ExactSum above, ExactSum below) {
    return rounded(above.exact().divide(below.exact(), MathContext.DECIMAL128));
  }

  /**
   * The standard deviation with the divisor n - 1.
   *
   * @return the deviation; there must be two points
   * @throws ArithmeticException if it is beyond the largest number
   */
  public double standardDeviation() {
    BigDecimal points = BigDecimal.valueOf(count);
    BigDecimal total = sum.exact();
    BigDecimal spread = points.multiply(squares.exact()).subtract(total.multiply(total));
    BigDecimal divisor = points.multiply(BigDecimal.valueOf(count - 1L));
    return root(spread.divide(divisor, MathContext.DECIMAL128));
  }

  /**
   * The deviation of a ratio of means whose denominator is 1 at the points inside and 0 at those
   * beyond: over the root of the number of all points it gives the standard error of the sum of all
   * divided by the number inside.
   *
   * @param beyond sum of the values beyond, which are among the points
   * @param countBeyond how many these are, fewer than all
   * @return the deviation; there must be two points
   * @throws ArithmeticException if it is beyond the largest number
   */
  public double deviationOfExtended(ExactSum beyond, int countBeyond) {
    BigDecimal points = BigDecimal.valueOf(count);
    BigDecimal inside = BigDecimal.valueOf(count - (long) countBeyond);
    BigDecimal total = sum.exact();
    BigDecimal totalInside = total.subtract(beyond.exact());
    BigDecimal residuals =
        inside
            .multiply(squares.exact())
            .subtract(total.multiply(totalInside).multiply(BigDecimal.valueOf(2)))
            .add(total.multiply(total));
    BigDecimal divisor = inside.pow(3).multiply(BigDecimal.valueOf(count - 1L));
    return root(
        residuals.multiply(points).multiply(points).divide(divisor, MathContext.DECIMAL128));
  }

  /** A root that neither overflows nor vanishes where its square would. */
  private static double root(BigDecimal square) {
    if (square.signum() == 0) {
      return 0;
    }
    int half = (square.precision() - square.scale()) / 2;
    double root = Math.sqrt(square.scaleByPowerOfTen(-2 * half).doubleValue());
    return rounded(new BigDecimal(root).scaleByPowerOfTen(half));
  }

  private static double rounded(BigDecimal exact) {
    double value = exact.doubleValue();
    if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
      throw new ArithmeticException("a mean or deviation is beyond the largest number");
    }
    return value;
  }
}
