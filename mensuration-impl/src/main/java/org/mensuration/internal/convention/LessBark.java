package org.mensuration.internal.convention;

import java.util.List;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.log.LogReadings;

/**
 * The middle diameter over bark, and the double bark that a formula gives for it. Immutable and
 * thread-safe.
 *
 * @param bark double bark in cm from the diameter in cm
 */
record LessBark(BoundFormula bark) implements Sizing {
  @Override
  public double amount(RuleFacts facts, LogReadings readings, double length, StepLog log) {
    double outside =
        Diameters.at(ReadingPlace.MIDDLE, ClassSteps.NONE).diameter(facts, readings, log);
    return facts.formula().value(outside, bark.value(outside), length);
  }

  @Override
  public List<String> roundings() {
    return List.of();
  }
}
