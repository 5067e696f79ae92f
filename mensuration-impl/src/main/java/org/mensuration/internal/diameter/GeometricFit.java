package org.mensuration.internal.diameter;

import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.apache.commons.math3.util.Pair;
import org.jspecify.annotations.Nullable;

/**
 * Least squares of the distances from a curve. Immutable and thread-safe, as long as nobody writes
 * into what it hands out.
 */
final class GeometricFit {
  private static final int MOST_EVALUATIONS = 400;
  private static final double SINGULAR = 1e-13;

  private final double[] parameters;
  private final double squares;
  private final RealMatrix inverse;

  private GeometricFit(double[] parameters, double squares, RealMatrix inverse) {
    this.parameters = parameters;
    this.squares = squares;
    this.inverse = inverse;
  }

  /** The parameters. */
  double[] parameters() {
    return parameters;
  }

  /** Sum of the squared distances. */
  double squares() {
    return squares;
  }

  /** Inverse of JᵀJ at the parameters. */
  RealMatrix inverse() {
    return inverse;
  }

  /**
   * Fits a curve.
   *
   * @param curve the curve
   * @param start where to start; none or NaN gives no fit
   * @param x abscissas
   * @param y ordinates
   * @return the fit; null if it does not converge or the points do not determine the curve
   */
  static @Nullable GeometricFit of(SectionCurve curve, double[] start, double[] x, double[] y) {
    if (start.length != curve.parameters()) {
      return null;
    }
    for (double parameter : start) {
      if (!(Math.abs(parameter) < Double.POSITIVE_INFINITY)) {
        return null;
      }
    }
    try {
      Optimum optimum =
          new LevenbergMarquardtOptimizer()
              .optimize(
                  new LeastSquaresBuilder()
                      .start(start)
                      .model(model(curve, x, y))
                      .target(new double[x.length])
                      .lazyEvaluation(false)
                      .maxEvaluations(MOST_EVALUATIONS)
                      .maxIterations(MOST_EVALUATIONS)
                      .build());
      double squares = optimum.getResiduals().dotProduct(optimum.getResiduals());
      RealMatrix inverse = optimum.getCovariances(SINGULAR);
      return squares < Double.POSITIVE_INFINITY
          ? new GeometricFit(optimum.getPoint().toArray(), squares, inverse)
          : null;
    } catch (SingularMatrixException undetermined) {
      return null;
    } catch (MathIllegalStateException | MathIllegalArgumentException noConvergence) {
      return null;
    }
  }

  private static MultivariateJacobianFunction model(SectionCurve curve, double[] x, double[] y) {
    return point -> {
      double[] parameters = point.toArray();
      double[] distances = new double[x.length];
      double[][] jacobian = new double[x.length][curve.parameters()];
      for (int i = 0; i < x.length; i++) {
        distances[i] = curve.distance(parameters, x[i], y[i], jacobian[i]);
      }
      RealVector value = new ArrayRealVector(distances, false);
      return new Pair<>(value, new Array2DRowRealMatrix(jacobian, false));
    };
  }
}
