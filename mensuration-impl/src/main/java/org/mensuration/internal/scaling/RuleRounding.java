package org.mensuration.internal.scaling;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Formula;
import org.mensuration.internal.tree.Tree;
import org.mensuration.log.Log;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.UnitReader;

/** Finds what a rule that rounds had before it rounded. Stateless and thread-safe. */
final class RuleRounding {
  private static final int DIGITS = 20;

  private RuleRounding() {}

  /** The number before the last rounding of a rule of small end and length; empty if none. */
  static Optional<Double> inside(Formula formula, Log log) {
    boolean ofSmallEnd =
        formula.parameters().size() == 2
            && formula.parameters().get(0).name().equals("small_diameter")
            && formula.parameters().get(0).unit().equals("in")
            && formula.parameters().get(1).unit().equals("ft");
    if (!ofSmallEnd || !log.small().isPresent()) {
      return Optional.empty();
    }
    double small = UnitReader.in(ForestUnits.INCH).read(log.small().get());
    double length = UnitReader.in(ForestUnits.FOOT).read(log.length());
    Map<String, Double> inputs =
        Map.of(
            formula.parameters().get(0).symbol(),
            small,
            formula.parameters().get(1).symbol(),
            length);
    return rounded(formula.equation(), inputs, new HashMap<>())
        .map(
            rounded ->
                Tree.exact(
                        rounded.value(),
                        formula.parameters(),
                        new double[][] {{small}, {length}},
                        DIGITS)
                    .doubleValue());
  }

  private static Optional<Equation.Rounded> rounded(
      Equation node, Map<String, Double> inputs, Map<String, Equation> named) {
    if (node instanceof Equation.Where where) {
      named.put(where.symbol(), where.value());
      return rounded(where.in(), inputs, named);
    } else if (node instanceof Equation.Cases cases) {
      return cases.chosen(inputs).flatMap(chosen -> rounded(chosen, inputs, named));
    } else if (node instanceof Equation.Symbol symbol && named.containsKey(symbol.name())) {
      return rounded(named.get(symbol.name()), inputs, named);
    }
    return node instanceof Equation.Rounded rounded ? Optional.of(rounded) : Optional.empty();
  }
}
