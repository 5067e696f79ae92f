package org.mensuration.validation.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;

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

  /** Two lists of factors, written apart: the one of the tables and the one of the library. */
  @Test
  void theLibraryConvertsAlike() {
    alike("ft", ForestUnits.FOOT, "m", ForestUnits.METRE);
    alike("in", ForestUnits.INCH, "cm", ForestUnits.CENTIMETRE);
    alike("mm", ForestUnits.MILLIMETRE, "m", ForestUnits.METRE);
    alike("ac", ForestUnits.ACRE, "m2", ForestUnits.SQUARE_METRE);
    alike("ha", ForestUnits.HECTARE, "ft2", ForestUnits.SQUARE_FOOT);
    alike("ft3", ForestUnits.CUBIC_FOOT, "m3", ForestUnits.CUBIC_METRE);
    alike(
        "m2/ha", ForestUnits.SQUARE_METRE_PER_HECTARE, "ft2/ac", ForestUnits.SQUARE_FOOT_PER_ACRE);
    alike("1/ac", ForestUnits.PER_ACRE, "1/ha", ForestUnits.PER_HECTARE);
    alike("m3/ha", ForestUnits.CUBIC_METRE_PER_HECTARE, "ft3/ac", ForestUnits.CUBIC_FOOT_PER_ACRE);
  }

  private static <Q extends Quantity<Q>> void alike(
      String from, Unit<Q> libraryFrom, String to, Unit<Q> libraryTo) {
    double ofTables = ColumnUnit.ratio(from, to).orElseThrow().times(BigDecimal.ONE).doubleValue();
    double ofLibrary = Measures.in(Measures.of(1, libraryFrom), libraryTo);
    assertThat(ofLibrary).as(from + " in " + to).isCloseTo(ofTables, within(Math.ulp(ofTables)));
  }
}
