package org.mensuration;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.height.SlopeReading;
import org.mensuration.internal.catalogue.HeightFormulas;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * Vertical tree heights from angles. Angles are signed from the horizontal, up positive. Stateless
 * and thread-safe.
 *
 * <p>Every call throws {@link org.mensuration.formula.OutOfDomainException} when a distance is not
 * positive, an angle is not between -90 and 90 degrees, or the base lies above the tip. Look up
 * only when standing still, and keep well away from dead, hung-up or wind-loaded trees.
 */
public final class Heights {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);

  private Heights() {}

  /**
   * Tangent method with the horizontal distance ({@code height/tangent}).
   *
   * @param distance horizontal distance to the tree
   * @param top angle to the tip
   * @param base angle to the base
   * @return vertical height
   */
  public static Quantity<Length> tangent(
      Quantity<Length> distance, Quantity<Angle> top, Quantity<Angle> base) {
    return Measures.metres(
        HeightFormulas.TANGENT.value(METRES.read(distance), DEGREES.read(top), DEGREES.read(base)));
  }

  /**
   * Per-cent method ({@code height/percent}).
   *
   * @param distance horizontal distance to the tree
   * @param top reading to the tip
   * @param base reading to the base
   * @return vertical height
   */
  public static Quantity<Length> percent(
      Quantity<Length> distance, SlopeReading top, SlopeReading base) {
    return Measures.metres(
        HeightFormulas.PERCENT.value(METRES.read(distance), top.percent(), base.percent()));
  }

  /**
   * Tangent method with the straight distance from eye to base ({@code
   * height/tangent-slope-distance}).
   *
   * @param slopeDistance straight distance from eye to base
   * @param top angle to the tip
   * @param base angle to the base
   * @return vertical height
   */
  public static Quantity<Length> tangentFromSlopeDistance(
      Quantity<Length> slopeDistance, Quantity<Angle> top, Quantity<Angle> base) {
    return Measures.metres(
        HeightFormulas.TANGENT_SLOPE_DISTANCE.value(
            METRES.read(slopeDistance), DEGREES.read(top), DEGREES.read(base)));
  }

  /**
   * Tangent method with a distance taped along the ground ({@code height/tangent-ground-slope}).
   *
   * @param groundDistance distance taped along the ground
   * @param groundSlope slope of the ground along the tape
   * @param top angle to the tip
   * @param base angle to the base
   * @return vertical height
   */
  public static Quantity<Length> tangentFromGroundDistance(
      Quantity<Length> groundDistance,
      Quantity<Angle> groundSlope,
      Quantity<Angle> top,
      Quantity<Angle> base) {
    return Measures.metres(
        HeightFormulas.TANGENT_GROUND_SLOPE.value(
            METRES.read(groundDistance),
            DEGREES.read(groundSlope),
            DEGREES.read(top),
            DEGREES.read(base)));
  }

  /**
   * Height above the eye from two stations in line with the tree, the eye at one level ({@code
   * height/two-stations}).
   *
   * @param baseline horizontal distance between the stations
   * @param far angle to the tip from the far station, between 0 and 90 degrees
   * @param near angle to the tip from the near station, larger than the other
   * @return height of the tip above the eye
   */
  public static Quantity<Length> twoStations(
      Quantity<Length> baseline, Quantity<Angle> far, Quantity<Angle> near) {
    return Measures.metres(
        HeightFormulas.TWO_STATIONS.value(
            METRES.read(baseline), DEGREES.read(far), DEGREES.read(near)));
  }
}
