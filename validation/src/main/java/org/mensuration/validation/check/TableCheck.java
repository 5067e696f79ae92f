package org.mensuration.validation.check;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.mensuration.validation.table.ResultColumn;
import org.mensuration.validation.table.Table;

/**
 * One result column of a table compared. Immutable and thread-safe.
 *
 * @param table the table
 * @param column the result column
 * @param subject identifier of the formula or procedure
 * @param cells its cells
 */
public record TableCheck(Table table, ResultColumn column, String subject, List<CellCheck> cells) {
  /**
   * Copies the cells.
   *
   * @param table the table
   * @param column the result column
   * @param subject identifier of the formula or procedure
   * @param cells its cells
   */
  public TableCheck {
    Objects.requireNonNull(table, "table");
    Objects.requireNonNull(column, "column");
    Objects.requireNonNull(subject, "subject");
    cells = List.copyOf(cells);
  }

  /**
   * How many cells were found so.
   *
   * @param verdict the verdict
   * @return the number
   */
  public int count(Verdict verdict) {
    return (int) cells.stream().filter(cell -> cell.verdict() == verdict).count();
  }

  /**
   * The largest difference of any cell.
   *
   * @return in the measure of the column
   */
  public BigDecimal largestDifference() {
    return cells.stream().map(CellCheck::difference).reduce(BigDecimal.ZERO, BigDecimal::max);
  }
}
