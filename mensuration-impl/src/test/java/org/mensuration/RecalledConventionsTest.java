package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.log.ConventionRule;
import org.mensuration.log.Log;
import org.mensuration.log.LogReadings;
import org.mensuration.log.RoundingStep;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.source.Citation;
import org.mensuration.source.Standing;
import org.mensuration.units.ForestUnits;

/** Rules that are recalled, and what every convention says of its sources. */
class RecalledConventionsTest {
  private static final Log LOG =
      Log.of(centimetres(36), centimetres(30), metres(6)).withBark(BarkBasis.UNDER);

  private static double formula(String id, double... inputs) {
    return Catalogues.standard().formula(id).apply(inputs);
  }

  private static double amount(ConventionRule rule, Log log) {
    return rule.scale(log).amount();
  }

  @Test
  void theNationalCubicScaleRoundsInchesAndTenths() {
    ConventionRule rule = LogConventions.nationalCubic();
    Log log = Log.of(inches(18.4), inches(12.5), feet(16)).withBark(BarkBasis.UNDER);
    // 0.002727 (13² + 18²) 16 = 21.51
    assertThat(amount(rule, log)).isEqualTo(21.5);
    assertThat(rule.scale(log).unit()).isEqualTo("ft3");
    assertThat(rule.steps(LogReadings.of(log)))
        .containsExactly(
            new RoundingStep("large end diameter", 18.4, 18, "in"),
            new RoundingStep("small end diameter", 12.5, 13, "in"),
            new RoundingStep("result", formula("log/national-cubic", 18, 13, 16), 21.5, "ft3"));
    assertThat(rule.roundings())
        .containsExactly(
            "each diameter to the nearest 1 in",
            "of two readings of an end the halves one up and one down, their mean down to 1 in",
            "result to the nearest 0.1 ft3");
    // Inches and feet given in metric units fall into the same classes.
    Log metric =
        Log.of(centimetres(18.4 * 2.54), centimetres(12.5 * 2.54), metres(16 * 0.3048))
            .withBark(BarkBasis.UNDER);
    assertThat(amount(rule, metric)).isEqualTo(21.5);
    assertThatThrownBy(() -> rule.scale(Log.of(inches(18), inches(12), feet(20.5))))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("National forest cubic scale, L = 20.5 ft, allowed (0, 20] ft");
    assertThatThrownBy(() -> rule.scale(Log.of(inches(12), inches(18), feet(16))))
        .hasMessageContaining("allowed d ≤ D");
    assertThatThrownBy(() -> rule.scale(Log.of(inches(12), feet(16))))
        .hasMessage(
            "National forest cubic scale (log/national-cubic) needs the diameter of the large end");
    assertThatThrownBy(() -> rule.scale(log.withBark(BarkBasis.OVER)))
        .hasMessageContaining("takes readings under bark");
  }

  @Test
  void twoReadingsOfAnEndAreTakenAsRegion6Says() {
    // 20.5 and 23.5 in are 21 and 23 or 20 and 24; 20.5 and 24 in are 21 and 24, 22.5, 22.
    for (double second : new double[] {23.5, 24}) {
      LogReadings readings =
          LogReadings.ends(
              List.of(inches(20.5), inches(second)), List.of(inches(20), inches(20)), feet(16));
      assertThat(LogConventions.nationalCubic().steps(readings))
          .contains(
              new RoundingStep("mean large end diameter", (20.5 + second) / 2, 22, "in"),
              new RoundingStep("mean small end diameter", 20, 20, "in"));
      assertThat(LogConventions.nationalCubic().scale(readings).amount())
          .isEqualTo(Math.rint(formula("log/national-cubic", 22, 20, 16) * 10) / 10);
    }
    assertThatThrownBy(
            () ->
                LogConventions.nationalCubic()
                    .scale(
                        LogReadings.ends(
                            List.of(inches(20), inches(20), inches(20)),
                            List.of(inches(20)),
                            feet(16))))
        .hasMessageEndingWith("needs one or two diameters of the large end");
    assertThatThrownBy(
            () ->
                LogConventions.nationalCubic()
                    .scale(
                        LogReadings.ends(
                            List.of(inches(0.2), inches(0.3)), List.of(inches(20)), feet(16))))
        .hasMessageContaining("D = 0.25 in, allowed mean large end diameter above 0");
  }

