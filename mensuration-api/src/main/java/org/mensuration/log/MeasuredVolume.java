package org.mensuration.log;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.quantity.Physical;

/**
 * The solid volume of one log with the rule it was worked out by, what it was measured over, and
 * what was odd about the log. Immutable and thread-safe.
 *
 * @param volume the volume
 * @param rule name of the rule, such as {@code Smalian volume}
 * @param bark whether the diameters included the bark
 * @param warnings what was odd; empty for a tidy log
 */
public record MeasuredVolume(
    Quantity<Volume> volume, String rule, BarkBasis bark, List<LogWarning> warnings) {
  /**
   * Checks that nothing is null.
   *
   * @param volume the volume
   * @param rule name of the rule
   * @param bark whether the diameters included the bark
   * @param warnings what was odd
   */
  public MeasuredVolume {
    Objects.requireNonNull(volume, "volume");
    Objects.requireNonNull(rule, "rule");
    Objects.requireNonNull(bark, "bark");
    warnings = List.copyOf(warnings);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof MeasuredVolume measured
        && Physical.same(volume, measured.volume)
        && rule.equals(measured.rule)
        && bark == measured.bark
        && warnings.equals(measured.warnings);
  }

  @Override
  public int hashCode() {
    return Objects.hash(Physical.hash(volume), rule, bark, warnings);
  }
}
