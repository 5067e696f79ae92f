package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.log.Log;
import org.mensuration.log.SolidRule;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.quantity.LogScale;
import org.mensuration.units.ForestUnits;

class LogRulesTest {
  private static double cubicMetres(SolidRule rule, Log log) {
    return in(rule.volume(log), ForestUnits.CUBIC_METRE);
  }

  private static Log log(double large, double middle, double small, double length) {
    return Log.of(centimetres(large), centimetres(small), metres(length))
        .withMiddle(centimetres(middle));
  }

  @Test
  void typedCallsAgreeWithTheirFormulas() {
    Log log = log(46, 40, 31.5, 5.2);
    Catalogues.standard();
    assertThat(cubicMetres(LogRules.huber(), log))
        .isEqualTo(LogRules.huber().formula().apply(40, 5.2));
    assertThat(cubicMetres(LogRules.smalian(), log))
        .isEqualTo(LogRules.smalian().formula().apply(46, 31.5, 5.2));
    assertThat(cubicMetres(LogRules.newton(), log))
        .isEqualTo(LogRules.newton().formula().apply(46, 40, 31.5, 5.2));
    assertThat(cubicMetres(LogRules.coneFrustum(), log))
        .isEqualTo(LogRules.coneFrustum().formula().apply(46, 31.5, 5.2));
    Log sawlog = Log.of(inches(14), feet(16));
    assertThat(LogRules.doyle().scale(sawlog).amount()).isEqualTo(100);
    assertThat(LogRules.internationalQuarter().scale(sawlog).amount())
        .isEqualTo(LogRules.internationalQuarter().formula().apply(14, 16));
    // (0.88 · 14² - 1.52 · 14 - 1.36) 19/21, the four sections of the 1/8-inch rule summed by hand
    assertThat(LogRules.internationalQuarter().scale(sawlog).amount())
        .isCloseTo((0.88 * 196 - 1.52 * 14 - 1.36) * 19 / 21, within(1e-12));
  }

  @Test
  void theTradesCommonExampleOfASection() {
    // Common practice, no source: 7 m between 65 cm and 50.75 cm hold 1.869 m³ by Smalian.
    assertThat(
            cubicMetres(LogRules.smalian(), Log.of(centimetres(65), centimetres(50.75), metres(7))))
        .isCloseTo(1.869, within(0.0005));
  }

  @Property
  void newtonIsAThirdOfSmalianAndTwoHubers(
      @ForAll @DoubleRange(min = 1, max = 200) double large,
      @ForAll @DoubleRange(min = 0, max = 1) double share,
      @ForAll @DoubleRange(min = 0.1, max = 30) double length) {
    Log log = log(large, large * (1 + share) / 2, large * share, length);
    double smalian = cubicMetres(LogRules.smalian(), log);
    double huber = cubicMetres(LogRules.huber(), log);
    assertThat(cubicMetres(LogRules.newton(), log))
        .isCloseTo((smalian + 2 * huber) / 3, within(1e-14 * smalian));
  }

  @Property
  void volumeScalesWithTheSquareOfDiameterAndWithLength(
      @ForAll @DoubleRange(min = 1, max = 100) double large,
      @ForAll @DoubleRange(min = 0, max = 1) double share,
      @ForAll @DoubleRange(min = 0.1, max = 30) double length) {
    Log once = log(large, large * (1 + share) / 2, large * share, length);
    Log wide = log(2 * large, large * (1 + share), 2 * (large * share), length);
    Log twice = log(large, large * (1 + share) / 2, large * share, 2 * length);
    for (SolidRule rule :
        new SolidRule[] {
          LogRules.huber(), LogRules.smalian(), LogRules.newton(), LogRules.coneFrustum()
        }) {
      double volume = cubicMetres(rule, once);
      assertThat(cubicMetres(rule, wide)).isCloseTo(4 * volume, within(1e-14 * volume));
      assertThat(cubicMetres(rule, twice)).isCloseTo(2 * volume, within(1e-14 * volume));
    }
  }

  @Property
  void aCylinderIsTheSameByEveryRule(
      @ForAll @DoubleRange(min = 0.1, max = 200) double diameter,
      @ForAll @DoubleRange(min = 0.1, max = 30) double length) {
    Log log = log(diameter, diameter, diameter, length);
    double huber = cubicMetres(LogRules.huber(), log);
    assertThat(cubicMetres(LogRules.smalian(), log)).isCloseTo(huber, within(1e-15 * huber * 4));
    assertThat(cubicMetres(LogRules.newton(), log)).isCloseTo(huber, within(1e-15 * huber * 4));
    assertThat(cubicMetres(LogRules.coneFrustum(), log))
        .isCloseTo(huber, within(1e-15 * huber * 4));
  }

