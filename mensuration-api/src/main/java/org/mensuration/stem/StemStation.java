package org.mensuration.stem;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.formula.OutOfDomainException;

/**
 * A place from which an upright stem is sighted: angles become heights above the ground.
 * Implementations are immutable and thread-safe.
 */
public interface StemStation {

  /**
   * The height of a sighted point of the stem above the ground ({@code height/tangent}).
   *
   * @param sight elevation of the sight, up positive
   * @return the height
   * @throws OutOfDomainException if the angle is not between -90 and 90 degrees or points below the
   *     base of the stem
   */
  Quantity<Length> height(Quantity<Angle> sight);

  /**
   * A diameter read along a sight.
   *
   * @param sight elevation of the sight, up positive
   * @param diameter the diameter read there
   * @return the reading at its height
   * @throws OutOfDomainException if the angle is not between -90 and 90 degrees or points below the
   *     base of the stem
   */
  default StemReading reading(Quantity<Angle> sight, Quantity<Length> diameter) {
    return new StemReading(height(sight), diameter);
  }
}
