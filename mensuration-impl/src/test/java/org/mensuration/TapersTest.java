package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.CUBIC_METRE;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.stem.StemReading;
import org.mensuration.stem.TaperCurve;
import org.mensuration.stem.TaperFit;

class TapersTest {
  private static final Quantity<Length> DBH = centimetres(20);
  private static final Quantity<Length> HEIGHT = metres(12);
  private static final TaperCurve OAK =
      Tapers.segmented(DBH, HEIGHT, -3.3047, 1.5770, -1.2926, 26.2685, 0.6594, 0.0919);

  private static double d(TaperCurve curve, double metres) {
    return in(curve.diameterAt(metres(metres)), CENTIMETRE);
  }

  private static double[] heights(TaperCurve curve, double cm) {
    return curve.heightsOf(centimetres(cm)).stream().mapToDouble(h -> in(h, METRE)).toArray();
  }

  private static double volume(TaperCurve curve, double from, double to) {
    return in(curve.volume(metres(from), metres(to)), CUBIC_METRE);
  }

  /** The integral by many thin discs. */
  private static double discs(TaperCurve curve, double from, double to) {
    double sum = 0;
    int n = 20_000;
    for (int i = 0; i < n; i++) {
      double d = d(curve, from + (to - from) * (i + 0.5) / n);
      sum += Math.PI * d * d / 40000 * (to - from) / n;
    }
    return sum;
  }

  @Test
  void everyCurveAgreesWithItsFormula() {
    TaperCurve power = Tapers.power(DBH, metres(1.3), HEIGHT, 0.75);
    assertThat(d(power, 1.3)).isEqualTo(20);
    assertThat(d(power, 6)).isEqualTo(power.formula().apply(20, 1.3, 12, 6, 0.75));
    assertThat(power.coefficients()).containsExactly(0.75);
    assertThat(in(power.height(), METRE)).isEqualTo(12);
    TaperCurve quadratic = Tapers.quadratic(DBH, HEIGHT, 1.2, -1.5, 0.3);
    assertThat(d(quadratic, 6)).isEqualTo(quadratic.formula().apply(20, 12, 6, 1.2, -1.5, 0.3));
    TaperCurve cubic = Tapers.cubic(DBH, HEIGHT, 1.2, -1, 0.5, -0.7);
    assertThat(d(cubic, 6)).isEqualTo(cubic.formula().apply(20, 12, 6, 1.2, -1, 0.5, -0.7));
    assertThat(OAK.formula().id()).isEqualTo("stem/taper-segmented");
    assertThat(OAK.coefficients()).hasSize(6);
    for (TaperCurve curve : List.of(power, quadratic, cubic, OAK)) {
      double whole = in(curve.volume(), CUBIC_METRE);
      assertThat(whole).isCloseTo(discs(curve, 0, 12), within(1e-6 * whole));
      assertThat(volume(curve, 1, 9)).isCloseTo(discs(curve, 1, 9), within(1e-6 * whole));
      assertThat(volume(curve, 0, 5) + volume(curve, 5, 12)).isCloseTo(whole, within(1e-14));
      for (double cm : new double[] {3, 9, 14.5, 19}) {
        assertThat(heights(curve, cm)).hasSize(1);
        assertThat(d(curve, heights(curve, cm)[0])).isCloseTo(cm, within(1e-11));
      }
      double half = in(curve.heightOfPart(metres(1), metres(9), 0.5), METRE);
      assertThat(volume(curve, 1, half)).isCloseTo(volume(curve, half, 9), within(1e-13));
      assertThat(in(curve.heightOfPart(metres(1), metres(9), 0), METRE)).isEqualTo(1);
      assertThat(in(curve.heightOfPart(metres(1), metres(9), 1), METRE)).isEqualTo(9);
      assertThatThrownBy(() -> curve.heightOfPart(metres(1), metres(9), 1.5))
          .hasMessageContaining("part of the volume: 1.5");
      assertThatThrownBy(() -> curve.diameterAt(metres(12.5)))
          .isInstanceOf(OutOfDomainException.class);
      assertThatThrownBy(() -> curve.volume(metres(5), metres(4)))
          .isInstanceOf(OutOfDomainException.class);
      assertThatThrownBy(() -> curve.heightsOf(centimetres(-1)))
          .hasMessageContaining("diameter: -1.0 cm");
    }
    assertThat(heights(OAK, 0)).containsExactly(12);
    assertThat(heights(OAK, 50)).isEmpty();
  }

