package org.mensuration.validation.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColumnUnitTest {
  @ParameterizedTest
  @CsvSource({
    "ft, m, 0.3048",
    "in, cm, 2.54",
    "ft3, m3, 0.028316846592",
    "ac, m2, 4046.8564224",
    "ac, ft2, 43560",
    "m3, dm3, 1000",
    "ft/in, m/cm, 0.12",
    "m3/ha, m3/m2, 0.0001",
    "m2/ha, m2/ha, 1"
  })
  void ratiosAreExact(String from, String to, String factor) {
    BigDecimal found = ColumnUnit.ratio(from, to).orElseThrow().times(BigDecimal.ONE);
    assertThat(found).isEqualByComparingTo(factor);
  }

  @ParameterizedTest
  @CsvSource({"m, m2", "m2/ha, ft/in", "bf, ft3", "1, %", "deg, m", "1/ha, m2/ha", "ha2, m2"})
  void differentKindsDoNotConvert(String from, String to) {
    assertThat(ColumnUnit.ratio(from, to)).isEmpty();
  }
}
