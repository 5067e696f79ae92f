package org.mensuration.internal.convention;

import java.util.List;
import javax.measure.quantity.Length;
import org.mensuration.log.LogReadings;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.UnitReader;

/** The small-end diameter in inches. Stateless and thread-safe. */
record SquaredTimber() implements Sizing {
  private static final UnitReader<Length> INCHES = UnitReader.in(ForestUnits.INCH);

  @Override
  public double amount(RuleFacts facts, LogReadings readings, double length, StepLog log) {
    if (readings.small().size() != 1) {
      throw facts.needs("one diameter of the small end");
    }
    return facts.formula().value(ReadingPlace.SMALL.read(INCHES, facts, readings)[0], length);
  }

  @Override
  public List<String> roundings() {
    return List.of();
  }
}
