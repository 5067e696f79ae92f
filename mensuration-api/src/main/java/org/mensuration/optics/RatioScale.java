package org.mensuration.optics;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.formula.OutOfDomainException;

/**
 * An optical scale whose divisions keep a known ratio of width to distance, read exactly by the
 * tangent lines of a circular stem. Implementations are immutable and thread-safe.
 */
public interface RatioScale {

  /**
   * Ratio of width to distance of one division.
   *
   * @return the ratio
   */
  double ratio();

  /**
   * Reads a diameter by a level sight, or on a scale that compensates for slope.
   *
   * @param divisions divisions that the stem fills
   * @param axisDistance horizontal distance to the stem axis, not to the bark
   * @return the diameter
   * @throws OutOfDomainException if the count is negative or the distance not positive
   */
  Quantity<Length> diameter(double divisions, Quantity<Length> axisDistance);

  /**
   * Reads a diameter at an elevation on a scale that does not compensate for slope.
   *
   * @param divisions divisions that the stem fills
   * @param axisDistance horizontal distance to the stem axis, not to the bark
   * @param elevation elevation of the sight, up positive
   * @return the diameter
   * @throws OutOfDomainException if the count is negative, the distance not positive, or the
   *     elevation not between -90 and 90 degrees
   */
  Quantity<Length> diameter(
      double divisions, Quantity<Length> axisDistance, Quantity<Angle> elevation);
}
