package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.CUBIC_FOOT;
import static org.mensuration.units.ForestUnits.CUBIC_METRE;
import static org.mensuration.units.ForestUnits.FOOT;
import static org.mensuration.units.ForestUnits.SQUARE_FOOT;
import static org.mensuration.units.ForestUnits.SQUARE_METRE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.cubicMetres;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.stem.Butt;
import org.mensuration.stem.StemProfile;
import org.mensuration.stem.StemReading;
import org.mensuration.stem.TaperCurve;
import org.mensuration.stem.Tip;

/** Stem formulas behind the front door, and figures worked out by hand. */
class StemFormulaCallsTest {
  private static final List<Quantity<Length>> LENGTHS =
      List.of(feet(24), feet(20), feet(28), feet(16), feet(32), feet(36), feet(40));

  private static double apply(String id, double... inputs) {
    return Catalogues.standard().formula(id).apply(inputs);
  }

  private static StemReading at(double metres, double cm) {
    return StemReading.of(metres(metres), centimetres(cm));
  }

  @Test
  void surfaceAndSmalianFromAccumulatedHeights() {
    assertThat(in(StemVolumes.surfaceByHeightAccumulation(LENGTHS, inches(2)), SQUARE_FOOT))
        .isCloseTo(403.171057, within(5e-7));
    double smalian = 0;
    for (int j = 1; j <= 7; j++) {
      double length = in(LENGTHS.get(j - 1), FOOT);
      smalian += Math.PI / 1152 * (4.0 * j * j + 4.0 * (j - 1) * (j - 1)) * length;
    }
    assertThat(in(StemVolumes.heightAccumulationBySmalian(LENGTHS, inches(2)), CUBIC_FOOT))
        .isCloseTo(smalian, within(1e-11));
    assertThat(in(StemVolumes.heightAccumulation(List.of(feet(0), feet(6)), inches(2)), CUBIC_FOOT))
        .isCloseTo(Math.PI / 1728 * (16 + 8 + 4) * 6, within(1e-12));
    Quantity<Length> endless = feet(1e308).multiply(10);
    assertThatThrownBy(() -> StemVolumes.heightAccumulation(List.of(feet(1), endless), inches(2)))
        .hasMessageContaining("length 2 from the tip");
  }

  @Test
  void callsAgreeWithTheirFormulas() {
    assertThat(in(StemVolumes.powerSolid(centimetres(40), metres(20), 3), CUBIC_METRE))
        .isEqualTo(apply("stem/power-solid", 40, 20, 3));
    assertThat(
            in(
                StemVolumes.presslerSwollen(centimetres(40), metres(17.4), metres(1.4), 1),
                CUBIC_METRE))
        .isEqualTo(apply("stem/pressler-swollen", 40, 17.4, 1.4, 1));
    assertThat(in(StemVolumes.fromTip(cubicMetres(0.02), 0.6, 0.55), CUBIC_METRE))
        .isEqualTo(apply("stem/volume-from-tip", 0.02, 0.6, 0.55))
        .isCloseTo(0.24, within(1e-14));
    assertThat(in(StemVolumes.quick(centimetres(30), metres(28), metres(25), 4), CUBIC_METRE))
        .isEqualTo(apply("stem/quick-volume-height", 30, 28, 25, 4))
        .isCloseTo(0.9 * 1.12, within(1e-14));
    assertThat(in(StemVolumes.bySpline(2, 0.1, 0.4, -0.002, 0.2, 0.9, 9.3), CUBIC_METRE))
        .isEqualTo(apply("stem/spline-volume", 2, 0.1, 0.4, -0.002, 0.2, 0.9, 9.3));
    assertThat(
            in(
                StemVolumes.betweenEntries(
                    metres(23), cubicMetres(0.508), metres(29), cubicMetres(0.661), metres(26)),
                CUBIC_METRE))
        .isCloseTo(0.5845, within(1e-12));
    assertThat(StemForms.formFactorOfPower(3)).isEqualTo(0.25);
    assertThat(StemForms.guidePoint(2)).isCloseTo(0.5, within(1e-15));
    assertThat(in(StemForms.formClassHeight(feet(1), feet(16), feet(0.3)), FOOT)).isEqualTo(17.3);
    assertThat(in(StemForms.sectionFromTip(cubicMetres(0.02), 0.6, 0.55, metres(20)), SQUARE_METRE))
        .isEqualTo(apply("stem/section-from-tip", 0.02, 0.6, 0.55, 20));
    assertThat(StemSamples.threePCeiling(12_000, 20)).isEqualTo(600);
    assertThat(StemSamples.threePSample(12_000, 600)).isEqualTo(20);
    assertThatThrownBy(() -> StemVolumes.fromTip(cubicMetres(0.02), 0.55, 0.55))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("f_s < f");
  }

  @Test
  void anExtendedButtGoesOnAsTheTwoLowestReadingsDo() {
    // Squares of 1600 at 1.3 m and 1369 at 2.8 m: 154 a metre.
    List<StemReading> readings = List.of(at(1.3, 40), at(2.8, 37), at(9, 25));
    StemProfile stem =
        Stems.profile(
            readings, BarkBasis.OVER, Butt.extended().from(metres(0.3)), Tip.cone(metres(20)));
    assertThat(in(stem.diameterAt(metres(0.3)), CENTIMETRE))
        .isCloseTo(Math.sqrt(1754), within(1e-12));
    assertThat(in(stem.diameterAt(metres(0.8)), CENTIMETRE))
        .isCloseTo(Math.sqrt(1677), within(1e-12));
    assertThat(in(stem.volume(metres(0.3), metres(1.3)), CUBIC_METRE))
        .isCloseTo(Math.PI / 40_000 * 1677, within(1e-14));
    // A stem that widens upward: the extension ends in nothing just at the base, or before it.
    List<StemReading> swollen = List.of(at(1, 20), at(2, 28.284271247461902), at(9, 12));
    StemProfile pointed =
        Stems.profile(
            swollen, BarkBasis.OVER, Butt.extended().from(metres(0.001)), Tip.cone(metres(20)));
    assertThat(in(pointed.diameterAt(metres(0.001)), CENTIMETRE)).isBetween(0.0, 1.0);
    assertThatThrownBy(
            () ->
                Stems.profile(
                    List.of(at(1, 20), at(2, 30), at(9, 12)),
                    BarkBasis.OVER,
                    Butt.extended().from(metres(0)),
                    Tip.cone(metres(20))))
        .hasMessageContaining("has no area at the base, 0.0 m; take a cylinder");
  }

