package org.mensuration;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.height.SlopeReading;
import org.mensuration.internal.catalogue.HeightErrorFormulas;
import org.mensuration.internal.catalogue.HeightSightFormulas;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * From one graduation of a height scale to another, and marks for making one. Stateless and
 * thread-safe.
 *
 * <p>Every call throws {@link org.mensuration.formula.OutOfDomainException} when a length is not
 * positive or an angle is not between -90 and 90 degrees.
 *
 * <p>Equation, limits and sources of an id such as {@code height/angle-from-percent}: {@link
 * Catalogues#standard}.
 */
public final class HeightScales {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);

  private HeightScales() {}

  /**
   * Angle of a reading in per cent ({@code height/angle-from-percent}).
   *
   * @param reading reading
   * @return angle from the horizontal
   */
  public static Quantity<Angle> angle(SlopeReading reading) {
    return Measures.degrees(HeightErrorFormulas.ANGLE_OF_PERCENT.value(reading.percent()));
  }

  /**
   * Reading in per cent of an angle ({@code height/percent-from-angle}).
   *
   * @param angle angle from the horizontal
   * @return reading
   */
  public static SlopeReading percent(Quantity<Angle> angle) {
    return SlopeReading.ofPercent(HeightErrorFormulas.PERCENT_OF_ANGLE.value(DEGREES.read(angle)));
  }

  /**
   * Reading of a topographic scale, which shows feet at 66 feet ({@code height/topographic-from-
   * angle}).
   *
   * @param angle angle from the horizontal
   * @return reading
   */
  public static double topographic(Quantity<Angle> angle) {
    return HeightErrorFormulas.TOPOGRAPHIC_OF_ANGLE.value(DEGREES.read(angle));
  }

  /**
   * Height from a scale graduated for one distance and read at another ({@code height/at-other-
   * distance}).
   *
   * @param reading height read on the scale
   * @param distance horizontal distance of the reading
   * @param scaleDistance distance that the scale is graduated for
   * @return vertical height above the eye, negative below it
   */
  public static Quantity<Length> atOtherDistance(
      Quantity<Length> reading, Quantity<Length> distance, Quantity<Length> scaleDistance) {
    return Measures.metres(
        HeightSightFormulas.OTHER_DISTANCE.value(
            METRES.read(reading), METRES.read(distance), METRES.read(scaleDistance)));
  }

  /**
   * Place of a pole's top on a ruler that spans the tree ({@code height/ruler-mark}).
   *
   * @param ruler length of the ruler
   * @param pole length of the pole at the base
   * @param height vertical height of the tree
   * @return length from the base end of the ruler
   */
  public static Quantity<Length> rulerMark(
      Quantity<Length> ruler, Quantity<Length> pole, Quantity<Length> height) {
    return Measures.centimetres(
        HeightSightFormulas.RULER_MARK.value(
            CENTIMETRES.read(ruler), METRES.read(pole), METRES.read(height)));
  }
}
