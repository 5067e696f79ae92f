package org.mensuration.internal.formula;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.EquationText;
import org.mensuration.formula.Explanation;
import org.mensuration.formula.Formula;
import org.mensuration.formula.Gradient;
import org.mensuration.formula.Nature;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.Relation;
import org.mensuration.formula.Result;
import org.mensuration.internal.tree.Tree;
import org.mensuration.source.Citation;

/** A kernel bound to the facts of its formula. Immutable and thread-safe. */
public final class BoundFormula implements Formula {
  private static final int MOST_DIGITS = 1000;

  private final Facts facts;
  private final Kernel kernel;
  private final Optional<BulkKernel> bulk;
  private final InputCheck check;
  private final PrintedCells cells;

  BoundFormula(Facts facts, Kernel kernel, Optional<BulkKernel> bulk) {
    this.facts = facts;
    this.kernel = kernel;
    this.bulk = bulk;
    this.check = new InputCheck(facts.parameters(), facts.relations());
    this.cells = new PrintedCells(facts.equation(), facts.parameters());
  }

  /**
   * The checked value of one input.
   *
   * @param a first input
   * @return the value
   */
  public double value(double a) {
    if (check.inDomain(0, a) && check.related(a, 0, 0, 0)) {
      double result = ((Kernel.Of1) kernel).of(a);
      if (Math.abs(result) < Double.POSITIVE_INFINITY) {
        return result;
      }
    }
    return slow(a);
  }

  /**
   * The checked value of two inputs.
   *
   * @param a first input
   * @param b second input
   * @return the value
   */
  public double value(double a, double b) {
    if (check.inDomain(0, a) && check.inDomain(1, b) && check.related(a, b, 0, 0)) {
      double result = ((Kernel.Of2) kernel).of(a, b);
      if (Math.abs(result) < Double.POSITIVE_INFINITY) {
        return result;
      }
    }
    return slow(a, b);
  }

  /**
   * The checked value of three inputs.
   *
   * @param a first input
   * @param b second input
   * @param c third input
   * @return the value
   */
  public double value(double a, double b, double c) {
    if (check.inDomain(0, a)
        && check.inDomain(1, b)
        && check.inDomain(2, c)
        && check.related(a, b, c, 0)) {
      double result = ((Kernel.Of3) kernel).of(a, b, c);
      if (Math.abs(result) < Double.POSITIVE_INFINITY) {
        return result;
      }
    }
    return slow(a, b, c);
  }

  /**
   * The checked value of four inputs.
   *
   * @param a first input
   * @param b second input
   * @param c third input
   * @param d fourth input
   * @return the value
   */
  public double value(double a, double b, double c, double d) {
    if (check.inDomain(0, a)
        && check.inDomain(1, b)
        && check.inDomain(2, c)
        && check.inDomain(3, d)
        && check.related(a, b, c, d)) {
      double result = ((Kernel.Of4) kernel).of(a, b, c, d);
      if (Math.abs(result) < Double.POSITIVE_INFINITY) {
        return result;
      }
    }
    return slow(a, b, c, d);
  }

  /** Gives the same value, or finds out what to complain of. */
  private double slow(double... inputs) {
    return checked("", arrays(inputs));
  }

  private double checked(String where, double[][] x) {
    require(where, x);
    double result = kernel.at(x);
    if (Math.abs(result) < Double.POSITIVE_INFINITY) {
      return result;
    }
    throw new OutOfDomainException(
        this, where, facts.result().symbol(), result, facts.result().unit(), "a finite result");
  }

  private void require(String where, double[][] x) {
    check.requireAll(this, where, x);
    cells.require(this, where, x);
  }

  private static double[][] arrays(double[] inputs) {
    double[][] x = new double[inputs.length][];
    for (int i = 0; i < x.length; i++) {
      x[i] = new double[] {inputs[i]};
    }
    return x;
  }

  @Override
  public double apply(double... inputs) {
    return checked("", arrays(inputs));
  }

  @Override
  public double applyTo(double[]... inputs) {
    return checked("", inputs);
  }

