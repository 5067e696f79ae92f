package org.mensuration.internal.tree;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.analysis.differentiation.SparseGradient;
import org.apache.commons.math3.dfp.Dfp;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Gradient;
import org.mensuration.formula.Parameter;

/** Values of a printed equation. Stateless and thread-safe. */
public final class Tree {
  private Tree() {}

  /**
   * The value in decimal arithmetic.
   *
   * @param equation the right side
   * @param parameters the inputs' facts
   * @param inputs one array an input
   * @param digits significant digits wanted
   * @return the value rounded to the digits
   */
  public static BigDecimal exact(
      Equation equation, List<Parameter> parameters, double[][] inputs, int digits) {
    var arithmetic = new DecimalArithmetic(digits);
    Map<String, List<Dfp>> bound = bind(parameters, inputs, arithmetic::exactly);
    Dfp value = new TreeWalk<>(arithmetic, bound).value(equation);
    return arithmetic.decimal(value).round(new MathContext(digits));
  }

  /**
   * Value and derivatives; a derivative may be infinite or NaN.
   *
   * @param equation the right side
   * @param parameters the inputs' facts
   * @param inputs one array an input
   * @return the gradient
   */
  public static Gradient gradient(
      Equation equation, List<Parameter> parameters, double[][] inputs) {
    int[] next = {0};
    Map<String, List<SparseGradient>> bound =
        bind(parameters, inputs, value -> SparseGradient.createVariable(next[0]++, value));
    var walk = new TreeWalk<>(new GradientArithmetic(), bound);
    SparseGradient value = walk.value(equation);
    double[] partials = new double[next[0]];
    for (int i = 0; i < partials.length; i++) {
      partials[i] = value.getDerivative(i);
    }
    return new Gradient(value.getValue(), partials, walk.stepwise());
  }

  /**
   * The named intermediate results, in the order in which they arise.
   *
   * @param equation the right side
   * @param parameters the inputs' facts
   * @param inputs one array an input
   * @return symbol and value
   */
  public static Map<String, Double> intermediates(
      Equation equation, List<Parameter> parameters, double[][] inputs) {
    Map<String, List<SparseGradient>> bound =
        bind(parameters, inputs, SparseGradient::createConstant);
    var walk = new TreeWalk<>(new GradientArithmetic(), bound);
    walk.value(equation);
    Map<String, Double> values = new LinkedHashMap<>();
    walk.intermediates().forEach((symbol, value) -> values.put(symbol, value.getValue()));
    return values;
  }

  private static <T> Map<String, List<T>> bind(
      List<Parameter> parameters, double[][] inputs, DoubleFunction<T> element) {
    Map<String, List<T>> bound = new LinkedHashMap<>();
    for (int i = 0; i < inputs.length; i++) {
      List<T> readings = new ArrayList<>();
      for (double value : inputs[i]) {
        readings.add(element.apply(value));
      }
      bound.put(parameters.get(i).symbol(), readings);
    }
    return bound;
  }
}
