package org.mensuration.internal.convention;

import java.util.List;
import org.mensuration.log.LogReadings;

/** How the readings of a log enter the formula of its rule. Implementations are immutable. */
interface Sizing {

  /**
   * The amount before the rounding of the result.
   *
   * @param facts the rule
   * @param readings the readings
   * @param length the length in its class
   * @param log writes the roundings down
   * @return the value of the formula
   */
  double amount(RuleFacts facts, LogReadings readings, double length, StepLog log);

  /**
   * The roundings in words.
   *
   * @return in the order in which they are applied
   */
  List<String> roundings();
}
