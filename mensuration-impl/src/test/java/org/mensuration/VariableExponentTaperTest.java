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
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.stem.StemReading;
import org.mensuration.stem.TaperCurve;
import org.mensuration.stem.TaperFit;

class VariableExponentTaperTest {
  private static final TaperCurve OAK =
      Tapers.variableExponent(
          centimetres(20),
          metres(12),
          0.25,
          1.0744,
          0.9756,
          0.9958,
          1.0632,
          -0.2155,
          1.9649,
          -0.9399,
          0.1848);

  /** a0 alone sets the size: 18 cm at a quarter of 16 m. */
  private static TaperCurve alone(double... b) {
    return Tapers.variableExponent(
        centimetres(20), metres(16), 0.25, 18, 0, 1, b[0], b[1], b[2], b[3], 0);
  }

  private static double d(TaperCurve curve, double metres) {
    return in(curve.diameterAt(metres(metres)), CENTIMETRE);
  }

  private static double volume(TaperCurve curve, double from, double to) {
    return in(curve.volume(metres(from), metres(to)), CUBIC_METRE);
  }

  private static double discs(TaperCurve curve, double from, double to) {
    double sum = 0;
    int n = 40_000;
    for (int i = 0; i < n; i++) {
      double d = d(curve, from + (to - from) * (i + 0.5) / n);
      sum += Math.PI * d * d / 40000 * (to - from) / n;
    }
    return sum;
  }

  @Test
  void agreesWithItsFormulaAndPassesThroughTheInflectionAndTheTip() {
    assertThat(OAK.formula().id()).isEqualTo("stem/taper-variable-exponent");
    assertThat(OAK.coefficients())
        .containsExactly(0.25, 1.0744, 0.9756, 0.9958, 1.0632, -0.2155, 1.9649, -0.9399, 0.1848);
    assertThat(d(OAK, 5))
        .isEqualTo(
            OAK.formula()
                .apply(
                    20, 12, 5, 0.25, 1.0744, 0.9756, 0.9958, 1.0632, -0.2155, 1.9649, -0.9399,
                    0.1848));
    double atInflection = 1.0744 * Math.pow(20, 0.9756) * Math.pow(0.9958, 20);
    assertThat(d(OAK, 3)).isCloseTo(atInflection, within(1e-12));
    assertThat(d(OAK, 12)).isZero();
    assertThat(d(OAK, 0)).isGreaterThan(d(OAK, 1.3));
  }

  @Test
  void itsVolumeIsTheIntegralOfItsArea() {
    double whole = in(OAK.volume(), CUBIC_METRE);
    assertThat(whole).isCloseTo(discs(OAK, 0, 12), within(1e-7 * whole));
    assertThat(volume(OAK, 0, 5) + volume(OAK, 5, 12)).isCloseTo(whole, within(1e-12));
    assertThat(volume(OAK, 4, 4)).isZero();
    assertThat(volume(OAK, 2, 2.001)).isCloseTo(discs(OAK, 2, 2.001), within(1e-12));
    double half = in(OAK.heightOfPart(metres(1), metres(9), 0.5), METRE);
    assertThat(volume(OAK, 1, half)).isCloseTo(volume(OAK, half, 9), within(1e-11));
    assertThatThrownBy(() -> OAK.volume(metres(5), metres(4)))
        .isInstanceOf(OutOfDomainException.class);
  }