  @Property
  void feetAndMetresGiveTheSame(
      @ForAll @DoubleRange(min = 4, max = 60) double large,
      @ForAll @DoubleRange(min = 0, max = 1) double share,
      @ForAll @DoubleRange(min = 1, max = 60) double length) {
    Log imperial = Log.of(inches(large), inches(large * share), feet(length));
    Log metric =
        Log.of(
            centimetres(large * 2.54), centimetres(large * share * 2.54), metres(length * 0.3048));
    double volume = cubicMetres(LogRules.smalian(), metric);
    assertThat(cubicMetres(LogRules.smalian(), imperial)).isCloseTo(volume, within(1e-14 * volume));
  }

  @Property
  void wholeInchesAndFeetGivenInMetresScaleAlike(
      @ForAll @IntRange(min = 4, max = 60) int diameter,
      @ForAll @IntRange(min = 1, max = 40) int length) {
    Log inFeet = Log.of(inches(diameter), feet(length));
    Log inMetres =
        Log.of(
            metres(in(inches(diameter), ForestUnits.METRE)),
            metres(in(feet(length), ForestUnits.METRE)));
    double scale = LogRules.internationalQuarter().scale(inFeet).amount();
    assertThat(LogRules.internationalQuarter().scale(inMetres).amount())
        .isCloseTo(scale, within(1e-12 * scale));
    assertThat(LogRules.doyle().scale(inFeet).amount())
        .isEqualTo((diameter - 4) * (diameter - 4) * length / 16.0);
  }

  @Property
  void boardFeetGrowWithTheDiameter(
      @ForAll @DoubleRange(min = 4, max = 59) double diameter,
      @ForAll @DoubleRange(min = 1, max = 40) double length) {
    for (var rule :
        new org.mensuration.log.ScaleRule[] {LogRules.doyle(), LogRules.internationalQuarter()}) {
      assertThat(rule.scale(Log.of(inches(diameter + 1), feet(length))).amount())
          .isGreaterThan(rule.scale(Log.of(inches(diameter), feet(length))).amount());
    }
  }

  @Property
  void aMiddleBetweenTheEndsGivesAVolumeBetweenTheirs(
      @ForAll @DoubleRange(min = 1, max = 100) double large,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    Assume.that(share < 1);
    Log log = log(large, large * (1 + share) / 2, large * share, 4);
    assertThat(cubicMetres(LogRules.newton(), log))
        .isBetween(
            cubicMetres(LogRules.huber(), Log.ofMiddle(centimetres(large * share), metres(4))),
            cubicMetres(LogRules.huber(), Log.ofMiddle(centimetres(large), metres(4))));
  }

  @Test
  void aMissingMeasurementNamesTheRuleAndWhatItNeeds() {
    Log log = Log.of(centimetres(46), centimetres(31.5), metres(5.2));
    assertThatThrownBy(() -> LogRules.newton().volume(log))
        .hasMessage("Newton volume (log/newton) needs the diameter of the middle");
    assertThatThrownBy(() -> LogRules.huber().volume(log))
        .hasMessage("Huber volume (log/huber) needs the diameter of the middle");
    Log middleOnly = Log.ofMiddle(centimetres(40), metres(4));
    assertThatThrownBy(() -> LogRules.smalian().volume(middleOnly))
        .hasMessage("Smalian volume (log/smalian) needs the diameter of the large end");
    assertThatThrownBy(() -> LogRules.doyle().scale(middleOnly))
        .hasMessage("Doyle (board/doyle) needs the diameter of the small end");
  }

  @Test
  void belowTheRulesZeroIsRefused() {
    assertThatThrownBy(() -> LogRules.doyle().scale(Log.of(inches(3.9), feet(16))))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("board/doyle: D = 3.9 in, allowed [4, ∞) in (Doyle; ");
  }

  @Test
  void scalesOfTwoRulesDoNotAdd() {
    Log log = Log.of(inches(14), feet(16)).withBark(BarkBasis.UNDER);
    LogScale doyle = LogRules.doyle().scale(log);
    LogScale international = LogRules.internationalQuarter().scale(log);
    assertThat(doyle.bark()).isEqualTo(BarkBasis.UNDER);
    assertThatThrownBy(() -> doyle.plus(international))
        .hasMessageContaining("Doyle")
        .hasMessageContaining("International 1/4-inch by four-foot sections");
  }

  @Test
  void logsAreEqualByWhatTheyMeasure() {
    Log metric = Log.of(centimetres(50), metres(4));
    assertThat(Log.of(metres(0.5), centimetres(400))).isEqualTo(metric);
    assertThat(Log.of(metres(0.5), centimetres(400))).hasSameHashCodeAs(metric);
    assertThat(metric.withMiddle(centimetres(55))).isNotEqualTo(metric);
    assertThat(metric.withBark(BarkBasis.OVER)).isNotEqualTo(metric);
  }
}
