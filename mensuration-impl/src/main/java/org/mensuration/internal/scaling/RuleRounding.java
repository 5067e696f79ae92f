package org.mensuration.internal.scaling;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
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
    Map<String, Equation> named = new LinkedHashMap<>();
    return rounded(formula.equation(), inputs, named)
        .map(
            rounded ->
                Tree.exact(
                        with(named, rounded.value()),
                        formula.parameters(),
                        new double[][] {{small}, {length}},
                        DIGITS)
                    .doubleValue());
  }

  /** Puts an equation back among the named results that it stood in. */
  private static Equation with(Map<String, Equation> named, Equation inside) {
    Equation equation = inside;
    List<String> symbols = new ArrayList<>(named.keySet());
    Collections.reverse(symbols);
    for (String symbol : symbols) {
      equation = new Equation.Where(symbol, named.getOrDefault(symbol, inside), equation);
    }
    return equation;
  }

  private static Optional<Equation.Rounded> rounded(
      Equation node, Map<String, Double> inputs, Map<String, Equation> named) {
    if (node instanceof Equation.Where where) {
      named.put(where.symbol(), where.value());
      return rounded(where.in(), inputs, named);
    } else if (node instanceof Equation.Cases cases) {
      return cases.chosen(inputs).flatMap(chosen -> rounded(chosen, inputs, named));
    } else if (node instanceof Equation.Symbol symbol) {
      return Optional.ofNullable(named.get(symbol.name()))
          .flatMap(value -> rounded(value, inputs, named));
    }
    return node instanceof Equation.Rounded rounded ? Optional.of(rounded) : Optional.empty();
  }
}
