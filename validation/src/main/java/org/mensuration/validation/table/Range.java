package org.mensuration.validation.table;

import java.math.BigDecimal;

/**
 * The values that a printed figure can stand for. Immutable and thread-safe.
 *
 * @param lower lower end
 * @param lowerIncluded whether the lower end itself belongs to it
 * @param upper upper end
 * @param upperIncluded whether the upper end itself belongs to it
 */
public record Range(
    BigDecimal lower, boolean lowerIncluded, BigDecimal upper, boolean upperIncluded) {

  /**
   * Whether a value belongs to the range.
   *
   * @param value the value
   * @return true if it lies inside
   */
  public boolean contains(BigDecimal value) {
    return meets(value, value);
  }

  /**
   * Whether any value of a closed interval belongs to the range.
   *
   * @param least lower end of the interval
   * @param most upper end of the interval
   * @return true if the two meet
   */
  public boolean meets(BigDecimal least, BigDecimal most) {
    int below = lower.compareTo(most);
    int above = least.compareTo(upper);
    return (lowerIncluded ? below <= 0 : below < 0) && (upperIncluded ? above <= 0 : above < 0);
  }

  /**
   * The range with both ends moved outwards. An end that was excluded stays so only when it does
   * not move.
   *
   * @param amount how far, at least zero
   * @return the wider range
   */
  public Range widened(BigDecimal amount) {
    if (amount.signum() == 0) {
      return this;
    }
    return new Range(lower.subtract(amount), true, upper.add(amount), true);
  }
}
