package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.degrees;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.optics.OpticalScale;
import org.mensuration.optics.RatioScale;
import org.mensuration.units.ForestUnits;

class OpticalScalesTest {
  @Test
  void theTradesCommonExampleOfAScale() {
    // Common practice, no source: 58 cm fill 8 divisions, so 7 divisions read 50.75 cm.
    OpticalScale scale = OpticalScales.calibratedOnStem(centimetres(58), 8);
    assertThat(in(scale.divisionWidth(), ForestUnits.CENTIMETRE)).isEqualTo(7.25);
    assertThat(in(scale.diameter(7), ForestUnits.CENTIMETRE)).isEqualTo(50.75);
    assertThat(in(scale.diameter(7, degrees(35)), ForestUnits.CENTIMETRE)).isEqualTo(50.75);
  }

  @Test
  void anUncompensatedScaleWantsTheElevation() {
    OpticalScale scale = OpticalScales.uncompensatedOnStem(centimetres(42), 6, degrees(0));
    assertThatThrownBy(() -> scale.diameter(4.5))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage(
            "this optical scale does not compensate for slope: give the elevation of the reading"
                + " of 4.5 divisions");
    // At 60 degrees the sight is twice as long as the horizontal distance.
    assertThat(in(scale.diameter(4.5, degrees(60)), ForestUnits.CENTIMETRE))
        .isCloseTo(63, within(1e-12));
    assertThat(in(scale.divisionWidth(), ForestUnits.CENTIMETRE)).isEqualTo(7);
    assertThatThrownBy(() -> OpticalScales.uncompensatedOnStem(centimetres(42), 6, degrees(90)))
        .isInstanceOf(OutOfDomainException.class);
  }

  @Property
  void aReadingAtTheElevationOfTheCalibrationIsProportional(
      @ForAll @DoubleRange(min = -80, max = 80) double elevation,
      @ForAll @DoubleRange(min = 0, max = 20) double divisions) {
    OpticalScale scale = OpticalScales.uncompensatedOnStem(centimetres(42), 6, degrees(elevation));
    assertThat(in(scale.diameter(divisions, degrees(elevation)), ForestUnits.CENTIMETRE))
        .isCloseTo(7 * divisions, within(1e-13 * (1 + divisions)));
  }

  @Property
  void theTangentsSeenGiveTheDiameterBack(
      @ForAll @DoubleRange(min = 0.05, max = 3) double diameter,
      @ForAll @DoubleRange(min = 2, max = 40) double distance,
      @ForAll @DoubleRange(min = -60, max = 60) double elevation) {
    // The forward model of the silhouette, independent of the kernel's rearrangement.
    double half = StrictMath.tan(StrictMath.asin(diameter / (2 * distance)));
    double seen = 2 * half * StrictMath.cos(StrictMath.toRadians(elevation));
    assertThat(
            in(
                OpticalScales.ofRatio(seen).diameter(1, metres(distance), degrees(elevation)),
                ForestUnits.METRE))
        .isCloseTo(diameter, within(1e-13));
    assertThat(in(OpticalScales.ofRatio(half).diameter(2, metres(distance)), ForestUnits.METRE))
        .isCloseTo(diameter, within(1e-13));
  }

  @Test
  void badInputsAreRefused() {
    assertThatThrownBy(() -> OpticalScales.ofRatio(0)).hasMessageContaining("allowed (0, ∞)");
    assertThatThrownBy(() -> OpticalScales.ofRatio(Double.NaN)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> OpticalScales.calibratedOnStem(centimetres(42), 0))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("optics/division-width: n = 0, allowed (0, ∞)");
    RatioScale scale = OpticalScales.ofRatio(0.02);
    assertThat(scale.ratio()).isEqualTo(0.02);
    assertThatThrownBy(() -> scale.diameter(-1, metres(10)))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("optics/ratio-from-divisions: n = -1, allowed [0, ∞)");
    OpticalScale onStem = OpticalScales.calibratedOnStem(inches(20), 8);
    assertThatThrownBy(() -> onStem.diameter(Double.NaN)).isInstanceOf(OutOfDomainException.class);
  }
}
