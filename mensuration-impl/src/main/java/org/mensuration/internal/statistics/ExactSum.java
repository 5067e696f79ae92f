package org.mensuration.internal.statistics;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Arrays;

/**
 * An exact sum of doubles, or of products of two doubles, as a fixed-point number in limbs of 32
 * bits. Neither the order of the terms nor how sums are merged changes a bit. Not thread-safe.
 *
 * <p>A limb is a signed 64-bit word that takes 2³⁰ terms before its carries must be passed on, so
 * adding is three additions and no loop. The used limbs are remembered: clearing and rounding a sum
 * of a few magnitudes touches a few limbs only.
 */
public final class ExactSum {
  private static final long DIGIT = 0xffff_ffffL;
  private static final int DIGIT_BITS = 32;
  private static final int FRACTION_BITS = 52;
  private static final long FRACTION = (1L << FRACTION_BITS) - 1;
  private static final int EXPONENT = 0x7ff;

  /** Terms that the limbs take before carries are passed on. */
  private static final int ROOM = 1 << 30;

  private static final int SMALLEST_EXPONENT = -1074;

  /** All exponents of a double and 63 bits for the number of terms: 592 bytes a sum. */
  private static final int LIMBS = 68;

  private static final int LIMBS_OF_PRODUCTS = 138;

  private final long[] limbs;
  private final int smallestExponent;

  /** First and last limb in use; none if the last is before the first. */
  private int low;

  private int high = -1;
  private int terms;

  private ExactSum(int limbs, int smallestExponent) {
    this.limbs = new long[limbs];
    this.smallestExponent = smallestExponent;
    this.low = limbs;
  }

  /**
   * A sum of doubles.
   *
   * @return zero
   */
  public static ExactSum ofNumbers() {
    return new ExactSum(LIMBS, SMALLEST_EXPONENT);
  }

  /**
   * A sum of products of two doubles.
   *
   * @return zero
   */
  public static ExactSum ofProducts() {
    return new ExactSum(LIMBS_OF_PRODUCTS, 2 * SMALLEST_EXPONENT);
  }

  /**
   * Adds a term.
   *
   * @param value the term
   * @throws ArithmeticException if it is not finite
   */
  public void add(double value) {
    long bits = Double.doubleToRawLongBits(value);
    int exponent = (int) (bits >>> FRACTION_BITS) & EXPONENT;
    long mantissa = bits & FRACTION;
    if (exponent == 0) {
      if (mantissa == 0) {
        return;
      }
      exponent = 1;
    } else if (exponent == EXPONENT) {
      throw new ArithmeticException("a sum cannot take " + value);
    } else {
      mantissa |= FRACTION + 1;
    }
    int position = exponent - 1 + SMALLEST_EXPONENT - smallestExponent;
    int limb = position >>> 5;
    int shift = position & (DIGIT_BITS - 1);
    long sign = bits >> 63;
    long below = (mantissa << shift) & DIGIT;
    long middle = (mantissa >>> (DIGIT_BITS - shift)) & DIGIT;
    long above = mantissa >>> 1 >>> (63 - shift);
    limbs[limb] += (below ^ sign) - sign;
    limbs[limb + 1] += (middle ^ sign) - sign;
    limbs[limb + 2] += (above ^ sign) - sign;
    used(limb, limb + 2);
  }

  /**
   * Adds a product.
   *
   * @param left one factor
   * @param right the other
   * @throws ArithmeticException if one is not finite
   * @throws IllegalStateException if this is no sum of products
   */
  public void addProduct(double left, double right) {
    if (smallestExponent == SMALLEST_EXPONENT) {
      throw new IllegalStateException("a sum of numbers takes no products");
    }
    if (!(Math.abs(left) < Double.POSITIVE_INFINITY
        && Math.abs(right) < Double.POSITIVE_INFINITY)) {
      throw new ArithmeticException("a sum cannot take " + left + " times " + right);
    }
    if (left == 0 || right == 0) {
      return;
    }
    long sign = (Double.doubleToRawLongBits(left) ^ Double.doubleToRawLongBits(right)) >> 63;
    long a = mantissa(left);
    long b = mantissa(right);
    int position = position(left) + position(right);
    // Four partial products of 32-bit halves; each is below 2⁶⁴ and is added on its own.
    addWord((a & DIGIT) * (b & DIGIT), position, sign);
    addWord((a & DIGIT) * (b >>> DIGIT_BITS), position + DIGIT_BITS, sign);
    addWord((a >>> DIGIT_BITS) * (b & DIGIT), position + DIGIT_BITS, sign);
    addWord((a >>> DIGIT_BITS) * (b >>> DIGIT_BITS), position + 2 * DIGIT_BITS, sign);
  }

  private static long mantissa(double value) {
    long bits = Double.doubleToRawLongBits(value);
    long fraction = bits & FRACTION;
    return ((bits >>> FRACTION_BITS) & EXPONENT) == 0 ? fraction : fraction | (FRACTION + 1);
  }

