package org.mensuration.internal.diameter;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.stat.StatUtils;
import org.jspecify.annotations.Nullable;
import org.mensuration.diameter.SectionFit;
import org.mensuration.diameter.SectionPoints;
import org.mensuration.units.Measures;

/** Fits sections and says how good the fit is. Stateless and thread-safe. */
public final class SectionFitting {
  private static final double TESTED_ARC_DEGREES = 85;

  /**
   * Scatter and error, as shares of the radius, beyond which there is no such curve to speak of.
   */
  private static final double WIDEST_BAND = 0.25;

  private static final double WORST_ERROR = 0.5;

  private SectionFitting() {}

  /**
   * Fits a circle.
   *
   * @param points the points
   * @param strays whether to look for stray points
   * @return the fit
   * @throws IllegalArgumentException if there are fewer than four points
   * @throws ArithmeticException if the points do not determine a circle, or the fit does not
   *     converge
   */
  public static SectionFit circle(SectionPoints points, boolean strays) {
    return fit(CircleCurve.INSTANCE, points, strays);
  }

  /**
   * Fits an ellipse.
   *
   * @param points the points
   * @param strays whether to look for stray points
   * @return the fit
   * @throws IllegalArgumentException if there are fewer than six points
   * @throws ArithmeticException if the points do not determine an ellipse, or the fit does not
   *     converge
   */
  public static SectionFit ellipse(SectionPoints points, boolean strays) {
    return fit(EllipseCurve.INSTANCE, points, strays);
  }

  private static SectionFit fit(SectionCurve curve, SectionPoints points, boolean strays) {
    if (points.size() <= curve.parameters()) {
      throw new IllegalArgumentException(
          curve.name()
              + ": "
              + points.size()
              + " points, at least "
              + (curve.parameters() + 1)
              + " are needed for a fit with its error");
    }
    Scaled scaled = Scaled.of(points.x(), points.y());
    if (Double.isNaN(CircleCurve.INSTANCE.start(scaled.x, scaled.y)[0])) {
      throw new ArithmeticException(
          curve.name() + ": the " + points.size() + " points lie on a line or in one place");
    }
    TrimmedFit fit =
        strays && points.size() >= TrimmedFit.FEWEST
            ? TrimmedFit.of(curve, scaled.x, scaled.y)
            : whole(curve, scaled);
    if (fit == null) {
      throw new ArithmeticException(
          curve.name() + ": the fit to " + points.size() + " points did not converge");
    }
    double[] found = fit.fit().parameters();
    double error = error(curve, fit);
    double size = found[2];
    if (!(fit.deviation() < WIDEST_BAND * size)) {
      throw new ArithmeticException(
          curve.name()
              + ": the points do not determine it; they scatter by "
              + 100 * fit.deviation() / size
              + " % of the radius");
    }
    if (!(error < WORST_ERROR * size)) {
      throw new ArithmeticException(
          curve.name()
              + ": the points do not determine it; the standard error of the diameter would be "
              + 100 * error / (2 * size)
              + " % of it");
    }
    return result(curve, fit, scaled, error, points.unit());
  }

  private static @Nullable TrimmedFit whole(SectionCurve curve, Scaled scaled) {
    GeometricFit fit = GeometricFit.of(curve, curve.start(scaled.x, scaled.y), scaled.x, scaled.y);
    return fit == null ? null : TrimmedFit.ofAll(fit, scaled.x.length, curve.parameters());
  }

  /** Standard error of the diameter, to first order. */
  private static double error(SectionCurve curve, TrimmedFit fit) {
    RealMatrix inverse = fit.fit().inverse();
    double[] p = fit.fit().parameters();
    double[] slope = new double[curve.parameters()];
    slope[2] = 2;
    if (curve == EllipseCurve.INSTANCE) {
      double equal = Math.sqrt(p[2] * p[2] - p[3] * p[3] - p[4] * p[4]);
      slope[2] = 2 * p[2] / equal;
      slope[3] = -2 * p[3] / equal;
      slope[4] = -2 * p[4] / equal;
    }
    double variance = 0;
    for (int i = 0; i < slope.length; i++) {
      for (int j = 0; j < slope.length; j++) {
        variance += slope[i] * slope[j] * inverse.getEntry(i, j);
      }
    }
    return fit.deviation() * Math.sqrt(variance);
  }

