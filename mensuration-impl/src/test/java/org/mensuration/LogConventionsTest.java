package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.mensuration.log.ConventionRule;
import org.mensuration.log.CubicConvention;
import org.mensuration.log.Log;
import org.mensuration.log.LogReadings;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.quantity.LogScale;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;

class LogConventionsTest {
  private static final Quantity<Length> NAN = Held.of(Double.NaN, ForestUnits.METRE);

  private static double formula(String id, double... inputs) {
    return Catalogues.standard().formula(id).apply(inputs);
  }

  private static LogReadings girth(double girthIn, double lengthFt) {
    return LogReadings.girth(inches(girthIn), feet(lengthFt));
  }

  private static LogReadings crossed(double first, double second, double length) {
    return LogReadings.crossedMiddle(centimetres(first), centimetres(second), metres(length));
  }

  private static LogReadings fourReadings(double... cm) {
    return LogReadings.ends(
        List.of(centimetres(cm[0]), centimetres(cm[1])),
        List.of(centimetres(cm[2]), centimetres(cm[3])),
        metres(cm[4]));
  }

  private static Log small(double diameterCm, double lengthM) {
    return Log.of(centimetres(diameterCm), metres(lengthM));
  }

  private static double amount(ConventionRule rule, Log log) {
    return rule.scale(log).amount();
  }

  @Test
  void metricRulesRoundAndThenApplyTheirFormula() {
    assertThat(amount(LogConventions.jas(), small(31.9, 4.37)))
        .isEqualTo(Math.rint(formula("log/jas-short", 30, 4.37) * 1000) / 1000);
    assertThat(amount(LogConventions.jas(), small(13.9, 4))).isEqualTo(0.068);
    assertThat(amount(LogConventions.jasShort(), small(30, 4))).isEqualTo(0.36);
    assertThat(amount(LogConventions.jas(), small(24, 6))).isEqualTo(0.375);
    assertThat(amount(LogConventions.jasLong(), small(24, 6))).isEqualTo(0.375);
    assertThat(amount(LogConventions.unified1968(), small(28, 6))).isEqualTo(0.491);
    assertThat(amount(LogConventions.koreanSmallEnd(), small(30.6, 1.87))).isEqualTo(0.162);
    assertThat(amount(LogConventions.koreanSmallEnd(), small(60.5, 6.89))).isEqualTo(2.530);
    assertThat(amount(LogConventions.gb4814(), small(10, 2))).isEqualTo(0.019);
    assertThat(amount(LogConventions.gb4814(), small(6, 2))).isEqualTo(0.0079);
    assertThat(amount(LogConventions.gb4814(), small(8, 2))).isEqualTo(0.013);
    assertThat(amount(LogConventions.gb4814Outside(), small(40, 14))).isEqualTo(2.474);
    assertThat(amount(LogConventions.gost2708(), small(14, 4))).isEqualTo(0.073);
    assertThat(amount(LogConventions.swedishTop(), small(20.3, 4)))
        .isEqualTo(formula("log/top-measured", 20.3, 4));
    assertThat(amount(LogConventions.swedishTopClassBottom(centimetres(2)), small(21.9, 4)))
        .isEqualTo(formula("log/top-measured", 20, 4));
    assertThat(amount(LogConventions.swedishTopClassMiddle(centimetres(2)), small(21.9, 4)))
        .isEqualTo(formula("log/top-measured", 21, 4));
  }

  @Test
  void middleRulesRoundAndThenApplyTheirFormula() {
    Log log = Log.ofMiddle(centimetres(19.97), metres(10.46));
    assertThat(amount(LogConventions.germanMid(), log))
        .isEqualTo(Math.rint(formula("log/conventional-mid", 19, 10.46) * 100) / 100);
    assertThat(amount(LogConventions.frenchMid(), log))
        .isEqualTo(Math.rint(formula("log/conventional-mid", 19, 10.4) * 1000) / 1000);
    assertThat(
            amount(
                LogConventions.frenchMidHalfMetres(),
                Log.ofMiddle(centimetres(19.97), metres(9.85))))
        .isEqualTo(Math.rint(formula("log/conventional-mid", 19, 9.5) * 1000) / 1000);
    assertThat(amount(LogConventions.britishMid(), log))
        .isEqualTo(formula("log/conventional-mid", 19, 10));
    assertThat(amount(LogConventions.britishMid(), Log.ofMiddle(centimetres(33.4), metres(9.98))))
        .isEqualTo(formula("log/conventional-mid", 33, 9.9));
    assertThat(amount(LogConventions.swedishMid(), log))
        .isEqualTo(formula("log/conventional-mid", 19.97, 10.46));
    LogReadings taped = LogReadings.girth(centimetres(132.7), metres(13.59));
    assertThat(LogConventions.frenchGirth().scale(taped).amount())
        .isEqualTo(Math.rint(formula("log/girth-cylinder", 1.32, 13.5) * 1000) / 1000);
  }

