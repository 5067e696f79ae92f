package org.mensuration.scaling;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.mensuration.quantity.LogScale;

/**
 * A log as scaled, with the way there. Immutable and thread-safe.
 *
 * @param convention name of the convention
 * @param segments its segments from the small end to the butt; one if it was not split
 * @param gross sum of the scales of the segments
 * @param net what is left after deductions, rounding and cull test; zero for a cull
 * @param cull whether less was left than the convention allows, or nothing
 * @param steps every step at which a number was cut, shared or rounded, in order
 */
public record ScaledLog(
    String convention,
    List<ScaledSegment> segments,
    LogScale gross,
    LogScale net,
    boolean cull,
    List<ScalingStep> steps) {
  /**
   * Copies segments and steps.
   *
   * @param convention name of the convention
   * @param segments its segments from the small end to the butt
   * @param gross sum of the scales of the segments
   * @param net what is left after deductions, rounding and cull test
   * @param cull whether less was left than the convention allows, or nothing
   * @param steps every step at which a number was cut, shared or rounded, in order
   */
  public ScaledLog {
    Objects.requireNonNull(convention, "convention");
    Objects.requireNonNull(gross, "gross");
    Objects.requireNonNull(net, "net");
    segments = List.copyOf(segments);
    steps = List.copyOf(steps);
  }

  /**
   * What was taken off, segment by segment.
   *
   * @return the deductions in order
   */
  public List<TakenDeduction> deductions() {
    return segments.stream()
        .flatMap(segment -> segment.deductions().stream())
        .collect(Collectors.toList());
  }

  /**
   * Steps, segments with their deductions, gross and net in words, a line each.
   *
   * @return text for a report
   */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(convention).append('\n');
    for (ScalingStep step : steps) {
      text.append("  ").append(step).append('\n');
    }
    segments.forEach(segment -> text.append("  ").append(segment).append('\n'));
    text.append("  gross ").append(gross).append('\n').append("  net ").append(net);
    return cull ? text.append(", a cull").toString() : text.toString();
  }
}
