package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.CUBIC_METRE;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.degrees;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.log.Log;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.stem.Butt;
import org.mensuration.stem.SectionRule;
import org.mensuration.stem.StemProfile;
import org.mensuration.stem.StemReading;
import org.mensuration.stem.StemStation;
import org.mensuration.stem.Tip;

class StemsTest {
  static final List<StemReading> OVIEDO = readings(0, 72, 4, 56, 14, 36, 20, 12);

  static List<StemReading> readings(double... heightsAndDiameters) {
    List<StemReading> readings = new ArrayList<>();
    for (int i = 0; i < heightsAndDiameters.length; i += 2) {
      readings.add(
          StemReading.of(metres(heightsAndDiameters[i]), centimetres(heightsAndDiameters[i + 1])));
    }
    return readings;
  }

  private static double m(Quantity<Length> length) {
    return in(length, METRE);
  }

  private static double cm(Quantity<Length> length) {
    return in(length, CENTIMETRE);
  }

  static double m3(Quantity<Volume> volume) {
    return in(volume, CUBIC_METRE);
  }

  private static double disc(double cm) {
    return Math.PI * cm * cm / 40000;
  }

  @Test
  void passesThroughEveryReadingToTheLastBit() {
    StemProfile stem = Stems.profile(OVIEDO, metres(23));
    for (StemReading reading : OVIEDO) {
      assertThat(cm(stem.diameterAt(reading.height()))).isEqualTo(cm(reading.diameter()));
    }
    assertThat(cm(stem.diameterAt(metres(23)))).isZero();
    assertThat(stem.readings()).isEqualTo(OVIEDO);
    assertThat(stem.bark()).isEqualTo(BarkBasis.UNKNOWN);
    assertThat(m(stem.base())).isZero();
    assertThat(m(stem.top())).isEqualTo(23);
    assertThat(m(stem.intactTop())).isEqualTo(23);
  }

  @Test
  void readingsMayComeInAnyOrderAndAnyUnitAndTwice() {
    List<StemReading> mixed =
        List.of(
            StemReading.of(feet(30), inches(8)),
            StemReading.of(metres(1.3), centimetres(30)),
            StemReading.of(metres(1.3), centimetres(30)),
            StemReading.of(metres(4), inches(11)));
    StemProfile stem = Stems.profile(mixed, feet(50));
    assertThat(stem.readings()).containsExactly(mixed.get(1), mixed.get(3), mixed.get(0));
    assertThat(cm(stem.diameterAt(feet(30)))).isCloseTo(20.32, within(1e-12));
  }

  @Test
  void aParaboloidIsReproduced() {
    // d² = 36 (H - h) with H = 25: areas on a straight line.
    List<StemReading> readings = new ArrayList<>();
    for (double h : new double[] {1, 3, 7, 12, 20}) {
      readings.add(StemReading.of(metres(h), centimetres(6 * Math.sqrt(25 - h))));
    }
    StemProfile stem =
        Stems.profile(readings, BarkBasis.OVER, Butt.extended(), Tip.paraboloid(metres(25)));
    double whole = Math.PI / 40000 * 36 * 25 * 25 / 2;
    assertThat(m3(stem.volume())).isCloseTo(whole, within(1e-13));
    assertThat(cm(stem.diameterAt(metres(0)))).isCloseTo(30, within(1e-12));
    assertThat(cm(stem.diameterAt(metres(9.5)))).isCloseTo(6 * Math.sqrt(15.5), within(1e-12));
    assertThat(m(stem.heightsOf(centimetres(15)).get(0))).isCloseTo(18.75, within(1e-12));
    assertThat(m3(stem.volume(metres(2), metres(22))))
        .isCloseTo(Math.PI / 40000 * 36 * (23 * 23 - 3 * 3) / 2, within(1e-13));
    assertThat(in(stem.areaAt(metres(9)), SQUARE_METRE)).isCloseTo(disc(24), within(1e-15));
  }

  @Test
  void tipsAreTheSolidsTheyAreCalled() {
    List<StemReading> one = readings(5, 20);
    double below = disc(20) * 5;
    assertThat(m3(with(one, Tip.cone(metres(11))).volume()))
        .isCloseTo(below + disc(20) * 6 / 3, within(1e-15));
    assertThat(m3(with(one, Tip.paraboloid(metres(11))).volume()))
        .isCloseTo(below + disc(20) * 6 / 2, within(1e-15));
    assertThat(m3(with(one, Tip.neiloid(metres(11))).volume()))
        .isCloseTo(below + disc(20) * 6 / 4, within(1e-15));
    assertThat(m3(with(one, Tip.curve(metres(11))).volume()))
        .isCloseTo(below + disc(20) * 6 / 2, within(1e-15));
    assertThat(m3(with(one, Tip.atHighestReading()).volume())).isCloseTo(below, within(1e-15));
    assertThat(cm(with(one, Tip.cone(metres(11))).diameterAt(metres(8)))).isEqualTo(10);
    assertThat(cm(with(one, Tip.neiloid(metres(11))).diameterAt(metres(8))))
        .isCloseTo(20 * Math.sqrt(0.125), within(1e-14));
  }

