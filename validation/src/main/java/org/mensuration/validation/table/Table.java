package org.mensuration.validation.table;

import java.util.List;
import java.util.Objects;

/**
 * A reference table. Immutable and thread-safe.
 *
 * @param name folder and file without ending, such as {@code chase1913/doyle}
 * @param source the work it was taken from
 * @param head what it says about itself
 * @param rows its rows
 * @param deviations known deviations of its rows
 */
public record Table(
    String name,
    SourceEntry source,
    TableHead head,
    List<TableRow> rows,
    List<Deviation> deviations) {
  /**
   * Copies the lists.
   *
   * @param name folder and file without ending, such as {@code chase1913/doyle}
   * @param source the work it was taken from
   * @param head what it says about itself
   * @param rows its rows
   * @param deviations known deviations of its rows
   */
  public Table {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(head, "head");
    rows = List.copyOf(rows);
    deviations = List.copyOf(deviations);
  }
}
