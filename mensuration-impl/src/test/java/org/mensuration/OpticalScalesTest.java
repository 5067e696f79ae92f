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
import org.mensuration.optics.Graduation;
import org.mensuration.optics.ImageReading;
import org.mensuration.optics.OpticalScale;
import org.mensuration.optics.RatioScale;
import org.mensuration.optics.Sighting;
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
    assertThatThrownBy(() -> OpticalScales.ofRatio(Double.POSITIVE_INFINITY))
        .hasMessageContaining("division ratio: Infinity, allowed (0, ∞)");
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

  @Test
  void aGraduatedScaleTellsWhatItReadsAtTheStation() {
    OpticalScale scale =
        OpticalScales.calibratedOnStem(centimetres(58), 8, Graduation.of(10).readToHalves());
    assertThat(in(scale.largestDiameter(), ForestUnits.CENTIMETRE)).isEqualTo(72.5);
    assertThat(in(scale.resolution(), ForestUnits.CENTIMETRE)).isEqualTo(3.625);
    assertThat(in(scale.diameter(10), ForestUnits.CENTIMETRE)).isEqualTo(72.5);
    assertThat(scale.graduation()).contains(new Graduation(10, 0.5));
    assertThatThrownBy(() -> scale.diameter(10.5))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("optical scale: a reading of 10.5 divisions, the scale has 10.0");
    assertThatThrownBy(() -> OpticalScales.calibratedOnStem(centimetres(58), 12, Graduation.of(10)))
        .isInstanceOf(IllegalArgumentException.class);
    OpticalScale plain = OpticalScales.uncompensatedOnStem(centimetres(58), 8, degrees(10));
    assertThatThrownBy(plain::largestDiameter).isInstanceOf(IllegalStateException.class);
    assertThatThrownBy(plain::resolution).hasMessageContaining("state its graduation");
    assertThat(plain.graduation()).isEmpty();
    OpticalScale elevated =
        OpticalScales.uncompensatedOnStem(
            centimetres(58), 8, degrees(10), Graduation.of(10).readToHalves());
    assertThat(in(elevated.largestDiameter(), ForestUnits.CENTIMETRE)).isEqualTo(72.5);
    assertThat(in(elevated.diameter(8, degrees(10)), ForestUnits.CENTIMETRE))
        .isCloseTo(58, within(1e-13));
    assertThatThrownBy(() -> elevated.diameter(10.5, degrees(10)))
        .hasMessageContaining("the scale has 10.0");
  }

  @Test
  void sightingsAndImagesCompareByWhatWasMeasured() {
    Sighting sighting =
        Sighting.toAxis(metres(10)).at(degrees(20)).leaningAcross(degrees(3)).tapering(metres(20));
    assertThat(sighting)
        .isEqualTo(
            Sighting.toAxis(centimetres(1000))
                .at(degrees(20))
                .leaningAcross(degrees(3))
                .tapering(centimetres(2000)))
        .hasSameHashCodeAs(
            Sighting.toAxis(centimetres(1000))
                .at(degrees(20))
                .leaningAcross(degrees(3))
                .tapering(centimetres(2000)))
        .isNotEqualTo(Sighting.toAxis(metres(10)).at(degrees(20)).leaningAcross(degrees(3)))
        .isNotEqualTo(Sighting.toAxis(metres(10)).at(degrees(20)).tapering(metres(20)))
        .isNotEqualTo(Sighting.toAxis(metres(10)))
        .isNotEqualTo(Sighting.toFace(metres(10)));
    assertThat(Sighting.toAxis(metres(10)).leaningAway(degrees(3)))
        .isNotEqualTo(Sighting.toAxis(metres(10)).leaningAway(degrees(4)));
    ImageReading reading = ImageReading.edges(-5, 7).pitched(100, degrees(10));
    assertThat(reading)
        .isEqualTo(ImageReading.edges(-5, 7).pitched(100, degrees(10)))
        .hasSameHashCodeAs(ImageReading.edges(-5, 7).pitched(100, degrees(10)))
        .isNotEqualTo(ImageReading.edges(-5, 7).pitched(101, degrees(10)))
        .isNotEqualTo(ImageReading.edges(-5, 8).pitched(100, degrees(10)))
        .isNotEqualTo(ImageReading.edges(-4, 7).pitched(100, degrees(10)))
        .isNotEqualTo(ImageReading.edges(-5, 7));
  }
}
