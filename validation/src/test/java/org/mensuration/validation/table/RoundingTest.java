package org.mensuration.validation.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundingTest {
  @ParameterizedTest
  @CsvSource({
    "nearest, 2, 1.5, 2.5, true, true",
    "half-up, 2, 1.5, 2.5, true, false",
    "half-up, -2, -2.5, -1.5, false, true",
    "half-up, 0, -0.5, 0.5, false, false",
    "half-down, 2, 1.5, 2.5, false, true",
    "half-down, 0, -0.5, 0.5, true, true",
    "half-even, 2, 1.5, 2.5, true, true",
    "half-even, 3, 2.5, 3.5, false, false",
    "truncate, 2, 2, 3, true, false",
    "truncate, -2, -3, -2, false, true",
    "truncate, 0, -1, 1, false, false",
    "up, 2, 1, 2, false, true",
    "up, 0, 0, 0, true, true",
    "unknown, 2, 1, 3, true, true"
  })
  void rangeOfWhatIsPrintedSo(
      String word, String printed, String lower, String upper, boolean low, boolean high) {
    Range range = Rounding.of(word).orElseThrow().range(new BigDecimal(printed), BigDecimal.ONE);
    assertThat(range.lower()).isEqualByComparingTo(lower);
    assertThat(range.upper()).isEqualByComparingTo(upper);
    assertThat(range.contains(new BigDecimal(lower))).isEqualTo(low);
    assertThat(range.contains(new BigDecimal(upper))).isEqualTo(high);
  }
}
