package org.mensuration.kernel;

/**
 * Sums that carry what each addition loses (Neumaier), so that a long list keeps its last digits.
 * Unchecked. Stateless and thread-safe.
 */
final class Compensated {
  private Compensated() {}

  /** What the addition of {@code term} to {@code sum} loses. */
  static double lost(double sum, double term) {
    double next = sum + term;
    return Math.abs(sum) >= Math.abs(term) ? (sum - next) + term : (term - next) + sum;
  }

  /** The sum of all terms. */
  static double sum(double[] terms) {
    double sum = 0;
    double lost = 0;
    for (double term : terms) {
      lost += lost(sum, term);
      sum += term;
    }
    return sum + lost;
  }

  /** The sum of products. */
  static double products(double[] left, double[] right) {
    double sum = 0;
    double lost = 0;
    for (int i = 0; i < left.length; i++) {
      double term = left[i] * right[i];
      lost += lost(sum, term);
      sum += term;
    }
    return sum + lost;
  }

  /** A difference of products, right to the last digits also where the products nearly agree. */
  static double crossDifference(double a, double b, double c, double d) {
    double left = a * b;
    double right = c * d;
    return left - right + (productLost(a, b, left) - productLost(c, d, right));
  }

  /** What the rounding of a product loses, by halves of the digits (Dekker). */
  private static double productLost(double a, double b, double product) {
    double aHigh = high(a);
    double bHigh = high(b);
    double aLow = a - aHigh;
    double bLow = b - bHigh;
    return aHigh * bHigh - product + aHigh * bLow + aLow * bHigh + aLow * bLow;
  }

  private static double high(double value) {
    double shifted = value * ((1 << 27) + 1);
    return shifted - (shifted - value);
  }
}
