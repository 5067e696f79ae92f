package org.mensuration;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.internal.catalogue.GaugeFormulas;
import org.mensuration.internal.gauge.FactorGauge;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * Gauges that count trees at a sample point. Stateless and thread-safe.
 *
 * <p>Look up only when standing still; keep well away from dead, hung-up or wind-loaded trees and
 * stop in wind; never sight toward the sun; enter a neighbour's land only with leave.
 */
public final class AngleGauges {
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);

  private AngleGauges() {}

  /**
   * A gauge of a basal-area factor, such as {@code squareMetresPerHectare(4)} or {@code
   * squareFeetPerAcre(10)}.
   *
   * @param factor factor, above 0 and below 10 000 m²/ha
   * @return the gauge
   * @throws OutOfDomainException if the factor is outside
   */
  public static AngleGauge ofFactor(Quantity<BasalAreaPerArea> factor) {
    return FactorGauge.of(factor);
  }

  /**
   * A gauge of an angle ({@code gauge/factor-from-angle}).
   *
   * @param angle full angle, above 0° and below 180°
   * @return the gauge
   * @throws OutOfDomainException if the angle is outside, or so near to an end that its factor is
   *     no longer a factor
   */
  public static AngleGauge ofAngle(Quantity<Angle> angle) {
    return metric(GaugeFormulas.FACTOR_FROM_ANGLE.value(DEGREES.read(angle)));
  }

  /**
   * A gauge of a flat blade held square to the sight ({@code gauge/factor-from-flat-blade}).
   *
   * @param width width of the blade, above zero
   * @param distance distance from the eye to the middle of the blade, above zero
   * @return the gauge
   * @throws OutOfDomainException if a length is not above zero or not finite
   */
  public static AngleGauge ofFlatBlade(Quantity<Length> width, Quantity<Length> distance) {
    return metric(
        GaugeFormulas.FACTOR_FROM_FLAT_BLADE.value(
            CENTIMETRES.read(width), CENTIMETRES.read(distance)));
  }

  private static AngleGauge metric(double factor) {
    return FactorGauge.of(Measures.squareMetresPerHectare(factor));
  }
}
