package org.mensuration.internal.statistics;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.DoubleUnaryOperator;
import org.mensuration.kernel.ClassRounding;
import org.mensuration.uncertainty.StatedResult;

/**
 * A result rounded to the last place of its uncertainty, as two named steps: first the uncertainty,
 * then the estimate, each once and from the value itself. No formula of the catalogue, because the
 * step of the rounding follows from the value, and an equation prints its step. Stateless and
 * thread-safe.
 *
 * <p>A double stands for the shortest decimal that names it, so that a half is one that can be read
 * off. The uncertainty keeps to the rule of all class limits besides: within a relative 1e-9 of one
 * it is on it, since 0.1 + 0.2 must not be raised from 0.30 to 0.31.
 */
public final class LastPlace {
  private static final int MOST_DIGITS = 2;

  private LastPlace() {}

  /**
   * The uncertainty to the nearest, a half up, since it is not to be understated.
   *
   * @param estimate the estimate
   * @param standardUncertainty its standard uncertainty, above 0
   * @param digits significant digits that the uncertainty keeps, 1 or 2
   * @return the result as it is written down
   * @throws IllegalArgumentException if an input is outside
   */
  public static StatedResult nearest(double estimate, double standardUncertainty, int digits) {
    return stated(
        estimate, standardUncertainty, digits, steps -> ClassRounding.halfUp(steps, 1, 1));
  }

  /**
   * The uncertainty up.
   *
   * @param estimate the estimate
   * @param standardUncertainty its standard uncertainty, above 0
   * @param digits significant digits that the uncertainty keeps, 1 or 2
   * @return the result as it is written down
   * @throws IllegalArgumentException if an input is outside
   */
  public static StatedResult upward(double estimate, double standardUncertainty, int digits) {
    return stated(estimate, standardUncertainty, digits, steps -> ClassRounding.up(steps, 1, 1));
  }

  private static StatedResult stated(
      double estimate, double standardUncertainty, int digits, DoubleUnaryOperator rounding) {
    if (!(Math.abs(estimate) < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "stated result: estimate " + estimate + ", wanted a finite number");
    }
    if (!(standardUncertainty > 0 && standardUncertainty < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "stated result: standard uncertainty "
              + standardUncertainty
              + ", wanted a finite number above 0");
    }
    if (digits < 1 || digits > MOST_DIGITS) {
      throw new IllegalArgumentException(
          "stated result: " + digits + " significant digits, wanted 1 or 2");
    }
    BigDecimal uncertainty = roundedUncertainty(standardUncertainty, digits, rounding);
    BigDecimal rounded =
        new BigDecimal(Double.toString(estimate))
            .setScale(uncertainty.scale(), RoundingMode.HALF_EVEN);
    return new StatedResult(rounded, uncertainty);
  }

  private static BigDecimal roundedUncertainty(
      double standardUncertainty, int digits, DoubleUnaryOperator rounding) {
    BigDecimal decimal = new BigDecimal(Double.toString(standardUncertainty));
    int place = decimal.scale() - decimal.precision() + digits;
    double steps = decimal.scaleByPowerOfTen(place).doubleValue();
    BigDecimal whole = BigDecimal.valueOf((long) rounding.applyAsDouble(steps));
    if (whole.precision() > digits) {
      // 9.96 becomes 10 and not 10.0: one digit more would be one that is not known.
      return BigDecimal.valueOf(whole.longValueExact() / 10, place - 1);
    }
    return BigDecimal.valueOf(whole.longValueExact(), place);
  }
}
