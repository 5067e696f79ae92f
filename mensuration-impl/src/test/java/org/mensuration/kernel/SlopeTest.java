package org.mensuration.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Angles whose functions are known without a table. */
class SlopeTest {
  /** Half the distance of the numbers from 1 on, and once that of those below. */
  private static final double ULP_BELOW_ONE = 0x1p-53;

  @Test
  void atFortyFiveDegreesTheCosineIsTheRootOfAHalfAndTheTangentOne() {
    assertThat(Slope.cos(45)).isEqualTo(Math.sqrt(0.5));
    assertThat(Slope.cos(-45)).isEqualTo(Math.sqrt(0.5));
    assertThat(Slope.tan(45)).isCloseTo(1, within(ULP_BELOW_ONE));
  }

  @Test
  void sixtyAndThirtyDegrees() {
    assertThat(Slope.cos(60)).isCloseTo(0.5, within(ULP_BELOW_ONE));
    assertThat(Slope.cos(-30)).isCloseTo(Math.sqrt(0.75), within(ULP_BELOW_ONE));
    assertThat(Slope.tan(60)).isCloseTo(Math.sqrt(3), within(4 * ULP_BELOW_ONE));
    assertThat(Slope.tan(30)).isCloseTo(Math.sqrt(1 / 3.0), within(ULP_BELOW_ONE));
    assertThat(Slope.tanOver(30, 4)).isEqualTo(Slope.tan(30) / 4);
  }

  @Test
  void theEndsAreExact() {
    assertThat(Slope.cos(0)).isEqualTo(1);
    assertThat(Slope.cos(90)).isZero();
    assertThat(Slope.cos(-90)).isZero();
    assertThat(Slope.tan(0)).isZero();
    assertThat(Slope.tan(90)).isInfinite();
    assertThat(Slope.tanOver(0, 3)).isZero();
  }

  @Test
  void anAngleThatAlmostVanishesKeepsItsDigitsOverAShortLength() {
    // Below 2^-1022 a double has fewer digits: the angle in radians alone would lose most of them.
    assertThat(Slope.tanOver(0x1p-1070, 0x1p-80)).isEqualTo(Math.scalb(Math.PI / 180, -990));
    assertThat(Slope.tanOver(0x1p-1000, 0x1p-40)).isEqualTo(Math.scalb(Math.PI / 180, -960));
    assertThat(Slope.tanOver(0x1p-30, 0x1p10)).isEqualTo(Math.scalb(Math.PI / 180, -40));
  }
}
