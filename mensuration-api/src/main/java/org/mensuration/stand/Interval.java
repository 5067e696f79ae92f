package org.mensuration.stand;

import java.util.Objects;
import javax.measure.Quantity;
import org.mensuration.quantity.Physical;

/**
 * An interval that holds the mean of a stand with a stated chance; it covers the sampling error
 * only. Immutable and thread-safe; two intervals are equal when their ends are physically equal.
 *
 * @param lower lower end; below zero where the sample is small and uneven, since it is not cut off
 * @param upper upper end
 * @param confidencePercent the chance in per cent, from 50 and below 100
 * @param <Q> kind of quantity
 */
public record Interval<Q extends Quantity<Q>>(
    Quantity<Q> lower, Quantity<Q> upper, double confidencePercent) {

  /**
   * Checks the chance.
   *
   * @param lower lower end
   * @param upper upper end
   * @param confidencePercent the chance in per cent, from 50 and below 100
   * @throws IllegalArgumentException if the chance is outside
   */
  public Interval {
    Objects.requireNonNull(lower, "lower");
    Objects.requireNonNull(upper, "upper");
    if (!(confidencePercent >= 50 && confidencePercent < 100)) {
      throw new IllegalArgumentException(
          "confidence " + confidencePercent + " %, allowed [50, 100) %, such as 95");
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Interval<?> interval
        && lower.getUnit().isCompatible(interval.lower.getUnit())
        && confidencePercent == interval.confidencePercent
        && system(lower) == system(interval.lower)
        && system(upper) == system(interval.upper);
  }

  @Override
  public int hashCode() {
    return Objects.hash(Physical.hash(lower), Physical.hash(upper), confidencePercent);
  }

  private static double system(Quantity<?> quantity) {
    return quantity.toSystemUnit().getValue().doubleValue();
  }
}
