package org.mensuration.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PhysicalTest {
  @Test
  void aReportShowsTenDigits() {
    assertThat(Physical.shown(64)).isEqualTo("64.0");
    assertThat(Physical.shown(16.166666666666668)).isEqualTo("16.16666667");
    assertThat(Physical.shown(0.1 + 0.2)).isEqualTo("0.3");
    assertThat(Physical.shown(-12.000000000000002)).isEqualTo("-12.0");
    assertThat(Physical.shown(Double.NaN)).isEqualTo("NaN");
    assertThat(Physical.shown(Double.NEGATIVE_INFINITY)).isEqualTo("-Infinity");
  }
}
