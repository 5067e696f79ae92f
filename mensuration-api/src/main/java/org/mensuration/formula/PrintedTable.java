package org.mensuration.formula;

import java.math.BigDecimal;
import java.util.Objects;
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

  /**
   * Which key has no cell, and what is printed instead.
   *
   * @param keys what the table is entered with
   * @return the key that is not printed; empty if the cell is printed
   */
  default Optional<Gap> gap(double... keys) {
    return cell(keys).isPresent()
        ? Optional.empty()
        : Optional.of(new Gap(0, "a cell printed in " + name()));
  }

  /**
   * The work that the figure was taken from. A copy of the table in another work is evidence for
   * it; the same work is not.
   *
   * @param keys what the table is entered with
   * @return identifier of the work; empty if the cell is not printed or the table does not say
   */
  default Optional<String> source(double... keys) {
    return Optional.empty();
  }

  /**
   * A key without a cell. Immutable and thread-safe.
   *
   * @param key position of the key among those that the table is entered with
   * @param printed what is printed, in words
   */
  record Gap(int key, String printed) {
    /**
     * Checks that it says something.
     *
     * @param key position of the key among those that the table is entered with
     * @param printed what is printed, in words
     */
    public Gap {
      Objects.requireNonNull(printed, "printed");
    }
  }
}
