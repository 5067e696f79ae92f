package org.mensuration.optics;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A scale calibrated on targets, by least squares through the origin. Immutable and thread-safe.
 *
 * @param scale the scale with the fitted ratio
 * @param readings number of readings
 * @param spread standard error and spread of the residuals; empty for a single reading
 * @param intercept the line with an intercept, fitted beside it; empty below three readings or if
 *     all fill the same number of divisions
 * @param warnings what speaks against the ratio, in words; empty if nothing does
 */
public record Calibration(
    RatioScale scale,
    int readings,
    Optional<Spread> spread,
    Optional<Intercept> intercept,
    List<String> warnings) {

  /**
   * Copies the warnings.
   *
   * @param scale the scale with the fitted ratio
   * @param readings number of readings
   * @param spread standard error and spread of the residuals
   * @param intercept the line with an intercept
   * @param warnings what speaks against the ratio
   */
  public Calibration {
    Objects.requireNonNull(scale, "scale");
    Objects.requireNonNull(spread, "spread");
    Objects.requireNonNull(intercept, "intercept");
    warnings = List.copyOf(warnings);
  }

  /**
   * How far readings scatter. Immutable and thread-safe.
   *
   * @param standardError standard error of the ratio of a division
   * @param residual standard deviation of a target's ratio about the fit, with n - 1 degrees of
   *     freedom
   */
  public record Spread(double standardError, double residual) {}

  /**
   * Ratio at zero divisions. Immutable and thread-safe.
   *
   * @param value the intercept
   * @param standardError its standard error
   * @param significant whether it differs from zero at 95 % by Student's t
   */
  public record Intercept(double value, double standardError, boolean significant) {}
}
