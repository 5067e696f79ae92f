package org.mensuration.validation.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
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
 * @param tabulated whether a figure of this work for these inputs is the data of a table rule
 * @param value the value for one array an input
 * @param gradient the derivatives where they are known
 */
record Subject(
    String id,
    List<Parameter> parameters,
    Result result,
    BiPredicate<String, double[][]> tabulated,
    ToDoubleFunction<double[][]> value,
    Function<double[][], Optional<Gradient>> gradient) {

  static Subject of(Formula formula) {
    return new Subject(
        formula.id(),
        formula.parameters(),
        formula.result(),
        (work, inputs) -> tabulated(formula, work, inputs),
        formula::applyTo,
        inputs -> gradient(formula, inputs));
  }

  static Subject of(Procedure procedure, Catalogue catalogue) {
    return new Subject(
        procedure.id(),
        procedure.parameters(),
        procedure.result(),
        (work, inputs) -> procedure.tabulated(),
        inputs -> procedure.value(catalogue, inputs),
        inputs -> Optional.empty());
  }

  /**
   * A cell of the work that a bare table was typed from is its data; the same cell in another work
   * is a check. A factor looked up and then multiplied is a rule that any print can check.
   */
  private static boolean tabulated(Formula formula, String work, double[][] inputs) {
    Optional<Equation.LookUp> table = onlyTable(formula.equation(), values(formula, inputs));
    if (table.isEmpty()) {
      return false;
    }
    double[] keys = new double[table.get().keys().size()];
    for (int i = 0; i < keys.length; i++) {
      Optional<Double> key = key(formula, table.get().keys().get(i), inputs);
      if (key.isEmpty()) {
        return true;
      }
      keys[i] = key.get();
    }
    return table.get().table().source(keys).map(work::equals).orElse(true);
  }

  /** Of cases only the one that the inputs fall in counts. */
  private static Optional<Equation.LookUp> onlyTable(
      Equation equation, Map<String, Double> inputs) {
    if (equation instanceof Equation.Where where) {
      return onlyTable(where.in(), inputs);
    } else if (equation instanceof Equation.Cases cases) {
      return cases.chosen(inputs).flatMap(chosen -> onlyTable(chosen, inputs));
    }
    return equation instanceof Equation.LookUp lookUp ? Optional.of(lookUp) : Optional.empty();
  }

  private static Map<String, Double> values(Formula formula, double[][] inputs) {
    Map<String, Double> values = new HashMap<>();
    for (int i = 0; i < inputs.length; i++) {
      values.put(formula.parameters().get(i).symbol(), inputs[i][0]);
    }
    return values;
  }

  private static Optional<Double> key(Formula formula, Equation key, double[][] inputs) {
    for (int i = 0; i < inputs.length; i++) {
      if (key instanceof Equation.Symbol symbol
          && symbol.name().equals(formula.parameters().get(i).symbol())) {
        return Optional.of(inputs[i][0]);
      }
    }
    return Optional.empty();
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
