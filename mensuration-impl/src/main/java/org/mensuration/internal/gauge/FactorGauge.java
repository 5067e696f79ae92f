package org.mensuration.internal.gauge;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.LimitPosition;
import org.mensuration.internal.catalogue.FieldRuleFormulas;
import org.mensuration.internal.catalogue.GaugeDeviceFormulas;
import org.mensuration.internal.catalogue.GaugeDistanceFormulas;
import org.mensuration.internal.catalogue.GaugeFormulas;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.quantity.StemsPerArea;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * A gauge known by its factor. Immutable and thread-safe.
 *
 * @param factor the factor as it was given
 * @param metric the factor in m²/ha
 * @param smallAngle the factor in m²/ha by the rule for small angles of its device
 * @param angle the angle of the factor
 * @param compensated whether it allows for the slope of each sight
 */
public record FactorGauge(
    Quantity<BasalAreaPerArea> factor,
    double metric,
    double smallAngle,
    Quantity<Angle> angle,
    boolean compensated)
    implements AngleGauge {
  private static final UnitReader<BasalAreaPerArea> FACTORS =
      UnitReader.in(ForestUnits.SQUARE_METRE_PER_HECTARE);
  private static final UnitReader<BasalAreaPerArea> ACRE_FACTORS =
      UnitReader.in(ForestUnits.SQUARE_FOOT_PER_ACRE);
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);

  /**
   * A gauge of a factor; its rule for small angles is that of a flat blade.
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
        GaugeDeviceFormulas.SMALL_ANGLE_OF_FACTOR.value(metric),
        Measures.degrees(angle),
        true);
  }

  /**
   * A gauge of a device.
   *
   * @param metric exact factor in m²/ha
   * @param smallAngle factor in m²/ha by the device's rule for small angles
   * @return the gauge
   * @throws OutOfDomainException if the exact factor is outside (0, 10 000) m²/ha
   */
  public static FactorGauge of(double metric, double smallAngle) {
    double angle = GaugeFormulas.ANGLE_FROM_FACTOR.value(metric);
    return new FactorGauge(
        Measures.squareMetresPerHectare(metric), metric, smallAngle, Measures.degrees(angle), true);
  }

  @Override
  public Quantity<BasalAreaPerArea> factorBySmallAngle() {
    return Measures.squareMetresPerHectare(smallAngle);
  }

  @Override
  public AngleGauge uncompensated() {
    return new FactorGauge(factor, metric, smallAngle, angle, false);
  }

  @Override
  public Quantity<BasalAreaPerArea> factorAlongSight(Quantity<Angle> slope) {
    double along = GaugeDeviceFormulas.FACTOR_ALONG_SIGHT.value(metric, DEGREES.read(slope));
    return compensated ? factor : Measures.squareMetresPerHectare(along);
  }

  @Override
  public Quantity<Length> bladeWidth(Quantity<Length> eyeDistance) {
    return Measures.centimetres(
        GaugeDeviceFormulas.BLADE_WIDTH.value(CENTIMETRES.read(eyeDistance), metric));
  }

  @Override
  public Quantity<Length> bladeWidthAlongSight(
      Quantity<Length> eyeDistance, Quantity<Angle> slope) {
    double level = GaugeDeviceFormulas.BLADE_WIDTH.value(CENTIMETRES.read(eyeDistance), metric);
    return Measures.centimetres(
        FieldRuleFormulas.BLADE_WIDTH_ALONG_SIGHT.value(level, DEGREES.read(slope)));
  }

  @Override
  public Quantity<Length> bladeDistance(Quantity<Length> bladeWidth) {
    return Measures.centimetres(
        GaugeFormulas.BLADE_DISTANCE.value(CENTIMETRES.read(bladeWidth), metric));
  }

  @Override
  public double radiusFactorToCentreFeetPerInch() {
    return GaugeFormulas.PLOT_RADIUS_FACTOR_CENTRE.value(ACRE_FACTORS.read(factor));
  }

  @Override
  public double radiusFactorToFaceFeetPerInch() {
    return GaugeFormulas.PLOT_RADIUS_FACTOR_FACE.value(ACRE_FACTORS.read(factor));
  }

  @Override
  public double radiusFactorToCentreMetresPerCentimetre() {
    return GaugeDistanceFormulas.LIMITING_DISTANCE_CENTRE.value(metric, 1);
  }

  @Override
  public double radiusFactorToFaceMetresPerCentimetre() {
    return GaugeDistanceFormulas.LIMITING_DISTANCE_FACE.value(metric, 1);
  }

  @Override
  public Quantity<Length> limitingDistanceToCentre(Quantity<Length> diameter) {
    return Measures.metres(limit(diameter));
  }

  @Override
  public Quantity<Length> limitingDistanceToFace(Quantity<Length> diameter) {
    return Measures.metres(
        GaugeDistanceFormulas.LIMITING_DISTANCE_FACE.value(metric, CENTIMETRES.read(diameter)));
  }

  @Override
  public Quantity<Length> limitingDistanceAlongSlope(
      Quantity<Length> diameter, Quantity<Angle> slope) {
    return Measures.metres(limit(diameter, slope));
  }

  @Override
  public Quantity<Area> inclusionArea(Quantity<Length> diameter) {
    return Measures.squareMetres(
        GaugeDistanceFormulas.INCLUSION_AREA.value(metric, CENTIMETRES.read(diameter)));
  }

  @Override
  public LimitPosition judge(Quantity<Length> diameter, Quantity<Length> distanceToCentre) {
    return LimitJudge.judge(
        GaugeDistanceFormulas.LIMITING_DISTANCE_CENTRE,
        METRES.read(distanceToCentre),
        limit(diameter));
  }

  @Override
  public LimitPosition judge(
      Quantity<Length> diameter, Quantity<Length> slopeDistanceToCentre, Quantity<Angle> slope) {
    return LimitJudge.judge(
        GaugeDistanceFormulas.LIMITING_SLOPE_DISTANCE,
        METRES.read(slopeDistanceToCentre),
        limit(diameter, slope));
  }

  @Override
  public LimitPosition judgeLeaning(
      Quantity<Length> diameter,
      Quantity<Length> distanceToFoot,
      Quantity<Length> breastHeight,
      Quantity<Angle> lean,
      Quantity<Angle> direction) {
    double distance =
        GaugeDeviceFormulas.LEANING_DISTANCE.value(
            METRES.read(distanceToFoot),
            METRES.read(breastHeight),
            DEGREES.read(lean),
            DEGREES.read(direction));
    return LimitJudge.judge(
        GaugeDistanceFormulas.LIMITING_DISTANCE_CENTRE, distance, limit(diameter));
  }

  @Override
  public boolean counts(Quantity<Length> diameter, Quantity<Length> distanceToCentre) {
    return judge(diameter, distanceToCentre) != LimitPosition.OUT;
  }

  @Override
  public boolean counts(
      Quantity<Length> diameter, Quantity<Length> slopeDistanceToCentre, Quantity<Angle> slope) {
    return judge(diameter, slopeDistanceToCentre, slope) != LimitPosition.OUT;
  }

  @Override
  public Quantity<StemsPerArea> treeFactor(Quantity<Length> diameter) {
    return Measures.perHectare(
        GaugeDistanceFormulas.TREE_FACTOR.value(metric, CENTIMETRES.read(diameter)));
  }

  private double limit(Quantity<Length> diameter) {
    return GaugeDistanceFormulas.LIMITING_DISTANCE_CENTRE.value(metric, CENTIMETRES.read(diameter));
  }

  private double limit(Quantity<Length> diameter, Quantity<Angle> slope) {
    return GaugeDistanceFormulas.LIMITING_SLOPE_DISTANCE.value(
        metric, CENTIMETRES.read(diameter), DEGREES.read(slope));
  }
}
