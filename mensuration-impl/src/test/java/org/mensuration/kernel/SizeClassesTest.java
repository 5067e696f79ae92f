package org.mensuration.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SizeClassesTest {
  @Test
  void classesAreMultiplesOfTheirWidth() {
    assertThat(SizeClasses.down(15.9, 2)).isEqualTo(14);
    assertThat(SizeClasses.up(14.1, 2)).isEqualTo(16);
    assertThat(SizeClasses.up(14, 2)).isEqualTo(14);
    assertThat(SizeClasses.nearestHalfUp(15, 2)).isEqualTo(16);
    assertThat(SizeClasses.nearestHalfDown(15, 2)).isEqualTo(14);
    assertThat(SizeClasses.nearestHalfDown(15.1, 2)).isEqualTo(16);
    assertThat(SizeClasses.half(15, 2)).isTrue();
    assertThat(SizeClasses.half(14, 2)).isFalse();
    assertThat(SizeClasses.half(15.1, 2)).isFalse();
    assertThat(SizeClasses.down(Double.NaN, 2)).isNaN();
  }

  @Test
  void nextToNothingFromAClassIsOnIt() {
    // A relative 1e-9 counts as on it, twice that does not.
    assertThat(SizeClasses.widths(16 * (1 - 0.9e-9), 1)).isEqualTo(16);
    assertThat(SizeClasses.widths(16 * (1 + 0.9e-9), 1)).isEqualTo(16);
    assertThat(SizeClasses.widths(16 * (1 - 2e-9), 1)).isEqualTo(16 * (1 - 2e-9));
    assertThat(SizeClasses.widths(16.5 * (1 + 0.9e-9), 1)).isEqualTo(16.5);
    assertThat(SizeClasses.widths(16.5 * (1 + 2e-9), 1)).isEqualTo(16.5 * (1 + 2e-9));
    assertThat(SizeClasses.widths(16.25, 1)).isEqualTo(16.25);
    assertThat(SizeClasses.widths(0, 1)).isZero();
    assertThat(SizeClasses.down(16 * (1 - 0.9e-9), 2)).isEqualTo(16);
    assertThat(SizeClasses.down(16 * (1 - 2e-9), 2)).isEqualTo(14);
  }

  @Test
  void everyWholeFootInMetresIsAWholeFoot() {
    int missed = 0;
    for (int foot = 1; foot <= 200; foot++) {
      double feet = foot * 0.3048 / 0.3048;
      assertThat(SizeClasses.down(feet, 1)).isEqualTo(foot);
      missed += Math.floor(foot * 0.3048 * 100 / 2.54 / 12) == foot ? 0 : 1;
      assertThat(SizeClasses.down(foot * 0.3048 * 100 / 2.54 / 12, 1)).isEqualTo(foot);
    }
    // What a bare floor would do to the same readings.
    assertThat(missed).isPositive();
  }

  @Test
  void oneOfTwoHalvesGoesUpAndOneDown() {
    assertThat(SizeClasses.ofTwoReadings(20.5, 24.5, 1)).isEqualTo(22);
    assertThat(SizeClasses.ofTwoReadings(21, 24.5, 1)).isEqualTo(23);
    assertThat(SizeClasses.ofTwoReadings(24.5, 21, 1)).isEqualTo(23);
    assertThat(SizeClasses.ofTwoReadings(21, 24.4, 1)).isEqualTo(22);
    assertThat(SizeClasses.ofTwoReadings(41, 47, 2)).isEqualTo(44);
  }

  @Test
  void wholesAreSharedWithTheLargerPartsLast() {
    assertThat(SizeClasses.wholeShare(7, 3, 0)).isEqualTo(2);
    assertThat(SizeClasses.wholeShare(7, 3, 1)).isEqualTo(2);
    assertThat(SizeClasses.wholeShare(7, 3, 2)).isEqualTo(3);
    assertThat(SizeClasses.wholeShare(6, 3, 0)).isEqualTo(2);
    assertThat(SizeClasses.wholeShare(2, 3, 0)).isZero();
    assertThat(SizeClasses.parts(16, 16)).isEqualTo(1);
    assertThat(SizeClasses.parts(16.1, 16)).isEqualTo(2);
    assertThat(SizeClasses.parts(0, 16)).isEqualTo(1);
    assertThat(SizeClasses.alongTaper(12, 16, 6, 24)).isEqualTo(13);
  }
}
