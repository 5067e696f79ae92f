package org.mensuration.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoverageRanksTest {

  /** JCGM 101, clause 7.7.2, from memory: q nearest to pM, r half of what is left. */
  @ParameterizedTest
  @CsvSource({
    "1000000, 95, 950000, 25000",
    "1000000, 99.9, 999000, 500",
    "1000000, 68.27, 682700, 158650",
    "1001, 95, 951, 25",
    "1002, 95, 952, 25",
    "30, 95, 29, 1",
    "21, 95, 20, 1",
    "2, 50, 1, 1",
    "3, 50, 2, 1",
    "4, 50, 2, 1"
  })
  void ranksOfTheSymmetricInterval(int draws, double percent, int reach, int lower) {
    assertThat(CoverageRanks.reach(draws, percent)).isEqualTo(reach);
    assertThat(CoverageRanks.symmetric(draws, reach)).isEqualTo(lower);
    assertThat(lower + reach).isLessThanOrEqualTo(draws);
  }

  @Property(tries = 300)
  void noIntervalOfAsManyIsShorter(
      @ForAll @Size(min = 2, max = 60) double[] values,
      @ForAll @DoubleRange(min = 50, max = 98) double percent,
      @ForAll @IntRange(min = -3, max = 3) int shift) {
    double[] sorted = Arrays.stream(values).map(v -> Math.rint(v % 50) + shift).sorted().toArray();
    int reach = Math.min(CoverageRanks.reach(sorted.length, percent), sorted.length - 1);
    int lower = CoverageRanks.shortest(sorted, reach);
    double length = sorted[lower - 1 + reach] - sorted[lower - 1];
    for (int i = 0; i + reach < sorted.length; i++) {
      double other = sorted[i + reach] - sorted[i];
      assertThat(length).isLessThanOrEqualTo(other);
      if (i < lower - 1) {
        assertThat(length).isLessThan(other); // of equal ones the first
      }
    }
  }

  @Test
  void swings() {
    assertThat(CoverageRanks.swung(20, 0.5, 0)).isEqualTo(20);
    assertThat(CoverageRanks.swung(20, 0.5, 0.25)).isEqualTo(20.5);
    assertThat(CoverageRanks.swung(20, 0.5, 0.75)).isEqualTo(19.5);
    assertThat(CoverageRanks.swung(20, 0.5, 1.0 / 12)).isCloseTo(20.25, within(1e-14));
  }
}
