package org.mensuration.internal.gauge;

import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.LimitPosition;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.kernel.Limits;

/** Where a distance lies beside its limit. Stateless and thread-safe. */
public final class LimitJudge {
  private LimitJudge() {}

  /**
   * Judges a distance.
   *
   * @param formula the formula of the limit, named in a refusal
   * @param distanceM the distance in m
   * @param limitM the limit in m
   * @return in, at the limit or out
   * @throws OutOfDomainException if the distance is negative or not finite
   */
  public static LimitPosition judge(BoundFormula formula, double distanceM, double limitM) {
    if (!(distanceM >= 0 && distanceM < Double.POSITIVE_INFINITY)) {
      throw new OutOfDomainException(formula, "distance", distanceM, "m", "[0, ∞)");
    }
    if (Limits.on(distanceM, limitM)) {
      return LimitPosition.AT_LIMIT;
    }
    return distanceM < limitM ? LimitPosition.IN : LimitPosition.OUT;
  }
}
