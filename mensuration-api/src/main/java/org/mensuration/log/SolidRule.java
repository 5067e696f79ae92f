package org.mensuration.log;

import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.mensuration.formula.Formula;
import org.mensuration.formula.OutOfDomainException;

/** A rule for the solid volume of a log. Implementations are immutable and thread-safe. */
public interface SolidRule {

  /**
   * What is said about the rule.
   *
   * @return its formula
   */
  Formula formula();

  /**
   * The solid volume of a log.
   *
   * @param log the log as measured
   * @return its volume
   * @throws IllegalArgumentException if a measurement that the rule needs is missing; the message
   *     names the rule and what it needs
   * @throws OutOfDomainException if a measurement has no meaning for the rule
   */
  Quantity<Volume> volume(Log log);
}
