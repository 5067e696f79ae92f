package org.mensuration.validation.check;

import java.util.List;
import org.mensuration.StatedResults;

/** Measured results as they are written down. Stateless and thread-safe. */
final class UncertaintyProcedures {
  private static final int TWO_DIGITS = 2;

  static final List<Procedure> ALL =
      List.of(
          Chain.of("stated-uncertainty-nearest")
              .number("error", "1", "standard uncertainty")
              .number("digits", "1", "significant digits kept")
              .gives(
                  "stated_error",
                  "1",
                  (c, x) ->
                      StatedResults.nearest(0, x[0][0], (int) x[1][0])
                          .standardUncertainty()
                          .doubleValue()),
          Chain.of("stated-uncertainty-upward")
              .number("error", "1", "standard uncertainty")
              .number("digits", "1", "significant digits kept")
              .gives(
                  "stated_error",
                  "1",
                  (c, x) ->
                      StatedResults.upward(0, x[0][0], (int) x[1][0])
                          .standardUncertainty()
                          .doubleValue()),
          Chain.of("stated-estimate")
              .number("estimate", "1", "estimate")
              .number("error", "1", "its standard uncertainty")
              .number("digits", "1", "significant digits of the uncertainty kept")
              .gives(
                  "stated",
                  "1",
                  (c, x) ->
                      StatedResults.nearest(x[0][0], x[1][0], (int) x[2][0])
                          .estimate()
                          .doubleValue()),
          Chain.of("end-gauge-stated-length")
              .all(EndGauge.PARAMETERS)
              .gives(
                  "length",
                  "1",
                  (c, x) -> EndGauge.stated(c, x, TWO_DIGITS).estimate().doubleValue()),
          Chain.of("end-gauge-stated-error")
              .checks("error/combined", "error/rectangular")
              .all(EndGauge.PARAMETERS)
              .gives(
                  "length_error",
                  "1",
                  (c, x) -> EndGauge.stated(c, x, TWO_DIGITS).standardUncertainty().doubleValue()));

  private UncertaintyProcedures() {}
}
