package org.mensuration.internal.statistics;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Arrays;

/**
 * An exact sum of doubles, or of products of two doubles, as a fixed-point number in limbs of 32
 * bits. Neither the order of the terms nor how sums are merged changes a bit. Not thread-safe.
 *
 * <p>A limb is a signed 64-bit word that takes 2³⁰ terms before its carries must be passed on, so
 * adding is three additions and no loop.
 */
public final class ExactSum {
  private static final long DIGIT = 0xffff_ffffL;
  private static final int DIGIT_BITS = 32;
  private static final int FRACTION_BITS = 52;
  private static final long FRACTION = (1L << FRACTION_BITS) - 1;
  private static final int EXPONENT = 0x7ff;

  /** Of a mantissa of 53 bits, the lower half. */
  private static final int HALF_BITS = 26;

  private static final long HALF = (1L << HALF_BITS) - 1;

  /** Terms that the limbs take before carries are passed on. */
  private static final int ROOM = 1 << 30;

  private static final int SMALLEST_EXPONENT = -1074;

  /** All exponents of a double and 63 bits for the number of terms: 592 bytes a sum. */
  private static final int LIMBS = 68;

  private static final int LIMBS_OF_PRODUCTS = 138;

  private final long[] limbs;
  private final int smallestExponent;

  /** Terms added since carries were passed on. */
  private int terms;

  private ExactSum(int limbs, int smallestExponent) {
    this.limbs = new long[limbs];
    this.smallestExponent = smallestExponent;
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
    long sign = bits >> 63;
    addWord((mantissa ^ sign) - sign, exponent - 1 + SMALLEST_EXPONENT - smallestExponent);
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
    // Partial products of halves, which keep below the sign bit: 27 and 26 bits of each mantissa.
    long aHigh = a >>> HALF_BITS;
    long aLow = a & HALF;
    long bHigh = b >>> HALF_BITS;
    long bLow = b & HALF;
    addWord((aLow * bLow ^ sign) - sign, position);
    addWord((aLow * bHigh + aHigh * bLow ^ sign) - sign, position + HALF_BITS);
    addWord((aHigh * bHigh ^ sign) - sign, position + 2 * HALF_BITS);
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

  /** Adds a signed word times a power of two: two digits and what is above them, with the sign. */
  private void addWord(long word, int position) {
    int limb = position >>> 5;
    int shift = position & (DIGIT_BITS - 1);
    limbs[limb] += (word << shift) & DIGIT;
    limbs[limb + 1] += (word >> (DIGIT_BITS - shift)) & DIGIT;
    limbs[limb + 2] += word >> (63 - shift) >> 1;
    makeRoom();
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
    other.passCarries();
    for (int i = 0; i < limbs.length; i++) {
      limbs[i] += other.limbs[i];
    }
    makeRoom();
  }

  /** Counts a term, and passes carries on before the limbs could overflow. */
  private void makeRoom() {
    if (++terms == ROOM) {
      passCarries();
    }
  }

  /** Back to zero. */
  public void clear() {
    Arrays.fill(limbs, 0);
    terms = 0;
  }

  /** Passes carries upwards, so that every limb but the last is a digit; the last has the sign. */
  private void passCarries() {
    if (terms == 0) {
      return;
    }
    long carry = 0;
    for (int i = 0; i < limbs.length - 1; i++) {
      long limb = limbs[i] + carry;
      limbs[i] = limb & DIGIT;
      carry = limb >> DIGIT_BITS;
    }
    limbs[limbs.length - 1] += carry;
    terms = 0;
  }

  /**
   * The sum, rounded once to the nearest double, halves to the even one.
   *
   * @return the sum; zero if there are no terms
   * @throws ArithmeticException if it is beyond the largest double
   */
  public double value() {
    passCarries();
    int top = limbs.length - 1;
    while (top >= 0 && limbs[top] == 0) {
      top--;
    }
    if (top < 0) {
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
    for (int i = top - 3; i >= 0 && !more; i--) {
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

  static double finite(double value) {
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
    BigInteger whole = BigInteger.ZERO;
    for (int i = limbs.length - 1; i >= 0; i--) {
      whole = whole.shiftLeft(DIGIT_BITS).add(BigInteger.valueOf(limbs[i]));
    }
    if (whole.signum() == 0) {
      return BigDecimal.ZERO;
    }
    int even = whole.getLowestSetBit();
    whole = whole.shiftRight(even);
    int exponent = smallestExponent + even;
    return exponent >= 0
        ? new BigDecimal(whole.shiftLeft(exponent))
        : new BigDecimal(whole.multiply(BigInteger.valueOf(5).pow(-exponent)), -exponent);
  }
}
