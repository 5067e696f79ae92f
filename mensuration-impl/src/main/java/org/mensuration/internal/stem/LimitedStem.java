package org.mensuration.internal.stem;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.diameter.StemLimits;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.stem.StemProfile;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * A stem from its stump to its top limit. Immutable and thread-safe.
 *
 * @param profile the stem
 * @param limits where it begins and ends
 */
public record LimitedStem(StemProfile profile, StemLimits limits) {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);

  /**
   * Checks that the top diameter and the profile have one bark basis.
   *
   * @param profile the stem
   * @param limits where it begins and ends
   * @throws IllegalArgumentException if they have not
   */
  public LimitedStem {
    BarkBasis stem = profile.bark();
    if (limits.topDiameter().isPresent() && stem != limits.topBark()) {
      throw new IllegalArgumentException(
          "stem: the top diameter is "
              + limits.topBark()
              + " bark, the profile "
              + stem
              + "; both need one basis: state it, or convert the readings by a bark factor");
    }
  }

  /**
   * Diameter at breast height.
   *
   * @return the diameter
   */
  public Quantity<Length> breastHeightDiameter() {
    return profile.diameterAt(limits.breastHeight().height());
  }

  /**
   * Length along the stem.
   *
   * @return the length
   */
  public Quantity<Length> length() {
    return limits.topDiameter().isPresent()
        ? profile.merchantableLength(from(), limits.topDiameter().get())
        : Measures.metres(METRES.read(profile.top()) - METRES.read(from()));
  }

  /**
   * Volume.
   *
   * @return the volume
   */
  public Quantity<Volume> volume() {
    double from = METRES.read(from());
    double to = Math.min(from + METRES.read(length()), METRES.read(profile.top()));
    return profile.volume(from(), Measures.metres(to));
  }

  private Quantity<Length> from() {
    return limits.stumpHeight().orElse(profile.base());
  }
}
