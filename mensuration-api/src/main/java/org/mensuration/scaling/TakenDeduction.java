package org.mensuration.scaling;

import java.util.Objects;
import org.mensuration.quantity.LogScale;

/**
 * A deduction as it was taken. Immutable and thread-safe.
 *
 * @param defect what it was taken for
 * @param amount what was taken, rounded as the convention says, in feet of the rule of the log
 */
public record TakenDeduction(Defect defect, LogScale amount) {
  /**
   * Checks that nothing is null.
   *
   * @param defect what it was taken for
   * @param amount what was taken
   */
  public TakenDeduction {
    Objects.requireNonNull(defect, "defect");
    Objects.requireNonNull(amount, "amount");
  }
}
