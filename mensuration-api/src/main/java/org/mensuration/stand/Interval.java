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
 * @param confidence the chance, between 0 and 1
 * @param <Q> kind of quantity
 */
public record Interval<Q extends Quantity<Q>>(
    Quantity<Q> lower, Quantity<Q> upper, double confidence) {

  /**
   * Checks the chance.
   *
   * @param lower lower end
   * @param upper upper end
   * @param confidence the chance, between 0 and 1
   * @throws IllegalArgumentException if the chance is not between 0 and 1
   */
  public Interval {
    Objects.requireNonNull(lower, "lower");
    Objects.requireNonNull(upper, "upper");
    if (!(confidence > 0 && confidence < 1)) {
      throw new IllegalArgumentException("confidence " + confidence + ", allowed (0, 1)");
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Interval<?> interval
        && lower.getUnit().isCompatible(interval.lower.getUnit())
        && confidence == interval.confidence
        && system(lower) == system(interval.lower)
        && system(upper) == system(interval.upper);
  }

  @Override
  public int hashCode() {
    return Objects.hash(Physical.hash(lower), Physical.hash(upper), confidence);
  }

  private static double system(Quantity<?> quantity) {
    return quantity.toSystemUnit().getValue().doubleValue();
  }
}
