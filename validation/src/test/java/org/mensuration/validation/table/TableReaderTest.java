package org.mensuration.validation.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TableReaderTest {
  private static final Map<String, SourceEntry> SOURCES =
      Map.of("s", new SourceEntry("s", "Nobody", "1900", "Invented", "", "", "read"));
  private static final String HEAD =
      """
      # source: s
      # locator: Table 7, p. 41
      # formula: fake/one
      # standing: published-table
      # note: a remark
      # column x [cm] rounded step=0.5
      # column d [cm] exact
      # column y [m3] result step=cell rounding=half-up
      """;

  private static Table read(String text) {
    return TableReader.read("s/t", text, SOURCES, List.of());
  }

  private static void refuses(String text, String message) {
    assertThatThrownBy(() -> read(text)).isInstanceOf(TableException.class).hasMessage(message);
  }

  @Test
  void aTableIsReadByColumnName() {
    Table table = read("\uFEFF" + HEAD + "y,note,d,x\n1.50,seen,3 4.25,2\n");
    assertThat(table.head().notes()).containsExactly("a remark");
    assertThat(table.source().shortForm()).isEqualTo("Nobody 1900");
    TableRow row = table.rows().get(0);
    assertThat(row.line()).isEqualTo(10);
    assertThat(row.key()).isEqualTo("x=2 d=3 4.25");
    assertThat(row.note()).isEqualTo("seen");
    assertThat(row.inputs().get(1)).containsExactly(new BigDecimal("3"), new BigDecimal("4.25"));
    assertThat(row.results().get(0)).contains(new BigDecimal("1.50"));
  }

  @Test
  void rowsAreReadStrictly() {
    refuses(HEAD, "s/t, line 9: found the end, wanted a header with the column names");
    refuses(HEAD + "x,d,y\n", "s/t, line 9: found no row, wanted at least one");
    refuses(HEAD + "x,d\n1,2\n", "s/t, line 9: found columns x, d, wanted a column y");
    refuses(HEAD + "x,x,y\n1,2,3\n", "s/t, line 9: found column x twice, wanted each name once");
    refuses(
        HEAD + "x,d,y,z\n1,2,3,4\n",
        "s/t, line 9: found columns x, d, y, z, wanted only columns that the head describes, case"
            + " and note");
    refuses(HEAD + "x,d,y\n1,2\n", "s/t, line 10: found 2 cells, wanted 3 cells");
    refuses(
        HEAD + "x,d,y\n1,2,\"3,5\"\n",
        "s/t, line 10: found y \"3,5\", wanted a number such as 12.5");
    refuses(HEAD + "x,d,y\n1,2,\n", "s/t, line 10: found no result, wanted at least one");
    refuses(
        HEAD + "x,d,y\n1,2,3\n1,2,4\n", "s/t, line 11: found row x=1 d=2 twice, wanted each once");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "locator: Table 7, p. 41|sauce: x|line 2: found sauce: x, wanted source:, locator:,"
            + " formula:, procedure:, standing:, lists:, note: or column NAME [UNIT]",
        "locator: Table 7, p. 41|locator:|line 2: found locator:, wanted a value after locator:",
        "locator: Table 7, p. 41|source: s|line 2: found a second source:, wanted one",
        "locator: Table 7, p. 41|note: x|line 8: found no locator: in the head, wanted one",
        "formula: fake/one|note: x|line 8: found no formula for column y, wanted formula: or"
            + " formula=ID",
        "note: a remark|procedure: p|line 8: found formula: and procedure:, wanted one of them",
        "standing: published-table|standing: good|line 8: found standing: good, wanted"
            + " published-table, worked-example, common-practice, from-memory or computed",
        "column d [cm] exact|column d cm exact|line 7: found column d cm exact, wanted column"
            + " NAME [UNIT] exact, rounded step=S or result step=S rounding=MODE",
        "column d [cm] exact|column x [cm] exact|line 7: found column x twice, wanted each name"
            + " once",
        "column d [cm] exact|column d [cm] exact step=1|line 7: found setting step, wanted none"
            + " that is unknown",
        "rounded step=0.5|rounded|line 6: found no step=, wanted one",
        "rounded step=0.5|rounded step=0|line 6: found step=0, wanted a number above zero",
        "rounded step=0.5|rounded step|line 6: found step, wanted a setting such as step=1",
        "rounding=half-up|rounding=some|line 8: found rounding=some, wanted nearest, half-up,"
            + " half-even, half-down, truncate, up or unknown",
        "step=cell rounding=half-up|ulp=1.5|line 8: found ulp=1.5, wanted a whole number",
        "step=cell rounding=half-up|step=1 step=1|line 8: found step twice, wanted each setting"
            + " once",
      })
  void aBadHeadIsRefused(String was, String is, String message) {
    refuses(HEAD.replace(was, is) + "x,d,y\n1,2,3\n", "s/t, " + message);
  }

  @Test
  void aSourceOutsideTheBibliographyIsRefused() {
    refuses(
        HEAD.replace("source: s", "source: q") + "x,d,y\n1,2,3\n",
        "s/t: source q is not in sources.csv");
  }

  @Test
  void aProcedureTakesThePlaceOfAFormula() {
    Table table = read(HEAD.replace("formula: fake/one", "procedure: p") + "x,d,y\n1,2,3\n");
    assertThat(table.head().subject(table.head().results().get(0))).isEqualTo("p");
  }
}
