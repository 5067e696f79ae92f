package org.mensuration.formula;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The right side of an equation as a small tree, built as the source prints it. All kinds of node
 * are immutable and thread-safe.
 *
 * <p>Numbers are kept as the printed decimal, never as a double: {@code 0.905} is nine hundred and
 * five thousandths. The factories read like the page: {@code over(times(pi(), squared(sym("D"))),
 * num(4))}, see {@link Equations}.
 */
public sealed interface Equation {

  /**
   * A printed number.
   *
   * @param value exactly what is printed
   */
  record Printed(BigDecimal value) implements Equation {
    /**
     * Checks that there is a number.
     *
     * @param value exactly what is printed
     */
    public Printed {
      Objects.requireNonNull(value, "value");
    }
  }

  /** The ratio of a circle's circumference to its diameter. */
  record Pi() implements Equation {}

  /**
   * An input, an intermediate result or an index.
   *
   * @param name the symbol
   */
  record Symbol(String name) implements Equation {
    /**
     * Checks that there is a name.
     *
     * @param name the symbol
     */
    public Symbol {
      Parameter.requireText(name, "symbol");
    }
  }

  /**
   * A sum.
   *
   * @param terms at least two
   */
  record Sum(List<Equation> terms) implements Equation {
    /**
     * Copies the terms.
     *
     * @param terms at least two
     */
    public Sum {
      terms = List.copyOf(terms);
    }
  }

  /**
   * A value with its sign changed.
   *
   * @param value the value
   */
  record Negative(Equation value) implements Equation {}

  /**
   * A product.
   *
   * @param factors at least two
   */
  record Product(List<Equation> factors) implements Equation {
    /**
     * Copies the factors.
     *
     * @param factors at least two
     */
    public Product {
      factors = List.copyOf(factors);
    }
  }

  /**
   * A quotient.
   *
   * @param numerator above the line
   * @param denominator below the line
   */
  record Quotient(Equation numerator, Equation denominator) implements Equation {}

  /**
   * A power.
   *
   * @param base the base
   * @param exponent the exponent
   */
  record Power(Equation base, Equation exponent) implements Equation {}

  /**
   * A root.
   *
   * @param radicand below the root sign
   * @param degree 2 for a square root, 3 for a cube root
   */
  record Root(Equation radicand, int degree) implements Equation {}

  /**
   * A function of one or two values.
   *
   * @param name which function
   * @param arguments its arguments
   */
  record Function(FunctionName name, List<Equation> arguments) implements Equation {
    /**
     * Copies the arguments.
     *
     * @param name which function
     * @param arguments its arguments
     */
    public Function {
      Objects.requireNonNull(name, "name");
      arguments = List.copyOf(arguments);
    }
  }

  /**
   * Cases, tried in their order.
   *
   * @param branches the cases with conditions
   * @param otherwise the value when no condition holds
   */
  record Cases(List<Branch> branches, Equation otherwise) implements Equation {
    /**
     * Copies the branches.
     *
     * @param branches the cases with conditions
     * @param otherwise the value when no condition holds
     */
    public Cases {
      branches = List.copyOf(branches);
    }

    /**
     * The case that inputs fall in, if the conditions compare inputs with each other or with
     * numbers.
     *
     * @param inputs values by their symbols
     * @return the value of that case; empty if a condition holds something else
     */
    public Optional<Equation> chosen(Map<String, Double> inputs) {
      for (Branch branch : branches) {
        Optional<Double> left = plain(branch.when().left(), inputs);
        Optional<Double> right = plain(branch.when().right(), inputs);
        if (!left.isPresent() || !right.isPresent()) {
          return Optional.empty();
        }
        if (branch.when().comparison().holds(left.get(), right.get())) {
          return Optional.of(branch.then());
        }
      }
      return Optional.of(otherwise);
    }

    private static Optional<Double> plain(Equation side, Map<String, Double> inputs) {
      if (side instanceof Printed printed) {
        return Optional.of(printed.value().doubleValue());
      }
      return side instanceof Symbol symbol
          ? Optional.ofNullable(inputs.get(symbol.name()))
          : Optional.empty();
    }
  }

  /**
   * One case.
   *
   * @param when its condition
   * @param then the value when the condition holds
   */
  record Branch(Condition when, Equation then) {}

  /**
   * A comparison of two values.
   *
   * @param left left side
   * @param comparison how they are compared
   * @param right right side
   */
  record Condition(Equation left, Comparison comparison, Equation right) {}

  /**
   * A sum over the readings of lists of one length. Inside the term the symbols of the lists stand
   * for the reading of the turn.
   *
   * @param lists symbols of the lists
   * @param term the term
   */
  record ReadingSum(List<String> lists, Equation term) implements Equation {
    /**
     * Copies the symbols.
     *
     * @param lists symbols of the lists
     * @param term the term
     */
    public ReadingSum {
      lists = List.copyOf(lists);
    }
  }

  /**
   * The number of readings in a list.
   *
   * @param list symbol of the list
   */
  record ReadingCount(String list) implements Equation {}

  /**
   * A sum over a whole-number index.
   *
   * @param index symbol of the index
   * @param from first value
   * @param to last value; below {@code from} the sum is empty
   * @param term the term
   */
  record IndexSum(String index, Equation from, Equation to, Equation term) implements Equation {}

  /**
   * A rounding that defines the rule.
   *
   * @param value what is rounded
   * @param mode how
   * @param step to multiples of this
   */
  record Rounded(Equation value, RoundingMode mode, BigDecimal step) implements Equation {}

  /**
   * A look-up in a printed table.
   *
   * @param table the table
   * @param keys what it is entered with
   */
  record LookUp(PrintedTable table, List<Equation> keys) implements Equation {
    /**
     * Copies the keys.
     *
     * @param table the table
     * @param keys what it is entered with
     */
    public LookUp {
      keys = List.copyOf(keys);
    }
  }

  /**
   * A named intermediate result, used in what follows.
   *
   * @param symbol its symbol
   * @param value its value
   * @param in what it is used in
   */
  record Where(String symbol, Equation value, Equation in) implements Equation {}

  /**
   * A result found by search, iteration or a quantile, stated in words and signs. It has no value
   * in the tree.
   *
   * @param statement what is sought
   */
  record Solved(String statement) implements Equation {}

  /** The functions an equation may hold. */
  enum FunctionName {
    /** Sine of an angle in radians. */
    SIN("sin"),
    /** Cosine of an angle in radians. */
    COS("cos"),
    /** Tangent of an angle in radians. */
    TAN("tan"),
    /** Arc sine in radians. */
    ASIN("asin"),
    /** Arc cosine in radians. */
    ACOS("acos"),
    /** Arc tangent in radians. */
    ATAN("atan"),
    /** Exponential. */
    EXP("exp"),
    /** Natural logarithm. */
    LN("ln"),
    /** Largest whole number not above. */
    FLOOR("floor"),
    /** Smaller of two. */
    MIN("min"),
    /** Larger of two. */
    MAX("max"),
    /** Degrees to radians; printed as the degree sign. */
    DEGREES("°"),
    /** Radians to degrees. */
    IN_DEGREES("degrees");

    private final String sign;

    FunctionName(String sign) {
      this.sign = sign;
    }

    /**
     * The function as it is printed.
     *
     * @return for example {@code tan}
     */
    public String sign() {
      return sign;
    }
  }
}
