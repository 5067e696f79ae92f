package org.mensuration.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LimitsTest {
  private static final double LIMIT = 7;
  private static final double ABOVE = LIMIT * (1 + 0.9e-9);
  private static final double BELOW = LIMIT * (1 - 0.9e-9);
  private static final double FAR_ABOVE = LIMIT * (1 + 1.1e-9);
  private static final double FAR_BELOW = LIMIT * (1 - 1.1e-9);

  @Test
  void onALimitWithinABillionth() {
    assertThat(Limits.on(ABOVE, LIMIT)).isTrue();
    assertThat(Limits.on(BELOW, LIMIT)).isTrue();
    assertThat(Limits.on(-ABOVE, -LIMIT)).isTrue();
    assertThat(Limits.on(FAR_ABOVE, LIMIT)).isFalse();
    assertThat(Limits.on(FAR_BELOW, LIMIT)).isFalse();
    assertThat(Limits.on(0, 0)).isTrue();
  }

  @Test
  void belowAndAboveIncludeTheLimit() {
    assertThat(Limits.reaches(BELOW, LIMIT)).isTrue();
    assertThat(Limits.reaches(FAR_ABOVE, LIMIT)).isTrue();
    assertThat(Limits.reaches(FAR_BELOW, LIMIT)).isFalse();
    assertThat(Limits.keepsTo(ABOVE, LIMIT)).isTrue();
    assertThat(Limits.keepsTo(FAR_BELOW, LIMIT)).isTrue();
    assertThat(Limits.keepsTo(FAR_ABOVE, LIMIT)).isFalse();
    assertThat(Limits.reaches(0, 0)).isTrue();
    assertThat(Limits.keepsTo(0, 0)).isTrue();
  }

  @Test
  void notANumberIsNowhere() {
    assertThat(Limits.on(Double.NaN, LIMIT)).isFalse();
    assertThat(Limits.reaches(Double.NaN, LIMIT)).isFalse();
    assertThat(Limits.keepsTo(Double.NaN, LIMIT)).isFalse();
  }
}
