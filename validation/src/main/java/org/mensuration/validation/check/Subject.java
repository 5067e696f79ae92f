package org.mensuration.validation.check;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.mensuration.formula.Catalogue;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Formula;
import org.mensuration.formula.Gradient;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.Result;

/**
 * What gives the values of a result column, a formula or a procedure. Immutable and thread-safe.
 *
 * @param id identifier
 * @param parameters inputs in their order
 * @param result what comes out
 * @param tabulated whether the rule is nothing but a printed table
 * @param value the value for one array an input
 * @param gradient the derivatives where they are known
 */
record Subject(
    String id,
    List<Parameter> parameters,
    Result result,
    boolean tabulated,
    ToDoubleFunction<double[][]> value,
    Function<double[][], Optional<Gradient>> gradient) {

  static Subject of(Formula formula) {
    return new Subject(
        formula.id(),
        formula.parameters(),
        formula.result(),
        onlyTable(formula.equation()),
        formula::applyTo,
        inputs -> gradient(formula, inputs));
  }

  static Subject of(Procedure procedure, Catalogue catalogue) {
    return new Subject(
        procedure.id(),
        procedure.parameters(),
        procedure.result(),
        false,
        inputs -> procedure.value(catalogue, inputs),
        inputs -> Optional.empty());
  }

  /** A factor looked up and then multiplied is a rule that print can check; a bare cell is not. */
  private static boolean onlyTable(Equation equation) {
    if (equation instanceof Equation.Where where) {
      return onlyTable(where.in());
    }
    return equation instanceof Equation.LookUp;
  }

  private static Optional<Gradient> gradient(Formula formula, double[][] inputs) {
    if (formula.solved()) {
      return Optional.empty();
    }
    try {
      return Optional.of(formula.gradient(inputs));
    } catch (ArithmeticException e) {
      // Not finite there, as a root at zero: the caller does without.
      return Optional.empty();
    }
  }
}
