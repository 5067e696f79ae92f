package org.mensuration.internal.gauge;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.internal.catalogue.GaugeFormulas;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/** Gauges from readings on a target of known width. Stateless and thread-safe. */
public final class Calibration {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);

  private Calibration() {}

  /**
   * A gauge from readings on a target. The distances are averaged, not their factors.
   *
   * @param geometry formula of the factor from width and distance in m
   * @param width width of the target
   * @param distances one a reading
   * @return the gauge
   * @throws IllegalArgumentException if there is no reading
   */
  public static FactorGauge on(
      BoundFormula geometry, Quantity<Length> width, List<Quantity<Length>> distances) {
    if (distances.isEmpty()) {
      throw new IllegalArgumentException(geometry.id() + ": a calibration needs a reading");
    }
    double widthM = METRES.read(width);
    for (Quantity<Length> distance : distances) {
      geometry.value(widthM, METRES.read(distance)); // refuses a bad reading before it is averaged
    }
    double sum = Measures.in(Measures.sum(distances, ForestUnits.METRE), ForestUnits.METRE);
    double mean = sum / distances.size();
    double exact = geometry.value(widthM, mean);
    return FactorGauge.of(
        exact,
        geometry == GaugeFormulas.FACTOR_FROM_TARGET_FACE
            ? exact
            : GaugeFormulas.FACTOR_FROM_FLAT_BLADE_APPROXIMATE.value(widthM, mean));
  }
}
