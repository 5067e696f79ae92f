package org.mensuration.internal.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StrataPointsTest {

  @Test
  void strataThatDoNotVaryShareEvenly() {
    StrataPoints even = StrataPoints.neyman(new double[] {1, 9}, new double[] {0, 0});
    assertThat(even.exact(0, 8)).isEqualTo(4);
    assertThat(even.exact(1, 8)).isEqualTo(4);
    StrataPoints.Points points = even.needed(5, 95);
    assertThat(points.nominal()).isEqualTo(1);
    assertThat(points.total()).isEqualTo(4);
  }

  @Test
  void sharesGoByWeightAndVariation() {
    double[] weights = {1, 3};
    double[] variations = {30, 10};
    assertThat(StrataPoints.neyman(weights, variations).exact(0, 10)).isEqualTo(5);
    assertThat(StrataPoints.proportional(weights, variations).exact(0, 10)).isEqualTo(2.5);
    assertThat(StrataPoints.proportional(weights, variations).rounded(0, 10)).isEqualTo(3);
    assertThat(StrataPoints.proportional(weights, variations).rounded(0, 2)).isEqualTo(2);
    // A stratum that does not vary gets the two points of its own error and no more.
    assertThat(StrataPoints.neyman(weights, new double[] {0, 10}).rounded(0, 50)).isEqualTo(2);
  }

  /** One stratum is the rule for points that are not in strata. */
  @ParameterizedTest
  @CsvSource({"30, 10, 95", "48, 10, 95", "60, 20, 90", "5, 10, 95", "25, 15, 99", "200, 1, 80"})
  void oneStratumNeedsWhatPointsNeed(double variation, double error, double confidence) {
    StrataPoints one = StrataPoints.neyman(new double[] {7}, new double[] {variation});
    assertThat(one.needed(error, confidence).total())
        .isEqualTo(StudentT.pointsNeeded(variation, error, confidence));
  }

  @Test
  void plotsOfAFinitePopulationByTrial() {
    for (double population : new double[] {20, 100, 1000}) {
      double n = 2;
      while (n < population && n < finite(n, population)) {
        n++;
      }
      assertThat(StudentT.plotsNeeded(40, 12, 95, population)).isEqualTo(n);
    }
    assertThat(StudentT.plotsNeeded(400, 1, 95, 50)).isEqualTo(50);
    assertThat(StudentT.pointsNeeded(0, 10, 95)).isEqualTo(2);
  }

  private static double finite(double n, double population) {
    double infinite = Math.pow(StudentT.quantile(n - 1, 95) * 40 / 12, 2);
    return infinite / (1 + infinite / population);
  }

  @Test
  void thickestMeansTakeWholeGroups() {
    double[] diameters = {40, 30, 30, 20};
    double[] heights = {30, 26, 24, 18};
    double[] expansions = {1, 2, 2, 5};
    assertThat(Thickest.mean(diameters, heights, expansions, 1)).isEqualTo(30);
    assertThat(Thickest.mean(diameters, heights, expansions, 3))
        .isCloseTo((30 + 2 * 25) / 3.0, within(1e-14));
    assertThat(Thickest.mean(diameters, heights, expansions, 10))
        .isCloseTo((30 + 4 * 25 + 5 * 18) / 10.0, within(1e-14));
    assertThat(Thickest.mean(diameters, heights, expansions, 10.5)).isNaN();
  }
}
