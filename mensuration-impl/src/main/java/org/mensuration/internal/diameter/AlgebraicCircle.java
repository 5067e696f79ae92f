package org.mensuration.internal.diameter;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * Circles that satisfy an equation of the points as well as possible. Two methods, because on short
 * arcs they differ widely: the method must be named. Stateless and thread-safe.
 */
final class AlgebraicCircle {
  /** Scatter across the points, as a share of that along them, below which they form a line. */
  private static final double COLLINEAR = 1e-20;

  private AlgebraicCircle() {}

  /**
   * Least squares of x² + y² on x, y and 1.
   *
   * @return centre x, centre y, radius; NaN if the points lie on a line
   */
  static double[] linear(double[] x, double[] y) {
    double meanX = mean(x);
    double meanY = mean(y);
    double xx = 0;
    double xy = 0;
    double yy = 0;
    double xz = 0;
    double yz = 0;
    double squares = 0;
    for (int i = 0; i < x.length; i++) {
      double u = x[i] - meanX;
      double v = y[i] - meanY;
      double z = u * u + v * v;
      xx += u * u;
      xy += u * v;
      yy += v * v;
      xz += u * z;
      yz += v * z;
      squares += z;
    }
    double determinant = xx * yy - xy * xy;
    if (!(determinant > COLLINEAR * squares * squares)) {
      return new double[] {Double.NaN, Double.NaN, Double.NaN};
    }
    double a = 0.5 * (xz * yy - yz * xy) / determinant;
    double b = 0.5 * (yz * xx - xz * xy) / determinant;
    return new double[] {a + meanX, b + meanY, Math.sqrt(a * a + b * b + squares / x.length)};
  }

  /**
   * Least squares of A (x² + y²) + B x + C y + D with coefficients of unit length.
   *
   * @return centre x, centre y, radius; NaN if the best curve is a line or has no real point
   */
  static double[] unitNorm(double[] x, double[] y) {
    double[][] rows = new double[Math.max(x.length, 4)][4];
    for (int i = 0; i < x.length; i++) {
      rows[i] = new double[] {x[i] * x[i] + y[i] * y[i], x[i], y[i], 1};
    }
    RealVector v =
        new SingularValueDecomposition(new Array2DRowRealMatrix(rows)).getV().getColumnVector(3);
    double centreX = -v.getEntry(1) / (2 * v.getEntry(0));
    double centreY = -v.getEntry(2) / (2 * v.getEntry(0));
    double square = centreX * centreX + centreY * centreY - v.getEntry(3) / v.getEntry(0);
    return new double[] {centreX, centreY, Math.sqrt(square)};
  }

  /** Mean distance of the points from a centre. */
  static double meanDistance(double[] x, double[] y, double centreX, double centreY) {
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      sum += StrictMath.hypot(x[i] - centreX, y[i] - centreY);
    }
    return sum / x.length;
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }
}
