package org.mensuration.internal.formula;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.mensuration.formula.EquationText;
import org.mensuration.formula.Explanation;
import org.mensuration.formula.Parameter;
import org.mensuration.internal.tree.Tree;
import org.mensuration.source.Citation;

/** Puts a caller's numbers into an equation. Stateless and thread-safe. */
final class Explainer {
  private Explainer() {}

  static Explanation explain(BoundFormula formula, double[][] inputs, double result) {
    Map<String, String> shown = new LinkedHashMap<>();
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < inputs.length; i++) {
      Parameter parameter = formula.parameters().get(i);
      String value =
          parameter.list()
              ? Arrays.stream(inputs[i])
                  .mapToObj(Explainer::number)
                  .collect(Collectors.joining("; ", "[", "]"))
              : number(inputs[i][0]);
      if (!parameter.list()) {
        shown.put(parameter.symbol(), inputs[i][0] < 0 ? "(" + value + ")" : value);
      }
      lines.add(
          parameter.symbol() + " = " + value + unit(parameter.unit()) + ", " + parameter.meaning());
    }
    List<String> steps = new ArrayList<>();
    if (!formula.solved()) {
      Tree.intermediates(formula.equation(), formula.parameters(), inputs)
          .forEach((symbol, value) -> steps.add(symbol + " = " + number(value)));
    }
    String symbol = formula.result().symbol();
    return new Explanation(
        formula.title(),
        formula.equationText(),
        lines,
        steps,
        EquationText.of(symbol, formula.equation(), name -> shown.getOrDefault(name, name)),
        symbol + " = " + number(result) + unit(formula.result().unit()),
        formula.citations().stream().map(Citation::toString).collect(Collectors.toList()));
  }

  private static String unit(String unit) {
    return "1".equals(unit) ? "" : " " + unit;
  }

  private static String number(double value) {
    return EquationText.number(value);
  }
}
