package org.mensuration.internal.tree;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.RealFieldElement;
import org.mensuration.formula.Equation;

/**
 * One walk over an equation in one arithmetic. Used once and thrown away; not thread-safe.
 *
 * @param <T> element of the field
 */
final class TreeWalk<T extends RealFieldElement<T>> {
  private final Arithmetic<T> arithmetic;
  private final Map<String, List<T>> lists;
  private final Map<String, T> values = new HashMap<>();
  private final Map<String, T> intermediates = new LinkedHashMap<>();
  private boolean stepwise;

  TreeWalk(Arithmetic<T> arithmetic, Map<String, List<T>> inputs) {
    this.arithmetic = arithmetic;
    this.lists = inputs;
    inputs.forEach(
        (symbol, readings) -> {
          if (readings.size() == 1) {
            values.put(symbol, readings.get(0));
          }
        });
  }

  boolean stepwise() {
    return stepwise;
  }

  Map<String, T> intermediates() {
    return intermediates;
  }

  T value(Equation node) {
    if (node instanceof Equation.Printed printed) {
      return arithmetic.constant(printed.value());
    } else if (node instanceof Equation.Pi) {
      return arithmetic.pi();
    } else if (node instanceof Equation.Symbol symbol) {
      return bound(symbol.name());
    } else if (node instanceof Equation.Sum sum) {
      return sum(sum.terms());
    } else if (node instanceof Equation.Negative negative) {
      return value(negative.value()).negate();
    } else if (node instanceof Equation.Product product) {
      return product(product.factors());
    } else if (node instanceof Equation.Quotient quotient) {
      return value(quotient.numerator()).divide(value(quotient.denominator()));
    } else if (node instanceof Equation.Power power) {
      return power(power);
    } else if (node instanceof Equation.Root root) {
      return root(value(root.radicand()), root.degree());
    } else if (node instanceof Equation.Function function) {
      return function(function);
    } else if (node instanceof Equation.Where where) {
      T named = value(where.value());
      intermediates.put(where.symbol(), named);
      return with(where.symbol(), named, where.in());
    }
    return stepped(node);
  }

  private T stepped(Equation node) {
    if (node instanceof Equation.Cases cases) {
      return cases(cases);
    } else if (node instanceof Equation.ReadingSum sum) {
      return readingSum(sum);
    } else if (node instanceof Equation.ReadingCount count) {
      return arithmetic.constant(BigDecimal.valueOf(readings(count.list()).size()));
    } else if (node instanceof Equation.IndexSum sum) {
      return indexSum(sum);
    } else if (node instanceof Equation.Rounded rounded) {
      return rounded(rounded);
    } else if (node instanceof Equation.LookUp lookUp) {
      return lookUp(lookUp);
    }
    throw new IllegalStateException("no value in the tree for " + node);
  }

  private T bound(String symbol) {
    T value = values.get(symbol);
    if (value == null) {
      throw new IllegalStateException("symbol " + symbol + " is not bound");
    }
    return value;
  }

  private List<T> readings(String list) {
    List<T> readings = lists.get(list);
    if (readings == null) {
      throw new IllegalStateException("list " + list + " is not bound");
    }
    return readings;
  }

  private T with(String symbol, T value, Equation in) {
    T hidden = values.put(symbol, value);
    T result = value(in);
    if (hidden == null) {
      values.remove(symbol);
    } else {
      values.put(symbol, hidden);
    }
    return result;
  }

  private T sum(List<Equation> terms) {
    T sum = value(terms.get(0));
    for (Equation term : terms.subList(1, terms.size())) {
      sum = sum.add(value(term));
    }
    return sum;
  }

  private T product(List<Equation> factors) {
    T product = value(factors.get(0));
    for (Equation factor : factors.subList(1, factors.size())) {
      product = product.multiply(value(factor));
    }
    return product;
  }

  private T power(Equation.Power power) {
    T base = value(power.base());
    if (power.exponent() instanceof Equation.Printed printed
        && printed.value().stripTrailingZeros().scale() <= 0) {
      return base.pow(printed.value().intValueExact());
    }
    T exponent = value(power.exponent());
    if (base.getReal() == 0 && exponent.getReal() > 1) {
      // At the tip of a stem: zero, and flat. The power by logarithms would find no derivative.
      return arithmetic.constant(BigDecimal.ZERO);
    }
    return base.pow(exponent);
  }

