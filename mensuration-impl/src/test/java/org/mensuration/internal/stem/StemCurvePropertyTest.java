package org.mensuration.internal.stem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.mensuration.stem.ButtForm;
import org.mensuration.stem.TipForm;

class StemCurvePropertyTest {
  private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();

  private static double[][] stem(long seed, int n) {
    Random random = new Random(seed);
    double[] heights = new double[n];
    double[] diameters = new double[n];
    double h = random.nextDouble();
    for (int i = 0; i < n; i++) {
      heights[i] = h;
      h += 0.1 + 4 * random.nextDouble();
      diameters[i] =
          random.nextInt(4) == 0 && i > 0 ? diameters[i - 1] : 5 + 60 * random.nextDouble();
    }
    return new double[][] {heights, diameters, {h}};
  }

  @Property(tries = 200)
  void neverLeavesTheReadingsOnBothSidesAndOnlyRisesOrFallsBetweenThem(
      @ForAll long seed, @ForAll @IntRange(min = 2, max = 9) int n) {
    double[][] s = stem(seed, n);
    StemCurve curve = curve(s, TipForm.CURVE);
    for (int i = 0; i + 1 < n; i++) {
      double low = s[1][i] * s[1][i];
      double high = s[1][i + 1] * s[1][i + 1];
      double sign = Math.signum(high - low);
      double before = low;
      for (int k = 0; k <= 50; k++) {
        double at = s[0][i] + (s[0][i + 1] - s[0][i]) * k / 50;
        double square = curve.square(at);
        double slack = 1e-12 * Math.max(low, high);
        assertThat(square).isBetween(Math.min(low, high) - slack, Math.max(low, high) + slack);
        assertThat(sign * (square - before)).isGreaterThanOrEqualTo(-slack);
        before = square;
      }
    }
  }

  @Property(tries = 200)
  void theIntegralIsThatOfTheCurve(@ForAll long seed, @ForAll @IntRange(min = 1, max = 6) int n) {
    double[][] s = stem(seed, n);
    for (TipForm tip : TipForm.values()) {
      StemCurve curve = curve(s, tip);
      double[] ends = new double[n + 2];
      System.arraycopy(s[0], 0, ends, 1, n);
      ends[n + 1] = tip == TipForm.NOT_MEASURED ? s[0][n - 1] : s[2][0];
      double sum = 0;
      for (int i = 0; i + 1 < ends.length; i++) {
        // Two points integrate a cubic exactly.
        sum +=
            ends[i] == ends[i + 1]
                ? 0
                : GAUSS.legendre(3, ends[i], ends[i + 1]).integrate(curve::square);
      }
      assertThat(curve.integral(0, ends[n + 1])).isCloseTo(sum, within(1e-11 * sum));
      double cut = ends[n + 1] * 0.37;
      assertThat(curve.integral(0, cut) + curve.integral(cut, ends[n + 1]))
          .isCloseTo(sum, within(1e-11 * sum));
    }
  }

  @Property(tries = 200)
  void crossingsAreWhereTheCurveHasTheValue(
      @ForAll long seed, @ForAll @IntRange(min = 2, max = 9) int n) {
    double[][] s = stem(seed, n);
    StemCurve curve = curve(s, TipForm.CONE);
    double square = Math.pow(5 + 60 * new Random(seed + 1).nextDouble(), 2);
    double[] found = curve.heightsOf(square).stream().mapToDouble(h -> h).toArray();
    for (double height : found) {
      assertThat(curve.square(height)).isCloseTo(square, within(1e-8 * square));
    }
    int changes = 0;
    for (int i = 0; i + 1 < n; i++) {
      changes += (s[1][i] * s[1][i] < square) == (s[1][i + 1] * s[1][i + 1] < square) ? 0 : 1;
    }
    changes += s[1][n - 1] * s[1][n - 1] > square ? 1 : 0;
    assertThat(found).as(Arrays.deepToString(s)).hasSize(changes).isSorted();
    double first = curve.firstBelow(square, 0, s[2][0]);
    for (int k = 0; k <= 100; k++) {
      double at = first * k / 100;
      assertThat(first == 0 || curve.square(at) >= square * (1 - 1e-8)).isTrue();
    }
  }

  private static StemCurve curve(double[][] s, TipForm tip) {
    double top = tip == TipForm.NOT_MEASURED ? s[0][s[0].length - 1] : s[2][0];
    return StemCurve.through(s[0], s[1], ButtForm.CYLINDER, 0, tip, top);
  }
}
