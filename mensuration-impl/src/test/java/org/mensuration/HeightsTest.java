package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.Measures.degrees;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.height.SlopeReading;
import org.mensuration.units.ForestUnits;

class HeightsTest {
  @Property
  void aTreeOfKnownHeightIsFoundByEveryMethod(
      @ForAll @DoubleRange(min = 1, max = 80) double height,
      @ForAll @DoubleRange(min = 5, max = 60) double distance,
      @ForAll @DoubleRange(min = -20, max = 20) double baseBelowEye) {
    double top = StrictMath.toDegrees(StrictMath.atan((height - baseBelowEye) / distance));
    double base = StrictMath.toDegrees(StrictMath.atan(-baseBelowEye / distance));
    double straight = Math.sqrt(distance * distance + baseBelowEye * baseBelowEye);
    assertThat(
            in(Heights.tangent(metres(distance), degrees(top), degrees(base)), ForestUnits.METRE))
        .isCloseTo(height, within(1e-11));
    assertThat(
            in(
                Heights.tangentFromSlopeDistance(metres(straight), degrees(top), degrees(base)),
                ForestUnits.METRE))
        .isCloseTo(height, within(1e-11));
    assertThat(
            in(
                Heights.tangentFromGroundDistance(
                    metres(straight), degrees(base), degrees(top), degrees(base)),
                ForestUnits.METRE))
        .isCloseTo(height, within(1e-11));
    assertThat(
            in(
                Heights.percent(
                    metres(distance),
                    SlopeReading.ofPercent(100 * (height - baseBelowEye) / distance),
                    SlopeReading.ofPercent(-100 * baseBelowEye / distance)),
                ForestUnits.METRE))
        .isCloseTo(height, within(1e-11));
  }

  @Test
  void feetInFeetOut() {
    assertThat(
            in(
                Heights.percent(feet(100), SlopeReading.ofPercent(62), SlopeReading.ofPercent(-5)),
                ForestUnits.FOOT))
        .isCloseTo(67, within(1e-12));
  }

  @Test
  void levelAndDownwardSightsAreLegal() {
    assertThat(in(Heights.tangent(metres(20), degrees(0), degrees(0)), ForestUnits.METRE)).isZero();
    assertThat(in(Heights.tangent(metres(10), degrees(-10), degrees(-45)), ForestUnits.METRE))
        .isCloseTo(10 * (1 - StrictMath.tan(StrictMath.toRadians(10))), within(1e-12));
  }

  @Test
  void anglesWithoutMeaningAreRefused() {
    assertThatThrownBy(() -> Heights.tangent(metres(20), degrees(90), degrees(0)))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("height/tangent: t = 90 deg, allowed (-90, 90) deg");
    assertThatThrownBy(() -> Heights.tangent(metres(20), degrees(5), degrees(10)))
        .hasMessageContaining("b = 10 deg, allowed b ≤ t; given t = 5 deg, b = 10 deg");
    assertThatThrownBy(() -> SlopeReading.ofPercent(Double.NaN)).hasMessageContaining("NaN");
  }

  @Property
  void twoStationsFindAKnownHeight(
      @ForAll @DoubleRange(min = 2, max = 80) double height,
      @ForAll @DoubleRange(min = 5, max = 60) double nearDistance,
      @ForAll @DoubleRange(min = 5, max = 60) double baseline) {
    double near = StrictMath.toDegrees(StrictMath.atan(height / nearDistance));
    double far = StrictMath.toDegrees(StrictMath.atan(height / (nearDistance + baseline)));
    assertThat(
            in(
                Heights.twoStations(metres(baseline), degrees(far), degrees(near)),
                ForestUnits.METRE))
        .isCloseTo(height, within(1e-9));
  }

  @Test
  void equalAnglesAtTwoStationsAreRefused() {
    assertThatThrownBy(() -> Heights.twoStations(metres(20), degrees(30), degrees(30)))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("allowed f < n; given f = 30 deg, n = 30 deg");
  }
}
