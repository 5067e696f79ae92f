package org.mensuration.validation.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mensuration.formula.Catalogue;
import org.mensuration.validation.table.Table;
import org.mensuration.validation.table.TableException;
import org.mensuration.validation.table.TableRow;

/** Compares tables with the formulas of a catalogue. Stateless and thread-safe. */
public final class ReferenceChecks {
  private ReferenceChecks() {}

  /**
   * Compares every cell of every table.
   *
   * @param catalogue the formulas
   * @param tables the tables
   * @return what was found; a table that does not fit its formula is among the problems
   */
  public static CheckReport run(Catalogue catalogue, List<Table> tables) {
    List<TableCheck> checks = new ArrayList<>();
    List<String> problems = new ArrayList<>();
    for (Table table : tables) {
      try {
        checks.addAll(check(catalogue, table));
      } catch (TableException e) {
        problems.add(String.valueOf(e.getMessage()));
      }
    }
    List<Evidence> evidence =
        catalogue.formulas().stream().map(formula -> Evidence.of(formula.id(), checks)).toList();
    return new CheckReport(checks, evidence, problems);
  }

  /**
   * Compares every cell of one table.
   *
   * @param catalogue the formulas
   * @param table the table
   * @return one entry a result column
   * @throws TableException if the table does not fit its formula; the message names both sides
   */
  public static List<TableCheck> check(Catalogue catalogue, Table table) {
    List<TableCheck> checks = new ArrayList<>();
    for (Binding binding : Binding.of(table, catalogue)) {
      CellChecker checker = new CellChecker(table, binding);
      List<CellCheck> cells = new ArrayList<>();
      for (TableRow row : table.rows()) {
        Optional<BigDecimal> printed = row.results().get(binding.position());
        printed.ifPresent(figure -> cells.add(checker.check(row, figure)));
      }
      checks.add(new TableCheck(table, binding.column(), binding.subject().id(), cells));
    }
    return checks;
  }
}
