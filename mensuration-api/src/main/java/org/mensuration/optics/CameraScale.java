package org.mensuration.optics;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.formula.OutOfDomainException;

/**
 * A rectilinear, undistorted camera that reads diameters of upright stems from their edges,
 * anywhere in the image. Implementations are immutable and thread-safe.
 */
public interface CameraScale {

  /**
   * Focal length in pixels.
   *
   * @return the number
   */
  double focalLengthPixels();

  /**
   * Azimuth between the two edges.
   *
   * @param reading the edges
   * @return the angle
   * @throws OutOfDomainException if the edges are in the wrong order, or their row lies beyond the
   *     zenith
   */
  Quantity<Angle> azimuth(ImageReading reading);

  /**
   * Reads a diameter by the tangent lines. A straight distance is put level with the elevation of
   * the sighting, or else with that of the row.
   *
   * @param reading the edges
   * @param sighting from where; lean across the sight is allowed for
   * @return the diameter
   * @throws OutOfDomainException if an input is outside its domain
   * @throws IllegalArgumentException if the sighting leans in the plane of sight or tapers: give
   *     those to {@link #levelScale()}
   */
  Quantity<Length> diameter(ImageReading reading, Sighting sighting);

  /**
   * Width of an upright stem in the middle column of a level image.
   *
   * @param diameter diameter, below twice the distance
   * @param axisDistance level distance to the axis
   * @return width in pixels
   * @throws OutOfDomainException if the diameter is not below twice the distance
   */
  double width(Quantity<Length> diameter, Quantity<Length> axisDistance);

  /**
   * The level camera as a scale, a pixel of its middle column being a division. Its plane is
   * upright, so it compensates for slope.
   *
   * @return the scale
   */
  RatioScale levelScale();
}
