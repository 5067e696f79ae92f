package org.mensuration.scaling;

import java.util.List;
import java.util.Objects;
import org.mensuration.log.Log;
import org.mensuration.quantity.LogScale;

/**
 * A segment of a scaled log. Immutable and thread-safe.
 *
 * @param number its number, counted from 1 at the small end
 * @param log its classes of diameter and length
 * @param gross its scale
 * @param deductions what was taken off
 * @param net what is left
 */
public record ScaledSegment(
    int number, Log log, LogScale gross, List<TakenDeduction> deductions, LogScale net) {
  /**
   * Copies the deductions.
   *
   * @param number its number, counted from 1 at the small end
   * @param log its classes of diameter and length
   * @param gross its scale
   * @param deductions what was taken off
   * @param net what is left
   */
  public ScaledSegment {
    Objects.requireNonNull(log, "log");
    Objects.requireNonNull(gross, "gross");
    Objects.requireNonNull(net, "net");
    deductions = List.copyOf(deductions);
  }
}
