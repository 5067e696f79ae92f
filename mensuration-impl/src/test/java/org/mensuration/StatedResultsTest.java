package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.mensuration.uncertainty.StatedResult;

/** Results stated to the place of their uncertainty. */
class StatedResultsTest {

  /** JCGM 100:2008, clause 7.2.6, as quoted: three examples in mΩ, kHz and Ω. */
  @Test
  void theThreePrintedExamples() {
    assertThat(StatedResults.upward(0, 10.47, 2).standardUncertaintyText()).isEqualTo("11");
    assertThat(StatedResults.nearest(0, 28.05, 2).standardUncertaintyText()).isEqualTo("28");
    StatedResult resistance = StatedResults.nearest(10.05762, 0.027, 2);
    assertThat(resistance.estimateText()).isEqualTo("10.058");
    assertThat(resistance.standardUncertaintyText()).isEqualTo("0.027");
    assertThat(resistance.estimate()).isEqualTo(new BigDecimal("10.058"));
  }

  @Tag("locale")
  @ParameterizedTest
  @CsvSource({
    // the place follows the uncertainty, whatever the size of either
    "50000838.4, 31.7, 2, 50000838, 32",
    "50000838.4, 31.7, 1, 50000840, 30",
    "123456, 3400, 2, 123500, 3400",
    "123456, 3400, 1, 123000, 3000",
    "-0.00123456, 0.0000078, 1, -0.001235, 0.000008",
    "3, 0.2, 2, 3.00, 0.20",
    "3, 2, 2, 3.0, 2.0",
    // one digit more through rounding is one that is not known
    "12.345, 0.0996, 2, 12.34, 0.10",
    "12.345, 9.96, 2, 12, 10",
    "12.345, 9.94, 2, 12.3, 9.9",
    "14.9, 9.5, 1, 10, 10",
    "15.1, 9.5, 1, 20, 10",
    // halves: of the uncertainty up, of the estimate to even, both in decimal
    "1.005, 0.245, 2, 1.00, 0.25",
    "1.015, 0.245, 2, 1.02, 0.25",
    "-1.005, 0.235, 2, -1.00, 0.24",
    "2.675, 0.145, 2, 2.68, 0.15",
    // once, not by way of a further digit
    "0.6449, 0.1449, 2, 0.64, 0.14",
    "0.6449, 0.1449, 1, 0.6, 0.1",
    "0.449, 5.0, 1, 0, 5"
  })
  void toTheNearest(
      double estimate, double uncertainty, int digits, String stated, String statedUncertainty) {
    StatedResult result = StatedResults.nearest(estimate, uncertainty, digits);
    assertThat(result.estimateText()).isEqualTo(stated);
    assertThat(result.standardUncertaintyText()).isEqualTo(statedUncertainty);
  }

  @Test
  void sizesAtTheEndsOfTheNumbers() {
    StatedResult small = StatedResults.upward(1, Double.MIN_VALUE, 2);
    assertThat(small.standardUncertainty()).isEqualTo(new BigDecimal("4.9e-324"));
    assertThat(small.estimate()).isEqualByComparingTo(BigDecimal.ONE);
    StatedResult large = StatedResults.nearest(-1e308, 9.96e307, 2);
    assertThat(large.standardUncertainty()).isEqualTo(new BigDecimal("1.0e308"));
    assertThat(large.estimate()).isEqualTo(new BigDecimal("-1.0e308"));
  }

  @ParameterizedTest
  @CsvSource({
    "12.3456, 0.0301, 2, 12.346, 0.031",
    "12.3456, 0.0301, 1, 12.35, 0.04",
    "12.3456, 0.03, 2, 12.346, 0.030",
    "12.3456, 9.91, 2, 12, 10",
    "12.3456, 0.991, 2, 12.3, 1.0",
    "12.3456, 9.01, 1, 10, 10"
  })
  void upward(
      double estimate, double uncertainty, int digits, String stated, String statedUncertainty) {
    StatedResult result = StatedResults.upward(estimate, uncertainty, digits);
    assertThat(result.estimateText()).isEqualTo(stated);
    assertThat(result.standardUncertaintyText()).isEqualTo(statedUncertainty);
  }