  @Test
  void aCurveThatRisesAndFallsHasTwoHeights() {
    // (d/D)² = 0.25 + 3 z - 3.25 z² turns at 6/13 of the height
    TaperCurve barrel = Tapers.quadratic(DBH, metres(13), 0.25, 3, -3.25);
    double[] found = heights(barrel, 15);
    assertThat(found).hasSize(2).isSorted();
    assertThat((found[0] + found[1]) / 2).isCloseTo(6, within(1e-12));
    assertThat(d(barrel, found[1])).isCloseTo(15, within(1e-12));
    assertThat(heights(barrel, 10)[0]).isZero();
    // d/D = 1 - z (z - 0.5)² · 4 falls, rises and falls
    TaperCurve wavy = Tapers.cubic(DBH, metres(10), 1, -1, 4, -4);
    assertThat(heights(wavy, 19)).hasSize(3).isSorted();
    for (double h : heights(wavy, 19)) {
      assertThat(d(wavy, h)).isCloseTo(19, within(1e-12));
    }
    TaperCurve parabola = Tapers.cubic(DBH, metres(10), 0.5, 2, -2.5, 0);
    assertThat(heights(parabola, 14)).hasSize(2);
    TaperCurve line = Tapers.cubic(DBH, metres(10), 1, -1, 0, 0);
    assertThat(heights(line, 5)[0]).isCloseTo(7.5, within(1e-12));
  }

  @Test
  void aSegmentedCurveMayTurnInEverySegment() {
    TaperCurve curve = Tapers.segmented(DBH, metres(10), 1, -1.5, -0.4, 60, 0.7, 0.2);
    for (double cm = 1; cm < 40; cm += 0.5) {
      double[] found = heights(curve, cm);
      int crossings = 0;
      for (int i = 0; i < 5000; i++) {
        boolean low = d(curve, i / 500.0) < cm;
        boolean high = d(curve, (i + 1) / 500.0) < cm;
        crossings += low == high ? 0 : 1;
      }
      assertThat(found).as(cm + " cm").hasSize(crossings);
    }
  }

