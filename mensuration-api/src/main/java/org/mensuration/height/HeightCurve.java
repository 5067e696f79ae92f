package org.mensuration.height;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.formula.Formula;
import org.mensuration.formula.OutOfDomainException;

/**
 * A height curve fitted to measured heights of one species by least squares of the heights.
 * Implementations are immutable and thread-safe.
 */
public interface HeightCurve {

  /**
   * The formula of the curve.
   *
   * @return for example {@code height-curve/naslund}
   */
  Formula formula();

  /**
   * The species whose heights were used.
   *
   * @return its name; may be blank
   */
  String species();

  /**
   * The height at which diameters are measured, through which the curve passes at a diameter of
   * zero.
   *
   * @return breast height
   */
  Quantity<Length> breastHeight();

  /**
   * The coefficients b0 and b1, for diameters in cm and heights in m.
   *
   * @return two numbers
   */
  List<Double> coefficients();

  /**
   * Variances and covariances of the coefficients, to the first order.
   *
   * @return two rows of two numbers
   */
  List<List<Double>> covariance();

  /**
   * The number of measured heights.
   *
   * @return at least three
   */
  int trees();

  /**
   * Residual standard error: root of the sum of squared differences over the number of trees less
   * two.
   *
   * @return the error
   */
  Quantity<Length> residualError();

  /**
   * The smallest diameter among the trees that were used.
   *
   * @return the diameter
   */
  Quantity<Length> smallestDiameter();

  /**
   * The largest diameter among the trees that were used.
   *
   * @return the diameter
   */
  Quantity<Length> largestDiameter();

  /**
   * Whether a diameter lies between the smallest and the largest that were used.
   *
   * @param diameter a diameter
   * @return true inside, ends included
   */
  boolean covers(Quantity<Length> diameter);

  /**
   * The height that the curve gives for a diameter, also outside of what it covers.
   *
   * @param diameter diameter at breast height, above zero
   * @return the height, marked as predicted
   * @throws OutOfDomainException if the diameter is not above zero or not finite
   */
  TreeHeight height(Quantity<Length> diameter);

  /**
   * Standard error of the curve at a diameter, from the covariance of its coefficients; a single
   * tree differs from the curve by the residual error besides.
   *
   * @param diameter diameter at breast height, above zero
   * @return the error
   * @throws OutOfDomainException if the diameter is not above zero or not finite
   */
  Quantity<Length> standardError(Quantity<Length> diameter);
}
