package org.mensuration;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.internal.catalogue.CosineErrorFormulas;
import org.mensuration.internal.catalogue.HeightErrorFormulas;
import org.mensuration.internal.catalogue.TwoStationFormulas;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * How well a height is known, what lean and slope do to it, and where to stand. Stateless and
 * thread-safe.
 *
 * <p>Every call throws {@link org.mensuration.formula.OutOfDomainException} when a distance is not
 * positive, an error is negative, or an angle is not between -90 and 90 degrees.
 *
 * <p>Equation, limits and sources of an id such as {@code height/lean-error}: {@link
 * Catalogues#standard}.
 */
public final class HeightAccuracy {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);

  private HeightAccuracy() {}

  /**
   * Relative error when a leaning tree is measured from the distance to its base ({@code
   * height/lean-error}).
   *
   * @param offset horizontal offset of the tip, toward the viewer positive (a lean of {@link
   *     Heights#lengthOfLeaning} is positive away)
   * @param distance horizontal distance to the base, above the offset
   * @return share of the height, above zero if it is measured too high
   */
  public static double leanError(Quantity<Length> offset, Quantity<Length> distance) {
    return HeightErrorFormulas.LEAN_ERROR.value(METRES.read(offset), METRES.read(distance));
  }

  /**
   * Height that the distance to the base gives for a leaning stem ({@code height/measured-of-
   * leaning}).
   *
   * @param height vertical height of the tip above the eye
   * @param offset horizontal offset of the tip, toward the viewer positive (a lean of {@link
   *     Heights#lengthOfLeaning} is positive away)
   * @param distance horizontal distance to the base, above the offset
   * @return wrong height, to tell how wrong
   */
  public static Quantity<Length> measuredOfLeaning(
      Quantity<Length> height, Quantity<Length> offset, Quantity<Length> distance) {
    return Measures.metres(
        HeightErrorFormulas.MEASURED_OF_LEANING.value(
            METRES.read(height), METRES.read(offset), METRES.read(distance)));
  }

  /**
   * Excess of a height when a distance along the slope is taken as horizontal ({@code
   * height/slope-as-horizontal}).
   *
   * @param slope slope of the distance
   * @return error in per cent, not below zero
   */
  public static double slopeAsHorizontalPercent(Quantity<Angle> slope) {
    return CosineErrorFormulas.SLOPE_AS_HORIZONTAL.value(DEGREES.read(slope));
  }

  /**
   * Standard error of the tangent method ({@code height/tangent-error}).
   *
   * @param distance horizontal distance to the tree
   * @param top angle to the tip
   * @param base angle to the base
   * @param distanceError standard error of the distance
   * @param angleError standard error of each angle
   * @return standard error of the vertical height
   */
  public static Quantity<Length> tangentError(
      Quantity<Length> distance,
      Quantity<Angle> top,
      Quantity<Angle> base,
      Quantity<Length> distanceError,
      Quantity<Angle> angleError) {
    return Measures.metres(
        HeightErrorFormulas.TANGENT_ERROR.apply(
            METRES.read(distance),
            DEGREES.read(top),
            DEGREES.read(base),
            METRES.read(distanceError),
            DEGREES.read(angleError)));
  }

  /**
   * Standard error of a height from two stations ({@code height/two-stations-error}).
   *
   * @param baseline horizontal distance between the stations
   * @param far angle to the tip from the far station, between 0 and 90 degrees
   * @param near angle to the tip from the near station, larger than the other
   * @param baselineError standard error of the baseline
   * @param angleError standard error of each angle
   * @return standard error of the height above the eye
   */
  public static Quantity<Length> twoStationsError(
      Quantity<Length> baseline,
      Quantity<Angle> far,
      Quantity<Angle> near,
      Quantity<Length> baselineError,
      Quantity<Angle> angleError) {
    return Measures.metres(
        TwoStationFormulas.HEIGHT_ERROR.apply(
            METRES.read(baseline),
            DEGREES.read(far),
            DEGREES.read(near),
            METRES.read(baselineError),
            DEGREES.read(angleError)));
  }

  /**
   * Distance at which the tangent method has its least error ({@code height/best-distance}).
   *
   * @param aboveEye expected height of the tip above the eye
   * @param belowEye expected depth of the base below the eye
   * @param distanceError standard error of the distance
   * @param angleError standard error of each angle, above zero
   * @return horizontal distance
   */
  public static Quantity<Length> bestDistance(
      Quantity<Length> aboveEye,
      Quantity<Length> belowEye,
      Quantity<Length> distanceError,
      Quantity<Angle> angleError) {
    return Measures.metres(
        HeightErrorFormulas.BEST_DISTANCE.value(
            METRES.read(aboveEye),
            METRES.read(belowEye),
            METRES.read(distanceError),
            DEGREES.read(angleError)));
  }
}
