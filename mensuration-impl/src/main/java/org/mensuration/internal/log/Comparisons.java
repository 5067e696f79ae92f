package org.mensuration.internal.log;

import java.util.ArrayList;
import java.util.List;
import org.mensuration.formula.Formula;
import org.mensuration.log.ConventionRule;
import org.mensuration.log.Log;
import org.mensuration.log.RuleComparison;
import org.mensuration.log.ScaleRule;
import org.mensuration.log.SolidRule;

/** A log by many rules, refusals kept as lines. Stateless and thread-safe. */
public final class Comparisons {
  private Comparisons() {}

  /**
   * A log by every rule of two lists.
   *
   * @param log the log as measured
   * @param solids rules for the solid volume
   * @param scales rules with units of their own
   * @return one line a rule
   */
  public static RuleComparison of(Log log, List<SolidRule> solids, List<ScaleRule> scales) {
    List<RuleComparison.Line> lines = new ArrayList<>();
    solids.forEach(rule -> lines.add(solid(rule, log)));
    scales.forEach(rule -> lines.add(scaled(rule, log)));
    return new RuleComparison(log, lines);
  }

  private static RuleComparison.Line solid(SolidRule rule, Log log) {
    Formula formula = rule.formula();
    try {
      return new RuleComparison.Solid(formula.id(), formula.title(), rule.measure(log));
    } catch (IllegalArgumentException refusal) {
      return refused(formula, formula.title(), refusal);
    }
  }

  private static RuleComparison.Line scaled(ScaleRule rule, Log log) {
    Formula formula = rule.formula();
    // Conventions share formulas, so that each goes by its own name.
    String name = rule instanceof ConventionRule convention ? convention.name() : formula.title();
    try {
      return new RuleComparison.Scaled(formula.id(), name, rule.scale(log));
    } catch (IllegalArgumentException refusal) {
      return refused(formula, name, refusal);
    }
  }

  private static RuleComparison.Line refused(
      Formula formula, String name, IllegalArgumentException refusal) {
    return new RuleComparison.NotApplicable(
        formula.id(), name, String.valueOf(refusal.getMessage()));
  }
}
