package org.mensuration.internal.stem;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TaperIntegralTest {
  @Test
  void aVolumeThatCannotBeIntegratedIsNoNumber() {
    double[][] x = {{20}, {12}, {0}, {12}, {0.25}, {Double.NaN}, {1}, {1}, {1}, {0}, {0}, {0}, {0}};
    assertThat(TaperIntegral.variableExponent(x)).isNaN();
  }
}
