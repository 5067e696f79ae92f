package org.mensuration.quantity;

import java.util.Objects;

/**
 * What a rule scales a log at: an amount in the rule's own unit. Immutable and thread-safe.
 *
 * <p>It is not a volume. Amounts of one rule and one bark basis add and compare; those of different
 * rules do not, and the message of the refusal names both. A basis that is not stated is a basis of
 * its own: it adds to amounts that do not state theirs, and to neither over nor under bark, since
 * it may be the other one.
 *
 * @param rule the rule, such as {@code Doyle}
 * @param amount the amount in the rule's unit; finite, not negative
 * @param unit the rule's unit, such as {@code bf}
 * @param bark what the log was measured over
 */
public record LogScale(String rule, double amount, String unit, BarkBasis bark)
    implements Comparable<LogScale> {

  /**
   * Checks the amount.
   *
   * @param rule the rule, such as {@code Doyle}
   * @param amount the amount in the rule's unit
   * @param unit the rule's unit, such as {@code bf}
   * @param bark what the log was measured over
   * @throws IllegalArgumentException if the amount is negative, infinite or NaN
   */
  public LogScale {
    Objects.requireNonNull(rule, "rule");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(bark, "bark");
    if (!(amount >= 0 && amount < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          rule + ": an amount of " + amount + " " + unit + " is no scale; allowed [0, ∞)");
    }
  }

  /**
   * The sum of two amounts of one rule.
   *
   * @param other amount by the same rule and bark basis
   * @return the sum
   * @throws IllegalArgumentException if the rules, units or bark bases differ
   */
  public LogScale plus(LogScale other) {
    requireSame(other, "add");
    return new LogScale(rule, amount + other.amount, unit, bark);
  }

  /**
   * The difference of two amounts of one rule.
   *
   * @param other amount by the same rule and bark basis, not larger than this one
   * @return the difference
   * @throws IllegalArgumentException if the rules, units or bark bases differ, or the difference is
   *     negative
   */
  public LogScale minus(LogScale other) {
    requireSame(other, "subtract");
    return new LogScale(rule, amount - other.amount, unit, bark);
  }

  @Override
  public int compareTo(LogScale other) {
    requireSame(other, "compare");
    return Double.compare(amount, other.amount);
  }

  private void requireSame(LogScale other, String verb) {
    if (!rule.equals(other.rule) || !unit.equals(other.unit) || bark != other.bark) {
      throw new IllegalArgumentException(
          "cannot " + verb + " " + this + " and " + other + ": they are different scales");
    }
  }

  @Override
  public String toString() {
    return amount + " " + unit + " " + rule + " (" + bark.words() + ")";
  }
}
