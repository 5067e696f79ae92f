package org.mensuration.log;

import org.mensuration.formula.Formula;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.quantity.LogScale;

/**
 * A rule that scales a log in a unit of its own. Implementations are immutable and thread-safe. A
 * third party's rule implements this interface and is passed in.
 */
public interface ScaleRule {

  /**
   * What is said about the rule.
   *
   * @return its formula
   */
  Formula formula();

  /**
   * What the rule scales a log at, unrounded unless rounding belongs to the rule.
   *
   * @param log the log as measured
   * @return the amount, marked with the rule and the log's bark basis
   * @throws IllegalArgumentException if a measurement that the rule needs is missing; the message
   *     names the rule and what it needs
   * @throws OutOfDomainException if a measurement has no meaning for the rule
   */
  LogScale scale(Log log);
}
