package org.mensuration.validation.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mensuration.formula.Catalogue;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Equations;
import org.mensuration.formula.PrintedTable;
import org.mensuration.validation.table.Deviation;
import org.mensuration.validation.table.SourceEntry;
import org.mensuration.validation.table.Table;
import org.mensuration.validation.table.TableException;
import org.mensuration.validation.table.TableReader;

class ReferenceChecksTest {
  private static final Map<String, SourceEntry> SOURCES =
      Map.of("s", new SourceEntry("s", "Nobody", "1900", "Invented", "", "", "read"));
  private static final String TO_ONE = "[m] result step=1 rounding=nearest";

  private static Table table(String input, String result, String rows, Deviation... deviations) {
    String head =
        "# source: s\n# locator: p. 1\n# formula: fake/one\n# standing: published-table\n";
    String text = head + "# column x " + input + "\n# column y " + result + "\nx,y\n" + rows;
    return TableReader.read("s/t", text, SOURCES, List.of(deviations));
  }

  private static Catalogue catalogue(DoubleUnaryOperator formula) {
    return Catalogue.of(List.of(new FakeFormula(Equations.sym("x"), formula)));
  }

  private static CellCheck only(Table table, DoubleUnaryOperator formula) {
    CheckReport report = ReferenceChecks.run(catalogue(formula), List.of(table));
    assertThat(report.problems()).isEmpty();
    assertThat(report.cells()).hasSize(1);
    return report.cells().findFirst().orElseThrow();
  }

  private static Verdict verdict(String result, double computed, String printed) {
    return only(table("[m] exact", "[m] result " + result, "1," + printed + "\n"), x -> computed)
        .verdict();
  }

  @ParameterizedTest
  @CsvSource({
    "step=1 rounding=nearest, 2.5, 2, EQUAL_AS_PRINTED",
    "step=1 rounding=nearest, 2.5, 3, EQUAL_AS_PRINTED",
    "step=1 rounding=nearest, 2.51, 2, FAILED",
    "step=1 rounding=half-up, 2.5, 3, EQUAL_AS_PRINTED",
    "step=1 rounding=half-up, 2.50001, 2, FAILED",
    "step=1 rounding=half-even, 2.50001, 2, FAILED",
    "step=1 rounding=half-down, 2.49999, 3, FAILED",
    "step=1 rounding=truncate, 2.999, 2, EQUAL_AS_PRINTED",
    "step=1 rounding=truncate, 1.999, 2, FAILED",
    "step=1 rounding=truncate, -2.999, -2, EQUAL_AS_PRINTED",
    "step=1 rounding=up, 2.001, 3, EQUAL_AS_PRINTED",
    "step=1 rounding=up, 3.001, 3, FAILED",
    "step=1 rounding=unknown, 2.9, 2, WITHIN_STEP",
    "step=1 rounding=unknown, 3.1, 2, FAILED",
    "step=5 rounding=nearest, 97.4, 95, EQUAL_AS_PRINTED",
    "step=5 rounding=nearest, 97.6, 95, FAILED",
    "step=cell rounding=nearest, 2.104, 2.10, EQUAL_AS_PRINTED",
    "step=cell rounding=nearest, 2.104, 2.1, EQUAL_AS_PRINTED",
    "step=cell rounding=nearest, 2.106, 2.10, FAILED",
    "ulp=8, 2.0000000000000009, 2, EQUAL_AS_PRINTED",
    "ulp=8, 2.00000000000001, 2, FAILED",
    "absolute=0.01, 2.008, 2.00, WITHIN_STEP",
    "absolute=0.01, 2.02, 2.00, FAILED"
  })
  void verdictsFollowFromStepAndRounding(
      String result, double computed, String printed, Verdict expected) {
    assertThat(verdict(result, computed, printed)).isEqualTo(expected);
  }

