package org.mensuration.internal.stem;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.internal.catalogue.HeightFormulas;
import org.mensuration.stem.StemStation;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * A station at a horizontal distance from the stem axis. Immutable and thread-safe.
 *
 * @param distanceM horizontal distance in m
 * @param baseDeg elevation of the base in degrees
 */
public record TangentStation(double distanceM, double baseDeg) implements StemStation {
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);

  /**
   * Checks that the base can be sighted.
   *
   * @param distanceM horizontal distance in m
   * @param baseDeg elevation of the base in degrees
   */
  public TangentStation {
    HeightFormulas.TANGENT.value(distanceM, baseDeg, baseDeg);
  }

  @Override
  public Quantity<Length> height(Quantity<Angle> sight) {
    return Measures.metres(HeightFormulas.TANGENT.value(distanceM, DEGREES.read(sight), baseDeg));
  }
}
