package org.mensuration.internal.diameter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.Measures.in;

import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.mensuration.diameter.SectionFit;
import org.mensuration.diameter.SectionPoints;
import org.mensuration.units.ForestUnits;

/** Bias and standard errors of the fits beside what small changes of the points do. */
class SectionErrorsTest {
  private static final int POINTS = 40;

  /** Points of an ellipse, displaced along its normal and along its tangent. */
  private static double[][] points(
      double a, double b, double turn, double arc, double[] outward, double[] aside) {
    double[][] points = new double[2][POINTS];
    for (int i = 0; i < POINTS; i++) {
      double t = Math.toRadians(arc) * i / (POINTS - (arc < 360 ? 1 : 0));
      double nu = b * Math.cos(t);
      double nv = a * Math.sin(t);
      double norm = Math.hypot(nu, nv);
      double u = a * Math.cos(t) + (outward[i] * nu - aside[i] * nv) / norm;
      double v = b * Math.sin(t) + (outward[i] * nv + aside[i] * nu) / norm;
      points[0][i] = 3 + u * Math.cos(turn) - v * Math.sin(turn);
      points[1][i] = -2 + u * Math.sin(turn) + v * Math.cos(turn);
    }
    return points;
  }

  private static double[] noise(Random random, double sigma) {
    double[] noise = new double[POINTS];
    for (int i = 0; i < POINTS; i++) {
      noise[i] = sigma * random.nextGaussian();
    }
    return noise;
  }

  private static double[] negative(double[] values) {
    double[] negative = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      negative[i] = -values[i];
    }
    return negative;
  }

  private static GeometricFit circle(double[][] points) {
    return Objects.requireNonNull(
        GeometricFit.of(CircleCurve.INSTANCE, new double[] {3, -2, 1}, points[0], points[1]));
  }

  /** The mean over noise and its mirror image is free of the first order; what is left is bias. */
  @Test
  void theBiasOfNoiseIsTheMeanErrorOfManyFits() {
    for (double arc : new double[] {120, 200, 360}) {
      Random random = new Random(3);
      double sigma = 0.01;
      double sum = 0;
      int pairs = 1500;
      for (int i = 0; i < pairs; i++) {
        double[] outward = noise(random, sigma);
        double[] aside = noise(random, sigma);
        double[][] one = points(1, 1, 0, arc, outward, aside);
        double[][] other = points(1, 1, 0, arc, negative(outward), negative(aside));
        sum += circle(one).parameters()[2] + circle(other).parameters()[2] - 2;
      }
      double perVariance = sum / (2 * pairs) / (sigma * sigma);
      double[][] sample = points(1, 1, 0, arc, noise(random, 1e-4), new double[POINTS]);
      TrimmedFit fit = TrimmedFit.ofAll(circle(sample), POINTS, 3);
      double stated =
          NoiseBias.ofRadius(CircleCurve.INSTANCE, fit, sample[0], sample[1])
              / (fit.deviation() * fit.deviation());
      assertThat(stated).as(arc + " degrees").isCloseTo(perVariance, within(0.12 * perVariance));
    }
  }

  private static SectionFit fit(double[][] points, boolean ellipse) {
    SectionPoints section = SectionPoints.of(points[0], points[1], ForestUnits.METRE);
    return ellipse ? SectionFitting.ellipse(section, false) : SectionFitting.circle(section, false);
  }

  private static double diameter(double[][] points, boolean ellipse) {
    return in(fit(points, ellipse).diameter(), ForestUnits.METRE);
  }

  /** Every point is moved outward by itself; the squares of what that does add up. */
  private static void errorIsThatOfMovedPoints(double a, double b, double arc, boolean ellipse) {
    double[] outward = noise(new Random(8), 0.001);
    double[] aside = new double[POINTS];
    double step = 1e-5;
    double squares = 0;
    for (int i = 0; i < POINTS; i++) {
      double[] more = outward.clone();
      more[i] += step;
      double[] less = outward.clone();
      less[i] -= step;
      double slope =
          (diameter(points(a, b, 0.4, arc, more, aside), ellipse)
                  - diameter(points(a, b, 0.4, arc, less, aside), ellipse))
              / (2 * step);
      squares += slope * slope;
    }
    SectionFit fit = fit(points(a, b, 0.4, arc, outward, aside), ellipse);
    double ratio =
        in(fit.standardError(), ForestUnits.METRE) / in(fit.deviation(), ForestUnits.METRE);
    assertThat(ratio).isCloseTo(Math.sqrt(squares), within(0.03 * ratio));
  }

  @Test
  void standardErrorsAreThoseOfMovedPoints() {
    errorIsThatOfMovedPoints(0.25, 0.25, 120, false);
    errorIsThatOfMovedPoints(0.25, 0.25, 360, false);
    errorIsThatOfMovedPoints(0.30, 0.18, 360, true);
    errorIsThatOfMovedPoints(0.30, 0.18, 250, true);
  }

  @Test
  void axesPointWhereTheyWereTurned() {
    for (double degrees : new double[] {0.5, 40, 89, 91, 150, 179.5}) {
      double[] none = new double[POINTS];
      double[][] points = points(0.3, 0.2, Math.toRadians(degrees), 360, none, none);
      SectionFit.Axes axes = fit(points, true).axes().orElseThrow();
      assertThat(in(axes.direction(), ForestUnits.DEGREE)).isCloseTo(degrees, within(1e-6));
      assertThat(in(axes.longAxis(), ForestUnits.METRE)).isCloseTo(0.6, within(1e-9));
      assertThat(in(axes.shortAxis(), ForestUnits.METRE)).isCloseTo(0.4, within(1e-9));
    }
  }

  @Test
  void refusalsTellTheScatterAndTheError() {
    double[] band = new double[POINTS];
    for (int i = 0; i < POINTS; i++) {
      band[i] = i % 2 == 0 ? 0.3 : -0.3;
    }
    double expected = 30 * Math.sqrt(POINTS / (POINTS - 3.0));
    assertThatThrownBy(() -> fit(points(1, 1, 0, 360, band, new double[POINTS]), false))
        .isInstanceOf(ArithmeticException.class)
        .satisfies(
            refused ->
                assertThat(number(refused, "scatter by "))
                    .isCloseTo(expected, within(0.05 * expected)));
    double[][] arc = points(1, 1, 0, 12, noise(new Random(4), 0.01), new double[POINTS]);
    GeometricFit poor = circle(arc);
    double error = 2 * Math.sqrt(poor.squares() / (POINTS - 3) * poor.inverse().getEntry(2, 2));
    double percent = 100 * error / (2 * poor.parameters()[2]);
    assertThat(percent).isGreaterThan(25);
    assertThatThrownBy(() -> fit(arc, false))
        .isInstanceOf(ArithmeticException.class)
        .satisfies(
            refused ->
                assertThat(number(refused, "would be "))
                    .isCloseTo(percent, within(1e-3 * percent)));
  }

  private static double number(Throwable refused, String after) {
    String message = Objects.requireNonNull(refused.getMessage());
    int from = message.indexOf(after) + after.length();
    assertThat(from).as(message).isGreaterThanOrEqualTo(after.length());
    return Double.parseDouble(message.substring(from, message.indexOf(' ', from)));
  }
}
