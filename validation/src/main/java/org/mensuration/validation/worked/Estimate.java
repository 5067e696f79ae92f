package org.mensuration.validation.worked;

import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.mensuration.stand.Estimated;
import org.mensuration.units.Measures;

/**
 * A mean with its sampling error, as it is printed. Immutable and thread-safe.
 *
 * @param mean the mean
 * @param error standard error; empty where one observation gives none
 * @param degreesOfFreedom of the error
 * @param halfWidth half of the 95 % interval; empty with the error
 */
record Estimate(
    double mean, OptionalDouble error, double degreesOfFreedom, OptionalDouble halfWidth) {

  static Estimate of(Arithmetic arithmetic, double mean, OptionalDouble error, double freedom) {
    boolean known = error.isPresent() && freedom > 0;
    return new Estimate(
        mean,
        known ? error : OptionalDouble.empty(),
        freedom,
        known
            ? OptionalDouble.of(arithmetic.halfWidth(mean, error.getAsDouble(), freedom))
            : OptionalDouble.empty());
  }

  /** A mean over points or strata. */
  static <Q extends Quantity<Q>> Estimate of(
      Arithmetic arithmetic, Estimated<Q> estimated, Unit<Q> unit) {
    double freedom = estimated.degreesOfFreedom();
    return of(
        arithmetic,
        Measures.in(estimated.value(), unit),
        freedom > 0
            ? OptionalDouble.of(Measures.in(estimated.standardError(), unit))
            : OptionalDouble.empty(),
        freedom);
  }

  /** The mean of ratios of trees chosen with equal chance. */
  static Estimate ofSample(Arithmetic arithmetic, double[] values) {
    double mean = arithmetic.mean(values);
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
