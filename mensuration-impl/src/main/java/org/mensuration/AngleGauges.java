package org.mensuration;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.SweepCorrection;
import org.mensuration.internal.catalogue.GaugeDeviceFormulas;
import org.mensuration.internal.catalogue.GaugeFormulas;
import org.mensuration.internal.gauge.Calibration;
import org.mensuration.internal.gauge.FactorGauge;
import org.mensuration.optics.RatioScale;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * Gauges that count trees at a sample point. Stateless and thread-safe.
 *
 * <p>A gauge is taken to be right on a slope: the device allows for it, or trees at the limit are
 * checked by their horizontal distance. A blade, rod or prism held square to each sight is not; say
 * so by {@link AngleGauge#uncompensated}, and each tree then needs the slope of its sight. A gauge
 * made of the divisions of an optical scale is as the scale is.
 *
 * <p>Look up only when standing still; keep well away from dead, hung-up or wind-loaded trees and
 * stop in wind; never sight toward the sun; enter a neighbour's land only with leave.
 *
 * <p>Equation, limits and sources of an id such as {@code gauge/factor-from-angle}: {@link
 * Catalogues#standard}.
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
    double degrees = DEGREES.read(angle);
    return FactorGauge.of(
        GaugeFormulas.FACTOR_FROM_ANGLE.value(degrees),
        GaugeDeviceFormulas.FACTOR_FROM_ANGLE_APPROXIMATE.value(degrees));
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
    double cm = CENTIMETRES.read(width);
    double distanceCm = CENTIMETRES.read(distance);
    return FactorGauge.of(
        GaugeFormulas.FACTOR_FROM_FLAT_BLADE.value(cm, distanceCm),
        GaugeFormulas.FACTOR_FROM_FLAT_BLADE_APPROXIMATE.value(cm, distanceCm));
  }

  /**
   * A gauge of a round rod ({@code gauge/factor-from-target-axis}); its rule for small angles is
   * exact.
   *
   * @param diameter diameter of the rod, above zero
   * @param axisDistance distance from the eye to the axis of the rod, more than its radius
   * @return the gauge
   * @throws OutOfDomainException if a length is outside
   */
  public static AngleGauge ofRoundRod(Quantity<Length> diameter, Quantity<Length> axisDistance) {
    return Calibration.on(
        GaugeDeviceFormulas.FACTOR_FROM_TARGET_AXIS, diameter, List.of(axisDistance));
  }

  /**
   * A prism ({@code gauge/factor-from-prism}). The vertex of its angle is at the prism, so the
   * prism and not the eye is held over the point.
   *
   * @param dioptres strength in prism dioptres, above zero
   * @return the gauge
   * @throws OutOfDomainException if the strength is not above zero or not finite
   */
  public static AngleGauge ofPrism(double dioptres) {
    return FactorGauge.of(
        GaugeFormulas.FACTOR_FROM_PRISM.value(dioptres),
        GaugeDeviceFormulas.FACTOR_FROM_PRISM_APPROXIMATE.value(dioptres));
  }

  /**
   * Two prisms joined with their bases on one side ({@code gauge/factor-from-joined-prisms}).
   *
   * @param firstDioptres strength of one in prism dioptres, above zero
   * @param secondDioptres strength of the other in prism dioptres, above zero
   * @return the gauge
   * @throws OutOfDomainException if a strength is not above zero or not finite
   */
  public static AngleGauge ofJoinedPrisms(double firstDioptres, double secondDioptres) {
    return FactorGauge.of(
        GaugeDeviceFormulas.FACTOR_FROM_JOINED_PRISMS.value(firstDioptres, secondDioptres),
        GaugeDeviceFormulas.FACTOR_FROM_JOINED_PRISMS_APPROXIMATE.value(
            GaugeDeviceFormulas.FACTOR_FROM_PRISM_APPROXIMATE.value(firstDioptres),
            GaugeDeviceFormulas.FACTOR_FROM_PRISM_APPROXIMATE.value(secondDioptres)));
  }

  /**
   * Divisions of an optical scale as a gauge ({@code gauge/factor-from-divisions}): a tree counts
   * that fills them at breast height. The gauge allows for slope if the scale does.
   *
   * @param scale the scale
   * @param divisions divisions that a counted tree fills, above zero
   * @return the gauge
   * @throws OutOfDomainException if the divisions are not above zero or not finite
   */
  public static AngleGauge ofDivisions(RatioScale scale, double divisions) {
    AngleGauge gauge =
        FactorGauge.of(
            GaugeDeviceFormulas.FACTOR_FROM_DIVISIONS.value(divisions, scale.ratio()),
            GaugeDeviceFormulas.FACTOR_FROM_DIVISIONS_APPROXIMATE.value(divisions, scale.ratio()));
    return scale.compensated() ? gauge : gauge.uncompensated();
  }

  /**
   * A gauge calibrated on a flat target, square to its middle ({@code
   * gauge/factor-from-target-middle}). Distances of several readings are averaged.
   *
   * @param width width of the target, above zero
   * @param middleDistances distances from the vertex of the gauge to the middle of the target
   * @return the gauge
   * @throws IllegalArgumentException if there is no reading
   * @throws OutOfDomainException if a length is outside
   */
  public static AngleGauge calibratedOnFlatTarget(
      Quantity<Length> width, List<Quantity<Length>> middleDistances) {
    return Calibration.on(GaugeDeviceFormulas.FACTOR_FROM_TARGET_MIDDLE, width, middleDistances);
  }

  /**
   * A gauge calibrated on a flat target, square to one of its edges ({@code
   * gauge/factor-from-target-edge}). Distances of several readings are averaged.
   *
   * @param width width of the target, above zero
   * @param edgeDistances distances from the vertex of the gauge to the edge
   * @return the gauge
   * @throws IllegalArgumentException if there is no reading
   * @throws OutOfDomainException if a length is outside
   */
  public static AngleGauge calibratedOnFlatTargetEdge(
      Quantity<Length> width, List<Quantity<Length>> edgeDistances) {
    return Calibration.on(GaugeDeviceFormulas.FACTOR_FROM_TARGET_EDGE, width, edgeDistances);
  }

  /**
   * A gauge calibrated on a round target, measured to its axis ({@code
   * gauge/factor-from-target-axis}). Distances of several readings are averaged.
   *
   * @param diameter diameter of the target, above zero
   * @param axisDistances distances from the vertex of the gauge to the axis
   * @return the gauge
   * @throws IllegalArgumentException if there is no reading
   * @throws OutOfDomainException if a length is outside
   */
  public static AngleGauge calibratedOnRoundTargetAxis(
      Quantity<Length> diameter, List<Quantity<Length>> axisDistances) {
    return Calibration.on(GaugeDeviceFormulas.FACTOR_FROM_TARGET_AXIS, diameter, axisDistances);
  }

  /**
   * A gauge calibrated on a round target, measured to its near face ({@code
   * gauge/factor-from-target-face}). Distances of several readings are averaged.
   *
   * @param diameter diameter of the target, above zero
   * @param faceDistances distances from the vertex of the gauge to the near face
   * @return the gauge
   * @throws IllegalArgumentException if there is no reading
   * @throws OutOfDomainException if a length is outside
   */
  public static AngleGauge calibratedOnRoundTargetFace(
      Quantity<Length> diameter, List<Quantity<Length>> faceDistances) {
    return Calibration.on(GaugeFormulas.FACTOR_FROM_TARGET_FACE, diameter, faceDistances);
  }

  /**
   * The gauge actually in force when trees at the limit were checked with a radius factor ({@code
   * gauge/working-factor}): the check decides, whatever the gauge in the hand was. To find what a
   * centre factor did that was measured to the face, add 1/24.
   *
   * @param radiusFactorFtPerIn radius factor to the centre in feet per inch, above 1/24
   * @return the gauge
   * @throws OutOfDomainException if the radius factor is outside
   */
  public static AngleGauge checkedWithFeetPerInch(double radiusFactorFtPerIn) {
    double factor = GaugeFormulas.WORKING_FACTOR.value(radiusFactorFtPerIn);
    return FactorGauge.of(Measures.squareFeetPerAcre(factor));
  }

  /**
   * The gauge actually in force when trees at the limit were checked with a radius factor ({@code
   * gauge/working-factor-metric}).
   *
   * @param radiusFactorMPerCm radius factor to the centre in metres per centimetre, above 0.005
   * @return the gauge
   * @throws OutOfDomainException if the radius factor is outside
   */
  public static AngleGauge checkedWithMetresPerCentimetre(double radiusFactorMPerCm) {
    double factor = GaugeDeviceFormulas.WORKING_FACTOR_METRIC.value(radiusFactorMPerCm);
    return FactorGauge.of(Measures.squareMetresPerHectare(factor));
  }

  /**
   * What a whole sweep of a gauge that does not allow for slope is multiplied by ({@code
   * gauge/sweep-slope-factor}): for an even slope. Better is the slope of each sight.
   *
   * @param steepestSlope steepest slope at the point, from 0° and below 90°
   * @return the correction, with its name
   * @throws OutOfDomainException if the slope is outside
   */
  public static SweepCorrection sweepOnSlope(Quantity<Angle> steepestSlope) {
    double degrees = DEGREES.read(steepestSlope);
    double factor = GaugeFormulas.SWEEP_SLOPE_FACTOR.value(degrees);
    return new SweepCorrection("even slope of " + degrees + " degrees", factor);
  }
}
