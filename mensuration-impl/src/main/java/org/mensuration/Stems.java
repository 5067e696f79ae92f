package org.mensuration;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.diameter.StemLimits;
import org.mensuration.internal.stem.LimitedStem;
import org.mensuration.internal.stem.StemReadings;
import org.mensuration.internal.stem.TangentStation;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.stem.Butt;
import org.mensuration.stem.StemProfile;
import org.mensuration.stem.StemReading;
import org.mensuration.stem.StemStation;
import org.mensuration.stem.Tip;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.UnitReader;

/**
 * Single stems: from readings along a stem to its profile. Stateless and thread-safe.
 *
 * <p>Look up only when standing still, never climb for a reading, and keep well away from dead,
 * hung-up or wind-loaded trees.
 *
 * <p>Equation, limits and sources of an id such as {@code height/tangent}: {@link
 * Catalogues#standard}.
 */
public final class Stems {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);

  private Stems() {}

  /**
   * The profile of a stem with a cone on its highest reading and a cylinder below its lowest.
   *
   * @param readings in any order, at least one
   * @param height height of the tip above the ground, along the stem
   * @return the profile, bark not stated
   * @throws IllegalArgumentException if the readings make no stem: above the tip, below the ground,
   *     two that differ at one height, or a diameter of zero below the tip
   */
  public static StemProfile profile(List<StemReading> readings, Quantity<Length> height) {
    return profile(readings, BarkBasis.UNKNOWN, Butt.cylinder(), Tip.cone(height));
  }

  /**
   * The profile of a stem with its choices for butt and tip.
   *
   * @param readings in any order, at least one; two if there is neither butt nor tip
   * @param bark whether the diameters include the bark
   * @param butt what the stem is below its lowest reading
   * @param tip what the stem is above its highest reading, and where it is broken
   * @return the profile
   * @throws IllegalArgumentException if the readings make no stem: above the tip or the break,
   *     below the base, two that differ at one height, or a diameter of zero below the tip
   */
  public static StemProfile profile(
      List<StemReading> readings, BarkBasis bark, Butt butt, Tip tip) {
    return StemReadings.profile(readings, bark, butt, tip);
  }

  /**
   * A station from which an upright stem is sighted ({@code height/tangent}).
   *
   * @param distance horizontal distance to the stem axis
   * @param base elevation of the base of the stem, down negative
   * @return the station
   * @throws org.mensuration.formula.OutOfDomainException if the distance is not positive or the
   *     angle not between -90 and 90 degrees
   */
  public static StemStation station(Quantity<Length> distance, Quantity<Angle> base) {
    return new TangentStation(METRES.read(distance), DEGREES.read(base));
  }

  /**
   * The diameter of a stem at the breast height of its limits.
   *
   * @param profile a stem that reaches breast height
   * @param limits limits with the breast height; heights of the profile are from its ground point
   * @return the diameter
   * @throws IllegalArgumentException if the stem does not reach it, or the limits have a top
   *     diameter of another bark basis than the profile
   */
  public static Quantity<Length> breastHeightDiameter(StemProfile profile, StemLimits limits) {
    return new LimitedStem(profile, limits).breastHeightDiameter();
  }

  /**
   * The length of a stem between its limits: from the stump, or its base, to the first point
   * thinner than the top diameter, or its top as it stands.
   *
   * @param profile the stem
   * @param limits stump height and top diameter, each if stated
   * @return length along the stem
   * @throws IllegalArgumentException if the stump lies outside the stem, or the top diameter has
   *     another bark basis than the profile
   */
  public static Quantity<Length> length(StemProfile profile, StemLimits limits) {
    return new LimitedStem(profile, limits).length();
  }

  /**
   * The volume of a stem between its limits; see {@link #length}.
   *
   * @param profile the stem
   * @param limits stump height and top diameter, each if stated
   * @return volume on the bark basis of the profile
   * @throws IllegalArgumentException if the stump lies outside the stem, or the top diameter has
   *     another bark basis than the profile
   */
  public static Quantity<Volume> volume(StemProfile profile, StemLimits limits) {
    return new LimitedStem(profile, limits).volume();
  }

  /**
   * Readings over bark put under bark by one bark factor, the usual assumption for upper diameters.
   *
   * @param readings readings over bark
   * @param factor diameter inside over diameter outside, in (0, 1]
   * @return readings under bark at the same heights
   * @throws org.mensuration.formula.OutOfDomainException if the factor is outside its domain
   */
  public static List<StemReading> underBark(List<StemReading> readings, double factor) {
    List<StemReading> under = new ArrayList<>();
    for (StemReading reading : readings) {
      under.add(StemReading.of(reading.height(), Bark.inside(reading.diameter(), factor)));
    }
    return List.copyOf(under);
  }
}