  private static SectionFit result(
      SectionCurve curve, TrimmedFit fit, Scaled scaled, double error, Unit<Length> unit) {
    double[] p = fit.fit().parameters();
    double unbiased = p[2] - NoiseBias.ofRadius(curve, fit, scaled.x, scaled.y);
    double half = StrictMath.hypot(p[3 % p.length], p[4 % p.length]);
    Optional<SectionFit.Axes> axes = Optional.empty();
    double diameter = 2 * unbiased;
    if (curve == EllipseCurve.INSTANCE) {
      diameter = 2 * Math.sqrt((unbiased - half) * (unbiased + half));
      double direction = 0.5 * StrictMath.toDegrees(StrictMath.atan2(p[4], p[3]));
      axes =
          Optional.of(
              new SectionFit.Axes(
                  Measures.of(2 * (unbiased + half) * scaled.size, unit),
                  Measures.of(2 * (unbiased - half) * scaled.size, unit),
                  Measures.degrees(direction < 0 ? direction + 180 : direction)));
    }
    double arc = arc(p, fit.kept(), scaled);
    List<Integer> strays = new ArrayList<>();
    for (int i = 0; i < fit.kept().length; i++) {
      if (!fit.kept()[i]) {
        strays.add(i);
      }
    }
    List<String> warnings = new ArrayList<>();
    if (arc < TESTED_ARC_DEGREES) {
      warnings.add(
          "the points cover an arc of "
              + Math.round(arc)
              + " degrees; the fit was tested from 90 degrees on");
    }
    return new SectionFit(
        Measures.of(p[0] * scaled.size + scaled.originX, unit),
        Measures.of(p[1] * scaled.size + scaled.originY, unit),
        Measures.of(diameter * scaled.size, unit),
        Measures.of(error * scaled.size, unit),
        axes,
        Measures.of(fit.deviation() * scaled.size, unit),
        Measures.degrees(arc),
        fit.kept().length - strays.size(),
        strays,
        warnings);
  }

  /** 360 degrees less the widest gap between neighbours. */
  private static double arc(double[] centre, boolean[] kept, Scaled scaled) {
    double[] angles = new double[kept.length];
    int count = 0;
    for (int i = 0; i < kept.length; i++) {
      if (kept[i]) {
        angles[count++] =
            StrictMath.toDegrees(
                StrictMath.atan2(scaled.y[i] - centre[1], scaled.x[i] - centre[0]));
      }
    }
    Arrays.sort(angles, 0, count);
    double gap = angles[0] + 360 - angles[count - 1];
    for (int i = 1; i < count; i++) {
      gap = Math.max(gap, angles[i] - angles[i - 1]);
    }
    return 360 - gap;
  }

  /** Points moved to their mean and divided by their spread, so that no unit is too small. */
  private static final class Scaled {
    private final double[] x;
    private final double[] y;
    private final double originX;
    private final double originY;
    private final double size;

    private Scaled(double[] x, double[] y, double originX, double originY, double size) {
      this.x = x;
      this.y = y;
      this.originX = originX;
      this.originY = originY;
      this.size = size;
    }

    static Scaled of(double[] x, double[] y) {
      double originX = StatUtils.mean(x);
      double originY = StatUtils.mean(y);
      double farthest = 0;
      for (int i = 0; i < x.length; i++) {
        farthest = Math.max(farthest, Math.abs(x[i] - originX));
        farthest = Math.max(farthest, Math.abs(y[i] - originY));
      }
      double size = farthest > 0 ? farthest : 1;
      return new Scaled(
          Arrays.stream(x).map(value -> (value - originX) / size).toArray(),
          Arrays.stream(y).map(value -> (value - originY) / size).toArray(),
          originX,
          originY,
          size);
    }
  }
}
