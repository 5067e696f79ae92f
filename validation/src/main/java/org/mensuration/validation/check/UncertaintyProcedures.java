package org.mensuration.validation.check;

import java.util.List;
import org.mensuration.StatedResults;
import org.mensuration.uncertainty.StatedResult;

/** Measured results as they are written down. Stateless and thread-safe. */
final class UncertaintyProcedures {
  private static final int TWO_DIGITS = 2;

  static final List<Procedure> ALL =
      List.of(
          uncertainty(
              "stated-uncertainty-nearest", (u, digits) -> StatedResults.nearest(0, u, digits)),
          uncertainty(
              "stated-uncertainty-upward", (u, digits) -> StatedResults.upward(0, u, digits)),
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

  /** A way to state a result. */
  private interface Rounding {
    StatedResult of(double standardUncertainty, int digits);
  }

  private static Procedure uncertainty(String id, Rounding rounding) {
    return Chain.of(id)
        .number("error", "1", "standard uncertainty")
        .number("digits", "1", "significant digits kept")
        .gives(
            "stated_error",
            "1",
            (c, x) -> rounding.of(x[0][0], (int) x[1][0]).standardUncertainty().doubleValue());
  }
}
