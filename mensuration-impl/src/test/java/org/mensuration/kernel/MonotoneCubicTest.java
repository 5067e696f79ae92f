package org.mensuration.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class MonotoneCubicTest {
  @Test
  void slopesAreWeightedHarmonicMeansAndParabolasAtTheEnds() {
    // y = x² on unequal steps: chords 3, 6, 11; a parabola's own slopes 2 and 14 at the ends.
    double[] slopes = MonotoneCubic.slopes(new double[] {1, 2, 4, 7}, new double[] {1, 4, 16, 49});
    assertThat(slopes[0]).isCloseTo(2, within(1e-14));
    // Steps 1 and 2: weights 2·2 + 1 = 5 and 2 + 2·1 = 4.
    assertThat(slopes[1]).isCloseTo(9 / (5.0 / 3 + 4.0 / 6), within(1e-14));
    // Steps 2 and 3: weights 2·3 + 2 = 8 and 3 + 2·2 = 7.
    assertThat(slopes[2]).isCloseTo(15 / (8.0 / 6 + 7.0 / 11), within(1e-14));
    assertThat(slopes[3]).isCloseTo(14, within(1e-14));
  }

  @Test
  void aTurnIsFlatAndAnEndKeepsItsShape() {
    double[] slopes = MonotoneCubic.slopes(new double[] {0, 1, 2, 3}, new double[] {0, 1, -9, -9});
    // (3 · 1 + 10)/2 = 6.5 at the start is more than three times the chord of 1.
    assertThat(slopes[0]).isEqualTo(3);
    assertThat(slopes[1]).isZero();
    assertThat(slopes[2]).isZero();
    assertThat(slopes[3]).isZero();
    // Twice as high, twice as steep.
    assertThat(MonotoneCubic.slopes(new double[] {0, 1, 2, 3}, new double[] {0, 2, -18, -18})[0])
        .isEqualTo(6);
    double[] away = MonotoneCubic.slopes(new double[] {0, 1, 2}, new double[] {0, 1, 9});
    // (3 · 1 - 8)/2 is below zero, where the chord rises.
    assertThat(away[0]).isZero();
    assertThat(away[2]).isCloseTo((3 * 8 - 1) / 2.0, within(1e-14));
    double[] turned = MonotoneCubic.slopes(new double[] {0, 1, 2}, new double[] {0, 1, 0.5});
    assertThat(turned[0]).isCloseTo((3 * 1 + 0.5) / 2, within(1e-14));
    assertThat(turned[2]).isCloseTo((3 * -0.5 - 1) / 2, within(1e-14));
  }

  @Test
  void twoPointsAreAStraightLine() {
    assertThat(MonotoneCubic.slopes(new double[] {2, 6}, new double[] {9, 1}))
        .containsExactly(-2, -2);
  }

  @Test
  void aPieceHasItsValuesSlopesAndIntegral() {
    // 1 + 2 t - 3 t² + 0.5 t³ over a length of 2
    double[] piece = MonotoneCubic.piece(2, 1, -3, 2, -4);
    assertThat(piece).containsExactly(new double[] {1, 2, -3, 0.5}, within(1e-15));
    assertThat(MonotoneCubic.value(piece, 2)).isCloseTo(-3, within(1e-15));
    assertThat(MonotoneCubic.value(piece, 1)).isCloseTo(0.5, within(1e-15));
    assertThat(MonotoneCubic.integral(piece, 2)).isCloseTo(2 + 4 - 8 + 2, within(1e-15));
  }
}
