package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.DEGREE;
import static org.mensuration.units.ForestUnits.FOOT;
import static org.mensuration.units.ForestUnits.INCH;
import static org.mensuration.units.Measures.degrees;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.log.Log;
import org.mensuration.log.ScaleRule;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.quantity.LogScale;
import org.mensuration.scaling.AmountRounding;
import org.mensuration.scaling.Defect;
import org.mensuration.scaling.LocatedDefect;
import org.mensuration.scaling.LogScaler;
import org.mensuration.scaling.LogToScale;
import org.mensuration.scaling.LongLogs;
import org.mensuration.scaling.Minimums;
import org.mensuration.scaling.Roundings;
import org.mensuration.scaling.ScaledLog;
import org.mensuration.scaling.ScalingConvention;
import org.mensuration.scaling.ScalingStep;
import org.mensuration.scaling.SizeClass;
import org.mensuration.scaling.Split;
import org.mensuration.scaling.StepRounding;
import org.mensuration.scaling.Taper;

/** What defects take off, how it is rounded, and when a log is a cull. */
class ScalingDefectsTest {
  private static final ScalingConvention PLAIN =
      ScalingConvention.of("test", SizeClass.nearest(inches(1)), SizeClass.full(feet(1)));
  private static final Log LOG = Log.of(inches(14), feet(16));

  private static ScaledLog doyle(Defect... defects) {
    return Scaling.scaler(PLAIN, LogRules.doyle()).scale(LOG, defects);
  }

  private static double taken(ScaledLog scaled) {
    assertThat(scaled.deductions()).hasSize(1);
    assertThat(scaled.net().amount())
        .isCloseTo(
            scaled.gross().amount() - scaled.deductions().get(0).amount().amount(), within(1e-12));
    return scaled.deductions().get(0).amount().amount();
  }

  @Test
  void everyShareIsTakenFromTheScaleOfTheLog() {
    // Doyle scales 14 in by 16 ft at 100 ft.
    assertThat(taken(doyle(new Defect.LengthCut(feet(4))))).isEqualTo(25);
    assertThat(taken(doyle(new Defect.LengthCut(metres(1.2192))))).isCloseTo(25, within(1e-12));
    assertThat(taken(doyle(new Defect.Sector(degrees(90), feet(8))))).isEqualTo(12.5);
    assertThat(taken(doyle(new Defect.Percent(37.5)))).isEqualTo(37.5);
    // (5 + 1)(6 + 1) / 13² over half the length.
    assertThat(taken(doyle(new Defect.InteriorRot(inches(5), inches(6), feet(8)))))
        .isCloseTo(100 * 42.0 / 169 / 2, within(1e-12));
    assertThat(taken(doyle(new Defect.Sweep(inches(5.5))))).isEqualTo(25);
    assertThat(taken(doyle(new Defect.Sweep(inches(2))))).isZero();
    assertThat(taken(doyle(new Defect.Crook(inches(7), feet(4))))).isEqualTo(12.5);
    // Doyle at 12 in scales 64 ft.
    assertThat(taken(doyle(new Defect.DiameterCut(inches(2))))).isEqualTo(36);
    assertThat(taken(doyle(new Defect.DiameterCut(inches(0))))).isZero();
  }

  @Test
  void theSquaredDefectIsTakenFromRulesOfScribnersKind() {
    Defect rot = new Defect.Squared(inches(6), inches(8), feet(16));
    ScaledLog scaled =
        Scaling.scaler(PLAIN, LogRules.scribnerFormula()).scale(Log.of(inches(20), feet(16)), rot);
    // 0.79 · 400 - 40 - 4 less (6 + 1)(8 + 1) 16/15
    assertThat(scaled.net().amount()).isCloseTo(272 - 67.2, within(1e-12));
    assertThat(scaled.net().rule()).isEqualTo("Scribner formula");
    for (ScaleRule rule : List.of(LogRules.knouf(), LogRules.ropp())) {
      assertThat(taken(Scaling.scaler(PLAIN, rule).scale(Log.of(inches(20), feet(16)), rot)))
          .isEqualTo(67.2);
    }
    assertThatThrownBy(() -> doyle(rot))
        .hasMessageContaining("deduction/squared-defect: its feet are of Scribner's kind")
        .hasMessageContaining("Doyle (board/doyle)")
        .hasMessageContaining("board/scribner-decimal-c");
  }