  private static StemProfile with(List<StemReading> readings, Tip tip) {
    return Stems.profile(readings, BarkBasis.OVER, Butt.cylinder(), tip);
  }

  @Test
  void aCurvedTipIsOnePieceOfTheCurve() {
    StemProfile stem = with(readings(0, 30, 6, 24, 12, 15), Tip.curve(metres(18)));
    assertThat(cm(stem.diameterAt(metres(12)))).isEqualTo(15);
    assertThat(cm(stem.diameterAt(metres(18)))).isZero();
    double before = 15;
    for (double h = 12; h <= 18; h += 0.01) {
      double d = cm(stem.diameterAt(metres(h)));
      assertThat(d).isLessThanOrEqualTo(before);
      before = d;
    }
  }

  @Test
  void buttsAreAsChosen() {
    List<StemReading> two = readings(1, 40, 11, 30);
    Tip none = Tip.atHighestReading();
    double between =
        Stems.profile(two, BarkBasis.OVER, Butt.atLowestReading(), none)
            .volume()
            .getValue()
            .doubleValue();
    assertThat(between).isCloseTo((disc(40) + disc(30)) / 2 * 10, within(1e-14));
    assertThat(m3(Stems.profile(two, BarkBasis.OVER, Butt.cylinder(), none).volume()))
        .isCloseTo(between + disc(40), within(1e-14));
    assertThat(
            m3(
                Stems.profile(two, BarkBasis.OVER, Butt.cylinder().from(metres(0.4)), none)
                    .volume()))
        .isCloseTo(between + disc(40) * 0.6, within(1e-14));
    StemProfile extended = Stems.profile(two, BarkBasis.OVER, Butt.extended(), none);
    assertThat(cm(extended.diameterAt(metres(0)))).isCloseTo(Math.sqrt(1670), within(1e-12));
    assertThat(m3(extended.volume())).isCloseTo(between + Math.PI / 40000 * 1635, within(1e-14));
    assertThat(m(extended.base())).isZero();
    assertThat(m(Stems.profile(two, BarkBasis.OVER, Butt.atLowestReading(), none).base()))
        .isEqualTo(1);
  }

  @Test
  void everyCrossingIsFound() {
    StemProfile stem = with(readings(0, 30, 2, 26, 4, 30, 6, 30, 8, 20), Tip.cone(metres(12)));
    List<Quantity<Length>> at28 = stem.heightsOf(centimetres(28));
    assertThat(at28).hasSize(3);
    for (Quantity<Length> height : at28) {
      assertThat(cm(stem.diameterAt(height))).isCloseTo(28, within(1e-9));
    }
    assertThat(at28.stream().map(StemsTest::m)).isSorted();
    assertThat(stem.heightsOf(centimetres(30)).stream().map(StemsTest::m))
        .containsExactly(0.0, 4.0, 6.0);
    assertThat(stem.heightsOf(centimetres(26)).stream().map(StemsTest::m))
        .satisfiesExactly(h -> assertThat(h).isEqualTo(2), h -> assertThat(h).isBetween(6.0, 8.0));
    assertThat(stem.heightsOf(centimetres(31))).isEmpty();
    assertThat(stem.heightsOf(centimetres(0)).stream().map(StemsTest::m)).containsExactly(12.0);
    assertThat(m(stem.heightsOf(centimetres(10)).get(0))).isCloseTo(10, within(1e-12));
  }

  @Test
  void merchantableLengthEndsWhereTheStemFirstBecomesThinner() {
    StemProfile stem = with(readings(0, 30, 2, 26, 4, 30, 8, 20), Tip.cone(metres(12)));
    Quantity<Length> stump = metres(0.5);
    assertThat(m(stem.merchantableLength(stump, centimetres(28))))
        .isCloseTo(m(stem.heightsOf(centimetres(28)).get(0)) - 0.5, within(1e-12));
    assertThat(m(stem.merchantableLength(stump, centimetres(10)))).isCloseTo(9.5, within(1e-12));
    assertThat(m(stem.merchantableLength(stump, centimetres(0)))).isEqualTo(11.5);
    assertThat(m(stem.merchantableLength(stump, centimetres(35)))).isZero();
    assertThat(m(stem.merchantableLength(metres(4), centimetres(30)))).isZero();
    assertThat(m(stem.merchantableLength(metres(2), centimetres(26))))
        .isCloseTo(m(stem.heightsOf(centimetres(26)).get(1)) - 2, within(1e-12));
  }

