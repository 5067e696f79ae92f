package org.mensuration.validation.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.mensuration.formula.Catalogue;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.Result;

/**
 * The coefficients of a formula as they stand in its equation, by their number. One that is not
 * there is zero. Immutable and thread-safe.
 *
 * @param formula identifier of the formula
 */
record Coefficient(String formula) implements Procedure {
  private static final List<String> FORMULAS =
      List.of(
          "bark/csn-spruce",
          "bark/csn-pine",
          "bark/csn-beech",
          "bark/fva-spruce",
          "bark/fva-fir",
          "bark/fva-pine");

  static List<Procedure> all() {
    List<Procedure> all = new ArrayList<>();
    FORMULAS.forEach(formula -> all.add(new Coefficient(formula)));
    return all;
  }

  @Override
  public String id() {
    return "coefficient/" + formula;
  }

  @Override
  public List<String> evidenceFor() {
    return List.of(formula);
  }

  @Override
  public List<Parameter> parameters() {
    return List.of(StemProcedures.one("number", "1", Domain.atLeast(1)));
  }

  @Override
  public Result result() {
    return new Result("coefficient", "p", "1");
  }

  @Override
  public double value(Catalogue catalogue, double[][] inputs) {
    List<BigDecimal> numbers = new ArrayList<>();
    collect(catalogue.formula(formula).equation(), numbers);
    int wanted = (int) inputs[0][0] - 1;
    return wanted < numbers.size() ? numbers.get(wanted).doubleValue() : 0;
  }

  private static void collect(Equation node, List<BigDecimal> numbers) {
    if (node instanceof Equation.Printed printed) {
      numbers.add(printed.value());
    } else if (node instanceof Equation.Sum sum) {
      sum.terms().forEach(term -> collect(term, numbers));
    } else if (node instanceof Equation.Product product) {
      product.factors().forEach(factor -> collect(factor, numbers));
    } else if (node instanceof Equation.Power power) {
      collect(power.base(), numbers);
      collect(power.exponent(), numbers);
    }
  }
}
