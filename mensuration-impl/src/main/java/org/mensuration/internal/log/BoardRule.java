package org.mensuration.internal.log;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.kernel.SizeClasses;
import org.mensuration.log.Log;
import org.mensuration.log.ScaleRule;
import org.mensuration.quantity.LogScale;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.UnitReader;

/**
 * A board-foot rule of one diameter in inches and the length in feet. Immutable and thread-safe.
 *
 * @param formula its formula
 * @param place where the diameter is measured
 */
public record BoardRule(BoundFormula formula, Place place) implements ScaleRule {
  private static final UnitReader<Length> INCHES = UnitReader.in(ForestUnits.INCH);
  private static final UnitReader<Length> FEET = UnitReader.in(ForestUnits.FOOT);

  /**
   * A rule of the small end.
   *
   * @param formula its formula
   * @return the rule
   */
  public static BoardRule ofSmallEnd(BoundFormula formula) {
    return new BoardRule(formula, Place.SMALL);
  }

  @Override
  public LogScale scale(Log log) {
    double boardFeet = formula.value(inches(place.needed(formula, log)), feet(log.length()));
    Tidiness.of(formula, log);
    return new LogScale(formula.title(), boardFeet, unit(formula), log.bark());
  }

  static double inches(Quantity<Length> diameter) {
    return snapped(INCHES.read(diameter), diameter, ForestUnits.INCH);
  }

  static double feet(Quantity<Length> length) {
    return snapped(FEET.read(length), length, ForestUnits.FOOT);
  }

  /** The unit of the scale; a count of units is called by its name, as it has no symbol. */
  static String unit(BoundFormula formula) {
    String unit = formula.result().unit();
    return "1".equals(unit) ? "units" : unit;
  }

  /** Whole inches and feet in metres miss the whole by an ulp, and the least diameter with it. */
  private static double snapped(double value, Quantity<Length> given, Unit<Length> unit) {
    return given.getUnit() == unit ? value : SizeClasses.widths(value, 1);
  }
}