  @Test
  void rulesOfBothEnds() {
    Log log = Log.of(centimetres(46.4), centimetres(31.6), metres(5.2));
    assertThat(amount(LogConventions.brereton(), log))
        .isEqualTo(formula("log/brereton", 46.4, 31.6, 5.2));
    assertThat(amount(LogConventions.radiusClasses(), log))
        .isEqualTo(formula("log/radius-classes", 23, 16, 5.2));
    // Readings of 60, 56, 50 and 46 cm after the cut, mean 53, 4.2 m.
    LogScale scale = LogConventions.southSea().scale(fourReadings(61.9, 57, 51.9, 47.5, 4.39));
    assertThat(scale.amount())
        .isEqualTo(Math.rint(formula("log/brereton-mean", 53, 4.2) * 1000) / 1000);
    assertThat(LogConventions.southSea().steps(fourReadings(61.9, 57, 51.9, 47.5, 4.39)))
        .extracting(step -> step.what() + " " + step.before() + " " + step.after() + step.unit())
        .containsExactly(
            "length 4.39 4.2m",
            "large end diameter 61.9 60.0cm",
            "large end diameter 57.0 56.0cm",
            "small end diameter 51.9 50.0cm",
            "small end diameter 47.5 46.0cm",
            "mean diameter 53.0 53.0cm",
            "result " + formula("log/brereton-mean", 53, 4.2) + " 0.927m3");
  }

  @Test
  void theMeanOfFourIsCutToWholeCentimetres() {
    assertThat(LogConventions.southSea().scale(fourReadings(60, 56, 50, 48, 4)).amount())
        .isEqualTo(Math.rint(formula("log/brereton-mean", 53, 4) * 1000) / 1000);
    assertThatThrownBy(
            () ->
                LogConventions.southSea()
                    .scale(Log.of(centimetres(46), centimetres(31), metres(5))))
        .hasMessage(
            "South Sea customs rule of 1961 (log/brereton-mean) needs two crossed readings of the"
                + " large end; 1 given");
    LogReadings oneAtTheTop =
        LogReadings.ends(
            List.of(centimetres(46), centimetres(47)), List.of(centimetres(31)), metres(5));
    assertThatThrownBy(() -> LogConventions.southSea().scale(oneAtTheTop))
        .hasMessageEndingWith("needs two crossed readings of the small end; 1 given");
    assertThatThrownBy(() -> LogConventions.southSea().scale(fourReadings(1.9, 5, 5, 5, 4)))
        .hasMessageContaining(
            "South Sea customs rule of 1961, D = 1.9 cm, allowed large end diameter down to 2 cm");
  }

