package org.mensuration.internal.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.PrintedTable;

class RuleTableTest {
  private static final String TEXT =
      """
      # table: Small
      # a comment
      width [cm],length [m],volume [m3],source
      12,1,0.30,first
      8,1,0.10,first
      8,3,0.31,second

      10,1,0.20,first
      10,2,0.45,first
      """;
  private static final RuleTable SMALL = TableText.parse("small.csv", TEXT);

  @Test
  void cellsAreGivenAsPrinted() {
    assertThat(SMALL.name()).isEqualTo("Small").isEqualTo(SMALL.toString());
    assertThat(SMALL.unit()).isEqualTo("m3");
    assertThat(SMALL.cell(12, 1)).contains(new BigDecimal("0.30"));
    assertThat(SMALL.value(8, 3)).isEqualTo(0.31);
    assertThat(SMALL.value(10, 2)).isEqualTo(0.45);
    assertThat(SMALL.source(8, 3)).contains("second");
    assertThat(SMALL.source(10, 2)).contains("first");
    assertThat(SMALL.source(10, 3)).isEmpty();
    assertThat(SMALL.axes().get(0).name()).isEqualTo("width");
    assertThat(SMALL.axes().get(1).unit()).isEqualTo("m");
    assertThat(SMALL.axes().get(0).printed())
        .containsExactly(new BigDecimal(8), new BigDecimal(10), new BigDecimal(12));
  }

  @Test
  void aReadingWithinABillionthIsOnTheCell() {
    for (double ulps : new double[] {1 - 0.9e-9, 1, 1 + 0.9e-9}) {
      assertThat(SMALL.value(8 * ulps, 1)).isEqualTo(0.10);
      assertThat(SMALL.value(12 * ulps, 1)).isEqualTo(0.30);
      assertThat(SMALL.value(10, 2 * ulps)).isEqualTo(0.45);
    }
    for (double ulps : new double[] {1 - 1.1e-9, 1 + 1.1e-9}) {
      assertThat(SMALL.value(8 * ulps, 1)).isNaN();
      assertThat(SMALL.value(12 * ulps, 1)).isNaN();
      assertThat(SMALL.value(10, 2 * ulps)).isNaN();
    }
  }

  @Test
  void whatIsNotPrintedStaysEmpty() {
    assertThat(SMALL.cell(12, 3)).isEmpty();
    assertThat(SMALL.value(12, 3)).isNaN();
    assertThat(SMALL.value(Double.NaN, 1)).isNaN();
    assertThat(SMALL.value(8, Double.NaN)).isNaN();
    assertThat(SMALL.value(8, Double.POSITIVE_INFINITY)).isNaN();
    assertThat(SMALL.value(9, 1)).isNaN();
  }

  @Test
  void aGapSaysWhatIsPrinted() {
    assertThat(SMALL.gap(8, 1)).isEmpty();
    assertThat(SMALL.gap(9, 1))
        .contains(new PrintedTable.Gap(0, "as printed in Small: 8 to 12 by 2 cm"));
    assertThat(SMALL.gap(10, 2.5))
        .contains(new PrintedTable.Gap(1, "as printed in Small: 1 to 3 by 1 m"));
    assertThat(SMALL.gap(8, 2))
        .contains(new PrintedTable.Gap(1, "as printed in Small at 8 cm: 1, 3 m"));
    assertThat(SMALL.gap(12, 3))
        .contains(new PrintedTable.Gap(1, "as printed in Small at 12 cm: 1 m"));
    assertThatThrownBy(() -> SMALL.cell(8))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("Small: 1 keys given, 2 needed");
  }

  @Test
  void unevenValuesAreListed() {
    assertThat(TableAxis.words(List.of(new BigDecimal("1.0"), new BigDecimal(2), BigDecimal.TEN)))
        .isEqualTo("1, 2, 10");
    assertThat(TableAxis.words(List.of(BigDecimal.ZERO, new BigDecimal("0.5"), BigDecimal.ONE)))
        .isEqualTo("0 to 1 by 0.5");
    assertThat(TableAxis.words(List.of(BigDecimal.ONE, BigDecimal.TEN))).isEqualTo("1, 10");
  }

