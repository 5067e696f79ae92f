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
    if (!rounding.isNone()) {
      requireAboveZero(symbol, value, after, unit, what + " " + rounding.words(unit));
    }
    return after;
  }

  /** A reading that a rule of its own turned into another. */
  double taken(String what, String symbol, double value, double after, String unit) {
    steps.add(new RoundingStep(what, value, after, unit));
    requireAboveZero(symbol, value, after, unit, what);
    return after;
  }

  private void requireAboveZero(
      String symbol, double value, double after, String unit, String what) {
    if (!(after > 0)) {
      throw facts.outOfDomain(symbol, value, unit, what + " above 0");
    }
  }

  double amount(String what, ClassSteps rounding, double value, String unit) {
    double after = rounding.apply(value);
    if (!rounding.isNone()) {
      steps.add(new RoundingStep(what, value, after, unit));
    }
    return after;
  }
}
