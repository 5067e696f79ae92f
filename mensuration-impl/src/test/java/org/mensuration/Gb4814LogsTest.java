package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.metres;

import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.log.CubicConvention;
import org.mensuration.log.Log;

/** GB 4814-84 in its table and outside it. */
class Gb4814LogsTest {
  private static double scale(CubicConvention rule, double smallCm, double lengthM) {
    return rule.scale(Log.of(centimetres(smallCm), metres(lengthM))).amount();
  }

  @Test
  void theThinnestClassesHaveAFourthDecimal() {
    CubicConvention rule = LogConventions.gb4814();
    // 0.017074 m3 at 8 cm.
    assertThat(scale(rule, 8, 2.5)).isEqualTo(0.017);
    assertThat(scale(rule, 7, 2.5)).isEqualTo(0.0136);
  }

  @Test
  void theRuleForOtherLogsRefusesThoseOfTheTable() {
    CubicConvention rule = LogConventions.gb4814Outside();
    assertThat(scale(rule, 40, 14)).isEqualTo(2.474);
    assertThat(scale(rule, 20, 1.9)).isGreaterThan(0);
    assertThat(scale(rule, 122, 4)).isGreaterThan(0);
    double[][] held = {{20, 2}, {20, 10}, {4, 4}, {120, 4}};
    for (double[] log : held) {
      assertThatThrownBy(() -> scale(rule, log[0], log[1]))
          .isInstanceOf(OutOfDomainException.class)
          .hasMessageContaining("GB 4814-84 outside its table, L = ")
          .hasMessageContaining("allowed outside the table, which holds [4, 120] cm by [2, 10] m");
    }
    assertThat(rule.roundings())
        .containsExactlyElementsOf(LogConventions.gb4814().roundings())
        .hasSize(2);
  }
}
