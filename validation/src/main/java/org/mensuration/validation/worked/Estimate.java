package org.mensuration.validation.worked;

import java.util.OptionalDouble;

/**
 * A mean with its sampling error. Immutable and thread-safe.
 *
 * @param mean the mean
 * @param error standard error; empty where one observation gives none
 * @param degreesOfFreedom of the error
 * @param halfWidth half of the 95 % interval; empty with the error
 */
record Estimate(double mean, OptionalDouble error, int degreesOfFreedom, OptionalDouble halfWidth) {

  static Estimate of(Arithmetic arithmetic, double mean, OptionalDouble error, int freedom) {
    boolean known = error.isPresent() && freedom >= 1;
    return new Estimate(
        mean,
        known ? error : OptionalDouble.empty(),
        freedom,
        known
            ? OptionalDouble.of(arithmetic.halfWidth(mean, error.getAsDouble(), freedom))
            : OptionalDouble.empty());
  }

  /** The mean of a simple random sample. */
  static Estimate ofSample(Arithmetic arithmetic, double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    double mean = sum / values.length;
    if (values.length < 2) {
      return of(arithmetic, mean, OptionalDouble.empty(), 0);
    }
    double squares = 0;
    for (double value : values) {
      squares += (value - mean) * (value - mean);
    }
    double deviation = Math.sqrt(squares / (values.length - 1));
    double error = arithmetic.standardError(deviation, values.length);
    return of(arithmetic, mean, OptionalDouble.of(error), values.length - 1);
  }

  /** The standard error in per cent of the mean. */
  OptionalDouble errorPercent() {
    return error.isPresent() && mean > 0
        ? OptionalDouble.of(100 * error.getAsDouble() / mean)
        : OptionalDouble.empty();
  }
}
