package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.Measures.in;

import java.util.Random;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.mensuration.diameter.SectionFit;
import org.mensuration.diameter.SectionPoints;
import org.mensuration.units.ForestUnits;

class CrossSectionsTest {
  @Test
  void aPerfectCircleIsFoundFromAnyArc() {
    for (double arc : new double[] {90, 150, 300}) {
      SectionFit fit = CrossSections.circle(oval(60, arc, 0.25, 0.25, 0, 0, 0));
      near(fit.diameter(), 0.5, 1e-9);
      near(fit.centreX(), 3, 1e-9);
      near(fit.centreY(), -2, 1e-9);
      near(fit.standardError(), 0, 1e-9);
      assertThat(in(fit.arc(), ForestUnits.DEGREE)).isCloseTo(arc * 59 / 60, within(0.01));
      assertThat(fit.axes()).isEmpty();
      assertThat(fit.warnings()).isEmpty();
    }
  }

  @Test
  void aShortArcIsWarnedOf() {
    SectionFit fit = CrossSections.circle(oval(60, 60, 0.25, 0.25, 0, 0, 0));
    assertThat(fit.warnings()).hasSize(1);
    assertThat(fit.warnings().get(0)).contains("an arc of 59 degrees; the fit was tested from 90");
  }

  @Test
  void anEllipseIsFoundWithItsAxes() {
    for (double turn : new double[] {0, 25, 90, 140}) {
      SectionPoints points = oval(80, 360, 0.3, 0.24, turn, 0, 0);
      for (SectionFit fit :
          new SectionFit[] {
            CrossSections.ellipse(points), CrossSections.ellipseThroughAll(points)
          }) {
        SectionFit.Axes axes = fit.axes().orElseThrow();
        near(axes.longAxis(), 0.6, 1e-8);
        near(axes.shortAxis(), 0.48, 1e-8);
        double away = Math.abs(in(axes.direction(), ForestUnits.DEGREE) - turn);
        assertThat(Math.min(away, 180 - away)).isLessThan(1e-5);
        near(fit.diameter(), 2 * Math.sqrt(0.3 * 0.24), 1e-8);
        near(fit.centreX(), 3, 1e-8);
      }
    }
  }

  @Test
  void aNoisyEllipseLiesWithinItsErrors() {
    int within = 0;
    double sum = 0;
    for (int seed = 0; seed < 30; seed++) {
      SectionFit fit = CrossSections.ellipse(oval(160, 360, 0.3, 0.26, 40, 0.004, seed));
      double miss = in(fit.diameter(), ForestUnits.METRE) - 2 * Math.sqrt(0.3 * 0.26);
      double error = in(fit.standardError(), ForestUnits.METRE);
      within += Math.abs(miss) <= 2 * error ? 1 : 0;
      sum += miss / error;
      assertThat(in(fit.deviation(), ForestUnits.METRE)).isBetween(0.003, 0.005);
    }
    assertThat(within).isGreaterThanOrEqualTo(26);
    assertThat(Math.abs(sum / 30)).isLessThan(0.6);
  }

  @Test
  void strayPointsAreLeftOutAndNamed() {
    SectionPoints clean = oval(80, 200, 0.2, 0.2, 0, 0.003, 3);
    double[] x = clean.x();
    double[] y = clean.y();
    for (int i = 10; i < 20; i++) {
      x[i] = 3.3 + 0.001 * i;
      y[i] = -1.7;
    }
    // Alone on the far side, though on the circle.
    x[40] = 3 + 0.2 * Math.cos(Math.toRadians(280));
    y[40] = -2 + 0.2 * Math.sin(Math.toRadians(280));
    SectionFit fit = CrossSections.circle(SectionPoints.of(x, y, ForestUnits.METRE));
    assertThat(fit.strays()).contains(10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 40);
    assertThat(fit.strays().size()).isLessThan(15);
    assertThat(fit.points() + fit.strays().size()).isEqualTo(80);
    double error = in(fit.standardError(), ForestUnits.METRE);
    near(fit.diameter(), 0.4, 3 * error);
    assertThat(error).isLessThan(0.003);
    SectionPoints spoilt = SectionPoints.of(x, y, ForestUnits.METRE);
    assertThatThrownBy(() -> CrossSections.circleThroughAll(spoilt))
        .isInstanceOf(ArithmeticException.class)
        .hasMessageContaining("they scatter by");
    SectionFit all = CrossSections.circleThroughAll(clean);
    assertThat(all.strays()).isEmpty();
    assertThat(all.points()).isEqualTo(80);
  }

