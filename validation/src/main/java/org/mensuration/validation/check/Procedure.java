package org.mensuration.validation.check;

import java.util.List;
import org.mensuration.formula.Catalogue;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.Result;

/**
 * A check that takes more than one formula, such as the basal area of a list of trees. It holds no
 * arithmetic of the trade of its own but calls the formulas of the catalogue. Implementations are
 * immutable and thread-safe.
 */
public interface Procedure {

  /**
   * The name in a table's head.
   *
   * @return for example {@code basal-area-of-trees}
   */
  String id();

  /**
   * The inputs.
   *
   * @return in their order
   */
  List<Parameter> parameters();

  /**
   * What comes out.
   *
   * @return name, symbol and unit
   */
  Result result();

  /**
   * The formulas that a cell of this procedure is evidence for: they give the value but for a
   * conversion of its inputs, or a mistake in any of them would show in it.
   *
   * @return identifiers; none for a long chain
   */
  default List<String> evidenceFor() {
    return List.of();
  }

  /**
   * Whether the cells are themselves facts of the library, such as published factors, so that they
   * are shown and count as no check.
   *
   * @return true if they are
   */
  default boolean tabulated() {
    return false;
  }

  /**
   * The value.
   *
   * @param catalogue formulas to be checked
   * @param inputs one array an input
   * @return in the unit of {@link #result()}
   */
  double value(Catalogue catalogue, double[][] inputs);
}
