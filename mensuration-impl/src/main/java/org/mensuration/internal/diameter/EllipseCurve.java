package org.mensuration.internal.diameter;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * An ellipse: centre x, centre y, mean m of the half axes, and the half difference of them turned
 * by twice the direction, p = d cos 2θ and q = d sin 2θ. So a circle is no special point: its
 * direction has no meaning, its p and q are zero. Stateless and thread-safe.
 */
final class EllipseCurve implements SectionCurve {
  static final EllipseCurve INSTANCE = new EllipseCurve();
  private static final int PARAMETERS = 5;
  private static final int SUBSET = 8;
  private static final int MOST_STEPS = 200;
  private static final double ACCURACY = 1e-15;

  private EllipseCurve() {}

  @Override
  public String name() {
    return "ellipse";
  }

  @Override
  public int parameters() {
    return PARAMETERS;
  }

  @Override
  public int subset() {
    return SUBSET;
  }

  @Override
  public double[] start(double[] x, double[] y) {
    return AlgebraicEllipse.direct(x, y);
  }

  @Override
  public double distance(double[] parameters, double x, double y, double[] gradient) {
    double mean = parameters[2];
    double half = Math.sqrt(parameters[3] * parameters[3] + parameters[4] * parameters[4]);
    double theta = 0.5 * StrictMath.atan2(parameters[4], parameters[3]);
    double cos = StrictMath.cos(theta);
    double sin = StrictMath.sin(theta);
    double u = cos * (x - parameters[0]) + sin * (y - parameters[1]);
    double v = cos * (y - parameters[1]) - sin * (x - parameters[0]);
    double longHalf = mean + half;
    double shortHalf = mean - half;
    if (!(shortHalf > 0)) {
      // Not an ellipse: a step of the search went too far, and a huge distance turns it back.
      return Double.MAX_VALUE;
    }
    double[] foot = foot(longHalf, shortHalf, Math.abs(u), Math.abs(v));
    double c = Math.copySign(foot[0], u) / longHalf;
    double s = Math.copySign(foot[1], v) / shortHalf;
    double norm = Math.sqrt(shortHalf * c * shortHalf * c + longHalf * s * longHalf * s);
    double normalU = shortHalf * c / norm;
    double normalV = longHalf * s / norm;
    // The distance changes as the foot's curve moves along the normal.
    double stretch = (shortHalf * c * c - longHalf * s * s) / norm;
    double turn = mean * 2 * s * c / norm;
    double cos2 = cos * cos - sin * sin;
    double sin2 = 2 * sin * cos;
    gradient[0] = -(cos * normalU - sin * normalV);
    gradient[1] = -(sin * normalU + cos * normalV);
    gradient[2] = -(shortHalf * c * c + longHalf * s * s) / norm;
    gradient[3] = -(cos2 * stretch - sin2 * turn);
    gradient[4] = -(sin2 * stretch + cos2 * turn);
    return normalU * (u - longHalf * c) + normalV * (v - shortHalf * s);
  }

  /** The point of the ellipse nearest to a point of the first quadrant. */
  private static double[] foot(double a, double b, double u, double v) {
    double ratio = a / b * (a / b);
    double z0 = u / a;
    double z1 = v / b;
    if (v > 0) {
      double high = StrictMath.hypot(ratio * z0, z1);
      double root = high > z1 ? root(ratio, z0, z1, high) : z1;
      return new double[] {ratio * u / (root + (ratio - 1)), v / root};
    }
    double reach = (a * a - b * b) / a;
    if (u < reach) {
      double x = u / reach * a;
      return new double[] {x, b * Math.sqrt((1 - x / a) * (1 + x / a))};
    }
    return new double[] {a, 0};
  }

  private static double root(double ratio, double z0, double z1, double high) {
    return new BrentSolver(ACCURACY, ACCURACY, ACCURACY)
        .solve(
            MOST_STEPS,
            t -> {
              double along = ratio * z0 / (t + (ratio - 1));
              double up = z1 / t;
              return along * along + up * up - 1;
            },
            z1,
            high);
  }
}
