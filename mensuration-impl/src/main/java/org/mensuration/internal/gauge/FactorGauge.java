package org.mensuration.internal.gauge;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.internal.catalogue.GaugeDistanceFormulas;
import org.mensuration.internal.catalogue.GaugeFormulas;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.quantity.StemsPerArea;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * A gauge known by its factor.
 *
 * @param factor the factor as it was given
 * @param metric the factor in m²/ha
 * @param angle the angle of the factor
 */
public record FactorGauge(Quantity<BasalAreaPerArea> factor, double metric, Quantity<Angle> angle)
    implements AngleGauge {
  /** A distance nearer to the limit than this part of it is at the limit. */
  private static final double SNAP = 1e-9;

  private static final UnitReader<BasalAreaPerArea> FACTORS =
      UnitReader.in(ForestUnits.SQUARE_METRE_PER_HECTARE);
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);

  /**
   * A gauge of a factor.
   *
   * @param factor the factor
   * @return the gauge
   * @throws OutOfDomainException if the factor is outside (0, 10 000) m²/ha
   */
  public static FactorGauge of(Quantity<BasalAreaPerArea> factor) {
    double metric = FACTORS.read(factor);
    double angle = GaugeFormulas.ANGLE_FROM_FACTOR.value(metric);
    return new FactorGauge(
        Measures.of(factor.getValue().doubleValue(), factor.getUnit()),
        metric,
        Measures.degrees(angle));
  }

  @Override
  public Quantity<Length> limitingDistanceToCentre(Quantity<Length> diameter) {
    return Measures.metres(limit(diameter));
  }

  @Override
  public Quantity<Length> limitingDistanceAlongSlope(
      Quantity<Length> diameter, Quantity<Angle> slope) {
    return Measures.metres(limit(diameter, slope));
  }

  @Override
  public boolean counts(Quantity<Length> diameter, Quantity<Length> distanceToCentre) {
    return within(
        GaugeDistanceFormulas.LIMITING_DISTANCE_CENTRE, distanceToCentre, limit(diameter));
  }

  @Override
  public boolean counts(
      Quantity<Length> diameter, Quantity<Length> slopeDistanceToCentre, Quantity<Angle> slope) {
    return within(
        GaugeDistanceFormulas.LIMITING_SLOPE_DISTANCE,
        slopeDistanceToCentre,
        limit(diameter, slope));
  }

  @Override
  public Quantity<StemsPerArea> treeFactor(Quantity<Length> diameter) {
    return Measures.perHectare(stemsPerHectare(diameter));
  }

  /**
   * The tree factor as a number.
   *
   * @param diameter diameter
   * @return stems per hectare
   */
  public double stemsPerHectare(Quantity<Length> diameter) {
    return GaugeDistanceFormulas.TREE_FACTOR.value(metric, CENTIMETRES.read(diameter));
  }

  private double limit(Quantity<Length> diameter) {
    return GaugeDistanceFormulas.LIMITING_DISTANCE_CENTRE.value(metric, CENTIMETRES.read(diameter));
  }

  private double limit(Quantity<Length> diameter, Quantity<Angle> slope) {
    return GaugeDistanceFormulas.LIMITING_SLOPE_DISTANCE.value(
        metric, CENTIMETRES.read(diameter), DEGREES.read(slope));
  }

  private static boolean within(BoundFormula formula, Quantity<Length> distance, double limit) {
    double metres = METRES.read(distance);
    if (!(metres >= 0 && metres < Double.POSITIVE_INFINITY)) {
      throw new OutOfDomainException(formula, "distance", metres, "m", "[0, ∞)");
    }
    return metres <= limit * (1 + SNAP);
  }
}