  @Test
  void theOrderAndTheUnitOfThePointsDoNotMatter() {
    Slices.Slice slice = Slices.draw(new Random(11));
    double[] x = slice.points().x();
    double[] y = slice.points().y();
    int last = x.length - 1;
    double[] backX = IntStream.rangeClosed(0, last).mapToDouble(i -> 100 * x[last - i]).toArray();
    double[] backY = IntStream.rangeClosed(0, last).mapToDouble(i -> 100 * y[last - i]).toArray();
    SectionFit fit = CrossSections.circle(slice.points());
    SectionFit back = CrossSections.circle(SectionPoints.of(backX, backY, ForestUnits.CENTIMETRE));
    near(back.diameter(), in(fit.diameter(), ForestUnits.METRE), 1e-9);
    assertThat(back.points()).isEqualTo(fit.points());
    assertThat(CrossSections.circle(slice.points()).diameter()).isEqualTo(fit.diameter());
  }

  @Test
  void theSixPointsOfTheLeastSquaresExample() {
    // Data all around the circle: published geometric fit; the diameter here is freed from bias.
    SectionFit fit =
        CrossSections.circleThroughAll(
            SectionPoints.of(
                new double[] {9, 35, -13, 10, 23, 0},
                new double[] {34, 10, 6, -14, 27, -10},
                ForestUnits.CENTIMETRE));
    assertThat(in(fit.centreX(), ForestUnits.CENTIMETRE)).isCloseTo(10.50009, within(5e-6));
    assertThat(in(fit.centreY(), ForestUnits.CENTIMETRE)).isCloseTo(9.65995, within(5e-6));
    double deviation = in(fit.deviation(), ForestUnits.CENTIMETRE);
    assertThat(3 * deviation * deviation).isCloseTo(7.711852, within(5e-7));
    assertThat(in(fit.diameter(), ForestUnits.CENTIMETRE))
        .isBetween(2 * 23.33353 - 0.2, 2 * 23.33353);
  }

  @Test
  void pointsThatDetermineNothingAreRefused() {
    double[] line = {0, 1, 2, 3, 4, 5, 6, 7};
    assertThatThrownBy(() -> CrossSections.circle(SectionPoints.of(line, line, ForestUnits.METRE)))
        .isInstanceOf(ArithmeticException.class)
        .hasMessage("circle: the 8 points lie on a line or in one place");
    assertThatThrownBy(
            () ->
                CrossSections.ellipse(
                    SectionPoints.of(new double[8], new double[8], ForestUnits.METRE)))
        .hasMessageContaining("ellipse: the 8 points lie on a line or in one place");
    assertThatThrownBy(
            () ->
                CrossSections.circle(
                    SectionPoints.of(
                        new double[] {0, 1, 0}, new double[] {0, 0, 1}, ForestUnits.METRE)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("circle: 3 points, at least 4 are needed for a fit with its error");
    assertThatThrownBy(() -> CrossSections.ellipse(oval(5, 300, 0.2, 0.2, 0, 0, 0)))
        .hasMessageContaining("at least 6 are needed");
    // A nearly straight row of noisy points.
    assertThatThrownBy(() -> CrossSections.circle(oval(60, 3, 0.25, 0.25, 0, 0.005, 1)))
        .isInstanceOf(ArithmeticException.class)
        .hasMessageMatching("circle: the (points do not determine it|fit to 60 points did not).*");
    assertThatThrownBy(
            () -> SectionPoints.of(new double[] {1}, new double[] {1, 2}, ForestUnits.METRE))
        .hasMessage("section: 1 abscissas and 2 ordinates");
    assertThatThrownBy(
            () -> SectionPoints.of(new double[] {Double.NaN}, new double[1], ForestUnits.METRE))
        .hasMessageContaining("point 0 is (NaN, 0.0)");
  }

  /** Points of an ellipse about (3, -2), evenly by their parameter. */
  private static SectionPoints oval(
      int count, double arc, double a, double b, double turn, double noise, long seed) {
    Random random = new Random(seed);
    double[] x = new double[count];
    double[] y = new double[count];
    double cos = Math.cos(Math.toRadians(turn));
    double sin = Math.sin(Math.toRadians(turn));
    for (int i = 0; i < count; i++) {
      double t = Math.toRadians(arc * i / count);
      double u = a * Math.cos(t) + noise * random.nextGaussian();
      double v = b * Math.sin(t) + noise * random.nextGaussian();
      x[i] = 3 + cos * u - sin * v;
      y[i] = -2 + sin * u + cos * v;
    }
    return SectionPoints.of(x, y, ForestUnits.METRE);
  }

  private static void near(Quantity<Length> found, double metres, double tolerance) {
    assertThat(in(found, ForestUnits.METRE)).isCloseTo(metres, within(tolerance));
  }
}
