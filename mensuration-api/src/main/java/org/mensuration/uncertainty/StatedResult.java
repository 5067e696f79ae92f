package org.mensuration.uncertainty;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * A measured result as it is written down: the standard uncertainty with one or two significant
 * digits, the estimate to the same decimal place. Both are exact decimals, so that they print with
 * the digits that they have. Immutable and thread-safe.
 *
 * @param estimate the estimate, its last digit in the place of the last one of the uncertainty
 * @param standardUncertainty the standard uncertainty in the unit of the estimate, above 0
 */
public record StatedResult(BigDecimal estimate, BigDecimal standardUncertainty) {
  private static final int MOST_DIGITS = 2;

  /**
   * Checks the digits.
   *
   * @param estimate the estimate
   * @param standardUncertainty the standard uncertainty in the unit of the estimate
   * @throws IllegalArgumentException if the uncertainty is not above 0, has more than two
   *     significant digits, or ends in another decimal place than the estimate
   */
  public StatedResult {
    Objects.requireNonNull(estimate, "estimate");
    Objects.requireNonNull(standardUncertainty, "standardUncertainty");
    if (standardUncertainty.signum() <= 0 || standardUncertainty.precision() > MOST_DIGITS) {
      throw new IllegalArgumentException(
          "stated result: standard uncertainty "
              + standardUncertainty
              + ", wanted one above 0 with at most two significant digits");
    }
    if (estimate.scale() != standardUncertainty.scale()) {
      throw new IllegalArgumentException(
          "stated result: the estimate "
              + estimate
              + " and the standard uncertainty "
              + standardUncertainty
              + " end in unlike decimal places, wanted the same");
    }
  }

  /**
   * The estimate as text, without exponent and independent of the locale.
   *
   * @return for example {@code 10.058}
   */
  public String estimateText() {
    return estimate.toPlainString();
  }

  /**
   * The standard uncertainty as text, without exponent and independent of the locale.
   *
   * @return for example {@code 0.027}
   */
  public String standardUncertaintyText() {
    return standardUncertainty.toPlainString();
  }

  @Override
  public String toString() {
    return estimateText() + " (standard uncertainty " + standardUncertaintyText() + ")";
  }
}