  /** 4.2 m three times over is an ulp above 12.6 m. */
  @Test
  void logsMayAddUpToTheTopOfTheStem() {
    StemProfile stem = Stems.profile(List.of(at(0, 30), at(6, 20)), metres(12.6));
    List<Quantity<Length>> thirds = List.of(metres(4.2), metres(4.2), metres(4.2));
    assertThat(4.2 + 4.2 + 4.2).isGreaterThan(12.6);
    assertThat(stem.logs(metres(0), thirds)).hasSize(3);
    assertThat(in(stem.logs(metres(0), thirds).get(2).small().orElseThrow(), CENTIMETRE)).isZero();
    assertThatThrownBy(() -> stem.logs(metres(0.01), thirds))
        .hasMessageContaining("upper end of log 3: 12.6")
        .hasMessageContaining("the stem ends at 12.6 m");
  }

  /** Every curve's heights beside a scan in small steps. */
  @Test
  void everyHeightOfRandomSegmentedAndCubicCurvesIsFound() {
    Random random = new Random(11);
    int several = 0;
    for (int tries = 0; tries < 600; tries++) {
      TaperCurve curve;
      try {
        curve = tries % 3 == 0 ? cubic(random) : segmented(random);
      } catch (IllegalArgumentException withoutDiameterSomewhere) {
        continue;
      }
      double[] scan = new double[2001];
      for (int i = 0; i < scan.length; i++) {
        scan[i] = in(curve.diameterAt(metres(Math.min(12, 12.0 * i / 2000))), CENTIMETRE);
      }
      for (int k = 0; k < 5; k++) {
        double wanted = scan[20 + random.nextInt(1960)] * 1.000_01;
        int crossings = 0;
        double nearest = Double.MAX_VALUE;
        for (int i = 1; i < scan.length; i++) {
          crossings += (scan[i - 1] < wanted) != (scan[i] < wanted) ? 1 : 0;
          boolean turn =
              i + 1 < scan.length && (scan[i] - scan[i - 1]) * (scan[i + 1] - scan[i]) <= 0;
          nearest = turn ? Math.min(nearest, Math.abs(scan[i] - wanted)) : nearest;
        }
        if (nearest > 0.01) {
          List<Quantity<Length>> heights = curve.heightsOf(centimetres(wanted));
          assertThat(heights).as(curve.coefficients() + " at " + wanted).hasSize(crossings);
          several += crossings > 1 ? 1 : 0;
          for (Quantity<Length> height : heights) {
            assertThat(in(curve.diameterAt(height), CENTIMETRE)).isCloseTo(wanted, within(1e-9));
          }
        }
      }
    }
    assertThat(several).isGreaterThan(40);
  }

  private static TaperCurve segmented(Random random) {
    double lower = 0.05 + 0.4 * random.nextDouble();
    double upper = lower + (0.95 - lower) * random.nextDouble();
    return Tapers.segmented(
        centimetres(20),
        metres(12),
        -4 + 6 * random.nextDouble(),
        -4 + 6 * random.nextDouble(),
        -6 + 16 * random.nextDouble(),
        -10 + 40 * random.nextDouble(),
        upper,
        lower);
  }

  private static TaperCurve cubic(Random random) {
    double b1 = -6 + 10 * random.nextDouble();
    double b2 = -8 + 20 * random.nextDouble();
    double b3 = -12 + 16 * random.nextDouble();
    return Tapers.cubic(
        centimetres(20), metres(12), 1 + 0.5 * random.nextDouble() - (b1 + b2 + b3), b1, b2, b3);
  }

  @Test
  void joinsInTheWrongOrderAreRefused() {
    List<StemReading> readings = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      readings.add(at(i, 30 - 2.5 * i));
    }
    for (double[] joints : new double[][] {{0.5, 0.5}, {0.5, 0}, {1, 0.2}}) {
      assertThatThrownBy(
              () ->
                  Tapers.fitSegmented(readings, centimetres(28), metres(12), joints[0], joints[1]))
          .hasMessageContaining("lower " + joints[1] + ", upper " + joints[0]);
    }
    assertThatThrownBy(() -> Tapers.fitQuadratic(readings, centimetres(0), metres(12)))
        .hasMessageContaining("reference diameter: 0.0 cm");
    assertThatThrownBy(() -> Tapers.fitQuadratic(readings, centimetres(28), metres(0)))
        .hasMessageContaining("height of the tip: 0.0 m");
    assertThatThrownBy(() -> Tapers.fitPower(readings, centimetres(28), metres(12), metres(12)))
        .hasMessageContaining("reference height 12.0 m, allowed [0, 12.0) m");
    assertThat(
            Tapers.fitPower(
                    List.of(at(0, 30), at(6, 17), at(12, 0)),
                    centimetres(30),
                    metres(0),
                    metres(12))
                .degreesOfFreedom())
        .isEqualTo(2);
  }
}
