package org.mensuration.internal.scaling;

import java.util.ArrayList;
import java.util.List;
import org.mensuration.kernel.Limits;
import org.mensuration.log.Log;
import org.mensuration.log.ScaleRule;
import org.mensuration.quantity.LogScale;
import org.mensuration.scaling.LocatedDefect;
import org.mensuration.scaling.LogToScale;
import org.mensuration.scaling.ScaledLog;
import org.mensuration.scaling.ScaledSegment;
import org.mensuration.scaling.ScalingConvention;
import org.mensuration.scaling.TakenDeduction;

/** The scaling of one log. Used once and thrown away; not thread-safe. */
final class ScalingWork {
  private final ScalingConvention convention;
  private final ScaleRule rule;
  private final Rounder rounder;

  ScalingWork(ScalingConvention convention, ScaleRule rule, Rounder rounder) {
    this.convention = convention;
    this.rule = rule;
    this.rounder = rounder;
  }

  ScaledLog scale(LogToScale log) {
    List<Log> plan = new SegmentPlan(convention, rounder, log.log()).segments();
    for (LocatedDefect defect : log.defects()) {
      if (defect.segment() > plan.size()) {
        throw new IllegalArgumentException(
            convention.name()
                + ": "
                + defect.defect().title()
                + " in segment "
                + defect.segment()
                + ", allowed 1 to "
                + plan.size());
      }
    }
    List<ScaledSegment> segments = new ArrayList<>();
    for (int i = 0; i < plan.size(); i++) {
      segments.add(segment(i + 1, plan.get(i), log.defects()));
    }
    LogScale gross = segments.get(0).gross();
    LogScale net = segments.get(0).net();
    for (ScaledSegment segment : segments.subList(1, segments.size())) {
      gross = gross.plus(segment.gross());
      net = net.plus(segment.net());
    }
    boolean cull = cull(gross, net);
    net = cull ? zero(net) : rounder.amount("net", net, convention.roundings().net());
    return new ScaledLog(convention.name(), segments, gross, net, cull, rounder.steps());
  }

  private ScaledSegment segment(int number, Log log, List<LocatedDefect> defects) {
    String name = "segment " + number;
    LogScale scale = rule.scale(log);
    RuleRounding.inside(rule.formula(), log)
        .ifPresent(
            before ->
                rounder.step(name + ": rounded by the rule", before, scale.amount(), scale.unit()));
    LogScale gross = rounder.amount(name + ": scale", scale, convention.roundings().segment());
    DefectAmount amounts = new DefectAmount(convention, rule, rounder);
    List<TakenDeduction> taken = new ArrayList<>();
    LogScale off = zero(gross);
    for (LocatedDefect located : defects) {
      if (located.segment() == number) {
        LogScale amount =
            rounder.amount(
                name + ": " + located.defect().title(),
                amounts.of(located.defect(), number, log, gross),
                convention.roundings().deduction());
        taken.add(new TakenDeduction(located.defect(), amount));
        off = off.plus(amount);
      }
    }
    return new ScaledSegment(number, log, gross, taken, left(name, gross, off));
  }

  /** Overlapping defects may come to more than the segment; nothing is then left of it. */
  private LogScale left(String name, LogScale gross, LogScale off) {
    if (off.compareTo(gross) > 0) {
      rounder.step(
          name + ": deductions exceed the scale", gross.amount() - off.amount(), 0, gross.unit());
      return zero(gross);
    }
    return gross.minus(off);
  }

  private boolean cull(LogScale gross, LogScale net) {
    double least = convention.minimums().netShare().orElse(0);
    boolean cull = !(net.amount() > 0 && Limits.reaches(net.amount(), least * gross.amount()));
    if (convention.minimums().netShare().isPresent()) {
      rounder.step(
          "cull test, least share " + least + " of " + gross.amount() + " " + gross.unit(),
          net.amount(),
          cull ? 0 : net.amount(),
          net.unit());
    }
    return cull;
  }

  private static LogScale zero(LogScale like) {
    return new LogScale(like.rule(), 0, like.unit(), like.bark());
  }
}
