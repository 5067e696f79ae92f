package org.mensuration.internal.stem;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.mensuration.kernel.MonotoneCubic;

/**
 * A stretch of a stem over which the squared diameter is one cubic that only rises or only falls.
 * Immutable and thread-safe.
 */
final class CurvePiece {
  private static final int MOST_STEPS = 200;
  private static final double RELATIVE = 4 * Math.ulp(1.0);
  private static final double METRES = 1e-13;

  private final double from;
  private final double to;
  private final boolean fromTop;
  private final double low;
  private final double high;
  private final double[] cubic;

  /**
   * A piece.
   *
   * @param from lower height in m
   * @param to upper height in m
   * @param fromTop whether the cubic's distance is counted downward from the upper end, so that
   *     nothing is lost near a tip
   * @param low squared diameter at the lower end in cm²
   * @param high squared diameter at the upper end in cm²
   * @param cubic coefficients of the squared diameter in cm²; not copied
   */
  CurvePiece(double from, double to, boolean fromTop, double low, double high, double[] cubic) {
    this.from = from;
    this.to = to;
    this.fromTop = fromTop;
    this.low = low;
    this.high = high;
    this.cubic = cubic;
  }

  /** A piece of the form a · tᵏ below a tip, and nothing else: cone, paraboloid, neiloid. */
  static CurvePiece tip(double from, double to, double square, int power) {
    double[] cubic = new double[4];
    double scaled = square;
    for (int i = 0; i < power; i++) {
      scaled /= to - from;
    }
    cubic[power] = scaled;
    return new CurvePiece(from, to, true, square, 0, cubic);
  }

  double from() {
    return from;
  }

  double to() {
    return to;
  }

  double low() {
    return low;
  }

  double high() {
    return high;
  }

  private double distance(double height) {
    return fromTop ? to - height : height - from;
  }

  /** The squared diameter at a height; at the ends the one given, to the last bit. */
  double square(double height) {
    if (height == from) {
      return low;
    }
    if (height == to) {
      return high;
    }
    return Math.max(0, MonotoneCubic.value(cubic, distance(height)));
  }

  /** Integral of the squared diameter in cm² m between two heights of the piece. */
  double integral(double lower, double upper) {
    double atLow = MonotoneCubic.integral(cubic, distance(lower));
    double atHigh = MonotoneCubic.integral(cubic, distance(upper));
    return fromTop ? atLow - atHigh : atHigh - atLow;
  }

  /** The height strictly between two of the piece where the squared diameter has a value. */
  double crossing(double square, double lower, double upper) {
    return new BrentSolver(RELATIVE, METRES, 0)
        .solve(MOST_STEPS, h -> square(h) - square, lower, upper);
  }
}