  private static int position(double value) {
    int exponent = (int) (Double.doubleToRawLongBits(value) >>> FRACTION_BITS) & EXPONENT;
    return Math.max(exponent, 1) - 1;
  }

  private void addWord(long word, int position, long sign) {
    int limb = position >>> 5;
    int shift = position & (DIGIT_BITS - 1);
    long below = (word << shift) & DIGIT;
    long middle = (word >>> (DIGIT_BITS - shift)) & DIGIT;
    long above = word >>> 1 >>> (63 - shift);
    limbs[limb] += (below ^ sign) - sign;
    limbs[limb + 1] += (middle ^ sign) - sign;
    limbs[limb + 2] += (above ^ sign) - sign;
    used(limb, limb + 2);
  }

  private void used(int first, int last) {
    if (first < low) {
      low = first;
    }
    if (last > high) {
      high = last;
    }
    if (++terms == ROOM) {
      passCarries();
    }
  }

  /**
   * Adds all terms of another sum.
   *
   * @param other a sum of the same kind; not changed in value
   * @throws IllegalArgumentException if one is a sum of products and the other is not
   */
  public void add(ExactSum other) {
    if (other.smallestExponent != smallestExponent) {
      throw new IllegalArgumentException("sums of numbers and of products do not mix");
    }
    if (other.terms > 0) {
      other.passCarries();
    }
    for (int i = other.low; i <= other.high; i++) {
      limbs[i] += other.limbs[i];
    }
    if (other.low <= other.high) {
      used(other.low, other.high);
    }
  }

  /** Back to zero. */
  public void clear() {
    if (low <= high) {
      Arrays.fill(limbs, low, high + 1, 0);
    }
    low = limbs.length;
    high = -1;
    terms = 0;
  }

  /** Passes carries upwards, so that every limb but the last is a digit; the last has the sign. */
  private void passCarries() {
    long carry = 0;
    int i = low;
    for (; i <= high; i++) {
      long limb = limbs[i] + carry;
      limbs[i] = limb & DIGIT;
      carry = limb >> DIGIT_BITS;
    }
    while (carry != 0 && carry != -1) {
      limbs[i] = carry & DIGIT;
      carry >>= DIGIT_BITS;
      high = i++;
    }
    if (carry != 0) {
      limbs[high] -= 1L << DIGIT_BITS;
    }
    terms = 0;
  }

  /**
   * The sum, rounded once to the nearest double, halves to the even one.
   *
   * @return the sum; zero if there are no terms
   * @throws ArithmeticException if it is beyond the largest double
   */
  public double value() {
    if (terms > 0) {
      passCarries();
    }
    int top = high;
    while (top >= low && limbs[top] == 0) {
      top--;
    }
    if (top < low) {
      return 0;
    }
    if (limbs[top] < 0 || top < 2) {
      // Negative and minute sums are rare: exact decimals round them just as well.
      return finite(exact().doubleValue());
    }
    return finite(rounded(top));
  }

  private double rounded(int top) {
    long lead = limbs[top] << DIGIT_BITS | limbs[top - 1];
    int zeros = Long.numberOfLeadingZeros(lead);
    long next = limbs[top - 2];
    long word = zeros == 0 ? lead : lead << zeros | next >>> (DIGIT_BITS - zeros);
    boolean more = ((next << zeros) & DIGIT) != 0;
    for (int i = top - 3; i >= low && !more; i--) {
      more = limbs[i] != 0;
    }
    int exponent = smallestExponent + DIGIT_BITS * (top - 1) - zeros;
    // Eleven bits of the 64 fall away, more where the result is below the normal doubles.
    int away = Math.max(Long.SIZE - FRACTION_BITS - 1, SMALLEST_EXPONENT - exponent);
    if (away >= Long.SIZE) {
      return exact().doubleValue();
    }
    long kept = word >>> away;
    long lost = word << (Long.SIZE - away);
    boolean half = lost == Long.MIN_VALUE && !more;
    if (lost < 0 && (!half || (kept & 1) != 0)) {
      kept++;
    }
    return Math.scalb((double) kept, exponent + away);
  }

  private static double finite(double value) {
    if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
      throw new ArithmeticException("a sum is beyond the largest number");
    }
    return value;
  }

  /**
   * The sum without rounding.
   *
   * @return the exact value
   */
  public BigDecimal exact() {
    passCarries();
    BigInteger whole = BigInteger.ZERO;
    for (int i = high; i >= low; i--) {
      whole = whole.shiftLeft(DIGIT_BITS).add(BigInteger.valueOf(limbs[i]));
    }
    if (whole.signum() == 0) {
      return BigDecimal.ZERO;
    }
    int exponent = smallestExponent + DIGIT_BITS * low;
    int even = whole.getLowestSetBit();
    whole = whole.shiftRight(even);
    exponent += even;
    return exponent >= 0
        ? new BigDecimal(whole.shiftLeft(exponent))
        : new BigDecimal(whole.multiply(BigInteger.valueOf(5).pow(-exponent)), -exponent);
  }
}