  @Test
  void everyHeightOfADiameterIsFoundOnACurveThatBulges() {
    // Falls from the ground, swells above it, and falls to the tip.
    TaperCurve bulging = alone(4.6, -0.16, -0.3, -0.72);
    List<Double> turns = new ArrayList<>();
    for (double h = 0.02; h < 15.98; h += 0.02) {
      double here = d(bulging, h);
      if ((here - d(bulging, h - 0.02)) * (here - d(bulging, h + 0.02)) > 0) {
        turns.add(h);
      }
    }
    assertThat(turns).hasSize(2);
    double low = d(bulging, turns.get(0));
    double high = d(bulging, turns.get(1));
    double between = (low + high) / 2;
    List<Double> found = new ArrayList<>();
    bulging.heightsOf(centimetres(between)).forEach(h -> found.add(in(h, METRE)));
    assertThat(found).hasSize(3).isSorted();
    found.forEach(h -> assertThat(d(bulging, h)).isCloseTo(between, within(1e-9)));
    assertThat(bulging.heightsOf(centimetres(1.01 * high))).hasSize(1);
    assertThat(bulging.heightsOf(centimetres(0.99 * low))).hasSize(1);
    assertThat(bulging.heightsOf(centimetres(1.01 * d(bulging, 0)))).isEmpty();
  }

  @Test
  void aFitFindsTheCurveThatMadeTheReadings() {
    TaperCurve curve = alone(1.1, -0.2, 1.9, -0.95);
    List<StemReading> readings = new ArrayList<>();
    for (double h = 0.25; h < 16; h += 0.75) {
      readings.add(StemReading.of(metres(h), curve.diameterAt(metres(h))));
    }
    TaperFit exact = Tapers.fitVariableExponent(readings, centimetres(20), metres(16), 0.25);
    assertThat(exact.fitted()).containsExactly("ln a0", "b1", "b2", "b3", "b4");
    double[] wanted = {Math.log(18), 1.1, -0.2, 1.9, -0.95};
    for (int i = 0; i < wanted.length; i++) {
      assertThat(exact.estimates().get(i)).isCloseTo(wanted[i], within(1e-8));
    }
    assertThat(d(exact.curve(), 7.3)).isCloseTo(d(curve, 7.3), within(1e-9));
    assertThat(exact.residualStandardError()).isLessThan(1e-9);
    Random random = new Random(5);
    List<StemReading> noisy = new ArrayList<>();
    readings.forEach(
        r ->
            noisy.add(
                StemReading.of(
                    r.height(),
                    centimetres(
                        in(r.diameter(), CENTIMETRE) * Math.exp(0.01 * random.nextGaussian())))));
    TaperFit fit = Tapers.fitVariableExponent(noisy, centimetres(20), metres(16), 0.25);
    assertThat(fit.residualStandardError()).isBetween(0.006, 0.014);
    for (int i = 0; i < wanted.length; i++) {
      double error = Math.sqrt(fit.covariance().get(i).get(i));
      assertThat(fit.estimates().get(i)).isCloseTo(wanted[i], within(3 * error));
    }
  }

  @Test
  void whatMakesNoCurveIsRefused() {
    assertThatThrownBy(
            () -> Tapers.variableExponent(centimetres(20), metres(12), 0.25, 1, 1, 1, 1, 2))
        .hasMessageContaining("2 coefficients of the exponent, allowed 5");
    // An exponent below zero at the tip: the diameter grows beyond all bounds there.
    assertThatThrownBy(() -> alone(-3, 0, 0, 0)).isInstanceOf(OutOfDomainException.class);
    List<StemReading> few =
        List.of(
            StemReading.of(metres(1), centimetres(20)), StemReading.of(metres(5), centimetres(15)));
    assertThatThrownBy(() -> Tapers.fitVariableExponent(few, centimetres(20), metres(16), 0.25))
        .hasMessageContaining("readings at 2 heights")
        .hasMessageContaining("at least 6");
    assertThatThrownBy(() -> Tapers.fitVariableExponent(few, centimetres(20), metres(16), 1))
        .hasMessageContaining("inflection at 1.0 of the height, allowed (0, 1)");
    assertThatThrownBy(() -> Tapers.fitVariableExponent(few, centimetres(20), metres(16), 0))
        .hasMessageContaining("inflection at 0.0");
    List<StemReading> tip = List.of(StemReading.of(metres(16), centimetres(0)));
    assertThatThrownBy(() -> Tapers.fitVariableExponent(tip, centimetres(20), metres(16), 0.25))
        .hasMessageContaining("0.0 cm at 16.0 m")
        .hasMessageContaining("below the tip");
  }
}
