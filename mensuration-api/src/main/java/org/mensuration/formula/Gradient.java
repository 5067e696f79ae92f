package org.mensuration.formula;

/**
 * Value and first derivatives of a formula at one point. Immutable and thread-safe.
 *
 * <p>The derivatives are exact up to rounding, taken from the printed equation. Where the path runs
 * through a rounding step, a whole-number step, a table or the very edge of a case, {@link
 * #stepwise()} says so: the derivatives are then those of the piece the point lies on and do not
 * tell how the value moves across the step.
 */
public final class Gradient {
  private final double value;
  private final double[] partials;
  private final boolean stepwise;

  /**
   * Holds a copy of the derivatives.
   *
   * @param value value of the formula
   * @param partials derivatives, input by input, lists reading by reading
   * @param stepwise whether a step was crossed
   */
  public Gradient(double value, double[] partials, boolean stepwise) {
    this.value = value;
    this.partials = partials.clone();
    this.stepwise = stepwise;
  }

  /**
   * Value of the formula.
   *
   * @return in the unit of the result
   */
  public double value() {
    return value;
  }

  /**
   * Derivative by one input.
   *
   * @param input position of the input, from 0; the readings of a list count one by one
   * @return unit of the result per unit of the input
   */
  public double partial(int input) {
    return partials[input];
  }

  /**
   * Number of derivatives.
   *
   * @return number of inputs, each reading of a list counted
   */
  public int size() {
    return partials.length;
  }

  /**
   * Whether a step was crossed.
   *
   * @return true if the derivatives hold for one piece only
   */
  public boolean stepwise() {
    return stepwise;
  }
}
