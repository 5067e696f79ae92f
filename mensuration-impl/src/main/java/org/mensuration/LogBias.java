package org.mensuration;

import org.mensuration.formula.Formula;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.internal.log.Biases;
import org.mensuration.log.SolidRule;

/**
 * What a solid rule gives too much or, below zero, too little, in per cent of the true volume of a
 * solid of revolution whose sectional area is in proportion to a power of the distance from the
 * tip: power 1 a paraboloid, 2 a cone, 3 a neiloid, and all between. Exact, not fitted. Stateless
 * and thread-safe.
 *
 * <p>Equation, limits and sources of an id such as {@code bias/huber}: {@link Catalogues#standard}.
 */
public final class LogBias {
  private LogBias() {}

  /**
   * Bias of a rule on the frustum between two diameters ({@code bias/huber} and its kin).
   *
   * @param rule a rule of {@link LogRules}
   * @param exponent the power, 0.1 to 4
   * @param diameterRatio small end over large end, 0 to 1; 0 is the whole solid with its tip
   * @return bias in per cent
   * @throws IllegalArgumentException if no bias is known for the rule, such as Sorenson's, which
   *     assumes a taper
   * @throws OutOfDomainException if the exponent or the ratio is outside
   */
  public static double percent(SolidRule rule, double exponent, double diameterRatio) {
    return Biases.frustum(rule).apply(exponent, diameterRatio);
  }

  /**
   * Bias of the sum when a whole solid is measured in sections of equal length ({@code
   * bias/sectional-huber} and its kin).
   *
   * @param rule Huber, Smalian or the mean diameter of {@link LogRules}
   * @param exponent the power: 1, 2 or 3
   * @param sections number of sections, 1 to 30
   * @return bias of the summed volume in per cent
   * @throws IllegalArgumentException if no such bias is known for the rule
   * @throws OutOfDomainException if the exponent or the number is outside
   */
  public static double percentOfSum(SolidRule rule, double exponent, int sections) {
    return Biases.sectional(rule).apply(exponent, sections);
  }

  /**
   * Mean over the sections of the absolute error of each ({@code bias/section-huber} and {@code
   * bias/section-smalian}). It is much larger than the error of the sum.
   *
   * @param rule Huber or Smalian of {@link LogRules}
   * @param exponent the power: 1, 2 or 3
   * @param sections number of sections of equal length, 1 to 30
   * @return mean absolute error in per cent
   * @throws IllegalArgumentException if no such error is known for the rule
   * @throws OutOfDomainException if the exponent or the number is outside
   */
  public static double meanPercentOfSections(SolidRule rule, double exponent, int sections) {
    return Biases.section(rule).apply(exponent, sections);
  }

  /**
   * The formula of a rule's bias, with its equation and derivatives.
   *
   * @param rule a rule of {@link LogRules}
   * @return the formula of exponent and diameter ratio
   * @throws IllegalArgumentException if no bias is known for the rule
   */
  public static Formula formula(SolidRule rule) {
    return Biases.frustum(rule);
  }
}
