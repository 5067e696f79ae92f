package org.mensuration.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * An equation as one line of plain text. Stateless and thread-safe.
 *
 * <p>Intermediate results follow the main line after "where", in the order in which a reader needs
 * them.
 */
public final class EquationText {
  private static final int SUM = 1;
  private static final int PRODUCT = 2;
  private static final int POWER = 3;
  private static final int ATOM = 4;

  private final UnaryOperator<String> symbols;
  private final List<String> definitions = new ArrayList<>();

  private EquationText(UnaryOperator<String> symbols) {
    this.symbols = symbols;
  }

  /**
   * The equation with its symbols.
   *
   * @param left what stands left of the equals sign
   * @param equation the right side
   * @return one line
   */
  public static String of(String left, Equation equation) {
    return of(left, equation, UnaryOperator.identity());
  }

  /**
   * The equation with something put in for its symbols.
   *
   * @param left what stands left of the equals sign
   * @param equation the right side
   * @param symbols what is printed for a symbol
   * @return one line
   */
  public static String of(String left, Equation equation, UnaryOperator<String> symbols) {
    EquationText writer = new EquationText(symbols);
    String main = left + " = " + writer.text(equation, 0);
    return writer.definitions.isEmpty()
        ? main
        : main + ", where " + String.join(", ", writer.definitions);
  }

  /**
   * A number as equations and messages show it: the shortest decimal of the double, without
   * exponent for ordinary sizes, independent of the locale.
   *
   * @param value the number
   * @return its digits
   */
  public static String number(double value) {
    return Numbers.plain(value);
  }

  private String text(Equation node, int outer) {
    if (node instanceof Equation.Where where) {
      String definition = symbols.apply(where.symbol()) + " = " + text(where.value(), 0);
      String main = text(where.in(), outer);
      definitions.add(definition);
      return main;
    }
    int own = strength(node);
    String inner = plain(node);
    return own < outer ? "(" + inner + ")" : inner;
  }

  private static int strength(Equation node) {
    if (node instanceof Equation.Sum || node instanceof Equation.Negative) {
      return SUM;
    }
    if (node instanceof Equation.Product
        || node instanceof Equation.Quotient
        || node instanceof Equation.ReadingSum
        || node instanceof Equation.IndexSum) {
      return PRODUCT;
    }
    if (node instanceof Equation.Printed number && number.value().signum() < 0) {
      return SUM;
    }
    return node instanceof Equation.Power ? POWER : ATOM;
  }

  private String plain(Equation node) {
    if (node instanceof Equation.Printed number) {
      return number.value().toPlainString();
    } else if (node instanceof Equation.Pi) {
      return "π";
    } else if (node instanceof Equation.Symbol symbol) {
      return symbols.apply(symbol.name());
    } else if (node instanceof Equation.Sum sum) {
      return sum(sum);
    } else if (node instanceof Equation.Negative negative) {
      return "-" + text(negative.value(), PRODUCT);
    } else if (node instanceof Equation.Product product) {
      return joined(product.factors(), " · ", PRODUCT);
    } else if (node instanceof Equation.Quotient quotient) {
      return text(quotient.numerator(), PRODUCT) + "/" + text(quotient.denominator(), POWER);
    } else if (node instanceof Equation.Power power) {
      return power(power);
    } else if (node instanceof Equation.Root root) {
      return (root.degree() == 2 ? "√" : root.degree() == 3 ? "∛" : root.degree() + "√")
          + "("
          + text(root.radicand(), 0)
          + ")";
    } else if (node instanceof Equation.Function function) {
      return function(function);
    }
    return steps(node);
  }

  private String steps(Equation node) {
    if (node instanceof Equation.Cases cases) {
      return cases(cases);
    } else if (node instanceof Equation.ReadingSum sum) {
      return "Σ(" + text(sum.term(), 0) + ")";
    } else if (node instanceof Equation.ReadingCount count) {
      return "n(" + symbols.apply(count.list()) + ")";
    } else if (node instanceof Equation.IndexSum sum) {
      return "Σ["
          + sum.index()
          + " = "
          + text(sum.from(), 0)
          + " … "
          + text(sum.to(), 0)
          + "]("
          + text(sum.term(), 0)
          + ")";
    } else if (node instanceof Equation.Rounded rounded) {
      return "round("
          + text(rounded.value(), 0)
          + "; "
          + rounded.mode().words()
          + ", step "
          + rounded.step().toPlainString()
          + ")";
    } else if (node instanceof Equation.LookUp lookUp) {
      return lookUp.table().name() + "[" + joined(lookUp.keys(), "; ", 0) + "]";
    } else if (node instanceof Equation.Solved solved) {
      return solved.statement();
    }
    throw new IllegalStateException("no text for " + node);
  }

  private String sum(Equation.Sum sum) {
    StringBuilder text = new StringBuilder();
    for (Equation term : sum.terms()) {
      if (text.length() == 0) {
        text.append(text(term, SUM));
      } else if (term instanceof Equation.Negative negative) {
        text.append(" - ").append(text(negative.value(), PRODUCT));
      } else {
        text.append(" + ").append(text(term, PRODUCT));
      }
    }
    return text.toString();
  }

  private String power(Equation.Power power) {
    String base = text(power.base(), ATOM);
    if (power.exponent() instanceof Equation.Printed number) {
      String exponent = number.value().toPlainString();
      if ("2".equals(exponent)) {
        return base + "²";
      } else if ("3".equals(exponent)) {
        return base + "³";
      }
    }
    return base + "^" + text(power.exponent(), ATOM);
  }

  private String function(Equation.Function function) {
    if (function.name() == Equation.FunctionName.DEGREES) {
      return text(function.arguments().get(0), ATOM) + function.name().sign();
    }
    return function.name().sign() + "(" + joined(function.arguments(), "; ", 0) + ")";
  }

  private String cases(Equation.Cases cases) {
    StringBuilder text = new StringBuilder("{");
    for (Equation.Branch branch : cases.branches()) {
      Equation.Condition when = branch.when();
      text.append(text(branch.then(), 0))
          .append(" if ")
          .append(text(when.left(), 0))
          .append(' ')
          .append(when.comparison().sign())
          .append(' ')
          .append(text(when.right(), 0))
          .append("; ");
    }
    return text.append(text(cases.otherwise(), 0)).append(" otherwise}").toString();
  }

  private String joined(List<Equation> nodes, String separator, int outer) {
    List<String> parts = new ArrayList<>();
    for (Equation node : nodes) {
      parts.add(text(node, outer));
    }
    return String.join(separator, parts);
  }
}
