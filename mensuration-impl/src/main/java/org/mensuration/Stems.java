package org.mensuration;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
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
}
