package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mensuration.units.ForestUnits.CUBIC_METRE;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;

import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.Formula;
import org.mensuration.internal.log.Comparisons;
import org.mensuration.log.ConventionRule;
import org.mensuration.log.Log;
import org.mensuration.log.RuleComparison;
import org.mensuration.log.ScaleRule;
import org.mensuration.log.SolidRule;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.quantity.LogScale;

/** A log by every rule at once. */
class RuleComparisonTest {
  private static final Log LOG =
      Log.of(inches(14), inches(12), feet(16)).withMiddle(inches(13)).withBark(BarkBasis.UNDER);

  @Test
  void everyRuleHasItsLine() {
    RuleComparison comparison = LogRules.compare(LOG);
    assertThat(comparison.log()).isEqualTo(LOG);
    assertThat(comparison.lines())
        .hasSize(ComparedRules.SOLIDS.size() + ComparedRules.scales().size());
    assertThat(comparison.lines().stream().map(RuleComparison.Line::title)).doesNotHaveDuplicates();
    assertThat(
            comparison.solids().size()
                + comparison.scales().size()
                + comparison.notApplicable().size())
        .isEqualTo(comparison.lines().size());
  }

  @Test
  void theFiguresAreThoseOfTheRules() {
    RuleComparison comparison = LogRules.compare(LOG);
    assertThat(scale(comparison, "board/doyle")).isEqualTo(64);
    assertThat(scale(comparison, "board/scribner-decimal-c")).isEqualTo(80);
    assertThat(scale(comparison, "board/international-quarter-table")).isEqualTo(95);
    assertThat(comparison.solids())
        .filteredOn(line -> line.id().equals("log/smalian"))
        .singleElement()
        .satisfies(
            line -> {
              assertThat(in(line.measured().volume(), CUBIC_METRE))
                  .isEqualTo(in(LogRules.smalian().volume(LOG), CUBIC_METRE));
              assertThat(line.measured().bark()).isEqualTo(BarkBasis.UNDER);
              assertThat(line.title()).isEqualTo("Smalian volume");
            });
    assertThat(comparison.scales())
        .allSatisfy(line -> assertThat(line.scale().bark()).isEqualTo(BarkBasis.UNDER));
  }

  private static double scale(RuleComparison comparison, String id) {
    return comparison.scales().stream()
        .filter(line -> line.id().equals(id))
        .collect(Collectors.toList())
        .get(0)
        .scale()
        .amount();
  }

  @Test
  void whatDoesNotApplySaysWhy() {
    RuleComparison comparison = LogRules.compare(Log.of(inches(3.5), feet(16)));
    assertThat(why(comparison, "log/huber"))
        .isEqualTo("Huber volume (log/huber) needs the diameter of the middle");
    assertThat(why(comparison, "board/doyle"))
        .startsWith("board/doyle: D = 3.5 in, allowed [4, ∞) in");
    assertThat(why(comparison, "board/scribner-decimal-c"))
        .contains("D = 3.5 in, allowed [6, 20], whole numbers");
    assertThat(comparison.scales().stream().map(RuleComparison.Line::id))
        .contains("board/international-quarter", "board/vermont", "board/roy");
    assertThat(comparison.toString())
        .contains("\nDoyle: does not apply, board/doyle: D = 3.5 in")
        .contains("\nVermont rule: 8.16")
        .contains("Cylinder of the small end: ");
  }

  @Test
  void anOddLogIsComputedAndSaidSoInItsLines() {
    Log odd =
        Log.of(inches(16), inches(12), feet(16)).withMiddle(inches(16.4)).withBark(BarkBasis.UNDER);
    RuleComparison comparison = LogRules.compare(odd);
    assertThat(comparison.toString())
        .contains(
            "\nNewton volume: 0.6078274181",
            " m³; the middle of 41.66 cm is larger than the large end of 40.64 cm;")
        .contains("\nDoyle: 64.0 bf\n");
    String far = why(LogRules.compare(odd.withMiddle(inches(19))), "board/doyle");
    assertThat(far)
        .startsWith(
            "board/doyle: diameter of the middle = 19 in, allowed at most 17.60 in, a tenth or 1 cm"
                + " above the large end of 16.00 in");
  }

  private static String why(RuleComparison comparison, String id) {
    return comparison.notApplicable().stream()
        .filter(line -> line.id().equals(id))
        .collect(Collectors.toList())
        .get(0)
        .why();
  }

  @Test
  void conventionsGoByTheirNames() {
    RuleComparison comparison = LogRules.compare(LOG);
    for (ConventionRule convention : ComparedRules.CONVENTIONS) {
      assertThat(comparison.lines())
          .filteredOn(line -> line.title().equals(convention.name()))
          .singleElement()
          .satisfies(line -> assertThat(line.id()).isEqualTo(convention.formula().id()));
    }
    assertThat(comparison.scales())
        .filteredOn(line -> line.title().equals(LogConventions.jas().name()))
        .singleElement()
        .satisfies(line -> assertThat(line.scale()).isEqualTo(LogConventions.jas().scale(LOG)));
  }

  @Test
  void onlyRefusalsAreCaught() {
    ScaleRule broken =
        new ScaleRule() {
          @Override
          public Formula formula() {
            return LogRules.doyle().formula();
          }

          @Override
          public LogScale scale(Log log) {
            throw new IllegalStateException("a defect of the rule");
          }
        };
    assertThatThrownBy(() -> Comparisons.of(LOG, List.of(), List.of(broken)))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("a defect of the rule");
  }

  @Test
  void everyRuleOfTheFrontDoorIsCompared() throws ReflectiveOperationException {
    List<Object> compared = new ArrayList<>(ComparedRules.SOLIDS);
    compared.addAll(ComparedRules.scales());
    List<Method> methods = new ArrayList<>(List.of(LogRules.class.getMethods()));
    methods.addAll(List.of(LogConventions.class.getMethods()));
    methods.addAll(List.of(GirthRules.class.getMethods()));
    int rules = 0;
    for (Method method : methods) {
      boolean rule =
          SolidRule.class.isAssignableFrom(method.getReturnType())
              || ScaleRule.class.isAssignableFrom(method.getReturnType());
      if (rule && method.getParameterCount() == 0) {
        assertThat(compared).as(method.getName()).contains(method.invoke(null));
        rules++;
      }
    }
    assertThat(rules).isEqualTo(compared.size());
  }
}
