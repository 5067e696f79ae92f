package org.mensuration.stand;

/**
 * A plain number with its standard error, such as a count of stems, a ratio or a percentage.
 * Immutable and thread-safe.
 *
 * @param value the number
 * @param standardError its standard error; 0 without degrees of freedom, where it means nothing
 * @param degreesOfFreedom degrees of freedom of the error; 0 if there is no error
 */
public record EstimatedNumber(double value, double standardError, double degreesOfFreedom) {

  /**
   * Refuses NaN, infinities and negative errors.
   *
   * @param value the number
   * @param standardError its standard error
   * @param degreesOfFreedom degrees of freedom of the error
   * @throws IllegalArgumentException if a value is not finite, or an error negative
   */
  public EstimatedNumber {
    if (!(Math.abs(value) < Double.POSITIVE_INFINITY
        && standardError >= 0
        && standardError < Double.POSITIVE_INFINITY
        && degreesOfFreedom >= 0
        && degreesOfFreedom < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "an estimate of "
              + value
              + " with the error "
              + standardError
              + " of "
              + degreesOfFreedom
              + " degrees of freedom is none");
    }
  }
}