  @Test
  void aReckonedUncertaintyThatMissesALimitByAnUlpIsOnIt() {
    assertThat(0.1 + 0.2).isNotEqualTo(0.3);
    assertThat(StatedResults.upward(1, 0.1 + 0.2, 2).standardUncertaintyText()).isEqualTo("0.30");
    double half = Math.nextDown(2.5);
    assertThat(StatedResults.nearest(1, half, 1).standardUncertaintyText()).isEqualTo("3");
    assertThat(StatedResults.nearest(1, 2.4999, 1).standardUncertaintyText()).isEqualTo("2");
  }

  /** Whatever it is given, the bounds that the words promise. */
  @Property(tries = 500)
  void keepsItsPromises(
      @ForAll @DoubleRange(min = -1e6, max = 1e6) double estimate,
      @ForAll @DoubleRange(min = 0.1, max = 1) @Scale(9) double fraction,
      @ForAll @IntRange(min = -6, max = 6) int power,
      @ForAll @IntRange(min = 1, max = 2) int digits) {
    double uncertainty = fraction * Math.pow(10, power);
    StatedResult nearest = StatedResults.nearest(estimate, uncertainty, digits);
    StatedResult upward = StatedResults.upward(estimate, uncertainty, digits);
    BigDecimal given = new BigDecimal(Double.toString(uncertainty));
    for (StatedResult result : new StatedResult[] {nearest, upward}) {
      BigDecimal half = result.standardUncertainty().ulp().divide(BigDecimal.valueOf(2));
      BigDecimal off = result.estimate().subtract(new BigDecimal(Double.toString(estimate))).abs();
      assertThat(result.standardUncertainty().precision()).isEqualTo(digits);
      assertThat(off).isLessThanOrEqualTo(half);
    }
    BigDecimal reach = given.multiply(new BigDecimal("1e-9"));
    BigDecimal raised = upward.standardUncertainty().subtract(given);
    assertThat(raised).isGreaterThanOrEqualTo(reach.negate());
    assertThat(raised).isLessThan(upward.standardUncertainty().ulp());
    assertThat(nearest.standardUncertainty().subtract(given).abs())
        .isLessThanOrEqualTo(
            nearest.standardUncertainty().ulp().divide(BigDecimal.valueOf(2)).add(reach));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.5, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesAnUncertaintyThatIsNone(double uncertainty) {
    assertThatThrownBy(() -> StatedResults.nearest(1, uncertainty, 2))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "stated result: standard uncertainty %s, wanted a finite number above 0", uncertainty);
    assertThatThrownBy(() -> StatedResults.upward(1, uncertainty, 2))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void refusesAnEstimateThatIsNoneAndOtherDigits() {
    assertThatThrownBy(() -> StatedResults.nearest(Double.NaN, 1, 2))
        .hasMessage("stated result: estimate NaN, wanted a finite number");
    assertThatThrownBy(() -> StatedResults.upward(Double.NEGATIVE_INFINITY, 1, 2))
        .hasMessage("stated result: estimate -Infinity, wanted a finite number");
    assertThatThrownBy(() -> StatedResults.nearest(1, 1, 0))
        .hasMessage("stated result: 0 significant digits, wanted 1 or 2");
    assertThatThrownBy(() -> StatedResults.upward(1, 1, 3))
        .hasMessage("stated result: 3 significant digits, wanted 1 or 2");
  }

  @Test
  void aResultStatedByHandMustFitToo() {
    assertThat(new StatedResult(new BigDecimal("10.058"), new BigDecimal("0.027")))
        .isEqualTo(StatedResults.nearest(10.05762, 0.027, 2));
    assertThatThrownBy(() -> new StatedResult(new BigDecimal("10.06"), new BigDecimal("0.027")))
        .hasMessageContaining("10.06 and the standard uncertainty 0.027 end in unlike");
    assertThatThrownBy(() -> new StatedResult(new BigDecimal("1.000"), new BigDecimal("0.127")))
        .hasMessageContaining("0.127, wanted one above 0 with at most two significant digits");
    assertThatThrownBy(() -> new StatedResult(new BigDecimal("1.0"), new BigDecimal("0.0")))
        .hasMessageContaining("0.0, wanted one above 0");
  }
}
