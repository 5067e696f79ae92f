package org.mensuration.kernel;

/**
 * Readings and amounts rounded to classes. A class is {@code width/parts} wide: 2 and 1 for even
 * centimetres, 1 and 10 for tenths, so that no step is itself a rounded number. Unchecked: NaN in,
 * NaN out. Stateless and thread-safe.
 *
 * <p>A value next to a limit counts as on it ({@link Limits}). Meant for fewer than a hundred
 * million steps.
 */
public final class ClassRounding {
  private static final double THOUSAND = 1000.0;

  private ClassRounding() {}

  /**
   * A reading with at most three decimals, as it was read before it was converted.
   *
   * @param value the reading
   * @return the nearest thousandth if it is within a relative 1e-9, or the value itself
   */
  public static double snapped(double value) {
    double thousandths = value * THOUSAND;
    double nearest = Math.rint(thousandths);
    return Limits.on(thousandths, nearest) ? nearest / THOUSAND : value;
  }

  /**
   * Down to the class limit.
   *
   * @param value the value
   * @param width numerator of the step
   * @param parts denominator of the step
   * @return the limit at or below
   */
  public static double down(double value, int width, int parts) {
    return Math.floor(steps(value, width, parts)) * width / parts;
  }

  /**
   * Up to the class limit.
   *
   * @param value the value
   * @param width numerator of the step
   * @param parts denominator of the step
   * @return the limit at or above
   */
  public static double up(double value, int width, int parts) {
    return Math.ceil(steps(value, width, parts)) * width / parts;
  }

  /**
   * To the middle of the class.
   *
   * @param value the value
   * @param width numerator of the step
   * @param parts denominator of the step
   * @return half a step above the limit at or below
   */
  public static double middle(double value, int width, int parts) {
    return (Math.floor(steps(value, width, parts)) + 0.5) * width / parts;
  }

  /**
   * To the nearest step, a half up.
   *
   * @param value the value, not negative
   * @param width numerator of the step
   * @param parts denominator of the step
   * @return the multiple of the step
   */
  public static double halfUp(double value, int width, int parts) {
    return Math.floor(halfSteps(value, width, parts) + 0.5) * width / parts;
  }

  /**
   * To the nearest step, a half down.
   *
   * @param value the value, not negative
   * @param width numerator of the step
   * @param parts denominator of the step
   * @return the multiple of the step
   */
  public static double halfDown(double value, int width, int parts) {
    return Math.ceil(halfSteps(value, width, parts) - 0.5) * width / parts;
  }

  /**
   * To the nearest step, a half to the even multiple.
   *
   * @param value the value
   * @param width numerator of the step
   * @param parts denominator of the step
   * @return the multiple of the step
   */
  public static double halfEven(double value, int width, int parts) {
    return Math.rint(halfSteps(value, width, parts)) * width / parts;
  }

  /**
   * To the nearest step, for a printed value whose last five may itself come from rounding up. Such
   * a half goes down, so that nothing is rounded up twice; any other half goes up.
   *
   * @param value the printed value, not negative
   * @param raised whether its last digit was rounded up
   * @param width numerator of the step
   * @param parts denominator of the step
   * @return the multiple of the step
   */
  public static double halfMarked(double value, boolean raised, int width, int parts) {
    return raised ? halfDown(value, width, parts) : halfUp(value, width, parts);
  }

  /** Steps in a value; on a limit where it is within reach of one. */
  private static double steps(double value, int width, int parts) {
    double steps = value * parts / width;
    double limit = Math.rint(steps);
    return Limits.on(steps, limit) ? limit : steps;
  }

  /** Steps in a value; on a half where it is within reach of one. */
  private static double halfSteps(double value, int width, int parts) {
    double steps = value * parts / width;
    double half = Math.floor(steps) + 0.5;
    return Limits.on(steps, half) ? half : steps;
  }
}
