package org.mensuration.optics;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.formula.OutOfDomainException;

/**
 * An optical scale calibrated at a station on a diameter of the same stem. It holds for that
 * station and stem. Implementations are immutable and thread-safe.
 */
public interface OpticalScale {

  /**
   * Width that one division covers at the calibration.
   *
   * @return the width
   */
  Quantity<Length> divisionWidth();

  /**
   * Reads a diameter on a scale that compensates for slope.
   *
   * @param divisions divisions that the stem fills, halves and quarters as read
   * @return the diameter
   * @throws IllegalStateException if the scale does not compensate: it needs the elevation
   * @throws OutOfDomainException if the count is negative or not a number
   * @throws IllegalArgumentException if the scale has not so many divisions
   */
  Quantity<Length> diameter(double divisions);

  /**
   * Reads a diameter at an elevation. A scale that compensates for slope gives the same whatever
   * the elevation.
   *
   * @param divisions divisions that the stem fills, halves and quarters as read
   * @param elevation elevation of the sight, up positive
   * @return the diameter
   * @throws OutOfDomainException if the count is negative, or the elevation not between -90 and 90
   *     degrees
   * @throws IllegalArgumentException if the scale has not so many divisions
   */
  Quantity<Length> diameter(double divisions, Quantity<Angle> elevation);

  /**
   * How the scale is divided.
   *
   * @return the graduation; empty if it was not stated
   */
  Optional<Graduation> graduation();

  /**
   * Largest diameter that the scale can read here, at the elevation of the calibration.
   *
   * @return the diameter
   * @throws IllegalStateException if no graduation was stated
   */
  Quantity<Length> largestDiameter();

  /**
   * Width of the smallest part of a division that is read, at the elevation of the calibration.
   *
   * @return the width
   * @throws IllegalStateException if no graduation was stated
   */
  Quantity<Length> resolution();
}
