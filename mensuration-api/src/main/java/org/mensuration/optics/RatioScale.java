package org.mensuration.optics;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.formula.OutOfDomainException;

/**
 * An optical scale whose divisions keep a known ratio of width to distance. It reads a diameter
 * exactly, by the tangent lines of a circular stem, or in proportion, by the rule of the field.
 * Halves and quarters of a division are given as read. Implementations are immutable and
 * thread-safe.
 */
public interface RatioScale {

  /**
   * Ratio of width to distance of one division.
   *
   * @return the ratio
   */
  double ratio();

  /**
   * Whether the scale compensates for slope: its divisions narrow with the cosine of the elevation.
   *
   * @return true if a reading needs no elevation
   */
  boolean compensated();

  /**
   * How the scale is divided.
   *
   * @return the graduation; empty if it was not stated
   */
  Optional<Graduation> graduation();

  /**
   * Reads a diameter by the tangent lines.
   *
   * @param divisions divisions that the stem fills
   * @param sighting from where and how
   * @return the diameter square to the stem
   * @throws OutOfDomainException if the count is negative, a distance not positive, an angle not
   *     between -90 and 90 degrees, or the section not below the apex of the taper
   * @throws IllegalArgumentException if the scale has not so many divisions
   * @throws IllegalStateException if the reading needs an elevation that the sighting does not have
   */
  Quantity<Length> diameter(double divisions, Sighting sighting);

  /**
   * Reads a diameter in proportion: the ratio times the distance that the sighting names. To the
   * axis it is high by b²/8 of the diameter, b being the ratio of all divisions; to the face it is
   * low by about half the diameter over the distance. Taper is left out.
   *
   * @param divisions divisions that the stem fills
   * @param sighting from where and how
   * @return the diameter
   * @throws OutOfDomainException if the count is negative, a distance not positive, or an angle not
   *     between -90 and 90 degrees
   * @throws IllegalArgumentException if the scale has not so many divisions
   * @throws IllegalStateException if the reading needs an elevation that the sighting does not have
   */
  Quantity<Length> proportionalDiameter(double divisions, Sighting sighting);

  /**
   * Reads a diameter exactly by a level sight, or on a scale that compensates for slope.
   *
   * @param divisions divisions that the stem fills
   * @param axisDistance level distance to the stem axis, not to the bark
   * @return the diameter
   * @throws OutOfDomainException if the count is negative or the distance not positive
   */
  Quantity<Length> diameter(double divisions, Quantity<Length> axisDistance);

  /**
   * Reads a diameter exactly at an elevation.
   *
   * @param divisions divisions that the stem fills
   * @param axisDistance level distance to the stem axis, not to the bark
   * @param elevation elevation of the sight, up positive
   * @return the diameter
   * @throws OutOfDomainException if the count is negative, the distance not positive, or the
   *     elevation not between -90 and 90 degrees
   */
  default Quantity<Length> diameter(
      double divisions, Quantity<Length> axisDistance, Quantity<Angle> elevation) {
    return diameter(divisions, Sighting.toAxis(axisDistance).at(elevation));
  }

  /**
   * Width that one division covers at a distance.
   *
   * @param distance level distance
   * @return the width
   * @throws OutOfDomainException if the distance is not positive
   */
  Quantity<Length> divisionWidth(Quantity<Length> distance);

  /**
   * Width of the smallest part of a division that is read, at a distance.
   *
   * @param distance level distance
   * @return the width
   * @throws OutOfDomainException if the distance is not positive
   * @throws IllegalStateException if no graduation was stated
   */
  Quantity<Length> resolution(Quantity<Length> distance);

  /**
   * Largest diameter that the scale can read.
   *
   * @param sighting from where and how
   * @return the diameter
   * @throws IllegalStateException if no graduation was stated, or an elevation is needed
   */
  Quantity<Length> largestDiameter(Sighting sighting);

  /**
   * Distance at which a diameter fills divisions, level.
   *
   * @param diameter diameter, above zero
   * @param divisions divisions, above zero
   * @return level distance to the axis
   * @throws OutOfDomainException if one is not
   */
  Quantity<Length> workingDistance(Quantity<Length> diameter, double divisions);

  /**
   * Standard error of a diameter read level, from the errors of the reading and of the distance.
   *
   * @param divisions divisions read
   * @param readingError standard error of a reading in divisions; of a half-width a it is a/√3
   * @param axisDistance level distance to the axis
   * @param distanceError standard error of the distance
   * @return standard error
   * @throws OutOfDomainException if an input is negative, or the distance not positive
   */
  Quantity<Length> standardError(
      double divisions,
      double readingError,
      Quantity<Length> axisDistance,
      Quantity<Length> distanceError);

  /**
   * Distances from which the standard error of a diameter stays within a limit: far off a division
   * is wide, near by the distance is uncertain. If the scale's graduation is known, the stem must
   * also fit the scale.
   *
   * @param diameter diameter to be read, above zero
   * @param readingError standard error of a reading in divisions, above zero
   * @param distanceError standard error of the distance
   * @param limit standard error that is allowed
   * @return the distances to the axis
   * @throws OutOfDomainException if an input is outside its domain
   * @throws IllegalArgumentException if no distance keeps the limit
   */
  DistanceRange distancesWithin(
      Quantity<Length> diameter,
      double readingError,
      Quantity<Length> distanceError,
      Quantity<Length> limit);
}
