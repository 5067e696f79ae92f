package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.cubicMetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.Formula;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.log.Log;
import org.mensuration.log.SolidRule;
import org.mensuration.units.ForestUnits;

class LogBiasTest {
  private static final List<SolidRule> RULES =
      List.of(
          LogRules.huber(),
          LogRules.smalian(),
          LogRules.newton(),
          LogRules.coneFrustum(),
          LogRules.meanDiameter(),
          LogRules.neiloidFrustum(),
          LogRules.bruceButt(),
          LogRules.hossfeld(),
          LogRules.simony(),
          LogRules.threeEighths(),
          LogRules.centroid(),
          LogRules.smallEndCylinder());

  private static double volume(SolidRule rule, Log log) {
    return in(rule.volume(log), ForestUnits.CUBIC_METRE);
  }

  /** A frustum as a crew would find it, every reading taken from the solid itself. */
  private static Log frustum(SolidRule rule, double exponent, double ratio) {
    Log log = Log.of(centimetres(60), centimetres(60 * ratio), metres(5));
    // The centroid may lie so near a third that one log cannot hold both readings.
    double[] places =
        rule.equals(LogRules.centroid())
            ? new double[] {LogRules.centroidShare(log)}
            : new double[] {0.25, 1.0 / 3, 0.5, 2.0 / 3, 0.75};
    for (double share : places) {
      log = log.withDiameterAt(share, at(exponent, ratio, share));
    }
    return log;
  }

  private static Quantity<Length> at(double exponent, double ratio, double share) {
    double tip = Math.pow(ratio, 2 / exponent);
    return centimetres(60 * Math.pow(1 - share * (1 - tip), exponent / 2));
  }

  @Property(tries = 200)
  void theBiasIsWhatTheRuleGivesOnTheSolidItself(
      @ForAll @DoubleRange(min = 0.5, max = 4) double exponent,
      @ForAll @DoubleRange(min = 0, max = 0.9) double ratio) {
    for (SolidRule rule : RULES) {
      Log log = frustum(rule, exponent, ratio);
      double truth = volume(LogRules.solidFrustum(exponent), log);
      assertThat(LogBias.percent(rule, exponent, ratio))
          .as(rule.formula().id())
          .isCloseTo(100 * (volume(rule, log) / truth - 1), within(1e-10));
    }
  }

  @Test
  void whatIsExactForASolidHasNoBiasOnIt() {
    for (double ratio : new double[] {0, 0.3, 0.8, 1}) {
      for (SolidRule exact : List.of(LogRules.huber(), LogRules.smalian(), LogRules.newton())) {
        assertThat(LogBias.percent(exact, 1, ratio)).isCloseTo(0, within(1e-13));
      }
      assertThat(LogBias.percent(LogRules.coneFrustum(), 2, ratio)).isCloseTo(0, within(1e-13));
      assertThat(LogBias.percent(LogRules.neiloidFrustum(), 3, ratio)).isCloseTo(0, within(1e-13));
      assertThat(LogBias.percent(LogRules.newton(), 3, ratio)).isCloseTo(0, within(1e-13));
    }
  }

  @Property(tries = 200)
  void smalianIsTwiceAsFarOffAsHuberAndTheOtherWay(
      @ForAll @IntRange(min = 1, max = 3) int exponent,
      @ForAll @DoubleRange(min = 0, max = 1) double ratio) {
    double huber = LogBias.percent(LogRules.huber(), exponent, ratio);
    double smalian = LogBias.percent(LogRules.smalian(), exponent, ratio);
    assertThat(smalian).isCloseTo(-2 * huber, within(2e-13));
    assertThat(LogBias.percent(LogRules.newton(), exponent, ratio))
        .isCloseTo((smalian + 2 * huber) / 3, within(2e-13));
  }

