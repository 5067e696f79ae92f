package org.mensuration.internal.convention;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.internal.catalogue.MiddleFormulas;
import org.mensuration.kernel.ClassRounding;
import org.mensuration.log.LogReadings;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * The girth of the middle. Where it was not taped it is that of a circle of the middle diameter.
 * Immutable and thread-safe.
 *
 * @param unit unit of the girth in the formula
 * @param girth rounding of the girth
 */
record Girths(Unit unit, ClassSteps girth) implements Sizing {
  private static final UnitReader<Length> INCHES = UnitReader.in(ForestUnits.INCH);
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);

  /** The unit of the girth. */
  enum Unit {
    /** Inches. */
    INCH("in"),
    /** Metres. */
    METRE("m");

    private final String symbol;

    Unit(String symbol) {
      this.symbol = symbol;
    }
  }

  @Override
  public double amount(RuleFacts facts, LogReadings readings, double length, StepLog log) {
    Quantity<Length> middle =
        readings.middleGirth().isPresent()
            ? readings.middleGirth().get()
            : circle(facts, readings, log);
    double read = ClassRounding.snapped((unit == Unit.INCH ? INCHES : METRES).read(middle));
    double rounded = log.reading("middle girth", "G", girth, read, unit.symbol);
    return facts.formula().value(rounded, length);
  }

  private static Quantity<Length> circle(RuleFacts facts, LogReadings readings, StepLog log) {
    if (readings.middle().isEmpty()) {
      throw facts.needs("the girth or the diameter of the middle");
    }
    double diameter =
        Diameters.at(ReadingPlace.MIDDLE, ClassSteps.NONE).diameter(facts, readings, log);
    return Measures.centimetres(MiddleFormulas.GIRTH.value(diameter));
  }

  @Override
  public List<String> roundings() {
    return girth.isNone() ? List.of() : List.of("middle girth " + girth.words(unit.symbol));
  }
}