  @Test
  void notANumberNeverPasses() {
    assertThat(verdict("step=1 rounding=unknown", Double.NaN, "2")).isEqualTo(Verdict.FAILED);
    assertThat(verdict("absolute=1000", Double.POSITIVE_INFINITY, "2")).isEqualTo(Verdict.FAILED);
  }

  @Test
  void anInputOutsideTheDomainFailsWithItsMessage() {
    CellCheck cell = only(table("[m] exact", TO_ONE, "-1,2\n"), x -> x);
    assertThat(cell.verdict()).isEqualTo(Verdict.FAILED);
    assertThat(cell.message()).contains("s/t, line 8").contains("allowed [0, ∞) m");
  }

  @Test
  void roundedInputsWidenTheTolerance() {
    String rows = "1.0,2.5\n";
    Table exact = table("[m] exact", "[m] result step=0.1 rounding=nearest", rows);
    Table rounded = table("[m] rounded step=0.1", "[m] result step=0.1 rounding=nearest", rows);
    assertThat(only(exact, x -> 1.68 + x * 0.8).verdict()).isEqualTo(Verdict.EQUAL_AS_PRINTED);
    assertThat(only(exact, x -> 1.62 + x * 0.95).verdict()).isEqualTo(Verdict.FAILED);
    assertThat(only(rounded, x -> 1.62 + x * 0.95).verdict()).isEqualTo(Verdict.WITHIN_STEP);
    assertThat(only(rounded, x -> 1.3 + x * 1.2).verdict()).isEqualTo(Verdict.UNDECIDED);
    assertThat(only(rounded, x -> 2.0 + x * 1.2).verdict()).isEqualTo(Verdict.FAILED);
  }

  @Test
  void bothSidesOfAStepAreSeen() {
    Table table = table("[m] rounded step=0.2", TO_ONE, "0.95,3\n");
    assertThat(only(table, x -> x < 1.05 ? 3 : 3.9).verdict()).isEqualTo(Verdict.EQUAL_AS_PRINTED);
    assertThat(only(table, x -> x < 1.05 ? 3 : 5).verdict()).isEqualTo(Verdict.UNDECIDED);
  }

  @Test
  void aRoundedInputDoesNotLeaveTheDomain() {
    Table table = table("[m] rounded step=1", "[m] result step=2 rounding=nearest", "0,0\n");
    assertThat(only(table, x -> x).verdict()).isEqualTo(Verdict.EQUAL_AS_PRINTED);
  }

  @Test
  void unitsOfColumnsAreConvertedExactly() {
    Table table = table("[ft] exact", "[in] result step=1 rounding=nearest", "10,120\n");
    CellCheck cell = only(table, x -> x);
    assertThat(cell.verdict()).isEqualTo(Verdict.EQUAL_AS_PRINTED);
    assertThat(cell.difference()).isLessThan(new BigDecimal("1e-12"));
  }

  private static Table deviating(String printed, String amount) {
    return table(
        "[m] exact",
        TO_ONE,
        "1," + printed + "\n",
        new Deviation("s/t", "x=1", new BigDecimal(amount), "misprint", ""));
  }

  @Test
  void aDeviationIsAssertedWithItsAmount() {
    assertThat(only(deviating("9", "6.75"), x -> 2.25).verdict()).isEqualTo(Verdict.EXPLAINED);
    CellCheck wrong = only(deviating("9", "6.65"), x -> 2.25);
    assertThat(wrong.verdict()).isEqualTo(Verdict.FAILED);
    assertThat(wrong.message()).contains("the listed deviation is 6.65, found 6.75");
    assertThat(only(deviating("9", "7"), x -> 2.25).message()).contains("too few digits");
    assertThat(only(deviating("2", "0.25"), x -> 2.25).message())
        .contains("listed as a deviation, but equal as printed");
  }

