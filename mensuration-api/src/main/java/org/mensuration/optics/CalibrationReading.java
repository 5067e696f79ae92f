package org.mensuration.optics;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;

/**
 * A target of known width read on a scale. Immutable and thread-safe.
 *
 * @param round whether the target is a round post; else it is flat and square to the sight
 * @param width width of the flat target, diameter of the post
 * @param distance level distance to the flat target, or to the axis of the post
 * @param divisions divisions that it fills
 * @param elevation elevation of the sight on a scale that does not compensate; empty for level
 */
public record CalibrationReading(
    boolean round,
    Quantity<Length> width,
    Quantity<Length> distance,
    double divisions,
    Optional<Quantity<Angle>> elevation) {

  /**
   * Checks that nothing is null.
   *
   * @param round whether the target is a round post
   * @param width width of the flat target, diameter of the post
   * @param distance level distance to the flat target, or to the axis of the post
   * @param divisions divisions that it fills
   * @param elevation elevation of the sight
   */
  public CalibrationReading {
    Objects.requireNonNull(width, "width");
    Objects.requireNonNull(distance, "distance");
    Objects.requireNonNull(elevation, "elevation");
  }

  /**
   * A flat target square to the sight.
   *
   * @param width its width
   * @param distance level distance to it
   * @param divisions divisions that it fills
   * @return the reading, level
   */
  public static CalibrationReading flat(
      Quantity<Length> width, Quantity<Length> distance, double divisions) {
    return new CalibrationReading(false, width, distance, divisions, Optional.empty());
  }

  /**
   * A round post.
   *
   * @param diameter its diameter
   * @param axisDistance level distance to its axis
   * @param divisions divisions that it fills
   * @return the reading, level
   */
  public static CalibrationReading round(
      Quantity<Length> diameter, Quantity<Length> axisDistance, double divisions) {
    return new CalibrationReading(true, diameter, axisDistance, divisions, Optional.empty());
  }

  /**
   * The reading at an elevation, on a scale that does not compensate for slope.
   *
   * @param angle elevation of the sight, up positive
   * @return a reading with it
   */
  public CalibrationReading at(Quantity<Angle> angle) {
    return new CalibrationReading(round, width, distance, divisions, Optional.of(angle));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CalibrationReading that
        && round == that.round
        && Physical.same(width, that.width)
        && Physical.same(distance, that.distance)
        && Double.compare(divisions, that.divisions) == 0
        && Physical.same(elevation, that.elevation);
  }

  @Override
  public int hashCode() {
    return Objects.hash(round, Physical.hash(width), Physical.hash(distance), divisions);
  }
}
