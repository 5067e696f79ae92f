package org.mensuration;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.height.SlopeReading;
import org.mensuration.internal.catalogue.HeightErrorFormulas;
import org.mensuration.internal.catalogue.SightingPlanFormulas;
import org.mensuration.internal.catalogue.TwoStationFormulas;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * Distances from sights: to a bar, a rod, a tree between two stations, and by a rangefinder with a
 * base of its own. Stateless and thread-safe.
 *
 * <p>Every call throws {@link org.mensuration.formula.OutOfDomainException} when a length is not
 * positive or an angle is outside the interval that the method names.
 *
 * <p>Equation, limits and sources of an id such as {@code optics/distance-from-thousandths}: {@link
 * Catalogues#standard}.
 */
public final class SightedDistances {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);

  private SightedDistances() {}

  /**
   * Horizontal distance from a level bar of known width across the sight ({@code optics/distance-
   * from-target}).
   *
   * @param bar width of the bar
   * @param angle horizontal angle that it fills, between 0 and 180 degrees
   * @return horizontal distance
   */
  public static Quantity<Length> fromBar(Quantity<Length> bar, Quantity<Angle> angle) {
    return Measures.metres(
        SightingPlanFormulas.FROM_BAR.value(METRES.read(bar), DEGREES.read(angle)));
  }

  /**
   * Distance of a known width from a reading in thousandths of the distance ({@code
   * optics/distance-from-thousandths}).
   *
   * @param width width of the target
   * @param reading reading, above zero
   * @return distance
   */
  public static Quantity<Length> fromThousandths(Quantity<Length> width, double reading) {
    return Measures.metres(
        SightingPlanFormulas.FROM_THOUSANDTHS.value(METRES.read(width), reading));
  }

  /**
   * Horizontal distance from the intercept on an upright rod ({@code optics/distance-from-rod}).
   *
   * @param multiplier constant of the instrument, often 100
   * @param intercept length of rod between the hairs
   * @param elevation elevation of the sight, between -90 and 90 degrees
   * @return horizontal distance
   */
  public static Quantity<Length> fromRod(
      double multiplier, Quantity<Length> intercept, Quantity<Angle> elevation) {
    return Measures.metres(
        SightingPlanFormulas.FROM_ROD.value(
            multiplier, METRES.read(intercept), DEGREES.read(elevation)));
  }

  /**
   * Distance by a rangefinder with a base of its own ({@code optics/distance-from-own-base}).
   *
   * @param base length of the base, square to one sight
   * @param parallax angle by which the other sight leans in, between 0 and 90 degrees
   * @return distance along the sight
   */
  public static Quantity<Length> fromOwnBase(Quantity<Length> base, Quantity<Angle> parallax) {
    return Measures.metres(
        TwoStationFormulas.OWN_BASE.value(METRES.read(base), DEGREES.read(parallax)));
  }

  /**
   * Standard error of that distance; a diameter read over it has the same relative error ({@code
   * optics/own-base-error}).
   *
   * @param base length of the base
   * @param distance distance along the sight
   * @param angleError standard error of the parallax
   * @return standard error
   */
  public static Quantity<Length> ownBaseError(
      Quantity<Length> base, Quantity<Length> distance, Quantity<Angle> angleError) {
    return Measures.metres(
        TwoStationFormulas.OWN_BASE_ERROR.value(
            METRES.read(base), METRES.read(distance), DEGREES.read(angleError)));
  }

  /**
   * Distance of a tree from the near one of two stations in line with it, the eye at one level
   * ({@code height/two-stations-distance}).
   *
   * @param baseline horizontal distance between the stations
   * @param far angle to the tip from the far station, between 0 and 90 degrees
   * @param near angle to the tip from the near station, larger than the other
   * @return horizontal distance from the near station
   */
  public static Quantity<Length> fromTwoStations(
      Quantity<Length> baseline, Quantity<Angle> far, Quantity<Angle> near) {
    return Measures.metres(
        TwoStationFormulas.DISTANCE.value(
            METRES.read(baseline), DEGREES.read(far), DEGREES.read(near)));
  }

  /**
   * Width that a small angle covers at a distance ({@code optics/width-of-angle}).
   *
   * @param angle angle, at least 0 and below 90 degrees
   * @param distance distance
   * @return width square to the sight at one edge
   */
  public static Quantity<Length> widthOfAngle(Quantity<Angle> angle, Quantity<Length> distance) {
    return Measures.metres(
        SightingPlanFormulas.WIDTH_OF_ANGLE.value(DEGREES.read(angle), METRES.read(distance)));
  }

  /**
   * Horizontal part of a straight distance ({@code height/horizontal-distance}).
   *
   * @param straight straight distance to a point
   * @param angle angle to the point, between -90 and 90 degrees
   * @return horizontal distance
   */
  public static Quantity<Length> horizontal(Quantity<Length> straight, Quantity<Angle> angle) {
    return Measures.metres(
        HeightErrorFormulas.HORIZONTAL.value(METRES.read(straight), DEGREES.read(angle)));
  }

  /**
   * Distance along a slope from the horizontal distance ({@code height/slope-distance-from-
   * percent}).
   *
   * @param horizontal horizontal distance
   * @param slope slope in per cent
   * @return distance along the slope
   */
  public static Quantity<Length> alongSlope(Quantity<Length> horizontal, SlopeReading slope) {
    return Measures.metres(
        HeightErrorFormulas.ALONG_PERCENT.value(METRES.read(horizontal), slope.percent()));
  }

  /**
   * Length of the line of sight over a horizontal distance ({@code optics/line-of-sight}).
   *
   * @param horizontal horizontal distance
   * @param elevation elevation of the sight, between -90 and 90 degrees
   * @return distance along the sight
   */
  public static Quantity<Length> alongSight(
      Quantity<Length> horizontal, Quantity<Angle> elevation) {
    return Measures.metres(
        SightingPlanFormulas.ALONG_SIGHT.value(METRES.read(horizontal), DEGREES.read(elevation)));
  }
}
