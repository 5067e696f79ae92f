package org.mensuration.internal.stem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Curves whose turning points are known from their derivatives. */
class TurningPointsTest {
  /** A rounding of 1e-16 at a summit hides the place by its root. */
  private static final double FLAT = 1e-7;

  @Test
  void aSummitAndAValleyAreFoundWhereTheDerivativeIsZero() {
    // The derivative is (z - 1/4)(z - 3/4).
    double[] turns = TurningPoints.of(z -> z * z * z / 3 - z * z / 2 + 3 * z / 16);
    assertThat(turns).hasSize(2);
    assertThat(turns[0]).isCloseTo(0.25, within(FLAT));
    assertThat(turns[1]).isCloseTo(0.75, within(FLAT));
    turns = TurningPoints.of(z -> -(z * z * z / 3 - z * z / 2 + 3 * z / 16));
    assertThat(turns).hasSize(2);
    assertThat(turns[0]).isCloseTo(0.25, within(FLAT));
    assertThat(turns[1]).isCloseTo(0.75, within(FLAT));
  }

  @Test
  void aTurnJustBelowTheTipIsFound() {
    double place = 0.9961;
    double[] turns = TurningPoints.of(z -> -(z - place) * (z - place));
    assertThat(turns).hasSize(1);
    assertThat(turns[0]).isCloseTo(place, within(FLAT));
  }

  @Test
  void aCurveThatOnlyFallsRisesOrStaysHasNone() {
    assertThat(TurningPoints.of(z -> 1 - z)).isEmpty();
    assertThat(TurningPoints.of(z -> z * z)).isEmpty();
    assertThat(TurningPoints.of(z -> 3)).isEmpty();
  }

  @Test
  void aLevelStretchBetweenRiseAndFallIsOneTurn() {
    double[] turns = TurningPoints.of(z -> Math.min(Math.min(z, 0.3), 1 - z));
    assertThat(turns).hasSize(1);
    assertThat(turns[0]).isBetween(0.3 - FLAT, 0.7 + FLAT);
    turns = TurningPoints.of(z -> Math.max(Math.max(-z, -0.3), z - 1));
    assertThat(turns).hasSize(1);
    assertThat(turns[0]).isBetween(0.3 - FLAT, 0.7 + FLAT);
  }
}