  @Override
  public void applyAll(double[][] columns, double[] results) {
    int width = facts.parameters().size();
    if (columns.length != width) {
      throw new IllegalArgumentException(
          id() + ": " + columns.length + " columns given, " + width + " needed");
    }
    for (Parameter parameter : facts.parameters()) {
      if (parameter.list()) {
        throw new IllegalArgumentException(
            id() + ": " + parameter.name() + " is a list; call applyTo row by row");
      }
    }
    if (bulk.isPresent() && check.acceptsAll(columns, results.length)) {
      bulk.get().fill(columns, results);
      if (allFinite(results)) {
        return;
      }
    }
    double[][] x = new double[width][1];
    for (int row = 0; row < results.length; row++) {
      boolean inside = true;
      for (int i = 0; i < width; i++) {
        x[i][0] = columns[i][row];
        inside &= check.inDomain(i, x[i][0]);
      }
      double result = inside && check.holdsAll(x) ? kernel.at(x) : Double.NaN;
      results[row] =
          Math.abs(result) < Double.POSITIVE_INFINITY ? result : checked("row " + row, x);
    }
  }

  private static boolean allFinite(double[] results) {
    boolean finite = true;
    for (double result : results) {
      finite &= Math.abs(result) < Double.POSITIVE_INFINITY;
    }
    return finite;
  }

  @Override
  public BigDecimal exact(int digits, double[]... inputs) {
    requireTree();
    if (!(digits >= 1 && digits <= MOST_DIGITS)) {
      throw new IllegalArgumentException(
          id() + ": " + digits + " digits wanted, allowed 1 to " + MOST_DIGITS);
    }
    require("", inputs);
    return Tree.exact(facts.equation(), facts.parameters(), inputs, digits);
  }

  @Override
  public BigDecimal exact(int digits, double... inputs) {
    return exact(digits, arrays(inputs));
  }

  @Override
  public Gradient gradient(double[]... inputs) {
    requireTree();
    require("", inputs);
    Gradient gradient = Tree.gradient(facts.equation(), facts.parameters(), inputs);
    for (int i = 0; i < gradient.size(); i++) {
      if (!(Math.abs(gradient.partial(i)) < Double.POSITIVE_INFINITY)) {
        throw new ArithmeticException(
            id() + ": the derivative by input " + i + " is not finite here");
      }
    }
    return gradient;
  }

  @Override
  public Gradient gradient(double... inputs) {
    return gradient(arrays(inputs));
  }

  private void requireTree() {
    if (solved()) {
      throw new IllegalStateException(
          id() + " is solved by search or quantile; it has no exact value and no gradient");
    }
  }

  @Override
  public boolean covers(double... inputs) {
    if (inputs.length != facts.parameters().size()) {
      return false;
    }
    for (int i = 0; i < inputs.length; i++) {
      Parameter parameter = facts.parameters().get(i);
      Domain published = parameter.published().orElse(parameter.domain());
      if (!(published.contains(inputs[i]) && check.inDomain(i, inputs[i]))) {
        return false;
      }
    }
    return check.holdsAll(arrays(inputs)) && cells.holds(arrays(inputs));
  }

  @Override
  public Explanation explain(double[]... inputs) {
    return Explainer.explain(this, inputs, checked("", inputs));
  }

  @Override
  public Explanation explain(double... inputs) {
    return explain(arrays(inputs));
  }

  @Override
  public boolean solved() {
    return facts.equation() instanceof Equation.Solved;
  }

  @Override
  public String equationText() {
    return EquationText.of(facts.result().symbol(), facts.equation());
  }

  @Override
  public String id() {
    return facts.id();
  }

  @Override
  public String title() {
    return facts.title();
  }

  @Override
  public Equation equation() {
    return facts.equation();
  }

  @Override
  public List<Parameter> parameters() {
    return facts.parameters();
  }

  @Override
  public List<Relation> relations() {
    return facts.relations();
  }

  @Override
  public Result result() {
    return facts.result();
  }

  @Override
  public Nature nature() {
    return facts.nature();
  }

  @Override
  public List<Citation> citations() {
    return facts.citations();
  }

  @Override
  public List<String> notes() {
    return facts.notes();
  }

  @Override
  public String toString() {
    return facts.id();
  }
}