  @Test
  void logsCarryWhatEveryRuleNeeds() {
    StemProfile stem =
        Stems.profile(OVIEDO, BarkBasis.UNDER, Butt.cylinder(), Tip.cone(metres(23)));
    List<Log> logs = stem.logs(metres(0), List.of(metres(4), metres(10)));
    assertThat(logs).hasSize(2);
    Log butt = logs.get(0);
    assertThat(cm(butt.large().orElseThrow())).isEqualTo(72);
    assertThat(cm(butt.small().orElseThrow())).isEqualTo(56);
    assertThat(butt.middle().orElseThrow()).isEqualTo(stem.diameterAt(metres(2)));
    for (double share : new double[] {0.25, 1.0 / 3, 2.0 / 3, 0.75}) {
      assertThat(cm(butt.diameterAt(share).orElseThrow()))
          .isCloseTo(cm(stem.diameterAt(metres(4 * share))), within(1e-12));
    }
    assertThat(butt.length()).isEqualTo(metres(4));
    assertThat(butt.bark()).isEqualTo(BarkBasis.UNDER);
    assertThat(m3(LogRules.smalian().volume(logs.get(1))))
        .isCloseTo((disc(56) + disc(36)) / 2 * 10, within(1e-14));
    assertThat(m3(LogRules.huber().volume(logs.get(0))))
        .isCloseTo(in(stem.areaAt(metres(2)), SQUARE_METRE) * 4, within(1e-14));
    assertThat(LogRules.doyle().scale(logs.get(0)).amount()).isPositive();
    List<Log> trimmed = stem.logs(metres(0.3), List.of(feet(16)), metres(0.1));
    assertThat(trimmed.get(0).length()).isEqualTo(feet(16));
    assertThat(cm(trimmed.get(0).small().orElseThrow()))
        .isEqualTo(cm(stem.diameterAt(metres(0.3 + 16 * 0.3048 + 0.1))));
    assertThat(stem.logs(metres(1), List.of())).isEmpty();
  }

  @Test
  void aLogThatWidensUpwardHasItsLargeEndUp() {
    StemProfile stem = with(readings(0, 20, 4, 24, 8, 20), Tip.cone(metres(12)));
    Log log = stem.logs(metres(0), List.of(metres(4))).get(0);
    assertThat(cm(log.large().orElseThrow())).isEqualTo(24);
    assertThat(cm(log.small().orElseThrow())).isEqualTo(20);
    assertThat(cm(log.diameterAt(0.25).orElseThrow()))
        .isCloseTo(cm(stem.diameterAt(metres(3))), within(1e-12));
  }

  @Test
  void aBrokenStemHasItsVolumeToTheBreakAndItsProfileToTheIntactTip() {
    Tip tip = Tip.cone(metres(23)).brokenAt(metres(21));
    StemProfile stem = with(OVIEDO, tip);
    StemProfile intact = with(OVIEDO, Tip.cone(metres(23)));
    assertThat(m(stem.top())).isEqualTo(21);
    assertThat(m(stem.intactTop())).isEqualTo(23);
    assertThat(m3(stem.volume())).isEqualTo(m3(intact.volume(metres(0), metres(21))));
    assertThat(cm(stem.diameterAt(metres(22)))).isCloseTo(4, within(1e-12));
    assertThat(m(stem.merchantableLength(metres(0), centimetres(5)))).isEqualTo(21);
    assertThat(m3(stem.sectionalVolume(SectionRule.SMALIAN)))
        .isCloseTo(
            m3(intact.sectionalVolume(SectionRule.SMALIAN))
                - m3(intact.volume(metres(21), metres(23))),
            within(1e-14));
    refused(() -> stem.logs(metres(0), List.of(metres(21.5))), "log 1", "21.5 m", "21.0 m");
    refused(() -> stem.merchantableLength(metres(22), centimetres(5)), "stump", "21.0 m");
    refused(() -> with(OVIEDO, Tip.cone(metres(23)).brokenAt(metres(19))), "break at 19.0 m");
    refused(() -> with(OVIEDO, Tip.cone(metres(23)).brokenAt(metres(24))), "break at 24.0 m");
    refused(() -> with(OVIEDO, Tip.atHighestReading().brokenAt(metres(21))), "break at 21.0 m");
  }

  @Test
  void sectionsBySmalianOnTheReadingsThemselves() {
    StemProfile stem = with(OVIEDO, Tip.cone(metres(23)));
    double smalian =
        (disc(72) + disc(56)) / 2 * 4
            + (disc(56) + disc(36)) / 2 * 10
            + (disc(36) + disc(12)) / 2 * 6
            + disc(12);
    assertThat(m3(stem.sectionalVolume(SectionRule.SMALIAN))).isCloseTo(smalian, within(1e-14));
  }

