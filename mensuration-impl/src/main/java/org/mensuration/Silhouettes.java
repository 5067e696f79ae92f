package org.mensuration;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.internal.catalogue.CosineErrorFormulas;
import org.mensuration.internal.catalogue.SilhouetteFormulas;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * What a viewer sees of a round stem, and how far off simple rules are there. For checking an
 * instrument, planning a sight and teaching. Stateless and thread-safe.
 *
 * <p>Every call throws {@link org.mensuration.formula.OutOfDomainException} when a length is not
 * positive, an angle is not between -90 and 90 degrees, or the diameter is not below twice the
 * distance to the axis.
 *
 * <p>Equation, limits and sources of an id such as {@code optics/sighted-ratio}: {@link
 * Catalogues#standard}.
 */
public final class Silhouettes {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);

  private Silhouettes() {}

  /**
   * Ratio of width to distance that a level sight shows ({@code optics/sighted-ratio}).
   *
   * @param diameter diameter of the stem
   * @param axisDistance horizontal distance to the stem axis
   * @return ratio of a flat scale
   */
  public static double ratio(Quantity<Length> diameter, Quantity<Length> axisDistance) {
    return SilhouetteFormulas.SIGHTED_RATIO.value(METRES.read(diameter), METRES.read(axisDistance));
  }

  /**
   * Ratio that a scale without compensation shows at an elevation ({@code optics/sighted-ratio-
   * elevated}).
   *
   * @param diameter diameter of the stem
   * @param axisDistance horizontal distance to the stem axis
   * @param elevation elevation of the sight
   * @return ratio of a scale square to the sight
   */
  public static double ratio(
      Quantity<Length> diameter, Quantity<Length> axisDistance, Quantity<Angle> elevation) {
    return SilhouetteFormulas.SIGHTED_RATIO_ELEVATED.value(
        METRES.read(diameter), METRES.read(axisDistance), DEGREES.read(elevation));
  }

  /**
   * Ratio that a scale without compensation shows of a stem leaning in the plane of sight ({@code
   * optics/sighted-ratio-leaning}).
   *
   * @param diameter diameter of the stem
   * @param slopeDistance straight distance to the sighted point of the axis
   * @param elevation elevation of the sight
   * @param lean lean away from the viewer
   * @return ratio of a scale square to the sight
   */
  public static double ratioOfLeaning(
      Quantity<Length> diameter,
      Quantity<Length> slopeDistance,
      Quantity<Angle> elevation,
      Quantity<Angle> lean) {
    return SilhouetteFormulas.SIGHTED_RATIO_LEANING.value(
        METRES.read(diameter),
        METRES.read(slopeDistance),
        DEGREES.read(elevation),
        DEGREES.read(lean));
  }

  /**
   * Width that an upright tapering stem seems to have at its axis ({@code optics/sighted-width-
   * tapering}).
   *
   * @param diameter diameter of the section
   * @param axisDistance horizontal distance to the stem axis
   * @param aboveEye height of the section above the eye
   * @param apex height above the eye at which the stem, its taper prolonged, comes to a point
   * @return width
   */
  public static Quantity<Length> widthOfTapering(
      Quantity<Length> diameter,
      Quantity<Length> axisDistance,
      Quantity<Length> aboveEye,
      Quantity<Length> apex) {
    return Measures.metres(
        SilhouetteFormulas.TAPERING_WIDTH.value(
            METRES.read(diameter),
            METRES.read(axisDistance),
            METRES.read(aboveEye),
            METRES.read(apex)));
  }

  /**
   * Width that a stem seems to have at its axis ({@code optics/apparent-width}).
   *
   * @param diameter diameter of the stem
   * @param axisDistance horizontal distance to the stem axis
   * @return width, above the diameter
   */
  public static Quantity<Length> width(Quantity<Length> diameter, Quantity<Length> axisDistance) {
    return Measures.metres(
        SilhouetteFormulas.APPARENT_WIDTH.value(METRES.read(diameter), METRES.read(axisDistance)));
  }

  /**
   * Full angle between the edges on a level sight ({@code optics/sighted-angle}).
   *
   * @param diameter diameter of the stem
   * @param axisDistance horizontal distance to the stem axis
   * @return angle
   */
  public static Quantity<Angle> angle(Quantity<Length> diameter, Quantity<Length> axisDistance) {
    return Measures.degrees(
        SilhouetteFormulas.SIGHTED_ANGLE.value(METRES.read(diameter), METRES.read(axisDistance)));
  }

  /**
   * Angle between the sights to the two tangent points at a height ({@code optics/sighted-angle-
   * elevated}).
   *
   * @param diameter diameter of the stem
   * @param axisDistance horizontal distance to the stem axis
   * @param aboveEye height of the points above the eye, negative below it
   * @return angle
   */
  public static Quantity<Angle> angle(
      Quantity<Length> diameter, Quantity<Length> axisDistance, Quantity<Length> aboveEye) {
    return Measures.degrees(
        SilhouetteFormulas.SIGHTED_ANGLE_ELEVATED.value(
            METRES.read(diameter), METRES.read(axisDistance), METRES.read(aboveEye)));
  }

  /**
   * Share of the girth that can be seen from one station ({@code optics/visible-share}).
   *
   * @param diameter diameter of the stem
   * @param axisDistance horizontal distance to the stem axis
   * @return share, below one half
   */
  public static double visibleShare(Quantity<Length> diameter, Quantity<Length> axisDistance) {
    return SilhouetteFormulas.VISIBLE_SHARE.value(METRES.read(diameter), METRES.read(axisDistance));
  }

  /**
   * Chord between the two tangent points ({@code optics/tangent-chord}).
   *
   * @param diameter diameter of the stem
   * @param axisDistance horizontal distance to the stem axis
   * @return chord, below the diameter
   */
  public static Quantity<Length> chord(Quantity<Length> diameter, Quantity<Length> axisDistance) {
    return Measures.metres(
        SilhouetteFormulas.TANGENT_CHORD.value(METRES.read(diameter), METRES.read(axisDistance)));
  }

  /**
   * Distance from the eye to the tangent points ({@code optics/tangent-distance}).
   *
   * @param diameter diameter of the stem
   * @param axisDistance horizontal distance to the stem axis
   * @return distance
   */
  public static Quantity<Length> distanceToEdges(
      Quantity<Length> diameter, Quantity<Length> axisDistance) {
    return Measures.metres(
        SilhouetteFormulas.TANGENT_DISTANCE.value(
            METRES.read(diameter), METRES.read(axisDistance)));
  }

  /**
   * Distance from the eye to the chord between the tangent points ({@code optics/chord-distance}).
   *
   * @param diameter diameter of the stem
   * @param axisDistance horizontal distance to the stem axis
   * @return distance
   */
  public static Quantity<Length> distanceToChord(
      Quantity<Length> diameter, Quantity<Length> axisDistance) {
    return Measures.metres(
        SilhouetteFormulas.CHORD_DISTANCE.value(METRES.read(diameter), METRES.read(axisDistance)));
  }

  /**
   * Relative error of the ratio times the distance to the axis ({@code optics/proportional-error-
   * axis}).
   *
   * @param diameter diameter of the stem
   * @param axisDistance horizontal distance to the stem axis
   * @return share of the diameter, above zero
   */
  public static double proportionalErrorToAxis(
      Quantity<Length> diameter, Quantity<Length> axisDistance) {
    return SilhouetteFormulas.ERROR_AT_AXIS.value(METRES.read(diameter), METRES.read(axisDistance));
  }

  /**
   * Relative error of the ratio times the distance to the near face ({@code optics/proportional-
   * error-face}).
   *
   * @param diameter diameter of the stem
   * @param axisDistance horizontal distance to the stem axis
   * @return share of the diameter, below zero
   */
  public static double proportionalErrorToFace(
      Quantity<Length> diameter, Quantity<Length> axisDistance) {
    return SilhouetteFormulas.ERROR_AT_FACE.value(METRES.read(diameter), METRES.read(axisDistance));
  }

  /**
   * Relative error of a diameter sighted upward without the cosine, on a scale that does not
   * compensate and was calibrated level ({@code optics/cosine-omitted}).
   *
   * @param elevation elevation of the sight
   * @return share of the diameter, not above zero
   */
  public static double errorWithoutCosine(Quantity<Angle> elevation) {
    return CosineErrorFormulas.OMITTED.value(DEGREES.read(elevation));
  }

  /**
   * Relative error of dividing by the cosine on a scale that compensates ({@code optics/cosine-
   * twice}).
   *
   * @param elevation elevation of the sight
   * @return share of the diameter, not below zero
   */
  public static double errorOfSecondCosine(Quantity<Angle> elevation) {
    return CosineErrorFormulas.TWICE.value(DEGREES.read(elevation));
  }
}
