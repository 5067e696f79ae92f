package org.mensuration.internal.convention;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.internal.catalogue.BarkFormulas;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.log.BarkRule;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * A bark rule that is one formula of the diameter in cm. Immutable and thread-safe.
 *
 * @param formula gives double bark in cm or mm
 */
public record FormulaBark(BoundFormula formula) implements BarkRule {
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);

  @Override
  public Quantity<Length> doubleBark(Quantity<Length> outside) {
    double thickness = formula.value(CENTIMETRES.read(outside));
    return "mm".equals(formula.result().unit())
        ? Measures.of(thickness, ForestUnits.MILLIMETRE)
        : Measures.centimetres(thickness);
  }

  @Override
  public Quantity<Length> inside(Quantity<Length> outside) {
    double half = CENTIMETRES.read(doubleBark(outside)) / 2;
    return Measures.centimetres(
        BarkFormulas.INSIDE_FROM_THICKNESS.value(CENTIMETRES.read(outside), half));
  }
}