  @Test
  void aCurveWithoutDiameterSomewhereIsRefused() {
    assertThatThrownBy(() -> Tapers.quadratic(DBH, HEIGHT, 1, -2.5, 1.2))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("stem/taper-quadratic");
    assertThatThrownBy(() -> Tapers.cubic(DBH, HEIGHT, 1, -4, 4, -0.9))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("cm at")
        .hasMessageContaining("from ground to tip");
    assertThatThrownBy(() -> Tapers.power(DBH, metres(13), HEIGHT, 1))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> Tapers.segmented(DBH, HEIGHT, -3, 1, -1, 20, 0.1, 0.6))
        .isInstanceOf(OutOfDomainException.class);
  }

  private static List<StemReading> readings(TaperCurve curve, int n, double noise) {
    Random random = new Random(7);
    List<StemReading> readings = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double h = in(curve.height(), METRE) * (i + 0.3) / n;
      readings.add(
          StemReading.of(
              metres(h), centimetres(d(curve, h) * (1 + noise * random.nextGaussian()))));
    }
    return readings;
  }

  @Test
  void exactReadingsGiveTheCurveBack() {
    TaperCurve power = Tapers.power(DBH, metres(1.3), HEIGHT, 0.8);
    TaperFit p = Tapers.fitPower(readings(power, 5, 0), DBH, metres(1.3), HEIGHT);
    assertThat(p.estimates().get(0)).isCloseTo(0.8, within(1e-9));
    assertThat(p.fitted()).containsExactly("exponent");
    assertThat(p.degreesOfFreedom()).isEqualTo(4);
    TaperCurve quadratic = Tapers.quadratic(DBH, HEIGHT, 1.3, -1.8, 0.5);
    TaperFit q = Tapers.fitQuadratic(readings(quadratic, 5, 0), DBH, HEIGHT);
    assertThat(q.curve().coefficients().get(0)).isCloseTo(1.3, within(1e-12));
    assertThat(q.curve().coefficients().get(1)).isCloseTo(-1.8, within(1e-12));
    assertThat(q.curve().coefficients().get(2)).isCloseTo(0.5, within(1e-12));
    assertThat(d(q.curve(), 12)).isZero();
    TaperCurve cubic = Tapers.cubic(DBH, HEIGHT, 1.2, -1, 0.5, -0.7);
    TaperFit c = Tapers.fitCubic(readings(cubic, 6, 0), DBH, HEIGHT);
    assertThat(c.curve().coefficients().get(3)).isCloseTo(-0.7, within(1e-11));
    assertThat(d(c.curve(), 12)).isZero();
    TaperFit s = Tapers.fitSegmented(readings(OAK, 30, 0), DBH, HEIGHT, 0.6594, 0.0919);
    for (int i = 0; i < 4; i++) {
      assertThat(s.estimates().get(i)).isCloseTo(OAK.coefficients().get(i), within(1e-8));
    }
    TaperFit joints = Tapers.fitSegmentedWithJoints(readings(OAK, 60, 0), DBH, HEIGHT, 0.7, 0.1);
    for (int i = 0; i < 6; i++) {
      assertThat(joints.estimates().get(i)).isCloseTo(OAK.coefficients().get(i), within(1e-8));
    }
    assertThat(joints.fitted()).containsExactly("b1", "b2", "b3", "b4", "a1", "a2");
  }

  @Test
  void errorsOfCoefficientsAreThoseOfLeastSquares() {
    // One coefficient in closed form: with b2 known to be zero a straight line through the tip.
    List<StemReading> readings = readings(Tapers.power(DBH, metres(1.3), HEIGHT, 0.8), 9, 0.02);
    TaperFit fit = Tapers.fitQuadratic(readings, DBH, HEIGHT);
    double s11 = 0;
    double s12 = 0;
    double s22 = 0;
    double t1 = 0;
    double t2 = 0;
    for (StemReading reading : readings) {
      double z = in(reading.height(), METRE) / 12;
      double y = Math.pow(in(reading.diameter(), CENTIMETRE) / 20, 2);
      s11 += (z - 1) * (z - 1);
      s12 += (z - 1) * (z * z - 1);
      s22 += (z * z - 1) * (z * z - 1);
      t1 += (z - 1) * y;
      t2 += (z * z - 1) * y;
    }
    double det = s11 * s22 - s12 * s12;
    double b1 = (s22 * t1 - s12 * t2) / det;
    double b2 = (s11 * t2 - s12 * t1) / det;
    double residual = 0;
    for (StemReading reading : readings) {
      double z = in(reading.height(), METRE) / 12;
      double y = Math.pow(in(reading.diameter(), CENTIMETRE) / 20, 2);
      residual += Math.pow(y - b1 * (z - 1) - b2 * (z * z - 1), 2);
    }
    double variance = residual / 7;
    assertThat(fit.estimates().get(0)).isCloseTo(b1, within(1e-11));
    assertThat(fit.estimates().get(1)).isCloseTo(b2, within(1e-11));
    assertThat(fit.degreesOfFreedom()).isEqualTo(7);
    assertThat(fit.residualStandardError()).isCloseTo(Math.sqrt(variance), within(1e-12));
    assertThat(fit.covariance().get(0).get(0)).isCloseTo(variance * s22 / det, within(1e-10));
    assertThat(fit.covariance().get(0).get(1)).isCloseTo(-variance * s12 / det, within(1e-10));
    assertThat(fit.standardError("b2")).isCloseTo(Math.sqrt(variance * s11 / det), within(1e-10));
    assertThat(fit.variable()).contains("(d/D)²");
    assertThatThrownBy(() -> fit.standardError("b0")).hasMessageContaining("b0 was not fitted");
  }

  @Test
  void theErrorOfAnIteratedFitIsThatOfItsDerivative() {
    List<StemReading> readings = readings(Tapers.power(DBH, metres(1.3), HEIGHT, 0.8), 12, 0.02);
    TaperFit fit = Tapers.fitPower(readings, DBH, metres(1.3), HEIGHT);
    double p = fit.estimates().get(0);
    double information = 0;
    double residual = 0;
    double slope = 0;
    for (StemReading reading : readings) {
      double part = (12 - in(reading.height(), METRE)) / 10.7;
      double value = Math.pow(part, p);
      double derivative = value * Math.log(part);
      double off = in(reading.diameter(), CENTIMETRE) / 20 - value;
      information += derivative * derivative;
      slope += derivative * off;
      residual += off * off;
    }
    assertThat(slope).as("the residual sum is flat there").isCloseTo(0, within(1e-7));
    assertThat(fit.standardError("exponent"))
        .isCloseTo(Math.sqrt(residual / 11 / information), within(1e-8));
  }

  @Test
  void tooFewOrUselessReadingsAreRefused() {
    List<StemReading> two = readings(OAK, 2, 0);
    assertThatThrownBy(() -> Tapers.fitQuadratic(two, DBH, HEIGHT))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("readings at 2 heights")
        .hasMessageContaining("at least 3");
    assertThatThrownBy(() -> Tapers.fitCubic(readings(OAK, 3, 0), DBH, HEIGHT))
        .hasMessageContaining("at least 4");
    assertThatThrownBy(() -> Tapers.fitSegmented(readings(OAK, 4, 0), DBH, HEIGHT, 0.66, 0.09))
        .hasMessageContaining("at least 5");
    assertThatThrownBy(
            () -> Tapers.fitSegmentedWithJoints(readings(OAK, 6, 0), DBH, HEIGHT, 0.66, 0.09))
        .hasMessageContaining("at least 7");
    assertThatThrownBy(() -> Tapers.fitPower(readings(OAK, 1, 0), DBH, metres(1.3), HEIGHT))
        .hasMessageContaining("at least 2");
    assertThatThrownBy(() -> Tapers.fitPower(two, DBH, metres(12), HEIGHT))
        .hasMessageContaining("reference height 12.0 m");
    assertThatThrownBy(() -> Tapers.fitSegmented(two, DBH, HEIGHT, 0.09, 0.66))
        .hasMessageContaining("0 < lower < upper < 1");
    // No reading below the lower joint, so nothing tells its coefficient.
    List<StemReading> high = new ArrayList<>(readings(OAK, 30, 0)).subList(10, 30);
    assertThatThrownBy(() -> Tapers.fitSegmented(high, DBH, HEIGHT, 0.66, 0.09))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("readings in every part of the stem");
    StemReading above = StemReading.of(metres(12.1), centimetres(1));
    assertThatThrownBy(() -> Tapers.fitQuadratic(List.of(above), DBH, HEIGHT))
        .hasMessageContaining("reading at 12.1 m");
    assertThatThrownBy(() -> Tapers.fitQuadratic(two, centimetres(0), HEIGHT))
        .hasMessageContaining("reference diameter: 0.0 cm");
    assertThatThrownBy(() -> Tapers.fitQuadratic(two, DBH, metres(0)))
        .hasMessageContaining("height of the tip: 0.0 m");
  }

  @Test
  void aFitThatDoesNotConvergeSaysSoAndGivesNoNumber() {
    // Diameters that grow upward: the best exponent lies below every curve.
    List<StemReading> growing = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      growing.add(StemReading.of(metres(2 + 1.5 * i), centimetres(20 + 15 * i)));
    }
    assertThatThrownBy(() -> Tapers.fitPower(growing, DBH, metres(1.3), HEIGHT))
        .isInstanceOf(ArithmeticException.class)
        .hasMessageContaining("did not converge")
        .hasMessageContaining("no coefficients");
  }
}
