package org.mensuration.log;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.formula.Formula;
import org.mensuration.formula.OutOfDomainException;

/** Bark thickness from the diameter over bark. Implementations are immutable and thread-safe. */
public interface BarkRule {

  /**
   * What is said about the rule.
   *
   * @return its formula
   */
  Formula formula();

  /**
   * Bark on both sides together.
   *
   * @param outside diameter over bark
   * @return double bark thickness
   * @throws OutOfDomainException if the diameter has no meaning for the rule
   */
  Quantity<Length> doubleBark(Quantity<Length> outside);

  /**
   * The diameter inside bark.
   *
   * @param outside diameter over bark
   * @return the diameter less the double thickness
   * @throws OutOfDomainException if the diameter has no meaning for the rule, or the bark would be
   *     thicker than the stem
   */
  Quantity<Length> inside(Quantity<Length> outside);
}
