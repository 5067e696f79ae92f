package org.mensuration.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Errors over strata that are minute, or minute beside another. */
class StrataWithoutVanishingTest {
  @Test
  void theFreedomOfTwoLikeStrataIsThatOfBothAtAnySize() {
    for (double error : new double[] {1e-100, 1, 1e100}) {
      assertThat(
              Estimation.effectiveFreedom(
                  new double[] {7, 7}, new double[] {error, error}, new double[] {5, 9}))
          // (1 + 1)² over 1/4 + 1/8.
          .isCloseTo(4 / 0.375, within(1e-14));
    }
  }

  @Test
  void manyMinuteErrorsAddUpBesideALargeOne() {
    int strata = 10_001;
    double[] areas = new double[strata];
    double[] errors = new double[strata];
    Arrays.fill(areas, 1);
    Arrays.fill(errors, 1e-8);
    errors[0] = 1;
    // One by one, squares of 1e-16 would be lost beside 1; together they are 1e-12.
    double sum = Sampling.stratifiedStandardError(areas, errors) * strata;
    assertThat(sum * sum - 1).isCloseTo(1e-12, within(1e-15));
  }
}
