package org.mensuration.internal.formula;

/** A kernel by the number of its inputs; one array an input, scalars being arrays of one. */
public sealed interface Kernel {

  /**
   * The kernel's value, unchecked.
   *
   * @param x one array an input
   * @return the value
   */
  double at(double[][] x);

  /** One number. */
  @FunctionalInterface
  non-sealed interface Of1 extends Kernel {
    /**
     * The value.
     *
     * @param a first input
     * @return the value
     */
    double of(double a);

    @Override
    default double at(double[][] x) {
      return of(x[0][0]);
    }
  }

  /** Two numbers. */
  @FunctionalInterface
  non-sealed interface Of2 extends Kernel {
    /**
     * The value.
     *
     * @param a first input
     * @param b second input
     * @return the value
     */
    double of(double a, double b);

    @Override
    default double at(double[][] x) {
      return of(x[0][0], x[1][0]);
    }
  }

  /** Three numbers. */
  @FunctionalInterface
  non-sealed interface Of3 extends Kernel {
    /**
     * The value.
     *
     * @param a first input
     * @param b second input
     * @param c third input
     * @return the value
     */
    double of(double a, double b, double c);

    @Override
    default double at(double[][] x) {
      return of(x[0][0], x[1][0], x[2][0]);
    }
  }

  /** Four numbers. */
  @FunctionalInterface
  non-sealed interface Of4 extends Kernel {
    /**
     * The value.
     *
     * @param a first input
     * @param b second input
     * @param c third input
     * @param d fourth input
     * @return the value
     */
    double of(double a, double b, double c, double d);

    @Override
    default double at(double[][] x) {
      return of(x[0][0], x[1][0], x[2][0], x[3][0]);
    }
  }

  /** Lists, or more than four numbers. */
  @FunctionalInterface
  non-sealed interface OfArrays extends Kernel {
    /**
     * The value.
     *
     * @param x one array an input
     * @return the value
     */
    double of(double[][] x);

    @Override
    default double at(double[][] x) {
      return of(x);
    }
  }
}