  @Test
  void interpolationIsLinearBetweenPrintedNeighbours() {
    assertThat(SMALL.interpolated(10, 1)).isEqualTo(0.20);
    assertThat(SMALL.interpolated(9, 1)).isCloseTo(0.15, within(1e-15));
    assertThat(SMALL.interpolated(11.5, 1)).isCloseTo(0.275, within(1e-15));
    assertThat(SMALL.interpolated(10, 1.2)).isCloseTo(0.25, within(1e-15));
    // A neighbour that is not printed, and keys beyond the printed ones.
    assertThat(SMALL.interpolated(9, 2)).isNaN();
    assertThat(SMALL.interpolated(7.9, 1)).isNaN();
    assertThat(SMALL.interpolated(12.1, 1)).isNaN();
    assertThat(SMALL.interpolated(10, 3.1)).isNaN();
    assertThat(SMALL.interpolated(Double.NaN, 1)).isNaN();
    assertThat(SMALL.interpolated(10, Double.NaN)).isNaN();
  }

  @Test
  void aTableThatShipsIsReadAfresh() {
    RuleTable shipped = RuleTable.read("gost2708.csv");
    assertThat(shipped.name()).isEqualTo("GOST 2708-75, table 1 as far as read");
    assertThat(shipped.axes())
        .extracting(TableAxis::name)
        .containsExactly("small_diameter", "length");
    assertThat(shipped.cell(38, 8.5)).contains(new BigDecimal("1.22"));
    assertThat(shipped.source(38, 8.5)).contains("gost2708_copy_a");
    assertThat(shipped.cell(10, 3)).contains(new BigDecimal("0.026"));
    assertThat(shipped.source(12, 8)).contains("gost2708_copy_b");
    assertThat(shipped.cell(10, 2)).isEmpty();
  }

  @Test
  void aTableOfOneKey() {
    RuleTable factors =
        TableText.parse("factors.csv", "# table: Factors\nd [in],f [bf]\n6,0.5\n0,0\n");
    assertThat(factors.value(6)).isEqualTo(0.5);
    assertThat(factors.value(0)).isZero();
    assertThat(factors.value(1e-12)).isNaN();
    assertThat(factors.value(7)).isNaN();
    assertThat(factors.source(6)).isEmpty();
    assertThat(factors.gap(7)).contains(new PrintedTable.Gap(0, "as printed in Factors: 0, 6 in"));
  }

  @Test
  void aFileThatIsNoTableIsRefusedWithItsLine() {
    assertThatThrownBy(() -> RuleTable.read("nothing.csv"))
        .hasMessage("table nothing.csv is missing from the library");
    refused("d [in],f [bf]\n6,1\n", "line 3: no name or no cells");
    refused("# table: T\nd [in],f [bf]\n", "line 3: no name or no cells");
    refused("# table: T\nd [in],f [bf]\n6,1,2\n", "line 3: 3 fields, wanted 2 fields");
    refused("# table: T\nd [in],f [bf]\n6,x\n", "line 3: x, wanted a number");
    refused("# table: T\nd [in],f [bf]\n6,1\n6.0,1\n", "line 4: a cell printed twice");
    refused("# table: T\nd,f [bf]\n6,1\n", "column d, wanted a name with its unit");
    refused("# table: T\nd [in,f [bf]\n6,1\n", "column d [in, wanted a name with its unit");
    refused("# table: T\nf [bf]\n6\n", "0 keys, wanted one or two");
    refused("# table: T\na [m],b [m],c [m],f [bf]\n1,2,3,4\n", "3 keys, wanted one or two");
  }

  private static void refused(String text, String message) {
    assertThatThrownBy(() -> TableText.parse("bad.csv", text))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageStartingWith("table bad.csv, line ")
        .hasMessageContaining(message);
  }
}
