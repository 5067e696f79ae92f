package org.mensuration.validation.table;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * A column of inputs. Immutable and thread-safe.
 *
 * @param name name of the input, as in the formula
 * @param unit unit of the cells
 * @param step the step to which the inputs were rounded; empty if they are exact
 */
public record InputColumn(String name, String unit, Optional<BigDecimal> step) {
  /**
   * Checks that every part is there.
   *
   * @param name name of the input, as in the formula
   * @param unit unit of the cells
   * @param step the step to which the inputs were rounded; empty if they are exact
   */
  public InputColumn {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(step, "step");
  }
}
