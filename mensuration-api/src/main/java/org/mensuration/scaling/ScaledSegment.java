package org.mensuration.scaling;

import java.util.List;
import java.util.Objects;
import org.mensuration.log.Log;
import org.mensuration.quantity.LogScale;
import org.mensuration.quantity.Physical;

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

  /**
   * Gross, deductions and net in words.
   *
   * @return for example {@code segment 1: gross 80.0 bf, length cut 20.0 bf, net 60.0 bf}
   */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("segment ").append(number);
    text.append(": gross ").append(shown(gross));
    for (TakenDeduction deduction : deductions) {
      text.append(", ").append(deduction.defect().title()).append(' ');
      text.append(shown(deduction.amount()));
    }
    return text.append(", net ").append(shown(net)).toString();
  }

  private static String shown(LogScale scale) {
    return Physical.shown(scale.amount()) + " " + scale.unit();
  }
}
