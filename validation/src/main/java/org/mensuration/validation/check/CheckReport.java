package org.mensuration.validation.check;

import java.util.List;
import java.util.stream.Stream;

/**
 * All tables compared. Immutable and thread-safe.
 *
 * @param checks one entry a result column, in the order of the tables
 * @param evidence one entry a formula of the catalogue
 * @param problems tables that could not be read or do not fit their formula
 */
public record CheckReport(List<TableCheck> checks, List<Evidence> evidence, List<String> problems) {
  /**
   * Copies the lists.
   *
   * @param checks one entry a result column, in the order of the tables
   * @param evidence one entry a formula of the catalogue
   * @param problems tables that could not be read or do not fit their formula
   */
  public CheckReport {
    checks = List.copyOf(checks);
    evidence = List.copyOf(evidence);
    problems = List.copyOf(problems);
  }

  /**
   * All cells.
   *
   * @return in the order of the tables
   */
  public Stream<CellCheck> cells() {
    return checks.stream().flatMap(check -> check.cells().stream());
  }

  /**
   * Whether nothing failed and every table was read.
   *
   * @return true if all is well
   */
  public boolean passed() {
    return problems.isEmpty() && cells().noneMatch(cell -> cell.verdict() == Verdict.FAILED);
  }
}
