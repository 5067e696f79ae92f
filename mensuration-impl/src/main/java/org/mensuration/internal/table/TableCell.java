package org.mensuration.internal.table;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A printed figure. Immutable and thread-safe.
 *
 * @param printed the figure as printed
 * @param source the work it was taken from, where the table says so
 * @param value the figure as a double
 */
record TableCell(BigDecimal printed, Optional<String> source, double value) {
  static TableCell of(BigDecimal printed, Optional<String> source) {
    return new TableCell(printed, source, printed.doubleValue());
  }
}