  @Test
  void theGermanChainCutsThreeTimes() {
    ConventionRule rule = LogConventions.germanMid();
    assertThat(rule.scale(crossed(40.9, 41.9, 9)).amount()).isEqualTo(1.13);
    assertThat(rule.steps(crossed(40.9, 41.9, 9)))
        .extracting(step -> step.after())
        .containsExactly(40.0, 41.0, 40.0, 1.13);
    assertThatThrownBy(() -> rule.scale(Log.ofMiddle(centimetres(20), metres(4))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "German mid-diameter rule (log/conventional-mid) needs two crossed readings of the"
                + " middle from 20 cm; one of 20.0 cm given");
    ConventionRule above = LogConventions.germanMidTwoReadingsAbove20();
    assertThat(amount(above, Log.ofMiddle(centimetres(20), metres(4)))).isEqualTo(0.13);
    assertThatThrownBy(() -> above.scale(Log.ofMiddle(centimetres(20.1), metres(4))))
        .hasMessageContaining("above 20 cm; one of 20.1 cm given");
    assertThat(amount(rule, Log.ofMiddle(centimetres(19.9), metres(4)))).isEqualTo(0.11);
  }

  @Test
  void anUnevenSmallEndIsWidened() {
    CubicConvention jas = LogConventions.jas();
    assertThat(scaleOf(jas, 20, 25.9)).isEqualTo(scaleOf(jas, 20, 20));
    assertThat(scaleOf(jas, 20, 26)).isEqualTo(scaleOf(jas, 22, 22));
    assertThat(scaleOf(jas, 26, 20)).isEqualTo(scaleOf(jas, 22, 22));
    assertThat(scaleOf(jas, 40, 46)).isEqualTo(scaleOf(jas, 40, 40));
    assertThat(scaleOf(jas, 40, 48)).isEqualTo(scaleOf(jas, 42, 42));
    assertThat(scaleOf(jas, 13, 25)).isEqualTo(scaleOf(jas, 13, 13));
    assertThat(
            LogConventions.hiragoku()
                .scale(LogReadings.crossedSmallEnd(centimetres(26), centimetres(20), metres(4)))
                .amount())
        .isEqualTo(formula("log/hiragoku", 26, 20, 4))
        .isEqualTo(23 * 23 * 4 / 10000.0);
  }

  private static double scaleOf(CubicConvention rule, double first, double second) {
    return rule.scale(
            LogReadings.crossedSmallEnd(centimetres(first), centimetres(second), metres(4)))
        .amount();
  }

  @Test
  void barkIsDeductedByTheCzechRules() {
    Log log = Log.ofMiddle(centimetres(30), metres(4)).withBark(BarkBasis.OVER);
    LogScale spruce = LogConventions.czechSpruce().scale(log);
    assertThat(spruce.amount())
        .isEqualTo(formula("log/csn480009", 30, formula("bark/csn-spruce", 30), 4));
    assertThat(spruce.bark()).isEqualTo(BarkBasis.UNDER);
    assertThat(LogConventions.czechPine().scale(log).amount())
        .isEqualTo(formula("log/csn480009", 30, formula("bark/csn-pine", 30), 4));
    assertThat(LogConventions.czechBeech().scale(log).amount())
        .isEqualTo(formula("log/csn480009", 30, formula("bark/csn-beech", 30), 4));
    assertThatThrownBy(() -> LogConventions.czechSpruce().scale(log.withBark(BarkBasis.UNDER)))
        .hasMessage(
            "CSN 48 0009, spruce and fir (log/csn480009) takes readings over bark, these are under"
                + " bark");
  }

  @Test
  void aRuleUnderBarkRefusesReadingsOverIt() {
    Log over = small(30, 4).withBark(BarkBasis.OVER);
    assertThatThrownBy(() -> LogConventions.jas().scale(over))
        .hasMessage("JAS (log/jas) takes readings under bark, these are over bark");
    assertThatThrownBy(() -> LogConventions.jas().steps(LogReadings.of(over)))
        .hasMessageContaining("takes readings under bark");
    assertThat(LogConventions.jas().scale(small(30, 4).withBark(BarkBasis.UNDER)).bark())
        .isEqualTo(BarkBasis.UNDER);
    assertThat(LogConventions.jas().scale(small(30, 4)).bark()).isEqualTo(BarkBasis.UNKNOWN);
    assertThat(
            LogConventions.gost2708()
                .scale(over.withBark(BarkBasis.OVER).withMiddle(metres(1)))
                .bark())
        .isEqualTo(BarkBasis.OVER);
  }

  @Test
  void scalesOfTwoRulesDoNotAddAndAreTakenAsVolumeByNameOnly() {
    LogScale jas = LogConventions.jas().scale(small(30, 4));
    LogScale gb = LogConventions.gb4814().scale(small(30, 4));
    assertThatThrownBy(() -> jas.plus(gb))
        .hasMessageContaining("JAS")
        .hasMessageContaining("GB 4814-84");
    assertThat(in(LogConventions.jas().takenAsVolume(jas), ForestUnits.CUBIC_METRE))
        .isEqualTo(0.36);
    assertThatThrownBy(() -> LogConventions.jas().takenAsVolume(gb))
        .hasMessageContaining("GB 4814-84")
        .hasMessageContaining("as a volume by JAS in m3");
    LogScale feet = new LogScale("JAS", 1, "ft3", BarkBasis.UNKNOWN);
    assertThatThrownBy(() -> LogConventions.jas().takenAsVolume(feet))
        .isInstanceOf(IllegalArgumentException.class);
    CubicConvention hoppus = (CubicConvention) GirthRules.hoppus();
    LogScale scale = hoppus.scale(girth(50, 15));
    assertThatThrownBy(() -> hoppus.takenAsVolume(scale))
        .hasMessageContaining("as a volume by Hoppus in m3");
  }

  @Test
  void theTableIsInterpolatedOnlyIfAskedFor() {
    CubicConvention between = LogConventions.gost2708Interpolated();
    assertThat(amount(between, small(14, 4))).isEqualTo(0.073);
    assertThat(amount(between, small(15, 4))).isEqualTo(0.073 + 0.5 * (0.095 - 0.073));
    assertThatThrownBy(() -> LogConventions.gost2708().scale(small(15, 4)))
        .hasMessageStartingWith("log/gost2708: d = 15 cm, allowed as printed in GOST 2708-75");
    assertThatThrownBy(() -> between.scale(small(11, 2)))
        .hasMessageStartingWith(
            "log/gost2708: GOST 2708-75, interpolated, d = 11 cm, allowed printed neighbours on"
                + " every side, as printed in GOST 2708-75");
    assertThatThrownBy(() -> between.scale(small(14, 9)))
        .hasMessageContaining("interpolated, L = 9 m, allowed printed neighbours on every side");
    assertThatThrownBy(
            () -> LogConventions.gost2708().scale(small(15, 4)).plus(between.scale(small(15, 4))))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () ->
                LogConventions.gost2708()
                    .scale(small(14, 4))
                    .plus(LogConventions.gost2708Interpolated().scale(small(15, 4))))
        .hasMessageContaining("GOST 2708-75, interpolated");
  }

