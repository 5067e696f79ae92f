package org.mensuration.stem;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.formula.Formula;

/**
 * A taper equation for one tree, with its coefficients. Implementations are immutable and
 * thread-safe.
 *
 * <p>Heights are above the ground, along the stem. A height outside the stem is refused with an
 * {@link IllegalArgumentException}.
 */
public interface TaperCurve {

  /**
   * What is said about the equation.
   *
   * @return the formula of the diameter
   */
  Formula formula();

  /**
   * The coefficients.
   *
   * @return in the order of the formula's last inputs
   */
  List<Double> coefficients();

  /**
   * The tip.
   *
   * @return its height
   */
  Quantity<Length> height();

  /**
   * The diameter at a height.
   *
   * @param height the height
   * @return the diameter
   */
  Quantity<Length> diameterAt(Quantity<Length> height);

  /**
   * Every height at which the curve has a diameter.
   *
   * @param diameter the diameter
   * @return from the lowest up; empty if it has none
   */
  List<Quantity<Length>> heightsOf(Quantity<Length> diameter);

  /**
   * The volume from ground to tip.
   *
   * @return the integral of the sectional area, in closed form
   */
  Quantity<Volume> volume();

  /**
   * The volume between two heights.
   *
   * @param from lower height
   * @param to upper height
   * @return the integral of the sectional area, in closed form
   */
  Quantity<Volume> volume(Quantity<Length> from, Quantity<Length> to);

  /**
   * The height below which a part of the volume between two heights lies, as importance sampling
   * under this curve draws it.
   *
   * @param from lower height
   * @param to upper height
   * @param part part of the volume, from 0 to 1
   * @return the height
   */
  Quantity<Length> heightOfPart(Quantity<Length> from, Quantity<Length> to, double part);
}
