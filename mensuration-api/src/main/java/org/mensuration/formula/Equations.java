package org.mensuration.formula;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

/**
 * Factories of the nodes of an {@link Equation}, short enough to read like the page. Meant for a
 * static import. Stateless and thread-safe.
 */
public final class Equations {
  private Equations() {}

  /**
   * A printed number.
   *
   * @param printed its digits as printed
   * @return the node
   */
  public static Equation num(String printed) {
    return new Equation.Printed(new BigDecimal(printed));
  }

  /**
   * A whole number.
   *
   * @param value the number
   * @return the node
   */
  public static Equation num(long value) {
    return new Equation.Printed(BigDecimal.valueOf(value));
  }

  /**
   * An exact ratio of whole numbers.
   *
   * @param numerator above the line
   * @param denominator below the line
   * @return the node
   */
  public static Equation ratio(long numerator, long denominator) {
    return over(num(numerator), num(denominator));
  }

  /**
   * The number π.
   *
   * @return the node
   */
  public static Equation pi() {
    return new Equation.Pi();
  }

  /**
   * A symbol.
   *
   * @param name input, intermediate result or index
   * @return the node
   */
  public static Equation sym(String name) {
    return new Equation.Symbol(name);
  }

  /**
   * A sum.
   *
   * @param terms the terms
   * @return the node
   */
  public static Equation plus(Equation... terms) {
    return new Equation.Sum(Arrays.asList(terms));
  }

  /**
   * A difference.
   *
   * @param left what is subtracted from
   * @param right what is subtracted
   * @return the node
   */
  public static Equation minus(Equation left, Equation right) {
    return new Equation.Sum(List.of(left, new Equation.Negative(right)));
  }

  /**
   * A product.
   *
   * @param factors the factors
   * @return the node
   */
  public static Equation times(Equation... factors) {
    return new Equation.Product(Arrays.asList(factors));
  }

  /**
   * A quotient.
   *
   * @param numerator above the line
   * @param denominator below the line
   * @return the node
   */
  public static Equation over(Equation numerator, Equation denominator) {
    return new Equation.Quotient(numerator, denominator);
  }

  /**
   * A power.
   *
   * @param base the base
   * @param exponent the exponent
   * @return the node
   */
  public static Equation pow(Equation base, Equation exponent) {
    return new Equation.Power(base, exponent);
  }

  /**
   * A square.
   *
   * @param base what is squared
   * @return the node
   */
  public static Equation squared(Equation base) {
    return new Equation.Power(base, num(2));
  }

  /**
   * A square root.
   *
   * @param radicand below the root sign
   * @return the node
   */
  public static Equation sqrt(Equation radicand) {
    return new Equation.Root(radicand, 2);
  }

  /**
   * A function of one value.
   *
   * @param name which
   * @param argument its argument
   * @return the node
   */
  public static Equation fn(Equation.FunctionName name, Equation argument) {
    return new Equation.Function(name, List.of(argument));
  }

  /**
   * The sine of an angle in degrees.
   *
   * @param degrees the angle
   * @return the node
   */
  public static Equation sinDegrees(Equation degrees) {
    return fn(Equation.FunctionName.SIN, fn(Equation.FunctionName.DEGREES, degrees));
  }

  /**
   * The cosine of an angle in degrees.
   *
   * @param degrees the angle
   * @return the node
   */
  public static Equation cosDegrees(Equation degrees) {
    return fn(Equation.FunctionName.COS, fn(Equation.FunctionName.DEGREES, degrees));
  }

  /**
   * The tangent of an angle in degrees.
   *
   * @param degrees the angle
   * @return the node
   */
  public static Equation tanDegrees(Equation degrees) {
    return fn(Equation.FunctionName.TAN, fn(Equation.FunctionName.DEGREES, degrees));
  }

  /**
   * A sum over the readings of lists.
   *
   * @param term the term, in which the lists' symbols stand for the reading of the turn
   * @param lists symbols of the lists
   * @return the node
   */
  public static Equation sumOver(Equation term, String... lists) {
    return new Equation.ReadingSum(Arrays.asList(lists), term);
  }

  /**
   * A look-up in a printed table.
   *
   * @param table the table
   * @param keys what it is entered with
   * @return the node
   */
  public static Equation lookUp(PrintedTable table, Equation... keys) {
    return new Equation.LookUp(table, Arrays.asList(keys));
  }

  /**
   * A rounding that defines the rule.
   *
   * @param value what is rounded
   * @param mode how
   * @param step to multiples of this, as printed
   * @return the node
   */
  public static Equation rounded(Equation value, RoundingMode mode, String step) {
    return new Equation.Rounded(value, mode, new BigDecimal(step));
  }

  /**
   * A named intermediate result.
   *
   * @param symbol its symbol
   * @param value its value
   * @param in what it is used in
   * @return the node
   */
  public static Equation where(String symbol, Equation value, Equation in) {
    return new Equation.Where(symbol, value, in);
  }
}
