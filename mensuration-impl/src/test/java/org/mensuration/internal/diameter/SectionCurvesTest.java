package org.mensuration.internal.diameter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SectionCurvesTest {
  private static final double STEP = 1e-6;

  @Test
  void derivativesAgreeWithDifferences() {
    Random random = new Random(4);
    for (int i = 0; i < 60; i++) {
      double x = 4 * random.nextDouble() - 2;
      double y = 4 * random.nextDouble() - 2;
      slopes(CircleCurve.INSTANCE, new double[] {0.2, -0.1, 1}, x, y);
      slopes(EllipseCurve.INSTANCE, new double[] {0.2, -0.1, 1, 0.15, -0.1}, x, y);
      slopes(EllipseCurve.INSTANCE, new double[] {-0.3, 0, 1.2, -0.2, 0.05}, x, y);
    }
  }

  private static void slopes(SectionCurve curve, double[] p, double x, double y) {
    double[] gradient = new double[curve.parameters()];
    double[] ignored = new double[curve.parameters()];
    curve.distance(p, x, y, gradient);
    for (int j = 0; j < p.length; j++) {
      double[] more = p.clone();
      double[] less = p.clone();
      more[j] += STEP;
      less[j] -= STEP;
      double slope =
          (curve.distance(more, x, y, ignored) - curve.distance(less, x, y, ignored)) / (2 * STEP);
      assertThat(gradient[j]).isCloseTo(slope, within(2e-5));
    }
  }

  @Test
  void theDistanceFromAnEllipseIsTheLeastOverItsPoints() {
    double[] p = {0.5, -0.25, 1, 0.2 * Math.cos(1.1), 0.2 * Math.sin(1.1)};
    double[][] points = {
      {0.5, -0.25}, {2, 1}, {-1, 0.5}, {0.6, -0.2}, {0.5, 2}, {-3, -0.25}, {1.4, -1.2}, {0.1, 0.4}
    };
    double[] gradient = new double[5];
    for (double[] point : points) {
      double least = Double.POSITIVE_INFINITY;
      for (int k = 0; k < 200_000; k++) {
        double t = 2 * Math.PI * k / 200_000;
        double u = 1.2 * Math.cos(t);
        double v = 0.8 * Math.sin(t);
        double ex = 0.5 + Math.cos(0.55) * u - Math.sin(0.55) * v;
        double ey = -0.25 + Math.sin(0.55) * u + Math.cos(0.55) * v;
        least = Math.min(least, Math.hypot(point[0] - ex, point[1] - ey));
      }
      double found = EllipseCurve.INSTANCE.distance(p, point[0], point[1], gradient);
      assertThat(Math.abs(found)).isCloseTo(least, within(1e-8));
      double c = Math.cos(0.55) * (point[0] - 0.5) + Math.sin(0.55) * (point[1] + 0.25);
      double s = Math.cos(0.55) * (point[1] + 0.25) - Math.sin(0.55) * (point[0] - 0.5);
      assertThat(found > 0).isEqualTo(c * c / 1.44 + s * s / 0.64 > 1);
    }
    // On the axes of an ellipse that is not turned.
    double[] level = {0, 0, 1, 0.2, 0};
    assertThat(EllipseCurve.INSTANCE.distance(level, 2, 0, gradient)).isCloseTo(0.8, within(1e-15));
    assertThat(EllipseCurve.INSTANCE.distance(level, 0, 2, gradient)).isCloseTo(1.2, within(1e-12));
    assertThat(EllipseCurve.INSTANCE.distance(level, 0, 0, gradient))
        .isCloseTo(-0.8, within(1e-12));
    // On the long axis inside the evolute: the foot lies at a² x/(a² - b²) = 0.54.
    assertThat(EllipseCurve.INSTANCE.distance(level, 0.3, 0, gradient))
        .isCloseTo(-Math.hypot(0.54 - 0.3, 0.8 * Math.sqrt(1 - 0.45 * 0.45)), within(1e-12));
    // A flat thing that is no ellipse is as far as can be.
    assertThat(EllipseCurve.INSTANCE.distance(new double[] {0, 0, 1, 1.5, 0}, 1, 1, gradient))
        .isEqualTo(Double.MAX_VALUE);
  }

  @Test
  void theAlgebraicEllipseGoesThroughPerfectPoints() {
    for (double direction : new double[] {0, 0.4, 1.2, 1.8, 3}) {
      double[] x = new double[12];
      double[] y = new double[12];
      for (int i = 0; i < 12; i++) {
        double u = 1.3 * Math.cos(0.4 * i);
        double v = 0.9 * Math.sin(0.4 * i);
        x[i] = 0.3 + Math.cos(direction) * u - Math.sin(direction) * v;
        y[i] = 0.7 + Math.sin(direction) * u + Math.cos(direction) * v;
      }
      double[] wanted = {
        0.3, 0.7, 1.1, 0.2 * Math.cos(2 * direction), 0.2 * Math.sin(2 * direction)
      };
      assertThat(AlgebraicEllipse.direct(x, y)).containsExactly(wanted, within(1e-9));
    }
    double[] line = {0, 1, 2, 3, 4, 5};
    assertThat(AlgebraicEllipse.direct(line, line)).hasSize(5).containsOnly(Double.NaN);
  }

  @Test
  void threeMethodsForOneCircle() {
    double[][] points = {{9, 35, -13, 10, 23, 0}, {34, 10, 6, -14, 27, -10}};
    assertThat(CircleOfPoints.linear(points))
        .containsExactly(new double[] {10.55231, 9.70590, 23.33482}, within(5e-6));
    assertThat(CircleOfPoints.geometric(points))
        .containsExactly(new double[] {10.50009, 9.65995, 23.33353, 7.711852}, within(5e-6));
    double[][] arc = {{1, 2, 5, 7, 9, 3}, {7, 6, 8, 7, 5, 7}};
    assertThat(CircleOfPoints.unitNorm(arc))
        .containsExactly(new double[] {5.3794, 7.2532, 3.0370}, within(5e-5));
    double[][] line = {{1, 2, 3}, {1, 2, 3}};
    assertThat(CircleOfPoints.linear(line)[0]).isNaN();
    assertThat(CircleOfPoints.unitNorm(line)[0]).isNaN();
    assertThat(CircleOfPoints.geometric(line)[3]).isNaN();
    assertThat(CircleOfPoints.unitNorm(new double[][] {{1, 2}, {1, 3}})[0]).isNaN();
    double[][] three = {{1, 0, -1}, {0, 1, 0}};
    assertThat(CircleOfPoints.unitNorm(three)[2]).isCloseTo(1, within(1e-12));
  }

  @Test
  void theBiasOfNoiseOnAFullCircle() {
    int n = 200;
    Random random = new Random(8);
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = Math.cos(2 * Math.PI * i / n) + 0.05 * random.nextGaussian();
      y[i] = Math.sin(2 * Math.PI * i / n) + 0.05 * random.nextGaussian();
    }
    GeometricFit fit = fitted(CircleCurve.INSTANCE.start(x, y), x, y);
    TrimmedFit all = TrimmedFit.ofAll(fit, n, 3);
    double r = fit.parameters()[2];
    double variance = all.deviation() * all.deviation();
    assertThat(variance).isCloseTo(fit.squares() / (n - 3), within(1e-15));
    // Outward by s²/(2R); by the bend s²/(n R) on a full circle. The next term is s²/R² of it.
    double wanted = variance / (2 * r) * (1 + 2.0 / n);
    assertThat(NoiseBias.ofRadius(CircleCurve.INSTANCE, all, x, y))
        .isCloseTo(wanted, within(variance / (r * r) * wanted));
    assertThat(NoiseBias.ofRadius(EllipseCurve.INSTANCE, all, x, y))
        .isCloseTo(variance / (2 * r), within(1e-15));
  }

  @Test
  void theBendGrowsOnShortArcs() {
    // Without noise in the points the formula can be worked out by hand from its parts.
    int n = 91;
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      double t = Math.toRadians(i - 45);
      double r = 1 + (i % 2 == 0 ? 0.01 : -0.01);
      x[i] = r * Math.cos(t);
      y[i] = r * Math.sin(t);
    }
    GeometricFit fit = fitted(CircleCurve.INSTANCE.start(x, y), x, y);
    TrimmedFit all = TrimmedFit.ofAll(fit, n, 3);
    // Cross-check by the bootstrap of many noises about the same arc.
    double bias = NoiseBias.ofRadius(CircleCurve.INSTANCE, all, x, y);
    Random random = new Random(21);
    double sum = 0;
    double squares = 0;
    int rounds = 4000;
    double[] nx = new double[n];
    double[] ny = new double[n];
    for (int k = 0; k < rounds; k++) {
      double signed = 0;
      for (int sign = -1; sign <= 1; sign += 2) {
        if (sign == -1) {
          for (int i = 0; i < n; i++) {
            nx[i] = random.nextGaussian();
            ny[i] = random.nextGaussian();
          }
        }
        double[] px = new double[n];
        double[] py = new double[n];
        for (int i = 0; i < n; i++) {
          double t = Math.toRadians(i - 45);
          px[i] = Math.cos(t) + sign * all.deviation() * nx[i];
          py[i] = Math.sin(t) + sign * all.deviation() * ny[i];
        }
        GeometricFit one = fitted(new double[] {0, 0, 1}, px, py);
        signed += one.parameters()[2] - 1;
      }
      sum += signed / 2;
      squares += signed / 2 * (signed / 2);
    }
    double mean = sum / rounds;
    double error = Math.sqrt((squares / rounds - mean * mean) / rounds);
    assertThat(bias).isCloseTo(mean, within(3 * error)).isGreaterThan(10 * error);
  }

  @Test
  void lonelyPointsAreDropped() {
    int n = 40;
    double[] x = new double[n];
    double[] y = new double[n];
    boolean[] chosen = new boolean[n];
    for (int i = 0; i < n; i++) {
      double t = Math.toRadians(170 + i);
      x[i] = Math.cos(t);
      y[i] = Math.sin(t);
      chosen[i] = i != 3;
    }
    x[20] = 1;
    y[20] = 0;
    Neighbours.dropLonely(chosen, x, y);
    for (int i = 0; i < n; i++) {
      assertThat(chosen[i]).as("point " + i).isEqualTo(i != 3 && i != 20);
    }
    // Too few to tell who is alone.
    boolean[] few = {true, true, true};
    Neighbours.dropLonely(few, new double[] {1, -1, 0}, new double[] {0, 0, 1});
    assertThat(few).containsExactly(true, true, true);
  }

  @Test
  void aFitThatCannotStartIsNone() {
    double[] nan = {Double.NaN, 0, 1};
    double[] x = {0, 1, 2, 3};
    assertThat(GeometricFit.of(CircleCurve.INSTANCE, nan, x, x)).isNull();
    assertThat(TrimmedFit.of(CircleCurve.INSTANCE, new double[30], new double[30])).isNull();
  }

  private static GeometricFit fitted(double[] start, double[] x, double[] y) {
    return Objects.requireNonNull(GeometricFit.of(CircleCurve.INSTANCE, start, x, y));
  }
}
