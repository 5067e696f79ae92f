package org.mensuration.wood;

import java.math.BigDecimal;
import java.util.Objects;
import org.mensuration.source.Citation;

/**
 * A published factor that leads from one measure of wood to another, and not back: published
 * factors are averages rounded by themselves, and the one back, where it is published, is not their
 * inverse. Immutable and thread-safe.
 *
 * @param from what is converted
 * @param to what comes out
 * @param factor units of {@code to} in one unit of {@code from}, with the digits printed
 * @param condition for which wood it holds; empty if the source names none
 * @param citation where it is published
 */
public record ConversionFactor(
    WoodMeasure from, WoodMeasure to, BigDecimal factor, String condition, Citation citation) {
  /**
   * Checks the factor.
   *
   * @param from what is converted
   * @param to what comes out
   * @param factor units of {@code to} in one unit of {@code from}
   * @param condition for which wood it holds
   * @param citation where it is published
   * @throws IllegalArgumentException if the factor is not above zero
   */
  public ConversionFactor {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    Objects.requireNonNull(condition, "condition");
    Objects.requireNonNull(citation, "citation");
    if (factor.signum() <= 0) {
      throw new IllegalArgumentException("factor " + factor + " is not above zero");
    }
  }

  /**
   * Converts an amount.
   *
   * @param amount amount by the measure {@link #from}
   * @return amount by the measure {@link #to}, the product rounded once
   * @throws IllegalArgumentException if the amount is by another measure; the message names both
   *     measures and says that the factor is not turned round
   */
  public WoodAmount convert(WoodAmount amount) {
    if (!amount.measure().equals(from)) {
      throw new IllegalArgumentException(
          "the factor "
              + this
              + " does not convert "
              + amount
              + (amount.measure().equals(to) ? "; it is not published for that direction" : ""));
    }
    double product = new BigDecimal(amount.amount()).multiply(factor).doubleValue();
    return new WoodAmount(product, to);
  }

  /**
   * The factor with an addition that its source prints for other wood.
   *
   * @param addition the addition
   * @return a new factor of the same direction
   * @throws IllegalArgumentException if the addition is printed for factors between other measures,
   *     or the sum is not above zero
   */
  public ConversionFactor plus(FactorAddition addition) {
    if (!addition.from().equals(from) || !addition.to().equals(to)) {
      throw new IllegalArgumentException(
          "the addition for "
              + addition.forWood()
              + " is printed for factors from "
              + addition.from()
              + " to "
              + addition.to()
              + ", not for "
              + this);
    }
    String both = condition.isEmpty() ? addition.forWood() : condition + "; " + addition.forWood();
    return new ConversionFactor(from, to, factor.add(addition.added()), both, citation);
  }

  @Override
  public String toString() {
    return from.code()
        + " to "
        + to.code()
        + " "
        + factor.toPlainString()
        + (condition.isEmpty() ? "" : " for " + condition)
        + " ("
        + citation
        + ")";
  }
}
