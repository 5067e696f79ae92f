package org.mensuration.formula;

import java.math.BigDecimal;
import java.util.Optional;

/** A table that is itself the rule. Implementations are immutable and thread-safe. */
public interface PrintedTable {

  /**
   * What the table is called.
   *
   * @return name as it appears in the equation
   */
  String name();

  /**
   * The printed cell.
   *
   * @param keys what the table is entered with
   * @return the figure as printed; empty if no such cell is printed
   */
  Optional<BigDecimal> cell(double... keys);
}
