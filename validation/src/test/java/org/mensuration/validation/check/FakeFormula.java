package org.mensuration.validation.check;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Explanation;
import org.mensuration.formula.Formula;
import org.mensuration.formula.Gradient;
import org.mensuration.formula.Nature;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.Relation;
import org.mensuration.formula.Result;
import org.mensuration.source.Citation;

/** A formula of one length in metres that gives a length in metres. */
final class FakeFormula implements Formula {
  private final Equation equation;
  private final DoubleUnaryOperator value;
  private final Parameter input =
      new Parameter("x", "x", "m", "a length", Domain.atLeast(0), Optional.empty(), false);

  FakeFormula(Equation equation, DoubleUnaryOperator value) {
    this.equation = equation;
    this.value = value;
  }

  @Override
  public String id() {
    return "fake/one";
  }

  @Override
  public String title() {
    return "Fake";
  }

  @Override
  public Equation equation() {
    return equation;
  }

  @Override
  public String equationText() {
    return "y = x";
  }

  @Override
  public List<Parameter> parameters() {
    return List.of(input);
  }

  @Override
  public List<Relation> relations() {
    return List.of();
  }

  @Override
  public Result result() {
    return new Result("y", "y", "m");
  }

  @Override
  public Nature nature() {
    return Nature.CONVENTION;
  }

  @Override
  public List<Citation> citations() {
    return List.of(Citation.commonPractice("test"));
  }

  @Override
  public List<String> notes() {
    return List.of();
  }

  @Override
  public boolean solved() {
    return true;
  }

  @Override
  public double apply(double... inputs) {
    if (!input.domain().contains(inputs[0])) {
      throw new OutOfDomainException(this, "x", inputs[0], "m", input.domain().toString());
    }
    return value.applyAsDouble(inputs[0]);
  }

  @Override
  public double applyTo(double[]... inputs) {
    return apply(inputs[0]);
  }

  @Override
  public void applyAll(double[][] columns, double[] results) {
    throw new UnsupportedOperationException();
  }

  @Override
  public BigDecimal exact(int digits, double[]... inputs) {
    throw new IllegalStateException();
  }

  @Override
  public BigDecimal exact(int digits, double... inputs) {
    throw new IllegalStateException();
  }

  @Override
  public Gradient gradient(double[]... inputs) {
    throw new IllegalStateException();
  }

  @Override
  public Gradient gradient(double... inputs) {
    throw new IllegalStateException();
  }

  @Override
  public boolean covers(double... inputs) {
    return true;
  }

  @Override
  public Explanation explain(double[]... inputs) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Explanation explain(double... inputs) {
    throw new UnsupportedOperationException();
  }
}
