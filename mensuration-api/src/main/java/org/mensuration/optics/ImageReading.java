package org.mensuration.optics;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.mensuration.quantity.Physical;

/**
 * The two edges of a stem on a row of an image, in pixels from the middle of the image, right and
 * up positive. Immutable and thread-safe.
 *
 * @param left column of the left edge
 * @param right column of the right edge
 * @param row row of both
 * @param pitch elevation of the camera's axis, up positive; empty for a level camera
 */
public record ImageReading(double left, double right, double row, Optional<Quantity<Angle>> pitch) {

  /**
   * Checks that nothing is null; the formula checks the numbers.
   *
   * @param left column of the left edge
   * @param right column of the right edge
   * @param row row of both
   * @param pitch elevation of the camera's axis
   */
  public ImageReading {
    Objects.requireNonNull(pitch, "pitch");
  }

  /**
   * Edges on the middle row of a level camera.
   *
   * @param left column of the left edge
   * @param right column of the right edge
   * @return the reading
   */
  public static ImageReading edges(double left, double right) {
    return new ImageReading(left, right, 0, Optional.empty());
  }

  /**
   * A stem in the middle column of a level camera.
   *
   * @param width width in pixels
   * @return the reading
   */
  public static ImageReading centred(double width) {
    return edges(-width / 2, width / 2);
  }

  /**
   * The reading on another row of a camera that is pitched.
   *
   * @param newRow row of both edges
   * @param newPitch elevation of the camera's axis, up positive
   * @return a reading with them
   */
  public ImageReading pitched(double newRow, Quantity<Angle> newPitch) {
    return new ImageReading(left, right, newRow, Optional.of(newPitch));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ImageReading that
        && Double.compare(left, that.left) == 0
        && Double.compare(right, that.right) == 0
        && Double.compare(row, that.row) == 0
        && Physical.same(pitch, that.pitch);
  }

  @Override
  public int hashCode() {
    return Objects.hash(left, right, row, Physical.hash(pitch));
  }
}
