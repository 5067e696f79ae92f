package org.mensuration.internal.diameter;

/**
 * The girth of an ellipse. It has no closed form, and the mathematics library holds no elliptic
 * integral; the arithmetic-geometric mean gives it in a few steps, each of which doubles the
 * digits. Unchecked. Stateless and thread-safe.
 */
public final class EllipseGirth {
  /** Enough for the flattest ellipse that two doubles can state; a circle needs one. */
  private static final int STEPS = 20;

  private EllipseGirth() {}

  /**
   * Girth of an ellipse.
   *
   * @param longCm long axis in cm
   * @param shortCm short axis in cm
   * @return girth in cm
   */
  public static double girth(double longCm, double shortCm) {
    return Math.PI * (0.5 * longCm + 0.5 * shortCm) * (1 + beyondMean(shortCm / longCm));
  }

  /**
   * Relative error of the area that a circle of the same girth has.
   *
   * @param axisRatio short over long axis, above 0 and at most 1
   * @return share of the area; exactly zero for a circle
   */
  public static double excess(double axisRatio) {
    double gap = 1 - axisRatio;
    double ofMean = gap * gap / (4 * axisRatio);
    double beyond = beyondMean(axisRatio);
    return ofMean + beyond * (2 + beyond) * (1 + ofMean);
  }

  /**
   * Girth over π times the mean of the axes, minus 1. With the means a and g and their half
   * differences c, the girth is π (a₁² - Σ 2ⁿ⁻¹ cₙ²)/M over n from 2, where M = a₁ - Σ cₙ; taking π
   * a₁ off term by term leaves no digits to cancel.
   */
  private static double beyondMean(double axisRatio) {
    double first = 0.5 * (1 + axisRatio);
    double arithmetic = first;
    double geometric = Math.sqrt(axisRatio);
    double halfGap = 0.5 * (1 - axisRatio);
    halfGap = halfGap * halfGap / (2 * (arithmetic + geometric));
    double sum = 0;
    double weight = 2;
    for (int step = 0; step < STEPS; step++) {
      sum += halfGap * (1 - weight * (halfGap / first));
      double next = 0.5 * (arithmetic + geometric);
      geometric = Math.sqrt(arithmetic * geometric);
      arithmetic = next;
      halfGap = halfGap * halfGap / (2 * (arithmetic + geometric));
      weight *= 2;
    }
    return sum / arithmetic;
  }
}
