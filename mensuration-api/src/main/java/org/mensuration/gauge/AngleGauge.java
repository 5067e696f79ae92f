package org.mensuration.gauge;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.quantity.BasalAreaPerArea;

/**
 * A gauge that counts the trees which fill its angle. Implementations are immutable and
 * thread-safe.
 *
 * <p>Diameters are taken at breast height. Distances are horizontal and go from the sample point to
 * the centre of the stem at breast height, unless a method says otherwise. A tree at the limit or
 * within is in; a distance that differs from the limit by less than a thousand millionth of it is
 * at the limit, so that feet and metres decide alike. For another rule at the limit ask {@link
 * #judge} and a {@link TieRule}.
 */
public interface AngleGauge extends TreeSelection {

  /**
   * Basal area per area that one counted tree stands for, by exact geometry.
   *
   * @return the factor
   */
  Quantity<BasalAreaPerArea> factor();

  /**
   * The factor by the rule for small angles, which many gauges are sold and made by. It is above
   * the exact one for a blade or a prism, and equal to it for a round rod measured to its axis.
   *
   * @return the factor by the rule of the device; for a gauge given by its factor that of a flat
   *     blade
   */
  Quantity<BasalAreaPerArea> factorBySmallAngle();

  /**
   * The full angle.
   *
   * @return the angle
   */
  Quantity<Angle> angle();

  /**
   * Whether the gauge allows for the slope of each sight, which is what is taken unless {@link
   * #uncompensated} says otherwise.
   *
   * @return false if its counts need a correction on a slope
   */
  boolean compensated();

  /**
   * The same gauge held square to each sight without allowing for its slope. Where it counts, each
   * tree needs the slope of its sight or the point a correction of the whole sweep.
   *
   * @return the gauge
   */
  AngleGauge uncompensated();

  /**
   * Factor in force along one sight of a gauge that does not allow for slope: above the factor,
   * since fewer trees are counted up or down the slope.
   *
   * @param slope slope of the sight, between −90° and 90°
   * @return the factor itself if the gauge allows for slope
   * @throws OutOfDomainException if the slope is outside
   */
  Quantity<BasalAreaPerArea> factorAlongSight(Quantity<Angle> slope);

  /**
   * Width of a flat blade that has this factor.
   *
   * @param eyeDistance distance from the eye to the middle of the blade, above zero
   * @return the width
   * @throws OutOfDomainException if the distance is outside
   */
  Quantity<Length> bladeWidth(Quantity<Length> eyeDistance);

  /**
   * Width to which a flat blade is narrowed for a sight along a slope, so that the distance along
   * the slope is judged as a level one.
   *
   * @param eyeDistance distance from the eye to the middle of the blade, above zero
   * @param slope slope of the sight, between −90° and 90°
   * @return the width
   * @throws OutOfDomainException if a value is outside
   */
  Quantity<Length> bladeWidthAlongSight(Quantity<Length> eyeDistance, Quantity<Angle> slope);

  /**
   * Distance from the eye at which a flat blade has this factor.
   *
   * @param bladeWidth width of the blade, above zero
   * @return the distance
   * @throws OutOfDomainException if the width is outside
   */
  Quantity<Length> bladeDistance(Quantity<Length> bladeWidth);

  /**
   * Limiting distance to the centre over diameter.
   *
   * @return in feet per inch
   */
  double radiusFactorToCentreFeetPerInch();

  /**
   * Limiting distance to the near face over diameter.
   *
   * @return in feet per inch
   */
  double radiusFactorToFaceFeetPerInch();

  /**
   * Limiting distance to the centre over diameter.
   *
   * @return in metres per centimetre
   */
  double radiusFactorToCentreMetresPerCentimetre();

  /**
   * Limiting distance to the near face over diameter.
   *
   * @return in metres per centimetre
   */
  double radiusFactorToFaceMetresPerCentimetre();

  /**
   * Horizontal distance to the centre of a stem up to which it is counted.
   *
   * @param diameter diameter, above zero
   * @return the limiting distance
   * @throws OutOfDomainException if the diameter is not above zero or not finite
   */
  Quantity<Length> limitingDistanceToCentre(Quantity<Length> diameter);

  /**
   * Horizontal distance to the near face of a stem up to which it is counted.
   *
   * @param diameter diameter, above zero
   * @return the limiting distance
   * @throws OutOfDomainException if the diameter is not above zero or not finite
   */
  Quantity<Length> limitingDistanceToFace(Quantity<Length> diameter);

  /**
   * Distance along a slope to the centre of a stem up to which it is counted.
   *
   * @param diameter diameter, above zero
   * @param slope slope of the line from point to stem, between −90° and 90°
   * @return the limiting distance along the slope
   * @throws OutOfDomainException if the diameter or the slope is outside
   */
  Quantity<Length> limitingDistanceAlongSlope(Quantity<Length> diameter, Quantity<Angle> slope);

  /**
   * Area around a tree from which it is counted.
   *
   * @param diameter diameter, above zero
   * @return the area
   * @throws OutOfDomainException if the diameter is not above zero or not finite
   */
  Quantity<Area> inclusionArea(Quantity<Length> diameter);

  /**
   * Where a tree stands beside its limit when its distance was measured along a slope.
   *
   * @param diameter diameter, above zero
   * @param slopeDistanceToCentre distance along the slope to the centre of the stem, not negative
   * @param slope slope of the line from point to stem, between −90° and 90°
   * @return in, out, or at the limit within a thousand millionth of it
   * @throws OutOfDomainException if a value is outside
   */
  LimitPosition judge(
      Quantity<Length> diameter, Quantity<Length> slopeDistanceToCentre, Quantity<Angle> slope);

  /**
   * Where a leaning tree stands beside its limit: its section at breast height decides, not its
   * foot.
   *
   * @param diameter diameter at breast height, above zero
   * @param distanceToFoot horizontal distance to the centre of the stem at the ground, not negative
   * @param breastHeight breast height, measured along the stem
   * @param lean lean from the vertical, from 0° and below 90°
   * @param direction horizontal angle between the line from the point to the foot and the lean: 0°
   *     leans straight away from the point, 180° straight towards it
   * @return in, out, or at the limit within a thousand millionth of it
   * @throws OutOfDomainException if a value is outside
   */
  LimitPosition judgeLeaning(
      Quantity<Length> diameter,
      Quantity<Length> distanceToFoot,
      Quantity<Length> breastHeight,
      Quantity<Angle> lean,
      Quantity<Angle> direction);

  /**
   * Whether a tree is counted.
   *
   * @param diameter diameter, above zero
   * @param distanceToCentre horizontal distance to the centre of the stem, not negative
   * @return true if the tree is at the limit or within
   * @throws OutOfDomainException if a value is outside
   */
  boolean counts(Quantity<Length> diameter, Quantity<Length> distanceToCentre);

  /**
   * Whether a tree is counted whose distance was measured along a slope.
   *
   * @param diameter diameter, above zero
   * @param slopeDistanceToCentre distance along the slope to the centre of the stem, not negative
   * @param slope slope of the line from point to stem, between −90° and 90°
   * @return true if the tree is at the limit or within
   * @throws OutOfDomainException if a value is outside
   */
  boolean counts(
      Quantity<Length> diameter, Quantity<Length> slopeDistanceToCentre, Quantity<Angle> slope);
}
