package org.mensuration.validation.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a table says about itself. Immutable and thread-safe.
 *
 * @param source identifier in the bibliography
 * @param locator place in the source
 * @param formula formula of every result column that names none of its own
 * @param procedure procedure of every result column that names none of its own, instead of a
 *     formula
 * @param standing how far the rows are evidence
 * @param inputs columns of inputs
 * @param results columns of results, at least one
 * @param notes remarks
 */
public record TableHead(
    String source,
    String locator,
    Optional<String> formula,
    Optional<String> procedure,
    Standing standing,
    List<InputColumn> inputs,
    List<ResultColumn> results,
    List<String> notes) {
  /**
   * Copies the lists.
   *
   * @param source identifier in the bibliography
   * @param locator place in the source
   * @param formula formula of every result column that names none of its own
   * @param procedure procedure of every result column that names none of its own, instead of a
   *     formula
   * @param standing how far the rows are evidence
   * @param inputs columns of inputs
   * @param results columns of results, at least one
   * @param notes remarks
   */
  public TableHead {
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(locator, "locator");
    Objects.requireNonNull(formula, "formula");
    Objects.requireNonNull(procedure, "procedure");
    Objects.requireNonNull(standing, "standing");
    inputs = List.copyOf(inputs);
    results = List.copyOf(results);
    notes = List.copyOf(notes);
  }

  /**
   * The same head with further inputs.
   *
   * @param further columns that come after the others
   * @return a new head
   */
  TableHead withInputs(List<InputColumn> further) {
    List<InputColumn> all = new ArrayList<>(inputs);
    all.addAll(further);
    return new TableHead(source, locator, formula, procedure, standing, all, results, notes);
  }

  /**
   * The formula or procedure behind a result column.
   *
   * @param column one of {@link #results()}
   * @return its identifier
   */
  public String subject(ResultColumn column) {
    return column.formula().or(() -> procedure).or(() -> formula).orElseThrow();
  }
}
