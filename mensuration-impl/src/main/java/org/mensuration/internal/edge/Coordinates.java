package org.mensuration.internal.edge;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.UnitReader;

/** Coordinates as numbers. Stateless and thread-safe. */
final class Coordinates {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);

  private Coordinates() {}

  static double metres(String what, Quantity<Length> coordinate) {
    double metres = METRES.read(coordinate);
    if (!(Math.abs(metres) < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          what + ": coordinate " + metres + " m, wanted a finite number");
    }
    return metres;
  }
}
