package org.mensuration.internal.diameter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** The parts of a fit of sections, beside figures by hand and beside themselves in another size. */
class SectionPartsTest {
  /** Points of an ellipse, evenly by their parameter. */
  private static double[][] oval(
      int count, double arc, double a, double b, double direction, double x0, double y0) {
    double[][] points = new double[2][count];
    for (int i = 0; i < count; i++) {
      double t = Math.toRadians(arc) * i / count;
      double u = a * Math.cos(t);
      double v = b * Math.sin(t);
      points[0][i] = x0 + Math.cos(direction) * u - Math.sin(direction) * v;
      points[1][i] = y0 + Math.sin(direction) * u + Math.cos(direction) * v;
    }
    return points;
  }

  @Test
  void theAlgebraicCircleIsFoundInAnySize() {
    for (double radius : new double[] {1e-6, 1, 1e6}) {
      double[][] points = oval(7, 300, radius, radius, 0.3, 2 * radius, -3 * radius);
      assertThat(CircleCurve.INSTANCE.start(points[0], points[1]))
          .containsExactly(new double[] {2 * radius, -3 * radius, radius}, within(1e-12 * radius));
    }
  }

  @Test
  void theAlgebraicEllipseIsFoundHoweverFlatAndTurned() {
    for (double half : new double[] {0.9, 0.6, 0.3, 0.15}) {
      for (double arc : new double[] {360, 240, 160}) {
        for (int turn = 0; turn < 12; turn++) {
          double direction = Math.PI * turn / 12;
          double[][] points = oval(16, arc, 1, half, direction, 0.3, -0.2);
          double difference = (1 - half) / 2;
          double[] wanted = {
            0.3,
            -0.2,
            (1 + half) / 2,
            difference * Math.cos(2 * direction),
            difference * Math.sin(2 * direction)
          };
          assertThat(AlgebraicEllipse.direct(points[0], points[1]))
              .as(half + ", arc " + arc + ", turn " + turn)
              .containsExactly(wanted, within(1e-6));
        }
      }
    }
  }

  @Test
  void pointsOnTwoParallelLinesHaveNoEllipse() {
    double[] x = {0, 1, 2, 3, 4, 0, 1, 2, 3, 4};
    double[] y = {0, 0, 0, 0, 0, 1, 1, 1, 1, 1};
    assertThat(AlgebraicEllipse.direct(x, y)).hasSize(5).containsOnly(Double.NaN);
  }

  @Test
  void aCircleIsAnEllipseToo() {
    double[] circle = {0, 0, 1, 0, 0};
    double[] gradient = new double[5];
    for (double[] point : new double[][] {{0, 2}, {2, 0}, {-2, 0}, {0, -2}, {1.2, 1.6}}) {
      assertThat(EllipseCurve.INSTANCE.distance(circle, point[0], point[1], gradient))
          .isCloseTo(1, within(1e-14));
    }
    for (double[] point : new double[][] {{0, 0.5}, {0.5, 0}, {0.3, -0.4}}) {
      assertThat(EllipseCurve.INSTANCE.distance(circle, point[0], point[1], gradient))
          .isCloseTo(-0.5, within(1e-14));
    }
    for (double[] point : new double[][] {{0, 0}, {0, 1e-20}, {1e-20, 0}}) {
      assertThat(EllipseCurve.INSTANCE.distance(circle, point[0], point[1], gradient))
          .isCloseTo(-1, within(1e-14));
    }
    // Near the centre of an ellipse the nearest end is that of the short axis.
    assertThat(EllipseCurve.INSTANCE.distance(new double[] {0, 0, 1, 0.2, 0}, 0, 1e-20, gradient))
        .isCloseTo(-0.8, within(1e-14));
  }

  @Test
  void anEllipseWithoutWidthIsNone() {
    assertThat(EllipseCurve.INSTANCE.distance(new double[] {0, 0, 1, 1, 0}, 3, 4, new double[5]))
        .isEqualTo(Double.MAX_VALUE);
  }

