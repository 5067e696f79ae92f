package org.mensuration.gauge;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.quantity.StemsPerArea;

/**
 * How trees are chosen at a sample point: by an {@link AngleGauge} or on {@link FixedPlots}.
 * Implementations are immutable and thread-safe.
 */
public interface TreeSelection {

  /**
   * Trees per area that one counted tree stands for.
   *
   * @param diameter diameter, above zero
   * @return the tree factor
   * @throws OutOfDomainException if the diameter is not above zero or not finite
   */
  Quantity<StemsPerArea> treeFactor(Quantity<Length> diameter);

  /**
   * Where a tree stands beside the limit of its size.
   *
   * @param diameter diameter, above zero
   * @param distanceToCentre horizontal distance from the sample point to the centre of the stem at
   *     breast height, not negative
   * @return in, out, or at the limit within a thousand millionth of it
   * @throws OutOfDomainException if a value is outside
   */
  LimitPosition judge(Quantity<Length> diameter, Quantity<Length> distanceToCentre);
}
