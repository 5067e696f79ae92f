package org.mensuration.formula;

import java.math.BigDecimal;
import java.util.List;
import org.mensuration.source.Citation;

/**
 * A formula of the trade: what is said about it once, and its values. Implementations are immutable
 * and thread-safe.
 *
 * <p>All numbers are in the units that the parameters and the result name. Every call checks the
 * domain of each input and the relations between inputs and throws {@link OutOfDomainException}
 * outside; no call returns NaN or an infinity. The calls with {@code double...} take one number an
 * input; the calls with {@code double[]...} take one array an input and serve formulas with lists,
 * a single number being an array of one.
 */
public interface Formula {

  /**
   * Stable identifier.
   *
   * @return topic and name, such as {@code log/smalian}
   */
  String id();

  /**
   * Name in the trade.
   *
   * @return for example {@code Smalian volume}
   */
  String title();

  /**
   * The right side of the equation as the source prints it.
   *
   * @return the tree
   */
  Equation equation();

  /**
   * The whole equation in plain text, intermediate results after "where".
   *
   * @return for example {@code V = (g_l + g_s)/2 · L}
   */
  String equationText();

  /**
   * The inputs in their order.
   *
   * @return at least one
   */
  List<Parameter> parameters();

  /**
   * Limits between inputs.
   *
   * @return empty if there are none
   */
  List<Relation> relations();

  /**
   * What the formula gives.
   *
   * @return name, symbol and unit
   */
  Result result();

  /**
   * What kind of truth it is.
   *
   * @return the nature
   */
  Nature nature();

  /**
   * Where it is stated, tabulated and explained.
   *
   * @return at least one citation, the defining one first
   */
  List<Citation> citations();

  /**
   * Assumptions and limits in words.
   *
   * @return empty if there are none
   */
  List<String> notes();

  /**
   * Whether the result is found by search or iteration, or holds a quantile. Such a formula has no
   * {@link #exact} value and no {@link #gradient}.
   *
   * @return true if it is solved
   */
  boolean solved();

  /**
   * The value.
   *
   * @param inputs one number an input, in the order and units of {@link #parameters()}
   * @return in the unit of {@link #result()}
   * @throws OutOfDomainException if an input or a relation is outside the domain, or the result
   *     overflows
   * @throws IllegalArgumentException if the number of inputs is wrong
   */
  double apply(double... inputs);

  /**
   * The value of a formula that takes lists.
   *
   * @param inputs one array an input
   * @return in the unit of {@link #result()}
   * @throws OutOfDomainException as {@link #apply}
   */
  double applyTo(double[]... inputs);

  /**
   * The values of many rows, without allocation. Formulas with lists refuse.
   *
   * @param columns one array an input, all at least as long as {@code results}
   * @param results filled with the values
   * @throws OutOfDomainException if a row is outside; the message names the row, and {@code
   *     results} is then not to be used
   */
  void applyAll(double[][] columns, double[] results);

  /**
   * The value of the printed equation in decimal arithmetic of many digits.
   *
   * @param digits significant digits wanted, 1 to 1000
   * @param inputs one array an input
   * @return the value rounded to that many digits
   * @throws OutOfDomainException as {@link #apply}
   * @throws IllegalStateException if the formula is {@link #solved()}
   */
  BigDecimal exact(int digits, double[]... inputs);

  /**
   * The value of the printed equation in decimal arithmetic of many digits.
   *
   * @param digits significant digits wanted, 1 to 1000
   * @param inputs one number an input
   * @return the value rounded to that many digits
   * @throws OutOfDomainException as {@link #apply}
   * @throws IllegalStateException if the formula is {@link #solved()}
   */
  BigDecimal exact(int digits, double... inputs);

  /**
   * Value and first derivatives.
   *
   * @param inputs one array an input
   * @return the gradient
   * @throws OutOfDomainException as {@link #apply}
   * @throws ArithmeticException if a derivative is not finite there
   * @throws IllegalStateException if the formula is {@link #solved()}
   */
  Gradient gradient(double[]... inputs);

  /**
   * Value and first derivatives.
   *
   * @param inputs one number an input
   * @return the gradient
   * @throws OutOfDomainException as {@link #apply}
   * @throws ArithmeticException if a derivative is not finite there
   * @throws IllegalStateException if the formula is {@link #solved()}
   */
  Gradient gradient(double... inputs);

  /**
   * Whether the inputs lie in the domain and in the published range of the data behind the formula.
   *
   * @param inputs one number an input
   * @return false outside either
   */
  boolean covers(double... inputs);

  /**
   * The equation with numbers put in.
   *
   * @param inputs one array an input
   * @return the explanation
   * @throws OutOfDomainException as {@link #apply}
   */
  Explanation explain(double[]... inputs);

  /**
   * The equation with numbers put in.
   *
   * @param inputs one number an input
   * @return the explanation
   * @throws OutOfDomainException as {@link #apply}
   */
  Explanation explain(double... inputs);
}
