package org.mensuration.uncertainty;

/**
 * What is known of an input, as a distribution of the values that it may have. All kinds are
 * immutable and thread-safe. Numbers are in the unit of the input.
 */
public sealed interface InputDistribution {

  /**
   * An input without error, such as a stated length.
   *
   * @param value the value
   */
  record Exact(double value) implements InputDistribution {
    /**
     * Checks the value.
     *
     * @param value the value
     * @throws IllegalArgumentException if it is not finite
     */
    public Exact {
      requireFinite("exact input", "value", value);
    }
  }

  /**
   * A normal distribution: many small causes, or an estimate with a standard uncertainty that says
   * no more.
   *
   * @param mean mean
   * @param standardUncertainty standard deviation, above 0
   */
  record Normal(double mean, double standardUncertainty) implements InputDistribution {
    /**
     * Checks the numbers.
     *
     * @param mean mean
     * @param standardUncertainty standard deviation, above 0
     * @throws IllegalArgumentException if one is outside
     */
    public Normal {
      requireFinite("normal input", "mean", mean);
      requireWidth("normal input", "standard uncertainty", standardUncertainty);
    }
  }

  /**
   * Anywhere within a half-width alike, as a reading to the nearest part of a division.
   *
   * @param middle middle of the interval
   * @param halfWidth half-width, above 0
   */
  record Rectangular(double middle, double halfWidth) implements InputDistribution {
    /**
     * Checks the numbers.
     *
     * @param middle middle of the interval
     * @param halfWidth half-width, above 0
     * @throws IllegalArgumentException if one is outside
     */
    public Rectangular {
      requireInterval("rectangular input", middle, halfWidth);
    }
  }

  /**
   * Likeliest in the middle and never beyond a half-width, as the sum of two equal rectangular
   * ones.
   *
   * @param middle middle of the interval
   * @param halfWidth half-width, above 0
   */
  record Triangular(double middle, double halfWidth) implements InputDistribution {
    /**
     * Checks the numbers.
     *
     * @param middle middle of the interval
     * @param halfWidth half-width, above 0
     * @throws IllegalArgumentException if one is outside
     */
    public Triangular {
      requireInterval("triangular input", middle, halfWidth);
    }
  }

  /**
   * Swinging between two ends, as a temperature that is held by a switch.
   *
   * @param middle middle of the swing
   * @param halfWidth how far it swings to either side, above 0
   */
  record ArcSine(double middle, double halfWidth) implements InputDistribution {
    /**
     * Checks the numbers.
     *
     * @param middle middle of the swing
     * @param halfWidth how far it swings to either side, above 0
     * @throws IllegalArgumentException if one is outside
     */
    public ArcSine {
      requireInterval("arc-sine input", middle, halfWidth);
    }
  }

  /**
   * Student's t about a mean of few readings.
   *
   * @param mean mean of the readings
   * @param scale standard error of the mean, above 0
   * @param degreesOfFreedom readings less one, above 2: with 2 or fewer there is no standard
   *     uncertainty to be drawn
   */
  record StudentT(double mean, double scale, double degreesOfFreedom) implements InputDistribution {
    private static final double FEWEST = 2;

    /**
     * Checks the numbers.
     *
     * @param mean mean of the readings
     * @param scale standard error of the mean, above 0
     * @param degreesOfFreedom readings less one, above 2
     * @throws IllegalArgumentException if one is outside
     */
    public StudentT {
      requireFinite("input by Student's t", "mean", mean);
      requireWidth("input by Student's t", "scale", scale);
      if (!(degreesOfFreedom > FEWEST && degreesOfFreedom < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException(
            "input by Student's t: "
                + degreesOfFreedom
                + " degrees of freedom, wanted a finite number above 2");
      }
    }
  }

  private static void requireFinite(String kind, String what, double value) {
    if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          kind + ": " + what + " " + value + ", wanted a finite number");
    }
  }

  private static void requireWidth(String kind, String what, double value) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          kind + ": " + what + " " + value + ", wanted a finite number above 0");
    }
  }

  private static void requireInterval(String kind, double middle, double halfWidth) {
    requireFinite(kind, "middle", middle);
    requireWidth(kind, "half-width", halfWidth);
    double lower = middle - halfWidth;
    double upper = middle + halfWidth;
    if (!(lower < upper && upper - lower < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          kind
              + ": half-width "
              + halfWidth
              + " about "
              + middle
              + ", wanted an interval that numbers can tell and span");
    }
  }
}
