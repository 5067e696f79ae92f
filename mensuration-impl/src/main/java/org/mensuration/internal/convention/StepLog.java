package org.mensuration.internal.convention;

import java.util.ArrayList;
import java.util.List;
import org.mensuration.log.RoundingStep;

/** Rounds and writes down what it rounded. Made for one log and dropped; not thread-safe. */
final class StepLog {
  private final RuleFacts facts;
  private final List<RoundingStep> steps = new ArrayList<>();

  StepLog(RuleFacts facts) {
    this.facts = facts;
  }

  List<RoundingStep> steps() {
    return List.copyOf(steps);
  }

  /** A reading in its class; one that no class holds is refused. */
  double reading(String what, String symbol, ClassSteps rounding, double value, String unit) {
    double after = amount(what, rounding, value, unit);
    if (!rounding.isNone() && !(after > 0)) {
      throw facts.outOfDomain(symbol, value, unit, what + " " + rounding.words(unit) + " above 0");
    }
    return after;
  }

  double amount(String what, ClassSteps rounding, double value, String unit) {
    double after = rounding.apply(value);
    if (!rounding.isNone()) {
      steps.add(new RoundingStep(what, value, after, unit));
    }
    return after;
  }
}
