package org.mensuration.internal.stem;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.mensuration.stem.TaperCurve;
import org.mensuration.stem.TaperFit;

/** Least squares of taper curves. Stateless and thread-safe. */
final class TaperFits {
  private static final int MOST_ITERATIONS = 1000;
  private static final int MOST_EVALUATIONS = 10_000;
  private static final double SINGULAR = 1e-12;

  private TaperFits() {}

  /**
   * Fits coefficients that enter in a straight line.
   *
   * @param what the curve in words
   * @param variable what is fitted, in words
   * @param names names of the coefficients
   * @param y the variable, a value a reading
   * @param x multipliers of the coefficients, a row a reading
   * @param curve the curve of the coefficients found
   * @return the fit
   */
  static TaperFit linear(
      String what,
      String variable,
      List<String> names,
      double[] y,
      double[][] x,
      Function<double[], TaperCurve> curve) {
    require(what, names.size(), x);
    OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression(SINGULAR);
    regression.setNoIntercept(true);
    regression.newSampleData(y, x);
    double[] found;
    double[][] unscaled;
    try {
      found = regression.estimateRegressionParameters();
      unscaled = regression.estimateRegressionParametersVariance();
    } catch (SingularMatrixException singular) {
      throw new IllegalArgumentException(
          what
              + ": the heights of the readings do not tell the coefficients "
              + names
              + " apart; readings in every part of the stem are needed",
          singular);
    }
    double residual = 0;
    for (int i = 0; i < y.length; i++) {
      double off = y[i];
      for (int j = 0; j < found.length; j++) {
        off -= x[i][j] * found[j];
      }
      residual += off * off;
    }
    return fit(curve.apply(found), variable, names, found, unscaled, residual, y.length);
  }

  /**
   * Fits coefficients by iteration.
   *
   * @param what the curve in words
   * @param variable what is fitted, in words
   * @param names names of the coefficients
   * @param y the variable, a value a reading
   * @param model values and derivatives at coefficients
   * @param start where the search starts
   * @param curve the curve of the coefficients found; refuses those without a meaning
   * @return the fit
   */
  static TaperFit iterated(
      String what,
      String variable,
      List<String> names,
      double[] y,
      MultivariateJacobianFunction model,
      double[] start,
      Function<double[], TaperCurve> curve) {
    try {
      Optimum optimum =
          new LevenbergMarquardtOptimizer()
              .optimize(
                  new LeastSquaresBuilder()
                      .start(start)
                      .target(y)
                      .model(model)
                      .maxIterations(MOST_ITERATIONS)
                      .maxEvaluations(MOST_EVALUATIONS)
                      .build());
      double[] found = optimum.getPoint().toArray();
      double residual = optimum.getCost() * optimum.getCost();
      RealMatrix unscaled = optimum.getCovariances(SINGULAR);
      return fit(
          curve.apply(found), variable, names, found, unscaled.getData(), residual, y.length);
    } catch (MathIllegalStateException | IllegalArgumentException failed) {
      throw new ArithmeticException(
          what
              + ": the fit of "
              + names
              + " to "
              + y.length
              + " readings did not converge to a curve, so there are no coefficients ("
              + failed.getMessage()
              + ")");
    }
  }

  /** Refuses fewer heights than a fit with a residual needs. */
  static void require(String what, int coefficients, double[][] rows) {
    Set<List<Double>> different = new HashSet<>();
    for (double[] row : rows) {
      List<Double> values = new ArrayList<>();
      for (double value : row) {
        values.add(value);
      }
      different.add(values);
    }
    if (different.size() <= coefficients) {
      throw new IllegalArgumentException(
          what
              + ": readings at "
              + different.size()
              + " heights, but a fit of "
              + coefficients
              + " coefficients needs at least "
              + (coefficients + 1));
    }
  }

  private static TaperFit fit(
      TaperCurve curve,
      String variable,
      List<String> names,
      double[] found,
      double[][] unscaled,
      double residual,
      int readings) {
    int freedom = readings - found.length;
    double variance = residual / freedom;
    List<Double> estimates = new ArrayList<>();
    List<List<Double>> covariance = new ArrayList<>();
    for (int i = 0; i < found.length; i++) {
      estimates.add(found[i]);
      List<Double> row = new ArrayList<>();
      for (int j = 0; j < found.length; j++) {
        row.add(unscaled[i][j] * variance);
      }
      covariance.add(row);
    }
    return new TaperFit(
        curve, names, estimates, covariance, Math.sqrt(variance), freedom, variable);
  }
}
