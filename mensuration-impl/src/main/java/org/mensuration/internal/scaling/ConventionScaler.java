package org.mensuration.internal.scaling;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.mensuration.log.Log;
import org.mensuration.log.ScaleRule;
import org.mensuration.scaling.Defect;
import org.mensuration.scaling.LogScaler;
import org.mensuration.scaling.LogToScale;
import org.mensuration.scaling.ScaledLog;
import org.mensuration.scaling.ScalingConvention;

/**
 * Scales by a rule under a convention. Immutable and thread-safe.
 *
 * @param convention the customs
 * @param rule the rule
 */
public record ConventionScaler(ScalingConvention convention, ScaleRule rule) implements LogScaler {
  /**
   * Checks that nothing is null.
   *
   * @param convention the customs
   * @param rule the rule
   */
  public ConventionScaler {
    Objects.requireNonNull(convention, "convention");
    Objects.requireNonNull(rule, "rule");
  }

  @Override
  public ScaledLog scale(Log log, Defect... defects) {
    return one(LogToScale.of(log, defects), new Rounder.Halves());
  }

  @Override
  public List<ScaledLog> scaleAll(List<LogToScale> logs) {
    Rounder.Halves halves = new Rounder.Halves();
    List<ScaledLog> scaled = new ArrayList<>();
    for (LogToScale log : logs) {
      try {
        scaled.add(one(log, halves));
      } catch (IllegalArgumentException refusal) {
        throw new IllegalArgumentException(
            "log " + (scaled.size() + 1) + ": " + refusal.getMessage(), refusal);
      }
    }
    return List.copyOf(scaled);
  }

  private ScaledLog one(LogToScale log, Rounder.Halves halves) {
    return new ScalingWork(convention, rule, new Rounder(convention.name(), halves)).scale(log);
  }
}