  @Test
  void statedFeetMustBeThoseOfTheRule() {
    LogScale doyle = new LogScale("Doyle", 12, "bf", BarkBasis.UNKNOWN);
    assertThat(taken(doyle(new Defect.Stated(doyle)))).isEqualTo(12);
    LogScale scribner = new LogScale("Scribner formula", 12, "bf", BarkBasis.UNKNOWN);
    assertThatThrownBy(() -> doyle(new Defect.Stated(scribner)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Doyle")
        .hasMessageContaining("Scribner formula");
    LogScale over = new LogScale("Doyle", 12, "bf", BarkBasis.OVER);
    assertThatThrownBy(() -> doyle(new Defect.Stated(over)))
        .hasMessageContaining("over bark")
        .hasMessageContaining("bark not stated");
  }

  @Test
  void eachDeductionIsRoundedByItself() {
    Roundings handbook =
        new Roundings(AmountRounding.none(), AmountRounding.nearest(1), AmountRounding.nearest(10));
    LogScaler scaler = Scaling.scaler(PLAIN.withRoundings(handbook), LogRules.doyle());
    ScaledLog scaled = scaler.scale(LOG, new Defect.Percent(12.5), new Defect.Percent(4.49));
    assertThat(scaled.deductions())
        .extracting(one -> one.amount().amount())
        .containsExactly(13.0, 4.0);
    assertThat(scaled.segments().get(0).net().amount()).isEqualTo(83);
    assertThat(scaled.net().amount()).isEqualTo(80);
    assertThat(scaled.steps())
        .contains(
            new ScalingStep("segment 1: per cent rounded", 12.5, 13, "bf"),
            new ScalingStep("net rounded", 83, 80, "bf"));
    assertThat(scaled.deductions().get(0).defect()).isEqualTo(new Defect.Percent(12.5));
  }

  @Test
  void theScaleOfASegmentIsRoundedBeforeDeductions() {
    Roundings fives =
        new Roundings(AmountRounding.nearest(5), AmountRounding.none(), AmountRounding.none());
    LogScaler scaler = Scaling.scaler(PLAIN.withRoundings(fives), LogRules.internationalQuarter());
    // The sum of sections is 134.82; the table prints 135.
    ScaledLog scaled = scaler.scale(LOG, new Defect.Percent(10), new Defect.DiameterCut(inches(2)));
    assertThat(scaled.gross().amount()).isEqualTo(135);
    assertThat(scaled.deductions().get(0).amount().amount()).isEqualTo(13.5);
    assertThat(scaled.deductions().get(1).amount().amount()).isEqualTo(40);
    assertThat(scaled.steps())
        .extracting(ScalingStep::what)
        .contains(
            "segment 1: scale rounded",
            "segment 1: reduced diameter to its class",
            "segment 1: reduced diameter, scale rounded");
  }

  @Test
  void defectsLieInTheirSegment() {
    LogScaler scaler =
        Scaling.scaler(
            PLAIN.withLongLogs(LongLogs.split(feet(16), Split.NEAR_EQUAL, Taper.even())),
            LogRules.doyle());
    Log log = Log.of(inches(20), inches(12), feet(32));
    ScaledLog scaled =
        scaler
            .scaleAll(
                List.of(
                    new LogToScale(
                        log, List.of(new LocatedDefect(2, new Defect.LengthCut(feet(4)))))))
            .get(0);
    assertThat(scaled.segments().get(0).deductions()).isEmpty();
    assertThat(scaled.segments().get(0).net().amount()).isEqualTo(64);
    assertThat(scaled.segments().get(1).deductions()).hasSize(1);
    assertThat(scaled.segments().get(1).net().amount()).isEqualTo(144 * 0.75);
    assertThat(scaled.net().amount()).isEqualTo(64 + 108);
    assertThat(scaler.scale(log, new Defect.LengthCut(feet(4))).segments().get(0).net().amount())
        .isEqualTo(48);
    LogToScale third =
        new LogToScale(log, List.of(new LocatedDefect(3, new Defect.LengthCut(feet(4)))));
    assertThatThrownBy(() -> scaler.scaleAll(List.of(third)))
        .hasMessage("log 1: test: length cut in segment 3, allowed 1 to 2");
    assertThatThrownBy(() -> new LocatedDefect(0, new Defect.Percent(1)))
        .hasMessage("segment 0, allowed from 1");
  }

  @Test
  void defectsBeyondTheLogAreRefusedByTheirFormula() {
    assertThatThrownBy(() -> doyle(new Defect.LengthCut(feet(17))))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("deduction/length-cut: l = 17 ft, allowed l ≤ L");
    assertThatThrownBy(() -> doyle(new Defect.InteriorRot(inches(13), inches(3), feet(4))))
        .hasMessageContaining("deduction/interior-share: W = 13 in, allowed W ≤ D - 2");
    assertThatThrownBy(() -> doyle(new Defect.Sector(degrees(361), feet(4))))
        .hasMessageContaining("deduction/sector: a = 361 deg, allowed [0, 360] deg");
    assertThatThrownBy(() -> doyle(new Defect.Sweep(inches(15))))
        .hasMessageContaining("deduction/sweep-share: S = 15 in, allowed S ≤ D");
    assertThatThrownBy(
            () ->
                Scaling.scaler(PLAIN, LogRules.doyle())
                    .scale(Log.of(inches(14), feet(14)), new Defect.Sweep(inches(3))))
        .hasMessage(
            "deduction/sweep-share: L = 14.0 ft, allowed 16 ft, the length that the rule is stated"
                + " for");
    assertThatThrownBy(() -> doyle(new Defect.DiameterCut(inches(14))))
        .hasMessageContaining("reduced diameter is 0.0 in, allowed above zero");
    assertThatThrownBy(() -> doyle(new Defect.DiameterCut(inches(11))))
        .hasMessageContaining("board/doyle: D = 3 in, allowed [4, ∞) in");
  }

  @Test
  void deductionsThatOverlapLeaveNothingAndSaySo() {
    ScaledLog scaled = doyle(new Defect.Percent(70), new Defect.Percent(60));
    assertThat(scaled.net().amount()).isZero();
    assertThat(scaled.cull()).isTrue();
    assertThat(scaled.steps())
        .last()
        .isEqualTo(new ScalingStep("segment 1: deductions exceed the scale", -30, 0, "bf"));
    assertThat(scaled.toString()).endsWith(", a cull");
    ScaledLog whole = doyle(new Defect.Percent(100));
    assertThat(whole.net().amount()).isZero();
    assertThat(whole.cull()).isTrue();
    assertThat(whole.steps()).noneMatch(step -> step.what().contains("exceed"));
  }

  @Test
  void aLogWithTooLittleLeftIsACull() {
    ScalingConvention third = PLAIN.withMinimums(Minimums.none().withNetShare(0.25));
    LogScaler scaler = Scaling.scaler(third, LogRules.doyle());
    ScaledLog cull = scaler.scale(LOG, new Defect.Percent(76));
    assertThat(cull.cull()).isTrue();
    assertThat(cull.net().amount()).isZero();
    assertThat(cull.gross().amount()).isEqualTo(100);
    assertThat(cull.steps())
        .last()
        .isEqualTo(new ScalingStep("cull test, least share 0.25 of 100.0 bf", 24, 0, "bf"));
    ScaledLog kept = scaler.scale(LOG, new Defect.Percent(75));
    assertThat(kept.cull()).isFalse();
    assertThat(kept.net().amount()).isEqualTo(25);
    assertThat(kept.steps()).last().matches(step -> !step.changed());
    // Without a cull test the same log keeps what is left of it.
    assertThat(doyle(new Defect.Percent(76)).cull()).isFalse();
    assertThat(doyle(new Defect.Percent(76)).net().amount()).isEqualTo(24);
  }

  @Test
  void theCullTestComesBeforeTheRoundingOfTheNet() {
    ScalingConvention tens =
        PLAIN
            .withMinimums(Minimums.none().withNetShare(0.25))
            .withRoundings(
                new Roundings(
                    AmountRounding.none(),
                    AmountRounding.none(),
                    new AmountRounding(10, StepRounding.DOWN)));
    ScaledLog scaled = Scaling.scaler(tens, LogRules.doyle()).scale(LOG, new Defect.Percent(74));
    assertThat(scaled.cull()).isFalse();
    assertThat(scaled.net().amount()).isEqualTo(20);
  }

  @Test
  void aCallersOwnRuleIsScaledLikeAnyOther() {
    ScaleRule own =
        new ScaleRule() {
          @Override
          public org.mensuration.formula.Formula formula() {
            return LogRules.doyle().formula();
          }

          @Override
          public LogScale scale(Log log) {
            return new LogScale("mine", 7, "bf", log.bark());
          }
        };
    LogScaler scaler = Scaling.scaler(PLAIN, own);
    assertThat(scaler.rule()).isSameAs(own);
    assertThat(scaler.convention()).isEqualTo(PLAIN);
    assertThat(scaler.scale(LOG).net()).isEqualTo(new LogScale("mine", 7, "bf", BarkBasis.UNKNOWN));
  }

  private static List<ScalingStep> ruleSteps(ScaleRule rule, double inches, double feet) {
    return Scaling.scaler(PLAIN, rule).scale(Log.of(inches(inches), feet(feet))).steps().stream()
        .filter(step -> step.what().contains("by the rule"))
        .collect(Collectors.toList());
  }

  @Test
  void theRoundingOfTheRuleItselfIsShownToo() {
    String what = "segment 1: rounded by the rule";
    assertThat(ruleSteps(LogRules.scribnerDecimalC(), 12, 16))
        .containsExactly(new ScalingStep(what, 78.4, 80, "bf"));
    assertThat(ruleSteps(LogRules.scribnerDecimalC(), 20, 8))
        .containsExactly(new ScalingStep(what, 139.992, 140, "bf"));
    assertThat(ruleSteps(LogRules.internationalQuarterTable(), 14, 16))
        .singleElement()
        .satisfies(
            step -> {
              assertThat(step.before())
                  .isCloseTo((0.88 * 196 - 1.52 * 14 - 1.36) * 19 / 21, within(1e-12));
              assertThat(step.after()).isEqualTo(135);
            });
    // Cells taken from print have no number before, nor has a rule that does not round.
    assertThat(ruleSteps(LogRules.scribnerDecimalC(), 20, 6)).isEmpty();
    assertThat(ruleSteps(LogRules.scribnerDecimalC(), 8, 8)).isEmpty();
    assertThat(ruleSteps(LogRules.internationalQuarterTable(), 15, 16)).isEmpty();
    assertThat(ruleSteps(LogRules.internationalQuarterTable(), 10, 18)).isEmpty();
    assertThat(ruleSteps(LogRules.doyle(), 14, 16)).isEmpty();
    assertThat(ruleSteps(LogRules.vermontSections(), 14, 12)).isEmpty();
  }

  @Test
  void noNumberIsNoMeasurement() {
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      LogScaler scaler = Scaling.scaler(PLAIN, LogRules.doyle());
      assertThatThrownBy(() -> scaler.scale(Log.of(Held.of(bad, INCH), feet(16))))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("test: diameter of the small end is ");
      assertThatThrownBy(() -> scaler.scale(Log.of(inches(14), Held.of(bad, FOOT))))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("test: length is ");
      assertThatThrownBy(() -> scaler.scale(Log.of(Held.of(bad, INCH), inches(14), feet(16))))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("test: diameter of the large end is ");
      assertThatThrownBy(() -> new Defect.LengthCut(Held.of(bad, FOOT)))
          .hasMessageContaining("length cut: length is ");
      assertThatThrownBy(() -> scaler.scale(LOG, new Defect.Sector(Held.of(bad, DEGREE), feet(1))))
          .isInstanceOf(OutOfDomainException.class);
      assertThatThrownBy(() -> Scaling.ofTwoReadings(Held.of(bad, INCH), inches(1), inches(1)))
          .hasMessageContaining("diameter is ");
    }
  }
}
