package org.mensuration.internal.height;

import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.apache.commons.math3.util.Pair;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Gradient;
import org.mensuration.height.HeightCurveException;

/**
 * Least squares of heights about a curve, the derivatives being those of its equation. Unchecked.
 */
final class CurveFit {
  private static final int FIRST_COEFFICIENT = 2;
  private static final int MOST_STEPS = 1000;
  private static final double TOLERANCE = 1e-14;

  /** Nearer to the end of its domain than this a coefficient has run to the end. */
  private static final double NEAR_END = 1e-9;

  private final CurveModel model;
  private final double[] diameters;
  private final double[] heights;
  private final double breastHeight;

  CurveFit(CurveModel model, double[] diameters, double[] heights, double breastHeight) {
    this.model = model;
    this.diameters = diameters;
    this.heights = heights;
    this.breastHeight = breastHeight;
  }

  /** Coefficients, the inverse of the normal matrix and the sum of squares. Read only. */
  static final class Solution {
    private final double[] coefficients;
    private final double[][] inverse;
    private final double squares;

    private Solution(double[] coefficients, double[][] inverse, double squares) {
      this.coefficients = coefficients;
      this.inverse = inverse;
      this.squares = squares;
    }

    double coefficient(int number) {
      return coefficients[number];
    }

    double inverse(int row, int column) {
      return inverse[row][column];
    }

    double squares() {
      return squares;
    }
  }

  Solution solve() {
    Optimum optimum;
    RealMatrix inverse;
    try {
      optimum =
          new LevenbergMarquardtOptimizer()
              .withCostRelativeTolerance(TOLERANCE)
              .withParameterRelativeTolerance(TOLERANCE)
              .withOrthoTolerance(TOLERANCE)
              .optimize(
                  new LeastSquaresBuilder()
                      .start(inside(start()))
                      .target(heights)
                      .model(this::valuesAndJacobian)
                      .parameterValidator(this::inside)
                      .maxEvaluations(MOST_STEPS)
                      .maxIterations(MOST_STEPS)
                      .build());
      inverse = optimum.getCovariances(0);
    } catch (MathIllegalArgumentException | MathIllegalStateException e) {
      throw new HeightCurveException(
          model.formula().id() + ": the fit did not converge (" + e.getMessage() + ")");
    }
    double[] coefficients = optimum.getPoint().toArray();
    for (int i = 0; i < coefficients.length; i++) {
      requireInside(i, coefficients[i]);
    }
    double squares = optimum.getResiduals().dotProduct(optimum.getResiduals());
    return new Solution(coefficients, inverse.getData(), squares);
  }

  private void requireInside(int coefficient, double value) {
    Domain domain = domain(coefficient);
    boolean clear =
        Math.abs(value - domain.lower()) > NEAR_END && Math.abs(value - domain.upper()) > NEAR_END;
    if (!clear) {
      throw new HeightCurveException(
          model.formula().id()
              + ": b"
              + coefficient
              + " ran to the end of "
              + domain
              + "; the heights do not rise with the diameter as this form does");
    }
  }

  /** Where the straight line through the changed axes starts the fit. */
  private RealVector start() {
    SimpleRegression line = new SimpleRegression();
    for (int i = 0; i < diameters.length; i++) {
      line.addData(
          model.abscissa().applyAsDouble(diameters[i]),
          model.ordinate().applyAsDouble(diameters[i], heights[i] - breastHeight));
    }
    return new ArrayRealVector(
        new double[] {model.intercept().applyAsDouble(line.getIntercept()), line.getSlope()});
  }

  /** The coefficients, moved into their domains. */
  private RealVector inside(RealVector coefficients) {
    double[] kept = coefficients.toArray();
    for (int i = 0; i < kept.length; i++) {
      Domain domain = domain(i);
      double lower = domain.lower() + NEAR_END / 2;
      double upper = domain.upper() - NEAR_END / 2;
      kept[i] = Math.min(Math.max(kept[i], lower), upper);
    }
    return new ArrayRealVector(kept);
  }

  private Domain domain(int coefficient) {
    return model.formula().parameters().get(FIRST_COEFFICIENT + coefficient).domain();
  }

  private Pair<RealVector, RealMatrix> valuesAndJacobian(RealVector coefficients) {
    double[] values = new double[diameters.length];
    double[][] rows = new double[diameters.length][2];
    for (int i = 0; i < diameters.length; i++) {
      double b0 = coefficients.getEntry(0);
      double b1 = coefficients.getEntry(1);
      values[i] = model.formula().value(diameters[i], breastHeight, b0, b1);
      Gradient gradient =
          model
              .formula()
              .gradient(
                  new double[] {diameters[i]},
                  new double[] {breastHeight},
                  new double[] {b0},
                  new double[] {b1});
      rows[i][0] = gradient.partial(FIRST_COEFFICIENT);
      rows[i][1] = gradient.partial(FIRST_COEFFICIENT + 1);
    }
    return new Pair<>(new ArrayRealVector(values), new Array2DRowRealMatrix(rows, false));
  }
}
