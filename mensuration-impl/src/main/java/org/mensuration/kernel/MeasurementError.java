package org.mensuration.kernel;

/**
 * Standard uncertainties from half-widths, their sum, and a spread freed from that of a reference.
 * Unchecked: NaN in, NaN out. Stateless and thread-safe.
 */
public final class MeasurementError {
  private static final double ROOT_THREE = Math.sqrt(3);
  private static final double ROOT_SIX = Math.sqrt(6);
  private static final double ROOT_TWO = Math.sqrt(2);

  private MeasurementError() {}

  /**
   * Standard uncertainty of a value that lies anywhere within a half-width alike.
   *
   * @param halfWidth half-width
   * @return standard uncertainty
   */
  public static double rectangular(double halfWidth) {
    return halfWidth / ROOT_THREE;
  }

  /**
   * Standard uncertainty of a value that is likeliest in the middle of a half-width.
   *
   * @param halfWidth half-width
   * @return standard uncertainty
   */
  public static double triangular(double halfWidth) {
    return halfWidth / ROOT_SIX;
  }

  /**
   * Standard uncertainty of a value that swings between the ends of a half-width.
   *
   * @param halfWidth half-width
   * @return standard uncertainty
   */
  public static double arcSine(double halfWidth) {
    return halfWidth / ROOT_TWO;
  }

  /**
   * Combined standard uncertainty of independent inputs.
   *
   * @param slopes derivatives of the result by the inputs
   * @param errors standard uncertainties of the inputs, as many
   * @return standard uncertainty of the result
   */
  public static double combined(double[] slopes, double[] errors) {
    double root = 0;
    for (int i = 0; i < slopes.length; i++) {
      root = StrictMath.hypot(root, slopes[i] * errors[i]);
    }
    return root;
  }

  /**
   * Combined standard uncertainty of two inputs that go together.
   *
   * @param first part of the first input, its slope times its uncertainty
   * @param second part of the second input, signed like the first
   * @param correlation their correlation, −1 to 1
   * @return standard uncertainty of the result
   */
  public static double correlated(double first, double second, double correlation) {
    // Both squares under the root are positive, so that nothing cancels near ±1.
    boolean alike = first < 0 == second < 0;
    double apart = alike ? first - second : first + second;
    double together = alike ? 1 + correlation : 1 - correlation;
    double shared =
        Math.sqrt(2 * together) * Math.sqrt(Math.abs(first)) * Math.sqrt(Math.abs(second));
    return StrictMath.hypot(apart, shared);
  }

  /**
   * Standard deviation of an instrument, from its differences from a reference that errs too.
   *
   * @param paired standard deviation of the differences
   * @param reference standard deviation of the reference, at most the other
   * @return standard deviation of the instrument
   */
  public static double withoutReference(double paired, double reference) {
    return Math.sqrt((paired - reference) * (paired + reference));
  }

  /**
   * Relative standard uncertainty of a volume from form factor, diameter and height.
   *
   * @param formPercent of the form factor in per cent
   * @param diameterPercent of the diameter in per cent
   * @param heightPercent of the height in per cent
   * @return of the volume in per cent
   */
  public static double ofVolume(double formPercent, double diameterPercent, double heightPercent) {
    return StrictMath.hypot(StrictMath.hypot(formPercent, 2 * diameterPercent), heightPercent);
  }

  /**
   * Standard uncertainty of a product, the second order with it, which is all there is when both
   * factors are zero.
   *
   * @param first one factor
   * @param firstError its standard uncertainty
   * @param second the other factor
   * @param secondError its standard uncertainty
   * @return standard uncertainty of the product
   */
  public static double ofProduct(
      double first, double firstError, double second, double secondError) {
    double firstOrder = StrictMath.hypot(first * secondError, second * firstError);
    return StrictMath.hypot(firstOrder, firstError * secondError);
  }
}
