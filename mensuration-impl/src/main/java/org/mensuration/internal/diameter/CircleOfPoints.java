package org.mensuration.internal.diameter;

/**
 * Circles fitted to points by three methods, without looking for strays and without correction.
 * Each gives NaN where there is no such circle. Stateless and thread-safe.
 */
public final class CircleOfPoints {
  private static final int FEWEST = 3;

  private CircleOfPoints() {}

  /**
   * Least squares of x² + y² on x, y and 1.
   *
   * @param points abscissas and ordinates
   * @return centre x, centre y, mean distance of the points from it
   */
  public static double[] linear(double[][] points) {
    double[] circle = AlgebraicCircle.linear(points[0], points[1]);
    circle[2] = AlgebraicCircle.meanDistance(points[0], points[1], circle[0], circle[1]);
    return circle;
  }

  /**
   * Least squares of A (x² + y²) + B x + C y + D, the coefficients of unit length.
   *
   * @param points abscissas and ordinates
   * @return centre x, centre y, radius
   */
  public static double[] unitNorm(double[][] points) {
    return determined(points) ? AlgebraicCircle.unitNorm(points[0], points[1]) : nothing();
  }

  /**
   * Least squares of the distances.
   *
   * @param points abscissas and ordinates
   * @return centre x, centre y, radius, sum of the squared distances
   */
  public static double[] geometric(double[][] points) {
    double[] start = AlgebraicCircle.linear(points[0], points[1]);
    GeometricFit fit =
        determined(points)
            ? GeometricFit.of(CircleCurve.INSTANCE, start, points[0], points[1])
            : null;
    if (fit == null) {
      return nothing();
    }
    double[] circle = fit.parameters();
    return new double[] {circle[0], circle[1], circle[2], fit.squares()};
  }

  private static boolean determined(double[][] points) {
    return points[0].length >= FEWEST
        && !Double.isNaN(AlgebraicCircle.linear(points[0], points[1])[0]);
  }

  private static double[] nothing() {
    return new double[] {Double.NaN, Double.NaN, Double.NaN, Double.NaN};
  }
}
