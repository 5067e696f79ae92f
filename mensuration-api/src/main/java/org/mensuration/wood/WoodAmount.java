package org.mensuration.wood;

import java.util.Objects;

/**
 * An amount of wood by one measure. Immutable and thread-safe.
 *
 * <p>It is not a volume quantity, so stacked wood cannot be added to solid wood by mistake: amounts
 * add and compare within one measure only, and the message of the refusal names both. A published
 * {@link ConversionFactor} leads from one measure to another.
 *
 * @param amount the amount in the unit of the measure; finite, not negative
 * @param measure how the wood is counted
 */
public record WoodAmount(double amount, WoodMeasure measure) implements Comparable<WoodAmount> {
  /**
   * Checks the amount.
   *
   * @param amount the amount in the unit of the measure
   * @param measure how the wood is counted
   * @throws IllegalArgumentException if the amount is negative, infinite or NaN
   */
  public WoodAmount {
    Objects.requireNonNull(measure, "measure");
    if (!(amount >= 0 && amount < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          measure.code() + ": " + amount + " " + measure.unit() + " is no amount; allowed [0, ∞)");
    }
  }

  /**
   * The sum of two amounts of one measure.
   *
   * @param other amount by the same measure
   * @return the sum
   * @throws IllegalArgumentException if the measures differ
   */
  public WoodAmount plus(WoodAmount other) {
    requireSame(other, "add");
    return new WoodAmount(amount + other.amount, measure);
  }

  /**
   * The difference of two amounts of one measure.
   *
   * @param other amount by the same measure, not larger than this one
   * @return the difference
   * @throws IllegalArgumentException if the measures differ, or the difference is negative
   */
  public WoodAmount minus(WoodAmount other) {
    requireSame(other, "subtract");
    return new WoodAmount(amount - other.amount, measure);
  }

  @Override
  public int compareTo(WoodAmount other) {
    requireSame(other, "compare");
    return Double.compare(amount, other.amount);
  }

  private void requireSame(WoodAmount other, String verb) {
    if (!measure.equals(other.measure)) {
      throw new IllegalArgumentException(
          "cannot "
              + verb
              + " "
              + measure.kind().words()
              + " and "
              + other.measure.kind().words()
              + ": "
              + this
              + ", "
              + other);
    }
  }

  @Override
  public String toString() {
    return amount + " " + measure.unit() + " " + measure;
  }
}
