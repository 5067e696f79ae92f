package org.mensuration.diameter;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;

/**
 * A circle or an ellipse fitted to the points of a section by least squares of the distances.
 * Immutable and thread-safe.
 *
 * @param centreX abscissa of the centre
 * @param centreY ordinate of the centre
 * @param diameter diameter of the circle, or of the circle with the area of the ellipse; freed from
 *     the bias that noise gives it
 * @param standardError standard error of the diameter
 * @param axes axes of the ellipse; empty for a circle
 * @param deviation standard deviation of the distances of the points kept
 * @param arc part of the circumference that holds points: 360 degrees less the widest gap
 * @param points number of points that were fitted
 * @param strays which of the points given were left out as strays, from 0
 * @param warnings what to mind about the fit, in words
 */
public record SectionFit(
    Quantity<Length> centreX,
    Quantity<Length> centreY,
    Quantity<Length> diameter,
    Quantity<Length> standardError,
    Optional<Axes> axes,
    Quantity<Length> deviation,
    Quantity<Angle> arc,
    int points,
    List<Integer> strays,
    List<String> warnings) {

  /**
   * Copies the lists.
   *
   * @param centreX abscissa of the centre
   * @param centreY ordinate of the centre
   * @param diameter diameter
   * @param standardError standard error of the diameter
   * @param axes axes of the ellipse; empty for a circle
   * @param deviation standard deviation of the distances
   * @param arc part of the circumference that holds points
   * @param points number of points that were fitted
   * @param strays which of the points given were left out
   * @param warnings what to mind about the fit
   */
  public SectionFit {
    Objects.requireNonNull(centreX, "centreX");
    Objects.requireNonNull(centreY, "centreY");
    Objects.requireNonNull(diameter, "diameter");
    Objects.requireNonNull(standardError, "standardError");
    Objects.requireNonNull(axes, "axes");
    Objects.requireNonNull(deviation, "deviation");
    Objects.requireNonNull(arc, "arc");
    strays = List.copyOf(strays);
    warnings = List.copyOf(warnings);
  }

  /**
   * Axes of an ellipse. Immutable and thread-safe.
   *
   * @param longAxis long axis
   * @param shortAxis short axis
   * @param direction of the long axis, from the direction of x toward y, 0 to 180 degrees
   */
  public record Axes(
      Quantity<Length> longAxis, Quantity<Length> shortAxis, Quantity<Angle> direction) {

    /**
     * Checks that nothing is null.
     *
     * @param longAxis long axis
     * @param shortAxis short axis
     * @param direction of the long axis
     */
    public Axes {
      Objects.requireNonNull(longAxis, "longAxis");
      Objects.requireNonNull(shortAxis, "shortAxis");
      Objects.requireNonNull(direction, "direction");
    }
  }
}