  @Test
  void wholeInchesAndFeetInMetresGiveTheSameCubicScale() {
    ConventionRule rule = LogConventions.nationalCubic();
    for (int inch = 4; inch <= 60; inch++) {
      for (int foot = 1; foot <= 20; foot++) {
        Log natively = Log.of(inches(inch + 2), inches(inch), feet(foot));
        Log metric =
            Log.of(metres((inch + 2) * 0.0254), metres(inch * 0.0254), metres(foot * 0.3048));
        assertThat(amount(rule, metric)).isEqualTo(amount(rule, natively)).isPositive();
      }
    }
  }

  @Test
  void theThreeDimensionalRuleNeedsTaper() {
    assertThat(amount(LogConventions.threeDimensional(), LOG))
        .isEqualTo(formula("log/three-dimensional", 36, 30, 6));
    assertThatThrownBy(
            () ->
                LogConventions.threeDimensional()
                    .scale(Log.of(centimetres(30), centimetres(30), metres(6))))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("allowed d < D");
    assertThat(LogConventions.threeDimensional().roundings()).isEmpty();
  }

  @Property
  void theThreeDimensionalRuleExceedsTheCylinderOfItsSmallEnd(
      @ForAll @DoubleRange(min = 10, max = 80) double small,
      @ForAll @DoubleRange(min = 0.1, max = 20) double taper,
      @ForAll @DoubleRange(min = 1, max = 12) double length) {
    assertThat(formula("log/three-dimensional", small + taper, small, length))
        .isGreaterThan(0.00007854 * small * small * length);
  }

  @Test
  void theBritishTopRuleClassesAndTapers() {
    ConventionRule rule = LogConventions.britishTop();
    Log log = Log.of(centimetres(20.9), metres(10.9));
    assertThat(amount(rule, log)).isEqualTo(formula("log/british-top", 20, 10));
    // A taper of 1 in 120 makes 24 m of log 20 cm thicker, so its middle 10 cm.
    assertThat(formula("log/british-top", 20, 24)).isEqualTo(formula("log/huber", 30, 24));
    assertThat(rule.roundings())
        .containsExactly(
            "length down to 0.1 m, from 10 m to 1 m", "each small end diameter down to 1 cm");
  }

  @Test
  void germanLengthsAreCutWithTheirAllowance() {
    assertThat(in(LogConventions.germanAllowance(metres(16)), ForestUnits.METRE)).isEqualTo(0.16);
    assertThat(in(LogConventions.germanLengthToCut(metres(4)), ForestUnits.METRE)).isEqualTo(4.1);
    assertThat(in(LogConventions.germanLengthToCut(metres(19)), ForestUnits.METRE))
        .isEqualTo(19.19);
  }

  @Test
  void everyConventionSaysWhereItIsStated() {
    for (ConventionRule rule : ComparedRules.CONVENTIONS) {
      assertThat(rule.citations()).as(rule.name()).isNotEmpty();
    }
    List<ConventionRule> recalled =
        List.of(
            LogConventions.britishMid(),
            LogConventions.britishTop(),
            LogConventions.radiusClasses(),
            LogConventions.threeDimensional());
    for (ConventionRule rule : recalled) {
      assertThat(rule.citations())
          .as(rule.name())
          .extracting(Citation::standing)
          .containsOnly(Standing.FROM_MEMORY);
    }
    assertThat(LogConventions.nationalCubic().citations())
        .extracting(Citation::standing)
        .containsExactly(Standing.FROM_MEMORY, Standing.PUBLISHED);
    assertThat(LogConventions.jas().citations())
        .extracting(Citation::standing)
        .containsExactly(Standing.PUBLISHED, Standing.FROM_MEMORY);
    assertThat(LogConventions.germanMid().citations())
        .extracting(Citation::standing)
        .containsOnly(Standing.PUBLISHED);
    assertThat(GirthRules.hoppus().citations())
        .isEqualTo(GirthRules.hoppus().formula().citations());
  }
}
