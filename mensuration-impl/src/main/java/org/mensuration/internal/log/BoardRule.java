package org.mensuration.internal.log;

import javax.measure.quantity.Length;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.log.Log;
import org.mensuration.log.ScaleRule;
import org.mensuration.quantity.LogScale;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.UnitReader;

/**
 * A board-foot rule of the small end in inches and the length in feet. Immutable and thread-safe.
 *
 * @param formula its formula
 */
public record BoardRule(BoundFormula formula) implements ScaleRule {
  private static final UnitReader<Length> INCHES = UnitReader.in(ForestUnits.INCH);
  private static final UnitReader<Length> FEET = UnitReader.in(ForestUnits.FOOT);

  @Override
  public LogScale scale(Log log) {
    double boardFeet =
        formula.value(INCHES.read(Place.SMALL.needed(formula, log)), FEET.read(log.length()));
    return new LogScale(formula.title(), boardFeet, formula.result().unit(), log.bark());
  }
}
