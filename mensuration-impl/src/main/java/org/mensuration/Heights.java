package org.mensuration;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.height.SlopeReading;
import org.mensuration.internal.catalogue.HeightErrorFormulas;
import org.mensuration.internal.catalogue.HeightFormulas;
import org.mensuration.internal.catalogue.HeightSightFormulas;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * Tree heights from angles and distances. Angles are signed from the horizontal, up positive. Each
 * method says whether it gives the vertical height or the length along the stem. Stateless and
 * thread-safe.
 *
 * <p>Every call throws {@link org.mensuration.formula.OutOfDomainException} when a distance is not
 * positive, an angle is not between -90 and 90 degrees, or the base lies above the tip. Look up
 * only when standing still, and keep well away from dead, hung-up or wind-loaded trees.
 *
 * <p>Equation, limits and sources of an id such as {@code height/tangent}: {@link
 * Catalogues#standard}.
 */
public final class Heights {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Length> FEET = UnitReader.in(ForestUnits.FOOT);
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

  /**
   * Height of a point above the eye ({@code height/above-eye}).
   *
   * @param distance horizontal distance to the tree
   * @param angle angle to the point
   * @return vertical height above the eye, negative below it
   */
  public static Quantity<Length> aboveEye(Quantity<Length> distance, Quantity<Angle> angle) {
    return Measures.metres(
        HeightSightFormulas.ABOVE_EYE.value(METRES.read(distance), DEGREES.read(angle)));
  }

  /**
   * Height on level ground from one angle and the height of the eye ({@code height/level-ground}).
   *
   * @param distance horizontal distance to the tree
   * @param top angle to the tip
   * @param eyeHeight height of the eye above the base of the tree
   * @return vertical height
   */
  public static Quantity<Length> onLevelGround(
      Quantity<Length> distance, Quantity<Angle> top, Quantity<Length> eyeHeight) {
    return Measures.metres(
        HeightSightFormulas.LEVEL_GROUND.value(
            METRES.read(distance), DEGREES.read(top), METRES.read(eyeHeight)));
  }

  /**
   * Height from two readings of a topographic scale, which reads feet at 66 ft ({@code
   * height/topographic}).
   *
   * @param distance horizontal distance to the tree, in any unit of length
   * @param topReading reading to the tip, up positive
   * @param baseReading reading to the base, down negative
   * @return vertical height
   */
  public static Quantity<Length> topographic(
      Quantity<Length> distance, double topReading, double baseReading) {
    return Measures.feet(
        HeightSightFormulas.TOPOGRAPHIC.value(FEET.read(distance), topReading, baseReading));
  }

  /**
   * Sine method with the straight distances to tip and base ({@code height/sine}). Lean does no
   * harm.
   *
   * @param topDistance straight distance from the eye to the tip
   * @param top angle to the tip
   * @param baseDistance straight distance from the eye to the base
   * @param base angle to the base
   * @return vertical height
   * @throws org.mensuration.formula.OutOfDomainException also if the base lies above the tip
   */
  public static Quantity<Length> sine(
      Quantity<Length> topDistance,
      Quantity<Angle> top,
      Quantity<Length> baseDistance,
      Quantity<Angle> base) {
    double height =
        HeightSightFormulas.SINE.value(
            METRES.read(topDistance),
            DEGREES.read(top),
            METRES.read(baseDistance),
            DEGREES.read(base));
    return upright(HeightSightFormulas.SINE, height);
  }

  /**
   * Sine method when the base is hidden, with a visible point of an upright stem in its place
   * ({@code height/sine-hidden-base}).
   *
   * @param topDistance straight distance from the eye to the tip
   * @param top angle to the tip
   * @param visibleDistance straight distance from the eye to a visible point of the stem
   * @param visible angle to that point
   * @param base angle to the base
   * @return vertical height
   * @throws org.mensuration.formula.OutOfDomainException also if the base lies above the tip
   */
  public static Quantity<Length> sineWithHiddenBase(
      Quantity<Length> topDistance,
      Quantity<Angle> top,
      Quantity<Length> visibleDistance,
      Quantity<Angle> visible,
      Quantity<Angle> base) {
    double height =
        HeightSightFormulas.SINE_HIDDEN_BASE.apply(
            METRES.read(topDistance),
            DEGREES.read(top),
            METRES.read(visibleDistance),
            DEGREES.read(visible),
            DEGREES.read(base));
    return upright(HeightSightFormulas.SINE_HIDDEN_BASE, height);
  }

  /**
   * Height from a staff held on the base and three angles; needs no distance ({@code
   * height/staff}).
   *
   * @param staff length of the staff, above zero
   * @param top angle to the tip
   * @param staffTop angle to the top of the staff, above that to the base
   * @param base angle to the base
   * @return vertical height
   */
  public static Quantity<Length> staff(
      Quantity<Length> staff, Quantity<Angle> top, Quantity<Angle> staffTop, Quantity<Angle> base) {
    return Measures.metres(
        HeightSightFormulas.STAFF.value(
            METRES.read(staff), DEGREES.read(top), DEGREES.read(staffTop), DEGREES.read(base)));
  }

  /**
   * Height from a pole at the stem and a ruler held parallel to it ({@code
   * height/similar-triangles}).
   *
   * @param pole length of the pole
   * @param poleOnRuler length on the ruler that covers the pole
   * @param treeOnRuler length on the ruler that covers the tree
   * @return vertical height
   */
  public static Quantity<Length> similarTriangles(
      Quantity<Length> pole, Quantity<Length> poleOnRuler, Quantity<Length> treeOnRuler) {
    return Measures.metres(
        HeightSightFormulas.SIMILAR_TRIANGLES.value(
            METRES.read(pole), CENTIMETRES.read(poleOnRuler), CENTIMETRES.read(treeOnRuler)));
  }

  /**
   * Height from shadows on level ground ({@code height/shadow}).
   *
   * @param treeShadow shadow of the tree
   * @param staff length of an upright staff
   * @param staffShadow shadow of the staff
   * @return vertical height
   */
  public static Quantity<Length> shadow(
      Quantity<Length> treeShadow, Quantity<Length> staff, Quantity<Length> staffShadow) {
    return Measures.metres(
        HeightSightFormulas.SHADOW.value(
            METRES.read(treeShadow), METRES.read(staff), METRES.read(staffShadow)));
  }

  /**
   * Length of a stem that leans in the plane of sight ({@code height/length-of-leaning}).
   *
   * @param slopeDistance straight distance from eye to base
   * @param top angle to the tip
   * @param base angle to the base
   * @param lean lean from the vertical, away from the viewer positive; offsets of {@link
   *     HeightAccuracy} are positive toward the viewer
   * @return length along the stem, not the vertical height
   */
  public static Quantity<Length> lengthOfLeaning(
      Quantity<Length> slopeDistance,
      Quantity<Angle> top,
      Quantity<Angle> base,
      Quantity<Angle> lean) {
    return Measures.metres(
        HeightErrorFormulas.LENGTH_OF_LEANING.value(
            METRES.read(slopeDistance), DEGREES.read(top), DEGREES.read(base), DEGREES.read(lean)));
  }

  /**
   * Vertical height of a leaning stem ({@code height/vertical-from-length}).
   *
   * @param length length along the stem
   * @param lean lean from the vertical
   * @return vertical height
   */
  public static Quantity<Length> verticalFromLength(Quantity<Length> length, Quantity<Angle> lean) {
    return Measures.metres(
        HeightErrorFormulas.VERTICAL_OF_LENGTH.value(METRES.read(length), DEGREES.read(lean)));
  }

  /**
   * Length of a leaning stem ({@code height/length-from-vertical}).
   *
   * @param height vertical height
   * @param lean lean from the vertical
   * @return length along the stem
   */
  public static Quantity<Length> lengthFromVertical(Quantity<Length> height, Quantity<Angle> lean) {
    return Measures.metres(
        HeightErrorFormulas.LENGTH_OF_VERTICAL.value(METRES.read(height), DEGREES.read(lean)));
  }

  /**
   * Height of a point above the eye from the straight distance to it ({@code height/above-eye-
   * straight}).
   *
   * @param straight straight distance to the point
   * @param angle angle to the point
   * @return vertical height above the eye, negative below it
   */
  public static Quantity<Length> aboveEyeStraight(
      Quantity<Length> straight, Quantity<Angle> angle) {
    return Measures.metres(
        HeightSightFormulas.ABOVE_EYE_STRAIGHT.value(METRES.read(straight), DEGREES.read(angle)));
  }

  /**
   * Height of a point above the eye from the straight distance to the base of an upright stem
   * ({@code height/above-eye-from-base}).
   *
   * @param slopeDistance straight distance from eye to base
   * @param base angle to the base
   * @param angle angle to the point
   * @return vertical height above the eye, negative below it
   */
  public static Quantity<Length> aboveEyeFromBase(
      Quantity<Length> slopeDistance, Quantity<Angle> base, Quantity<Angle> angle) {
    return Measures.metres(
        HeightSightFormulas.ABOVE_EYE_FROM_BASE.value(
            METRES.read(slopeDistance), DEGREES.read(base), DEGREES.read(angle)));
  }

  /**
   * Height from a mark on the stem and a stick held parallel to it that covers the tree ({@code
   * height/fraction}).
   *
   * @param mark height of the mark
   * @param stick length of the stick that covers the tree
   * @param stickToMark length of it that covers the stem up to the mark
   * @return vertical height
   */
  public static Quantity<Length> fraction(
      Quantity<Length> mark, Quantity<Length> stick, Quantity<Length> stickToMark) {
    return Measures.metres(
        HeightSightFormulas.FRACTION.value(
            METRES.read(mark), CENTIMETRES.read(stick), CENTIMETRES.read(stickToMark)));
  }

  /**
   * Height above the eye from the intercept on an upright rod ({@code height/rod}).
   *
   * @param multiplier constant of the instrument, often 100
   * @param intercept length of rod between the hairs
   * @param elevation elevation of the sight
   * @return vertical height above the eye, negative below it
   */
  public static Quantity<Length> rod(
      double multiplier, Quantity<Length> intercept, Quantity<Angle> elevation) {
    return Measures.metres(
        HeightSightFormulas.ROD.value(multiplier, METRES.read(intercept), DEGREES.read(elevation)));
  }

  private static Quantity<Length> upright(BoundFormula formula, double metres) {
    if (!(metres >= 0)) {
      throw new OutOfDomainException(formula, "H", metres, "m", "[0, ∞), the base below the tip");
    }
    return Measures.metres(metres);
  }
}
