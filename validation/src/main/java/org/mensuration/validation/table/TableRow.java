package org.mensuration.validation.table;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One row of a table. Immutable and thread-safe.
 *
 * @param line line in the file, from 1
 * @param key name by which a known deviation points to the row: its case, or else its inputs
 * @param inputs readings of each input column, one for a plain number
 * @param results figure of each result column; empty where nothing is printed
 * @param note remark carried into messages; may be blank
 */
public record TableRow(
    long line,
    String key,
    List<List<BigDecimal>> inputs,
    List<Optional<BigDecimal>> results,
    String note) {
  /**
   * Copies the lists.
   *
   * @param line line in the file, from 1
   * @param key name by which a known deviation points to the row: its case, or else its inputs
   * @param inputs readings of each input column, one for a plain number
   * @param results figure of each result column; empty where nothing is printed
   * @param note remark carried into messages; may be blank
   */
  public TableRow {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(note, "note");
    inputs = inputs.stream().map(List::copyOf).toList();
    results = List.copyOf(results);
  }
}
