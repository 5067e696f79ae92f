package org.mensuration.log;

import java.util.List;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.quantity.LogScale;
import org.mensuration.source.Citation;

/**
 * A scale rule of a country or trade with its own rounding of readings, length and result.
 * Implementations are immutable and thread-safe.
 */
public interface ConventionRule extends ScaleRule {

  /**
   * Name of the rule, which its scales carry.
   *
   * @return for example {@code German mid-diameter rule}
   */
  String name();

  /**
   * The roundings of the convention in words, in the order in which they are applied.
   *
   * @return empty if nothing is rounded
   */
  List<String> roundings();

  /**
   * Where the roundings and the readings that the rule takes are stated, and how far that was read.
   * The formula cites its own sources.
   *
   * @return the citations; those of the formula unless the convention has its own
   */
  default List<Citation> citations() {
    return formula().citations();
  }

  /**
   * What the rule scales a log at.
   *
   * @param readings the readings as taken, not rounded
   * @return the amount, rounded as the rule says, marked with rule and bark basis
   * @throws IllegalArgumentException if a reading that the rule needs is missing, or the bark basis
   *     is not the rule's; the message names the rule and what it needs
   * @throws OutOfDomainException if a reading or the length has no meaning for the rule
   */
  LogScale scale(LogReadings readings);

  /**
   * Every rounding on the way to {@link #scale(LogReadings)}.
   *
   * @param readings the readings as taken, not rounded
   * @return one step a rounding, in their order
   * @throws IllegalArgumentException as {@link #scale(LogReadings)}
   */
  List<RoundingStep> steps(LogReadings readings);

  @Override
  default LogScale scale(Log log) {
    return scale(LogReadings.of(log));
  }
}
