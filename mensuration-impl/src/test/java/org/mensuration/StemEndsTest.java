package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.StemsTest.m3;
import static org.mensuration.StemsTest.readings;
import static org.mensuration.StemsTest.refused;
import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;

import java.util.List;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.mensuration.log.Log;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.stem.Butt;
import org.mensuration.stem.SectionRule;
import org.mensuration.stem.StemProfile;
import org.mensuration.stem.StemReading;
import org.mensuration.stem.Tip;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Stems exactly at the ends of what is allowed; figures by hand from areas of circles. */
class StemEndsTest {
  /** A finite number of kilometres, beyond the largest double in metres. */
  private static final Quantity<Length> ENDLESS =
      Quantities.getQuantity(1e306, MetricPrefix.KILO(Units.METRE));

  private static StemProfile stem(List<StemReading> readings, Butt butt, Tip tip) {
    return Stems.profile(readings, BarkBasis.OVER, butt, tip);
  }

  /** Area in m² of a circle whose squared diameter is given in cm². */
  private static double area(double square) {
    return Math.PI * square / 40000;
  }

  @Test
  void aLengthTooLargeForANumberIsRefused() {
    refused(
        () -> Stems.profile(List.of(StemReading.of(ENDLESS, centimetres(20))), metres(20)),
        "height of a reading: Infinity m, no number");
    refused(
        () -> Stems.profile(List.of(StemReading.of(metres(5), ENDLESS)), metres(20)),
        "diameter at 5.0 m: Infinity cm, allowed [0, ∞) cm");
    refused(
        () -> Stems.profile(readings(5, 20), ENDLESS), "height of the tip: Infinity m, no number");
    StemProfile stem = Stems.profile(readings(5, 20), metres(20));
    refused(() -> stem.heightsOf(ENDLESS), "diameter: Infinity cm, allowed [0, ∞) cm");
    refused(
        () -> stem.merchantableLength(metres(0), ENDLESS),
        "top diameter: Infinity cm, allowed [0, ∞) cm");
  }

  @Test
  void aTipThatWasReadIsTheEndOfTheCurve() {
    // Two readings, so the squared diameter is a straight line: a paraboloid.
    for (Tip tip : List.of(Tip.curve(metres(16)), Tip.cone(metres(16)), Tip.atHighestReading())) {
      StemProfile stem = stem(readings(0, 20, 16, 0), Butt.atLowestReading(), tip);
      assertThat(m3(stem.volume())).isCloseTo(area(400) * 16 / 2, within(1e-15));
      double below = 16 - 1e-9;
      double expected = 5 * Math.sqrt(16 - below);
      assertThat(in(stem.diameterAt(metres(below)), CENTIMETRE))
          .isCloseTo(expected, within(1e-12 * expected));
    }
  }

  @Test
  void aStemWithoutWoodBelowItsTipIsRefused() {
    refused(
        () -> Stems.profile(readings(0, 20, 8, 0), metres(10)),
        "diameter at 8.0 m: 0 cm, but the stem goes on to 10.0 m");
  }

  @Test
  void aButtMayBeExtendedToAPointAtTheGround() {
    // The squared diameter rises by 100 cm² a metre: 0 on the ground, 100 at 1 m, 400 at 4 m.
    StemProfile stem = stem(readings(1, 10, 4, 20), Butt.extended(), Tip.cone(metres(10)));
    assertThat(in(stem.diameterAt(metres(0)), CENTIMETRE)).isZero();
    assertThat(m3(stem.volume(metres(0), metres(1)))).isCloseTo(area(50), within(1e-16));
  }

  @Test
  void aStemMayBreakAtItsHighestReadingOrAtItsVeryTip() {
    List<StemReading> readings = readings(0, 20, 5, 20);
    StemProfile short5 =
        stem(readings, Butt.atLowestReading(), Tip.cone(metres(20)).brokenAt(metres(5)));
    assertThat(in(short5.top(), METRE)).isEqualTo(5);
    assertThat(m3(short5.volume())).isCloseTo(area(400) * 5, within(1e-15));
    StemProfile whole =
        stem(readings, Butt.atLowestReading(), Tip.cone(metres(20)).brokenAt(metres(20)));
    assertThat(in(whole.top(), METRE)).isEqualTo(20);
    assertThat(m3(whole.volume())).isCloseTo(area(400) * (5 + 15 / 3), within(1e-15));
  }

  @Test
  void aMiddleReadingMayMissByATwentiethOfItsSection() {
    StemProfile stem =
        stem(readings(0, 40, 5.5, 30, 10, 20), Butt.cylinder(), Tip.atHighestReading());
    assertThat(m3(stem.sectionalVolume(SectionRule.NEWTON)))
        .isCloseTo(area(1600 + 4 * 900 + 400) * 10 / 6, within(1e-14));
    refused(
        () ->
            stem(readings(0, 40, 5.51, 30, 10, 20), Butt.cylinder(), Tip.atHighestReading())
                .sectionalVolume(SectionRule.NEWTON),
        "reading at 5.51 m, but the middle of its section is at 5.0 m");
  }

  @Test
  void sectionsByTheirMiddleHaveLengthAndEndWithTheStem() {
    refused(
        () ->
            stem(readings(1, 40, 3, 36), Butt.atLowestReading(), Tip.cone(metres(20)))
                .sectionalVolume(SectionRule.HUBER),
        "reading at 1.0 m is no middle of a section that begins at 1.0 m");
    double micrometreAbove = 10 + 1e-6;
    StemProfile stem =
        stem(readings(micrometreAbove / 2, 30), Butt.cylinder(), Tip.cone(metres(10)));
    assertThat(m3(stem.sectionalVolume(SectionRule.HUBER)))
        .isCloseTo(area(900) * micrometreAbove, within(1e-14));
    refused(
        () ->
            stem(readings((10 + 1.1e-6) / 2, 30), Butt.cylinder(), Tip.cone(metres(10)))
                .sectionalVolume(SectionRule.HUBER),
        "but the stem ends at 10.0 m");
  }

  @Test
  void aStretchAsThickAsTheTopDiameterBelongsToTheMerchantableLength() {
    StemProfile stem =
        stem(readings(0, 30, 5, 20, 10, 20, 15, 10), Butt.cylinder(), Tip.atHighestReading());
    assertThat(in(stem.merchantableLength(metres(0), centimetres(20)), METRE)).isEqualTo(10);
    assertThat(in(stem.merchantableLength(metres(7), centimetres(20)), METRE)).isEqualTo(3);
    assertThat(in(stem.merchantableLength(metres(0), centimetres(10)), METRE)).isEqualTo(15);
  }

  @Test
  void aLogOfEqualEndsHasItsPlacesFromTheLowerEnd() {
    StemProfile stem =
        stem(readings(0, 30, 2, 36, 10, 30), Butt.atLowestReading(), Tip.atHighestReading());
    Log log = stem.logs(metres(0), List.of(metres(10))).get(0);
    double lower = in(stem.diameterAt(metres(2.5)), CENTIMETRE);
    assertThat(in(log.diameterAt(0.25).get(), CENTIMETRE)).isEqualTo(lower);
    assertThat(lower).isGreaterThan(in(stem.diameterAt(metres(7.5)), CENTIMETRE));
  }
}