  @Test
  void limitsAreNamedWithRuleAndValue() {
    assertThatThrownBy(
            () -> LogConventions.britishMid().scale(Log.ofMiddle(centimetres(40), metres(15.2))))
        .hasMessageStartingWith(
            "log/conventional-mid: British mid-diameter rule, L = 15.2 m, allowed (0, 15] m");
    assertThat(amount(LogConventions.britishMid(), Log.ofMiddle(centimetres(40), metres(15))))
        .isEqualTo(formula("log/conventional-mid", 40, 15));
    assertThatThrownBy(() -> LogConventions.jasLong().scale(small(24, 5.9)))
        .hasMessageStartingWith("log/jas-long: L = 5.9 m, allowed [6, ∞) m");
    assertThatThrownBy(() -> LogConventions.jasShort().scale(small(24, 6)))
        .hasMessageStartingWith("log/jas-short: L = 6 m, allowed (0, 6) m");
    assertThatThrownBy(() -> LogConventions.gb4814().scale(small(3.9, 4)))
        .hasMessageStartingWith("log/gb4814: D = 3.9 cm, allowed [4, ∞) cm");
    assertThatThrownBy(() -> LogConventions.gb4814().scale(small(20, 10.2)))
        .hasMessageStartingWith("log/gb4814: L = 10.2 m, allowed [2, 10] m");
    assertThatThrownBy(() -> LogConventions.koreanSmallEnd().scale(small(0.7, 4)))
        .hasMessageStartingWith(
            "log/jas: Korean small-end square, d = 0.7 cm, allowed small end diameter down to 1 cm"
                + " above 0");
    assertThatThrownBy(() -> LogConventions.koreanSmallEnd().scale(small(20, 0.07)))
        .hasMessageContaining("L = 0.07 m, allowed length down to 0.1 m above 0");
    assertThatThrownBy(() -> LogConventions.koreanSmallEnd().scale(Log.of(NAN, metres(4))))
        .hasMessageContaining("d = NaN cm");
    assertThatThrownBy(() -> GirthRules.hoppus().scale(LogReadings.girth(inches(50), NAN)))
        .hasMessageContaining("Hoppus, L = NaN ft, allowed (0, ∞) ft");
    assertThatThrownBy(() -> GirthRules.hoppus().scale(LogReadings.girth(NAN, feet(10))))
        .hasMessageContaining("G = NaN in");
    assertThatThrownBy(
            () ->
                LogConventions.brereton()
                    .scale(Log.of(centimetres(30), centimetres(31), metres(5))))
        .hasMessageContaining("d ≤ D");
  }

