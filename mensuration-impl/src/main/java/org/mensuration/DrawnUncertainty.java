package org.mensuration;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.mensuration.formula.Formula;
import org.mensuration.internal.statistics.Drawing;
import org.mensuration.uncertainty.DrawnResult;
import org.mensuration.uncertainty.InputDistribution;

/**
 * The uncertainty of a result by drawing: inputs are drawn many times from what is known of them,
 * and each draw goes through the function. Unlike {@link MeasurementErrors#combined} it needs no
 * slopes and takes in what bends, and its intervals follow the distribution of the result. Inputs
 * are independent of each other. Stateless and thread-safe.
 *
 * <p>The same seed gives the same result, bit for bit. Only Student's t, and one draw in many of a
 * normal distribution, rest on functions of the runtime whose last bit may differ between machines.
 * A million draws give two digits of the standard uncertainty and about as many of the ends of a 95
 * % interval; they take 8 bytes each.
 *
 * <p>A draw outside the domain of the function is refused, not left out: the distribution then says
 * that the input may have a value which it cannot have, as a normal one of a diameter of 1 cm ± 1
 * cm.
 *
 * <p>Source: JCGM 101:2008, clauses 6.4 and 7, from memory.
 */
public final class DrawnUncertainty {

  private DrawnUncertainty() {}

  /**
   * Through a formula of the catalogue, such as {@code log/huber} with a diameter and a length.
   *
   * @param formula the formula; all its inputs single numbers
   * @param inputs one distribution an input, in the order and units of the formula; {@link
   *     InputDistribution.Exact} for inputs without error
   * @param draws how many values to draw
   * @param seed any number; another one draws other values
   * @param confidencePercent part of the values that the intervals hold, in per cent, from 50 and
   *     below 100
   * @return the result in the unit of the formula
   * @throws IllegalArgumentException if the inputs do not fit the formula, the confidence is
   *     outside, or there are too few draws for it
   * @throws org.mensuration.uncertainty.DrawException if a draw lies outside the domain of the
   *     formula
   * @throws ArithmeticException if mean or standard uncertainty is beyond the largest number
   */
  public static DrawnResult through(
      Formula formula,
      List<InputDistribution> inputs,
      int draws,
      long seed,
      double confidencePercent) {
    return Drawing.through(formula, List.copyOf(inputs), draws, seed, confidencePercent);
  }

  /**
   * Through any function.
   *
   * @param function the function of the inputs in their order; it is called once a draw, in one
   *     thread
   * @param inputs at least one distribution
   * @param draws how many values to draw
   * @param seed any number; another one draws other values
   * @param confidencePercent part of the values that the intervals hold, in per cent, from 50 and
   *     below 100
   * @return the result in the unit of the function
   * @throws IllegalArgumentException if there are no inputs, the confidence is outside, or there
   *     are too few draws for it
   * @throws org.mensuration.uncertainty.DrawException if a draw gives no finite number, or the
   *     function refuses it with an {@link IllegalArgumentException} or {@link ArithmeticException}
   * @throws ArithmeticException if mean or standard uncertainty is beyond the largest number
   */
  public static DrawnResult through(
      ToDoubleFunction<double[]> function,
      List<InputDistribution> inputs,
      int draws,
      long seed,
      double confidencePercent) {
    return Drawing.through(function, List.copyOf(inputs), draws, seed, confidencePercent);
  }
}
