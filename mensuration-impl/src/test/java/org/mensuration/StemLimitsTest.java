package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.CUBIC_METRE;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mensuration.diameter.GroundPoint;
import org.mensuration.diameter.StemLimits;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.stem.Butt;
import org.mensuration.stem.StemProfile;
import org.mensuration.stem.StemReading;
import org.mensuration.stem.Tip;

/** A cone of 40 cm at the ground and 20 m, so that every figure is known. */
class StemLimitsTest {
  private static final List<StemReading> READINGS =
      List.of(at(0, 40), at(1.3, 37.4), at(5, 30), at(10, 20), at(15, 10));
  private static final StemLimits LIMITS = StemLimits.of(BreastHeights.europe());

  private static StemReading at(double metres, double cm) {
    return StemReading.of(metres(metres), centimetres(cm));
  }

  private static StemProfile stem(BarkBasis bark, Tip tip) {
    return Stems.profile(READINGS, bark, Butt.cylinder(), tip);
  }

  @Test
  void aStemCountsFromItsStumpToItsTopDiameter() {
    StemProfile stem = stem(BarkBasis.OVER, Tip.cone(metres(20)));
    StemLimits limits = LIMITS.stump(metres(0.3)).top(centimetres(7), BarkBasis.OVER);
    assertThat(in(Stems.breastHeightDiameter(stem, limits), CENTIMETRE)).isEqualTo(37.4);
    // 7 cm at 16.5 m of the cone.
    assertThat(in(Stems.length(stem, limits), METRE)).isCloseTo(16.2, within(1e-9));
    assertThat(in(Stems.volume(stem, limits), CUBIC_METRE))
        .isEqualTo(in(stem.volume(metres(0.3), metres(16.5)), CUBIC_METRE), within(1e-12));
    assertThat(in(Stems.length(stem, LIMITS), METRE)).isEqualTo(20);
    assertThat(Stems.volume(stem, LIMITS)).isEqualTo(stem.volume());
    assertThat(in(Stems.length(stem, LIMITS.stump(metres(0.3))), METRE)).isEqualTo(19.7);
  }

  @Test
  void aBrokenStemEndsAtItsBreak() {
    StemProfile broken = stem(BarkBasis.OVER, Tip.cone(metres(20)).brokenAt(metres(16)));
    StemLimits limits = LIMITS.stump(metres(0.3)).top(centimetres(7), BarkBasis.OVER);
    assertThat(in(Stems.length(broken, limits), METRE)).isCloseTo(15.7, within(1e-12));
    assertThat(Stems.volume(broken, limits)).isEqualTo(broken.volume(metres(0.3), metres(16)));
    assertThat(in(Stems.length(broken, LIMITS), METRE)).isEqualTo(16);
  }

  @Test
  void barkMustBeOneBasisAndHeightsOfOneGroundPoint() {
    StemLimits under = LIMITS.top(centimetres(7), BarkBasis.UNDER);
    StemProfile over = stem(BarkBasis.OVER, Tip.cone(metres(20)));
    assertThatThrownBy(() -> Stems.volume(over, under))
        .hasMessageContaining("top diameter is UNDER bark, the profile OVER");
    assertThatThrownBy(() -> Stems.length(stem(BarkBasis.UNKNOWN, Tip.cone(metres(20))), under))
        .hasMessageContaining("the profile UNKNOWN");
    StemProfile inside =
        Stems.profile(
            Stems.underBark(READINGS, 0.9), BarkBasis.UNDER, Butt.cylinder(), Tip.cone(metres(20)));
    assertThat(in(Stems.breastHeightDiameter(inside, under), CENTIMETRE))
        .isCloseTo(33.66, within(1e-12));
    assertThat(in(inside.volume(), CUBIC_METRE))
        .isCloseTo(0.81 * in(over.volume(), CUBIC_METRE), within(1e-12));
    assertThatThrownBy(() -> Stems.underBark(READINGS, 1.1))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> LIMITS.height(metres(20), GroundPoint.DOWNHILL_SIDE))
        .hasMessageContaining("both need one ground point");
  }
}