  @Test
  void missingReadingsAreNamed() {
    Log smallOnly = small(30, 4);
    assertThatThrownBy(() -> LogConventions.frenchMid().scale(smallOnly))
        .hasMessage("French real volume (log/conventional-mid) needs the diameter of the middle");
    assertThatThrownBy(() -> LogConventions.brereton().scale(smallOnly))
        .hasMessage("Brereton (log/brereton) needs the diameter of the large end");
    Log middle = Log.ofMiddle(centimetres(30), metres(4));
    assertThatThrownBy(() -> LogConventions.jas().scale(middle))
        .hasMessage("JAS (log/jas) needs the diameter of the small end");
    assertThatThrownBy(() -> GirthRules.hoppus().scale(smallOnly))
        .hasMessage("Hoppus (log/hoppus) needs the girth or the diameter of the middle");
    assertThatThrownBy(() -> GirthRules.twoThirds().scale(middle))
        .hasMessage("Two-thirds rule (log/two-thirds) needs one diameter of the small end");
  }

  @Test
  void classesOfTheSwedishMeasureAreWholeMillimetres() {
    for (double millimetres : new double[] {1, 100}) {
      Quantity<Length> width = Measures.of(millimetres, ForestUnits.MILLIMETRE);
      assertThat(LogConventions.swedishTopClassBottom(width).name())
          .contains((int) millimetres + " mm");
    }
    for (double millimetres : new double[] {0, 0.5, 101, 10.4, -10}) {
      Quantity<Length> width = Measures.of(millimetres, ForestUnits.MILLIMETRE);
      assertThatThrownBy(() -> LogConventions.swedishTopClassMiddle(width))
          .hasMessage("classes of " + millimetres + " mm, allowed [1, 100] mm, whole numbers");
    }
    assertThatThrownBy(() -> LogConventions.swedishTopClassMiddle(NAN))
        .hasMessage("classes of NaN mm, allowed [1, 100] mm, whole numbers");
    assertThat(LogConventions.swedishTopClassBottom(metres(0.01)).name())
        .isEqualTo("Swedish top measure, bottom of classes of 10 mm");
  }

  @Test
  void roundingsAreSaidInWords() {
    assertThat(LogConventions.britishMid().roundings())
        .containsExactly(
            "length down to 0.1 m, from 10 m to 1 m", "each middle diameter down to 1 cm");
    assertThat(LogConventions.germanMid().roundings())
        .containsExactly(
            "each middle diameter down to 1 cm",
            "mean middle diameter down to 1 cm",
            "result to the nearest 0.01 m3");
    assertThat(LogConventions.southSea().roundings())
        .containsExactly(
            "length down to 0.2 m",
            "each diameter down to 2 cm",
            "mean diameter down to 1 cm",
            "result to the nearest 0.001 m3");
    assertThat(LogConventions.jas().roundings())
        .containsExactly(
            "each diameter down to 1 cm, from 14 cm to 2 cm",
            "smallest diameter 2 cm more for every full 6 cm (from 40 cm on 8 cm) to the largest",
            "result to the nearest 0.001 m3");
    assertThat(LogConventions.gb4814().roundings())
        .containsExactly(
            "result to the nearest 0.0001 m3 below 8 cm",
            "result to the nearest 0.001 m3 from 8 cm");
    assertThat(LogConventions.frenchGirth().roundings())
        .containsExactly(
            "length down to 0.1 m",
            "middle girth down to 0.01 m",
            "result to the nearest 0.001 m3");
    assertThat(LogConventions.radiusClasses().roundings())
        .containsExactly("each radius to the nearest 1 cm");
    assertThat(LogConventions.swedishTopClassMiddle(centimetres(2)).roundings())
        .containsExactly("each small end diameter to the middle of its class of 2 cm");
    assertThat(LogConventions.gost2708Interpolated().roundings())
        .containsExactly(
            "linear between the printed cells", "over 13.5 m two parts, the upper down to 0.5 m");
    for (ConventionRule rule :
        List.of(
            GirthRules.hoppus(),
            LogConventions.brereton(),
            LogConventions.hiragoku(),
            GirthRules.twoThirds(),
            LogConventions.czechPine())) {
      assertThat(rule.roundings()).as(rule.name()).isEmpty();
      assertThat(rule).hasToString(rule.name());
    }
  }
}
