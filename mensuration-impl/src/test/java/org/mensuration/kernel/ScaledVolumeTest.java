package org.mensuration.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Where the branches of the conventions change, on the limit itself. */
class ScaledVolumeTest {
  @Test
  void theSquareOfTheSmallEndJumpsAtSixMetres() {
    double below = Math.nextDown(6.0);
    assertThat(ScaledVolume.jas(24, below)).isEqualTo(ScaledVolume.jasShort(24, below));
    assertThat(ScaledVolume.jas(24, 6)).isEqualTo(ScaledVolume.jasLong(24, 6)).isEqualTo(0.375);
  }

  @Test
  void theUnifiedRuleChangesItsShareAtThirtyAndSixty() {
    // Eight metres add 2 cm; six tenths, eight tenths and all of them.
    assertThat(ScaledVolume.unified1968(28, 8)).isEqualTo(29.2 * 29.2 * 8 / 10000);
    assertThat(ScaledVolume.unified1968(30, 8)).isEqualTo(31.6 * 31.6 * 8 / 10000);
    assertThat(ScaledVolume.unified1968(58, 8)).isEqualTo(59.6 * 59.6 * 8 / 10000);
    assertThat(ScaledVolume.unified1968(60, 8)).isEqualTo(62.0 * 62.0 * 8 / 10000);
  }

  @Test
  void theChineseFormulaChangesAtFourteen() {
    double below = Math.nextDown(14.0);
    assertThat(ScaledVolume.gb4814(below, 4)).isEqualTo(ScaledVolume.gb4814Small(below, 4));
    assertThat(ScaledVolume.gb4814(14, 4)).isEqualTo(ScaledVolume.gb4814Large(14, 4));
    assertThat(ScaledVolume.gb4814Small(14, 4)).isNotEqualTo(ScaledVolume.gb4814Large(14, 4));
  }

  @Test
  void anUnevenEndIsWidenedFromFourteenAndLessFromForty() {
    assertThat(ScaledVolume.crossedClass(13, 25)).isEqualTo(13);
    assertThat(ScaledVolume.crossedClass(14, 20)).isEqualTo(16);
    assertThat(ScaledVolume.crossedClass(38, 44)).isEqualTo(40);
    assertThat(ScaledVolume.crossedClass(40, 46)).isEqualTo(40);
    assertThat(ScaledVolume.crossedClass(40, 48)).isEqualTo(42);
  }

  @Test
  void anAllowanceIsAtLeastTenCentimetres() {
    assertThat(ScaledVolume.lengthAllowance(10)).isEqualTo(0.1);
    assertThat(ScaledVolume.lengthAllowance(9)).isEqualTo(0.1);
    assertThat(ScaledVolume.lengthAllowance(16)).isEqualTo(0.16);
    assertThat(ScaledVolume.lengthWithAllowance(4)).isEqualTo(4.1);
  }

  @Test
  void theContentOfOneFootRoundsAHalfDown() {
    // One foot of 112 in holds 6.932 by the table.
    assertThat(GirthVolume.cylinderByTable(112, 1)).isEqualTo(6.932);
    assertThat(GirthVolume.cylinderByTable(112, 15.25)).isEqualTo(6.932 * 15.25);
  }
}
