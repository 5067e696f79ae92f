package org.mensuration.validation.worked;

import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.CUBIC_METRE;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.Stems;
import org.mensuration.kernel.Limits;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.stem.Butt;
import org.mensuration.stem.StemProfile;
import org.mensuration.stem.StemReading;
import org.mensuration.stem.Tip;

/** The same stem as a profile through its readings, to lay beside its sections. Stateless. */
final class ProfileWork {
  private ProfileWork() {}

  /**
   * Two lines: the volume by profile, and what of it is thicker than a top diameter.
   *
   * @param stem the stem
   * @param tip form of the tip
   * @param stumpHeight metres above ground left standing, if any
   * @param topDiameter smallest diameter in cm that is sold
   * @return the lines; one that says why, if the readings make no profile
   */
  static List<Piece> lines(Stem stem, TipForm tip, OptionalDouble stumpHeight, double topDiameter) {
    OptionalDouble none = OptionalDouble.empty();
    StemProfile profile;
    try {
      profile = profile(stem, tip);
    } catch (IllegalArgumentException refused) {
      return List.of(Piece.missing("profile", none, none, String.valueOf(refused.getMessage())));
    }
    double base = in(profile.base(), METRE);
    double top = in(profile.top(), METRE);
    double from = Math.min(top, Math.max(base, stumpHeight.orElse(base)));
    Quantity<Length> stump = metres(from);
    List<Piece> lines = new ArrayList<>();
    lines.add(
        Piece.of("profile", from, top)
            .volume(in(profile.volume(stump, profile.top()), CUBIC_METRE))
            .note("a smooth curve through the readings"));
    double length = in(profile.merchantableLength(stump, centimetres(topDiameter)), METRE);
    if (!(length > 0)) {
      lines.add(
          Piece.missing("to top", OptionalDouble.of(from), none, "thinner from the stump up"));
      return lines;
    }
    Quantity<Length> reached = metres(Math.min(top, from + length));
    double upper = in(profile.diameterAt(reached), CENTIMETRE);
    lines.add(
        Piece.of("to top", from, in(reached, METRE))
            .upper(upper)
            .volume(in(profile.volume(stump, reached), CUBIC_METRE))
            .note(
                Limits.keepsTo(upper, topDiameter)
                    ? "of that, up to the top diameter"
                    : end(stem)));
    return lines;
  }

  private static StemProfile profile(Stem stem, TipForm tip) {
    List<StemReading> readings = new ArrayList<>();
    for (Reading reading : stem.readings()) {
      readings.add(StemReading.of(metres(reading.height()), centimetres(reading.diameter())));
    }
    Butt butt =
        stem.start().isPresent()
            ? Butt.cylinder().from(metres(stem.start().getAsDouble()))
            : Butt.atLowestReading();
    BarkBasis bark = stem.bark().equals("under") ? BarkBasis.UNDER : BarkBasis.OVER;
    return Stems.profile(readings, bark, butt, tip(stem, tip));
  }

  private static String end(Stem stem) {
    return stem.end().equals("break")
        ? "not reached: the stem breaks off thicker than the top diameter"
        : "not reached: the highest reading is thicker than the top diameter";
  }

  /** A stem that broke, or whose tip was not measured, ends at its highest reading. */
  private static Tip tip(Stem stem, TipForm form) {
    if (!stem.end().equals("tip") || stem.top().isEmpty()) {
      return Tip.atHighestReading();
    }
    Quantity<Length> height = metres(stem.top().getAsDouble());
    return form == TipForm.CONE ? Tip.cone(height) : Tip.paraboloid(height);
  }
}
