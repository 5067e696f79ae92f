package org.mensuration.internal.diameter;

import org.apache.commons.math3.linear.RealMatrix;

/**
 * What noise adds to a fitted radius. Noise along the surface carries points outward by σ²/(2R),
 * whatever their number; the bend of the distances adds a part that grows on short arcs (the
 * second-order bias of least squares: half the inverse of JᵀJ times the sum of gradient times trace
 * of curvature times covariance). Stateless and thread-safe.
 */
final class NoiseBias {
  private NoiseBias() {}

  /** The bias of the radius of a circle; of an ellipse only the part along the surface. */
  static double ofRadius(SectionCurve curve, TrimmedFit fit, double[] x, double[] y) {
    double[] p = fit.fit().parameters();
    double variance = fit.deviation() * fit.deviation();
    double outward = variance / (2 * p[2]);
    return curve == CircleCurve.INSTANCE ? outward + ofBend(fit, x, y, variance) : outward;
  }

  private static double ofBend(TrimmedFit fit, double[] x, double[] y, double variance) {
    double[] p = fit.fit().parameters();
    RealMatrix inverse = fit.fit().inverse();
    double[] gradient = new double[p.length];
    double bend = 0;
    for (int i = 0; i < x.length; i++) {
      if (fit.kept()[i]) {
        CircleCurve.INSTANCE.distance(p, x[i], y[i], gradient);
        double away = StrictMath.hypot(x[i] - p[0], y[i] - p[1]);
        // The distance bends only across the line of sight from the centre.
        double across = -gradient[1];
        double along = gradient[0];
        double trace =
            (across * across * inverse.getEntry(0, 0)
                    + 2 * across * along * inverse.getEntry(0, 1)
                    + along * along * inverse.getEntry(1, 1))
                * variance
                / away;
        for (int j = 0; j < p.length; j++) {
          bend += inverse.getEntry(2, j) * gradient[j] * trace;
        }
      }
    }
    return -0.5 * bend;
  }
}
