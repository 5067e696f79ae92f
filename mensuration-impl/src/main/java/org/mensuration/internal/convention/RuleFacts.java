package org.mensuration.internal.convention;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.formula.Domain;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.formula.Parameter;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.kernel.ClassRounding;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.source.Citation;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.UnitReader;

/**
 * What a convention is apart from its diameters. Immutable and thread-safe.
 *
 * @param name name of the rule
 * @param formula formula that the rounded readings enter
 * @param length rounding of the length
 * @param amount rounding of the result
 * @param taken bark basis of the readings; not stated if the rule takes any
 * @param given bark basis of the result; not stated if it is that of the readings
 * @param allowed lengths that the rule takes, beside those of its formula
 * @param citations where readings and roundings are stated
 */
public record RuleFacts(
    String name,
    BoundFormula formula,
    ClassSteps length,
    ClassSteps amount,
    BarkBasis taken,
    BarkBasis given,
    Domain allowed,
    List<Citation> citations) {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Length> FEET = UnitReader.in(ForestUnits.FOOT);

  /**
   * A rule without rounding that takes any bark basis.
   *
   * @param name name of the rule
   * @param formula formula that the readings enter
   * @return the facts
   */
  public static RuleFacts of(String name, BoundFormula formula) {
    return new RuleFacts(
        name,
        formula,
        ClassSteps.NONE,
        ClassSteps.NONE,
        BarkBasis.UNKNOWN,
        BarkBasis.UNKNOWN,
        Domain.above(0),
        formula.citations());
  }

  /**
   * The same with the roundings of length and result.
   *
   * @param lengths rounding of the length
   * @param amounts rounding of the result
   * @return new facts
   */
  public RuleFacts rounding(ClassSteps lengths, ClassSteps amounts) {
    return new RuleFacts(name, formula, lengths, amounts, taken, given, allowed, citations);
  }

  /**
   * The same with readings under bark.
   *
   * @return new facts
   */
  public RuleFacts underBark() {
    return new RuleFacts(
        name, formula, length, amount, BarkBasis.UNDER, BarkBasis.UNKNOWN, allowed, citations);
  }

  /**
   * The same with readings over bark and a result under bark.
   *
   * @return new facts
   */
  public RuleFacts deductingBark() {
    return new RuleFacts(
        name, formula, length, amount, BarkBasis.OVER, BarkBasis.UNDER, allowed, citations);
  }

  /**
   * The same with a limit of length.
   *
   * @param lengths lengths that the rule takes
   * @return new facts
   */
  public RuleFacts allowing(Domain lengths) {
    return new RuleFacts(name, formula, length, amount, taken, given, lengths, citations);
  }

  /**
   * The same with the sources of its readings and roundings.
   *
   * @param sources where they are stated
   * @return new facts
   */
  public RuleFacts citing(Citation... sources) {
    return new RuleFacts(name, formula, length, amount, taken, given, allowed, List.of(sources));
  }

  String lengthUnit() {
    List<Parameter> parameters = formula.parameters();
    return parameters.get(parameters.size() - 1).unit();
  }

  String amountUnit() {
    return formula.result().unit();
  }

  double read(Quantity<Length> lengthOfLog) {
    UnitReader<Length> reader = "ft".equals(lengthUnit()) ? FEET : METRES;
    double read = ClassRounding.snapped(reader.read(lengthOfLog));
    if (!allowed.contains(read)) {
      throw outOfDomain("L", read, lengthUnit(), allowed.toString());
    }
    return read;
  }

  OutOfDomainException outOfDomain(String symbol, double value, String unit, String wanted) {
    return new OutOfDomainException(formula, name, symbol, value, unit, wanted);
  }

  IllegalArgumentException needs(String what) {
    return new IllegalArgumentException(name + " (" + formula.id() + ") needs " + what);
  }

  /** The bark basis of the result, or a refusal of readings on another basis than the rule's. */
  BarkBasis basis(BarkBasis ofReadings) {
    if (taken != BarkBasis.UNKNOWN && ofReadings != BarkBasis.UNKNOWN && taken != ofReadings) {
      throw new IllegalArgumentException(
          name
              + " ("
              + formula.id()
              + ") takes readings "
              + taken.words()
              + ", these are "
              + ofReadings.words());
    }
    return given == BarkBasis.UNKNOWN ? ofReadings : given;
  }
}
