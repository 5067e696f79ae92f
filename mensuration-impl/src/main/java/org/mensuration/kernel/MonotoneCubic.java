package org.mensuration.kernel;

/**
 * A piecewise cubic through points that rises and falls only where they do (monotone cubic
 * interpolation of Fritsch and Carlson, with the slopes of Fritsch and Butland). Unchecked: NaN in,
 * NaN out. Stateless and thread-safe.
 *
 * <p>A piece is four coefficients a, b, c, d of a + b t + c t² + d t³, with t the distance from its
 * start.
 */
public final class MonotoneCubic {
  private MonotoneCubic() {}

  /**
   * The slope of the curve at each point: a weighted harmonic mean of the slopes of the chords on
   * both sides, zero where they differ in sign; at the ends a parabola's slope, held within what
   * keeps the shape.
   *
   * @param x places, rising, at least two
   * @param y values
   * @return one slope a point
   */
  public static double[] slopes(double[] x, double[] y) {
    int last = x.length - 1;
    double[] chord = new double[last];
    for (int i = 0; i < last; i++) {
      chord[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
    }
    double[] slope = new double[x.length];
    if (last == 1) {
      slope[0] = chord[0];
      slope[1] = chord[0];
      return slope;
    }
    for (int i = 1; i < last; i++) {
      if (chord[i - 1] * chord[i] > 0) {
        double before = x[i] - x[i - 1];
        double after = x[i + 1] - x[i];
        double w1 = 2 * after + before;
        double w2 = after + 2 * before;
        slope[i] = (w1 + w2) / (w1 / chord[i - 1] + w2 / chord[i]);
      }
    }
    slope[0] = end(x[1] - x[0], x[2] - x[1], chord[0], chord[1]);
    slope[last] =
        end(x[last] - x[last - 1], x[last - 1] - x[last - 2], chord[last - 1], chord[last - 2]);
    return slope;
  }

  /** Slope at an end from the chord that touches it and the next one. */
  private static double end(double near, double far, double nearChord, double farChord) {
    double slope = ((2 * near + far) * nearChord - near * farChord) / (near + far);
    if (!(slope * nearChord > 0)) {
      return 0;
    }
    if (nearChord * farChord <= 0 && Math.abs(slope) > 3 * Math.abs(nearChord)) {
      return 3 * nearChord;
    }
    return slope;
  }

  /**
   * The piece with given values and slopes at its ends.
   *
   * @param length length of the piece
   * @param y0 value at the start
   * @param y1 value at the end
   * @param slope0 slope at the start
   * @param slope1 slope at the end
   * @return its coefficients a, b, c, d
   */
  public static double[] piece(double length, double y0, double y1, double slope0, double slope1) {
    double chord = (y1 - y0) / length;
    double c = (3 * chord - 2 * slope0 - slope1) / length;
    double d = (slope0 + slope1 - 2 * chord) / (length * length);
    return new double[] {y0, slope0, c, d};
  }

  /**
   * The value of a piece.
   *
   * @param piece its coefficients a, b, c, d
   * @param t distance from its start
   * @return the value
   */
  public static double value(double[] piece, double t) {
    return piece[0] + t * (piece[1] + t * (piece[2] + t * piece[3]));
  }

  /**
   * The integral of a piece from its start.
   *
   * @param piece its coefficients a, b, c, d
   * @param t distance from its start
   * @return the integral
   */
  public static double integral(double[] piece, double t) {
    return t * (piece[0] + t * (piece[1] / 2 + t * (piece[2] / 3 + t * (piece[3] / 4))));
  }
}