  @Test
  void aDeviationOfNoRowIsRefused() {
    Deviation stray = new Deviation("s/t", "x=2", BigDecimal.ONE, "misprint", "");
    assertThatThrownBy(() -> table("[m] exact", TO_ONE, "1,1\n", stray))
        .isInstanceOf(TableException.class)
        .hasMessage("s/t: deviations.csv names row x=2, which is not there once");
  }

  @Test
  void theCellsOfATableRuleAreShownAndNotCounted() {
    Table table = table("[m] exact", TO_ONE, "1,2\n");
    Equation lookUp = new Equation.LookUp(new OneCell(), List.of(Equations.sym("x")));
    CheckReport report =
        ReferenceChecks.run(Catalogue.of(List.of(new FakeFormula(lookUp, x -> 2))), List.of(table));
    assertThat(report.checks().get(0).count(Verdict.TABULATED)).isOne();
    assertThat(report.evidence().get(0).words())
        .isEqualTo("no published check; 1 cell: 1 tabulated, none failed");
  }

  private static final class OneCell implements PrintedTable {
    @Override
    public String name() {
      return "T";
    }

    @Override
    public Optional<BigDecimal> cell(double... keys) {
      return Optional.of(BigDecimal.valueOf(2));
    }
  }

  @Test
  void aTableThatDoesNotFitNamesBothSides() {
    Table unit = table("[kg] exact", TO_ONE, "1,1\n");
    Table area = table("[m2] exact", TO_ONE, "1,1\n");
    Table result = table("[m] exact", "[m3] result step=1 rounding=nearest", "1,1\n");
    CheckReport report = ReferenceChecks.run(catalogue(x -> x), List.of(unit, area, result));
    assertThat(report.problems())
        .containsExactly(
            "s/t: column x [kg] does not fit x [m] of fake/one",
            "s/t: column x [m2] does not fit x [m] of fake/one",
            "s/t: column y [m3] does not fit y [m] of fake/one");
    assertThat(report.passed()).isFalse();
    assertThat(ReferenceChecks.run(Catalogue.of(List.of()), List.of(unit)).problems())
        .containsExactly("s/t: formula fake/one is not in the catalogue");
  }

  @Test
  void aWrongNameNamesWhatIsTaken() {
    String head = "# source: s\n# locator: p. 1\n# formula: fake/one\n# standing: computed\n";
    String columns = "# column %s [m] exact\n# column z [m] exact\n# column %s " + TO_ONE + "\n";
    Table missing =
        TableReader.read(
            "s/t", head + columns.formatted("w", "y") + "w,z,y\n1,1,1\n", SOURCES, List.of());
    Table spare =
        TableReader.read(
            "s/t", head + columns.formatted("x", "y") + "x,z,y\n1,1,1\n", SOURCES, List.of());
    Table named =
        TableReader.read(
            "s/t", head + columns.formatted("x", "v") + "x,z,v\n1,1,1\n", SOURCES, List.of());
    assertThat(ReferenceChecks.run(catalogue(x -> x), List.of(missing, spare, named)).problems())
        .containsExactly(
            "s/t: fake/one takes x [m], the table has w [m], z [m]",
            "s/t: column z [m] is no input of fake/one, which takes x [m]",
            "s/t: column v [m] does not fit y [m] of fake/one");
  }

  @Test
  void severalValuesForANumberFail() {
    assertThat(only(table("[m] exact", TO_ONE, "1 2,1\n"), x -> x).message()).contains("no list");
  }

  @Test
  void anUnknownProcedureIsNamed() {
    String head = "# source: s\n# locator: p. 1\n# procedure: none\n# standing: computed\n";
    String text = head + "# column x [m] exact\n# column y " + TO_ONE + "\nx,y\n1,1\n";
    Table table = TableReader.read("s/t", text, SOURCES, List.of());
    assertThat(ReferenceChecks.run(catalogue(x -> x), List.of(table)).problems())
        .singleElement()
        .asString()
        .startsWith("s/t: no procedure none; there are [");
  }
}