  private T root(T radicand, int degree) {
    return degree == 2 ? radicand.sqrt() : degree == 3 ? radicand.cbrt() : radicand.rootN(degree);
  }

  private T function(Equation.Function function) {
    T first = value(function.arguments().get(0));
    return switch (function.name()) {
      case SIN -> first.sin();
      case COS -> first.cos();
      case TAN -> first.tan();
      case ASIN -> arithmetic.asin(first);
      case ACOS -> arithmetic.acos(first);
      case ATAN -> first.atan();
      case EXP -> first.exp();
      case LN -> first.log();
      case FLOOR -> step(arithmetic.floor(first));
      case MIN -> smaller(first, value(function.arguments().get(1)));
      case MAX -> smaller(first.negate(), value(function.arguments().get(1)).negate()).negate();
      case DEGREES -> first.multiply(arithmetic.pi()).divide(halfTurn());
      case IN_DEGREES -> first.multiply(halfTurn()).divide(arithmetic.pi());
    };
  }

  private T halfTurn() {
    return arithmetic.constant(BigDecimal.valueOf(180));
  }

  private T smaller(T left, T right) {
    int order = arithmetic.compare(left, right);
    stepwise |= order == 0;
    return order <= 0 ? left : right;
  }

  private T step(BigDecimal value) {
    stepwise = true;
    return arithmetic.constant(value);
  }

  private T cases(Equation.Cases cases) {
    for (Equation.Branch branch : cases.branches()) {
      int order = arithmetic.compare(value(branch.when().left()), value(branch.when().right()));
      stepwise |= order == 0;
      if (branch.when().comparison().holds(order)) {
        return value(branch.then());
      }
    }
    return value(cases.otherwise());
  }

  private T readingSum(Equation.ReadingSum sum) {
    int turns = readings(sum.lists().get(0)).size();
    T total = arithmetic.constant(BigDecimal.ZERO);
    Map<String, T> outer = new HashMap<>(values);
    for (int i = 0; i < turns; i++) {
      for (String list : sum.lists()) {
        values.put(list, readings(list).get(i));
      }
      total = total.add(value(sum.term()));
    }
    values.clear();
    values.putAll(outer);
    return total;
  }

  private T indexSum(Equation.IndexSum sum) {
    int from = arithmetic.decimal(value(sum.from())).intValueExact();
    int to = arithmetic.decimal(value(sum.to())).intValueExact();
    T total = arithmetic.constant(BigDecimal.ZERO);
    for (int i = from; i <= to; i++) {
      T index = arithmetic.constant(BigDecimal.valueOf(i));
      total = total.add(with(sum.index(), index, sum.term()));
    }
    return total;
  }

  private T rounded(Equation.Rounded rounded) {
    RoundingMode mode =
        switch (rounded.mode()) {
          case DOWN -> RoundingMode.FLOOR;
          case UP -> RoundingMode.CEILING;
          case HALF_UP -> RoundingMode.HALF_UP;
          case HALF_DOWN -> RoundingMode.HALF_DOWN;
          case HALF_EVEN -> RoundingMode.HALF_EVEN;
        };
    BigDecimal value = arithmetic.decimal(value(rounded.value()));
    BigDecimal steps = value.divide(rounded.step(), 40, RoundingMode.HALF_EVEN);
    return step(steps.setScale(0, mode).multiply(rounded.step()));
  }

  private T lookUp(Equation.LookUp lookUp) {
    List<Double> keys = new ArrayList<>();
    for (Equation key : lookUp.keys()) {
      keys.add(arithmetic.decimal(value(key)).doubleValue());
    }
    double[] entered = keys.stream().mapToDouble(Double::doubleValue).toArray();
    return step(
        lookUp
            .table()
            .cell(entered)
            .orElseThrow(
                () ->
                    new IllegalStateException(
                        lookUp.table().name() + " prints no cell for " + keys)));
  }
}