  @Test
  void sectionsByNewtonNeedMiddlesInTheMiddle() {
    StemProfile stem = with(readings(1, 40, 3, 36, 5.1, 33), Tip.cone(metres(20)));
    double newton = (disc(40) + 4 * disc(36) + disc(33)) / 6 * 4.1;
    assertThat(m3(stem.sectionalVolume(SectionRule.NEWTON)))
        .isCloseTo(disc(40) + newton + disc(33) * 14.9 / 3, within(1e-14));
    refused(
        () ->
            with(readings(1, 40, 3, 36), Tip.cone(metres(20))).sectionalVolume(SectionRule.NEWTON),
        "log/newton",
        "2 readings",
        "odd number");
    refused(
        () ->
            with(readings(1, 40, 3, 36, 5.5, 33), Tip.cone(metres(20)))
                .sectionalVolume(SectionRule.NEWTON),
        "reading at 3.0 m",
        "middle of its section is at 3.25 m");
  }

  @Test
  void sectionsByHuberFollowEachOtherFromTheBase() {
    StemProfile stem = with(readings(1, 40, 3, 36, 6, 33), Tip.cone(metres(20)));
    double huber = disc(40) * 2 + disc(36) * 2 + disc(33) * 4;
    assertThat(m3(stem.sectionalVolume(SectionRule.HUBER)))
        .isCloseTo(huber + m3(stem.volume(metres(8), metres(20))), within(1e-14));
    refused(
        () ->
            with(readings(1, 40, 1.9, 36), Tip.cone(metres(20))).sectionalVolume(SectionRule.HUBER),
        "log/huber",
        "reading at 1.9 m",
        "begins at 2.0 m");
    refused(
        () ->
            with(readings(1, 40, 8, 36), Tip.cone(metres(13.9))).sectionalVolume(SectionRule.HUBER),
        "reaches 14.0 m",
        "ends at 13.9 m");
    StemProfile full = with(readings(1, 40, 3, 36), Tip.atHighestReading());
    refused(() -> full.sectionalVolume(SectionRule.HUBER), "reaches 4.0 m", "ends at 3.0 m");
    StemProfile exact = with(readings(1, 40, 3, 36), Tip.cone(metres(4)));
    assertThat(m3(exact.sectionalVolume(SectionRule.HUBER)))
        .isCloseTo(disc(40) * 2 + disc(36) * 2, within(1e-14));
  }

  @Test
  void sightAnglesBecomeHeights() {
    StemStation station = Stems.station(metres(20), degrees(-5));
    double eye = 20 * Math.tan(Math.toRadians(5));
    assertThat(m(station.height(degrees(-5)))).isZero();
    assertThat(m(station.height(degrees(45)))).isCloseTo(20 + eye, within(1e-12));
    StemReading reading = station.reading(degrees(0), centimetres(30));
    assertThat(m(reading.height())).isCloseTo(eye, within(1e-14));
    assertThat(cm(reading.diameter())).isEqualTo(30);
    assertThatThrownBy(() -> Stems.station(metres(0), degrees(-5)))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> Stems.station(metres(20), degrees(-90)))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> station.height(degrees(-6))).isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> station.height(degrees(90))).isInstanceOf(OutOfDomainException.class);
  }

  @Test
  void curvesBetweenReadingsAreThoseOfTheirSlopes() {
    // Squared diameters 1600, 900, 400 at 0, 10 and 20 m: chords -70 and -50, slope in the middle
    // -60 / (30/70 + 30/50) = -58.33; at 5 m 1250 + 10/8 · (slope at 0 + 58.33), slope at 0 -80.
    StemProfile stem = with(readings(0, 40, 10, 30, 20, 20), Tip.atHighestReading());
    double middle = -60 / (30.0 / 70 + 30.0 / 50);
    double low = (900 + 1600) / 2.0 + 10.0 / 8 * (-80 - middle);
    assertThat(cm(stem.diameterAt(metres(5)))).isCloseTo(Math.sqrt(low), within(1e-12));
    double high = (900 + 400) / 2.0 + 10.0 / 8 * (middle + 40);
    assertThat(cm(stem.diameterAt(metres(15)))).isCloseTo(Math.sqrt(high), within(1e-12));
    double squares =
        10 * (1600 + 900) / 2.0
            + 100.0 / 12 * (-80 - middle)
            + 10 * (900 + 400) / 2.0
            + 100.0 / 12 * (middle + 40);
    assertThat(m3(stem.volume())).isCloseTo(Math.PI / 40000 * squares, within(1e-13));
  }

  static void refused(Runnable call, String... words) {
    assertThatThrownBy(call::run)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContainingAll(words);
  }
}