  @Test
  void theErrorOfTheSumIsNotTheMeanErrorOfTheSections() {
    // A neiloid in n sections: 1/n² by Smalian, half of it the other way by Huber.
    assertThat(LogBias.percentOfSum(LogRules.smalian(), 3, 5)).isCloseTo(4, within(1e-12));
    assertThat(LogBias.percentOfSum(LogRules.huber(), 3, 5)).isCloseTo(-2, within(1e-12));
    assertThat(LogBias.percentOfSum(LogRules.meanDiameter(), 2, 5)).isCloseTo(-1, within(1e-12));
    // Published bounds, Cruz de Leon and Uranga-Valencia 2013, abstract: 13.5 and 27 per cent for
    // five sections, 7 and 14 for ten.
    assertThat(LogBias.meanPercentOfSections(LogRules.huber(), 3, 5))
        .isCloseTo(13.413, within(0.001))
        .isLessThan(13.5);
    assertThat(LogBias.meanPercentOfSections(LogRules.smalian(), 3, 5))
        .isCloseTo(26.826, within(0.001))
        .isLessThan(27);
    assertThat(LogBias.meanPercentOfSections(LogRules.huber(), 3, 10))
        .isCloseTo(6.954, within(0.001))
        .isLessThan(7);
    assertThat(LogBias.meanPercentOfSections(LogRules.smalian(), 3, 10))
        .isCloseTo(13.907, within(0.001))
        .isLessThan(14);
  }

  @Test
  void sectionsOfASolidShowTheBiasOfTheirSum() {
    for (int sections : new int[] {1, 4, 7}) {
      double huber = 0;
      double smalian = 0;
      for (int i = 1; i <= sections; i++) {
        double small = Math.pow((i - 1) / (double) sections, 1.5);
        double large = Math.pow(i / (double) sections, 1.5);
        double middle = Math.pow((i - 0.5) / sections, 1.5);
        huber += middle * middle / sections;
        smalian += (small * small + large * large) / 2 / sections;
      }
      assertThat(LogBias.percentOfSum(LogRules.huber(), 3, sections))
          .isCloseTo(100 * (huber * 4 - 1), within(1e-12));
      assertThat(LogBias.percentOfSum(LogRules.smalian(), 3, sections))
          .isCloseTo(100 * (smalian * 4 - 1), within(1e-12));
    }
  }

  @Test
  void aRuleWithoutABiasIsNamed() {
    assertThatThrownBy(() -> LogBias.percent(LogRules.sorenson(), 2, 0.5))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("no bias is known for Sorenson small-end rule (log/sorenson)");
    assertThatThrownBy(() -> LogBias.percentOfSum(LogRules.newton(), 2, 5))
        .hasMessage("no bias of the sum of sections is known for Newton volume (log/newton)");
    assertThatThrownBy(() -> LogBias.meanPercentOfSections(LogRules.newton(), 2, 5))
        .hasMessage("no error of single sections is known for Newton volume (log/newton)");
  }

  @Test
  void aRuleOfAnotherTopicHasNoBias() {
    SolidRule board =
        new SolidRule() {
          @Override
          public Formula formula() {
            return LogRules.doyle().formula();
          }

          @Override
          public Quantity<Volume> volume(Log log) {
            return cubicMetres(1);
          }
        };
    assertThatThrownBy(() -> LogBias.formula(board))
        .hasMessage("no bias is known for Doyle (board/doyle)");
  }

  @Test
  void outsideIsRefused() {
    assertThatThrownBy(() -> LogBias.percent(LogRules.huber(), 2, 1.1))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("bias/huber: q = 1.1, allowed [0, 1]");
    assertThatThrownBy(() -> LogBias.percent(LogRules.huber(), Double.NaN, 0.5))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> LogBias.percentOfSum(LogRules.huber(), 2, 0))
        .hasMessageContaining("n = 0, allowed [1, 30], whole numbers");
    assertThat(LogBias.formula(LogRules.huber()).id()).isEqualTo("bias/huber");
  }
}
