package org.mensuration.internal.diameter;

import java.util.Arrays;
import org.apache.commons.math3.exception.MathArithmeticException;
import org.apache.commons.math3.exception.MaxCountExceededException;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * The ellipse whose equation fits the points best among all ellipses: a conic with 4AC - B² = 1,
 * found as an eigenvector. It leans to small ellipses and serves as a start. Stateless and
 * thread-safe.
 */
final class AlgebraicEllipse {
  private AlgebraicEllipse() {}

  /**
   * The ellipse.
   *
   * @return centre x, centre y, mean half axis, and the turned half difference; NaN if there is
   *     none
   */
  static double[] direct(double[] x, double[] y) {
    double[][] quadratic = new double[x.length][];
    double[][] linear = new double[x.length][];
    for (int i = 0; i < x.length; i++) {
      quadratic[i] = new double[] {x[i] * x[i], x[i] * y[i], y[i] * y[i]};
      linear[i] = new double[] {x[i], y[i], 1};
    }
    try {
      RealMatrix q = new Array2DRowRealMatrix(quadratic, false);
      RealMatrix l = new Array2DRowRealMatrix(linear, false);
      RealMatrix mixed = q.transpose().multiply(l);
      RealMatrix toLinear =
          new LUDecomposition(l.transpose().multiply(l))
              .getSolver()
              .solve(mixed.transpose())
              .scalarMultiply(-1);
      RealMatrix reduced = q.transpose().multiply(q).add(mixed.multiply(toLinear));
      RealMatrix constrained =
          new Array2DRowRealMatrix(
              new double[][] {
                reduced.getRowMatrix(2).scalarMultiply(0.5).getRow(0),
                reduced.getRowMatrix(1).scalarMultiply(-1).getRow(0),
                reduced.getRowMatrix(0).scalarMultiply(0.5).getRow(0)
              });
      EigenDecomposition eigen = new EigenDecomposition(constrained);
      for (int i = 0; i < 3; i++) {
        double[] form = eigen.getEigenvector(i).toArray();
        if (4 * form[0] * form[2] - form[1] * form[1] > 0) {
          return halfAxes(form, toLinear.operate(form));
        }
      }
      return none();
    } catch (SingularMatrixException | MaxCountExceededException | MathArithmeticException none) {
      return none();
    }
  }

  private static double[] halfAxes(double[] form, double[] rest) {
    double determinant = 4 * form[0] * form[2] - form[1] * form[1];
    double centreX = (form[1] * rest[1] - 2 * form[2] * rest[0]) / determinant;
    double centreY = (form[1] * rest[0] - 2 * form[0] * rest[1]) / determinant;
    double level = rest[2] + 0.5 * (rest[0] * centreX + rest[1] * centreY);
    double mean = 0.5 * (form[0] + form[2]);
    double gap = 0.5 * StrictMath.hypot(form[0] - form[2], form[1]);
    // Both values of the form have the sign of its mean; the smaller one belongs to the long axis.
    double sign = Math.signum(mean);
    double longHalf = Math.sqrt(-level / (mean - sign * gap));
    double shortHalf = Math.sqrt(-level / (mean + sign * gap));
    double twice = StrictMath.atan2(-sign * form[1], -sign * (form[0] - form[2]));
    double half = 0.5 * (longHalf - shortHalf);
    return new double[] {
      centreX,
      centreY,
      0.5 * (longHalf + shortHalf),
      half * StrictMath.cos(twice),
      half * StrictMath.sin(twice)
    };
  }

  private static double[] none() {
    double[] none = new double[5];
    Arrays.fill(none, Double.NaN);
    return none;
  }
}