  @Test
  void aFitNeedsAFiniteStartNearACurve() {
    double[][] points = oval(12, 360, 1, 0.8, 0, 0, 0);
    double[] endless = {Double.POSITIVE_INFINITY, 0, 1};
    assertThat(GeometricFit.of(CircleCurve.INSTANCE, endless, points[0], points[1])).isNull();
    double[] flat = {0, 0, 1, 1.5, 0};
    assertThat(GeometricFit.of(EllipseCurve.INSTANCE, flat, points[0], points[1])).isNull();
  }

  @Test
  void theBiasOfNoiseGrowsWithTheSize() {
    int count = 40;
    double[] x = new double[count];
    double[] y = new double[count];
    for (int i = 0; i < count; i++) {
      double away = i % 2 == 0 ? 1.02 : 0.98;
      x[i] = away * Math.cos(0.05 * i);
      y[i] = away * Math.sin(0.05 * i);
    }
    double once = bias(x, y, 1);
    // The part along the surface alone is s²/(2R), here near 2e-4; a short arc has more.
    assertThat(once).isGreaterThan(2e-4);
    for (double size : new double[] {0.125, 8}) {
      assertThat(bias(x, y, size) / size).isCloseTo(once, within(1e-6 * once));
    }
  }

  private static double bias(double[] x, double[] y, double size) {
    double[] largeX = Arrays.stream(x).map(value -> size * value).toArray();
    double[] largeY = Arrays.stream(y).map(value -> size * value).toArray();
    GeometricFit fit =
        Objects.requireNonNull(
            GeometricFit.of(CircleCurve.INSTANCE, new double[] {0, 0, size}, largeX, largeY));
    TrimmedFit all = TrimmedFit.ofAll(fit, x.length, 3);
    return NoiseBias.ofRadius(CircleCurve.INSTANCE, all, largeX, largeY);
  }

  /** Points of the unit circle at degrees; all chosen. */
  private static boolean[] dropped(double... degrees) {
    double[] x = Arrays.stream(degrees).map(t -> Math.cos(Math.toRadians(t))).toArray();
    double[] y = Arrays.stream(degrees).map(t -> Math.sin(Math.toRadians(t))).toArray();
    boolean[] chosen = new boolean[degrees.length];
    Arrays.fill(chosen, true);
    Neighbours.dropLonely(chosen, x, y);
    boolean[] dropped = new boolean[degrees.length];
    for (int i = 0; i < dropped.length; i++) {
      dropped[i] = !chosen[i];
    }
    return dropped;
  }

  @Test
  void aLonelyPointIsFoundWhereverTheAnglesBegin() {
    // Angles count from -180 to 180 degrees: the lonely one is the last, the first, or between.
    for (double turn : new double[] {0, 1.5, -1.5, 90, 180}) {
      double[] degrees = new double[30];
      for (int i = 0; i < 29; i++) {
        degrees[i] = turn + i - 14;
      }
      degrees[29] = turn + 179;
      boolean[] dropped = dropped(degrees);
      for (int i = 0; i < 30; i++) {
        assertThat(dropped[i]).as("turn " + turn + ", point " + i).isEqualTo(i == 29);
      }
    }
  }

  @Test
  void amongTenPointsNoneIsCalledLonely() {
    assertThat(dropped(0, 1, 2, 3, 4, 5, 6, 7, 8, 180)).containsOnly(false);
    assertThat(dropped(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 180))
        .containsExactly(
            false, false, false, false, false, false, false, false, false, false, true);
  }

  @Test
  void manyReadingsOfOneSpotAreNotLonely() {
    double[] degrees = new double[20];
    degrees[19] = 90;
    boolean[] dropped = dropped(degrees);
    for (int i = 0; i < 20; i++) {
      assertThat(dropped[i]).isEqualTo(i == 19);
    }
  }
}
