package org.mensuration.validation.table;

import java.util.Objects;
import java.util.Optional;

/**
 * A column of results. Immutable and thread-safe.
 *
 * @param name name of the result
 * @param unit unit of the cells
 * @param precision what the digits promise
 * @param formula identifier of the formula, where the column names one of its own
 */
public record ResultColumn(
    String name, String unit, Precision precision, Optional<String> formula) {
  /**
   * Checks that every part is there.
   *
   * @param name name of the result
   * @param unit unit of the cells
   * @param precision what the digits promise
   * @param formula identifier of the formula, where the column names one of its own
   */
  public ResultColumn {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(precision, "precision");
    Objects.requireNonNull(formula, "formula");
  }
}
