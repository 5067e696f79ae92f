package org.mensuration.validation.table;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * A printed figure that is known to be wrong or to follow no formula. Immutable and thread-safe.
 *
 * @param table name of the table
 * @param row key of the row; with several result columns followed by {@code >} and the column
 * @param amount printed minus computed, in the unit of the column, rounded to its own digits
 * @param reason why the figure deviates
 * @param secondSource what proves it; may be blank where the reason is the argument
 */
public record Deviation(
    String table, String row, BigDecimal amount, String reason, String secondSource) {
  /**
   * Checks that every part is there.
   *
   * @param table name of the table
   * @param row key of the row; with several result columns followed by {@code >} and the column
   * @param amount printed minus computed, in the unit of the column, rounded to its own digits
   * @param reason why the figure deviates
   * @param secondSource what proves it; may be blank where the reason is the argument
   */
  public Deviation {
    Objects.requireNonNull(table, "table");
    Objects.requireNonNull(row, "row");
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(secondSource, "secondSource");
  }
}
