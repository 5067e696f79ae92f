package org.mensuration;

import org.mensuration.internal.catalogue.MeasurementErrorFormulas;

/**
 * Standard uncertainties of readings and what they make together. Numbers without a unit: input and
 * result share one. Stateless and thread-safe.
 *
 * <p>Every call throws {@link org.mensuration.formula.OutOfDomainException} when an error is
 * negative.
 *
 * <p>Equation, limits and sources of an id such as {@code error/rectangular}: {@link
 * Catalogues#standard}.
 */
public final class MeasurementErrors {

  private MeasurementErrors() {}

  /**
   * Of a value anywhere within a half-width alike, as a reading to the nearest part of a division
   * ({@code error/rectangular}).
   *
   * @param halfWidth half-width of the interval
   * @return standard uncertainty
   */
  public static double rectangular(double halfWidth) {
    return MeasurementErrorFormulas.RECTANGULAR.value(halfWidth);
  }

  /**
   * Of a value likeliest in the middle of a half-width ({@code error/triangular}).
   *
   * @param halfWidth half-width of the interval
   * @return standard uncertainty
   */
  public static double triangular(double halfWidth) {
    return MeasurementErrorFormulas.TRIANGULAR.value(halfWidth);
  }

  /**
   * Of a value that swings between the ends of a half-width ({@code error/arc-sine}).
   *
   * @param halfWidth half-width of the interval
   * @return standard uncertainty
   */
  public static double arcSine(double halfWidth) {
    return MeasurementErrorFormulas.ARC_SINE.value(halfWidth);
  }

  /**
   * Of the product of two independent factors, second order included ({@code error/product}).
   *
   * @param first one factor
   * @param firstError its standard uncertainty
   * @param second the other factor
   * @param secondError its standard uncertainty
   * @return standard uncertainty
   */
  public static double ofProduct(
      double first, double firstError, double second, double secondError) {
    return MeasurementErrorFormulas.OF_PRODUCT.value(first, firstError, second, secondError);
  }

  /**
   * Of a volume from form factor, diameter and height, in per cent ({@code error/volume-from-form-
   * factor}).
   *
   * @param formPercent of the form factor in per cent
   * @param diameterPercent of the diameter in per cent
   * @param heightPercent of the height in per cent
   * @return of the volume in per cent
   */
  public static double ofVolumePercent(
      double formPercent, double diameterPercent, double heightPercent) {
    return MeasurementErrorFormulas.OF_VOLUME.value(formPercent, diameterPercent, heightPercent);
  }

  /**
   * Standard deviation of an instrument from its differences from a reference that errs too ({@code
   * error/without-reference}).
   *
   * @param paired standard deviation of the differences
   * @param reference standard deviation of the reference, at most the other
   * @return standard deviation of the instrument
   */
  public static double withoutReference(double paired, double reference) {
    return MeasurementErrorFormulas.WITHOUT_REFERENCE.value(paired, reference);
  }

  /**
   * Of a result of several independent inputs ({@code error/combined}).
   *
   * @param slopes derivatives of the result by the inputs
   * @param errors standard uncertainties of the inputs, as many
   * @return standard uncertainty
   */
  public static double combined(double[] slopes, double[] errors) {
    return MeasurementErrorFormulas.COMBINED.applyTo(slopes, errors);
  }

  /**
   * Of a result of two inputs that go together ({@code error/correlated}), as two diameters read
   * from one distance.
   *
   * @param first slope times standard uncertainty of one input, with the sign of the slope
   * @param second slope times standard uncertainty of the other
   * @param correlation their correlation, −1 to 1
   * @return standard uncertainty
   * @throws org.mensuration.formula.OutOfDomainException if an input is outside
   */
  public static double correlated(double first, double second, double correlation) {
    return MeasurementErrorFormulas.CORRELATED.value(first, second, correlation);
  }
}
