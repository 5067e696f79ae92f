package org.mensuration.validation.check;

import java.math.BigDecimal;
import java.util.Objects;
import org.mensuration.validation.table.ResultColumn;
import org.mensuration.validation.table.TableRow;

/**
 * One cell compared. Immutable and thread-safe.
 *
 * @param row the row
 * @param column the result column
 * @param subject identifier of the formula or procedure
 * @param printed the printed figure
 * @param difference distance from print in the measure of the column; zero where nothing was
 *     computed
 * @param verdict what was found
 * @param message the comparison in words
 */
public record CellCheck(
    TableRow row,
    ResultColumn column,
    String subject,
    BigDecimal printed,
    BigDecimal difference,
    Verdict verdict,
    String message) {
  /**
   * Checks that every part is there.
   *
   * @param row the row
   * @param column the result column
   * @param subject identifier of the formula or procedure
   * @param printed the printed figure
   * @param difference distance from print in the measure of the column; zero where nothing was
   *     computed
   * @param verdict what was found
   * @param message the comparison in words
   */
  public CellCheck {
    Objects.requireNonNull(row, "row");
    Objects.requireNonNull(column, "column");
    Objects.requireNonNull(subject, "subject");
    Objects.requireNonNull(printed, "printed");
    Objects.requireNonNull(difference, "difference");
    Objects.requireNonNull(verdict, "verdict");
    Objects.requireNonNull(message, "message");
  }
}
