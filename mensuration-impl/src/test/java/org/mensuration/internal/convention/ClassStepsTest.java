package org.mensuration.internal.convention;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class ClassStepsTest {
  @Test
  void theStepChangesAtItsLimit() {
    ClassSteps steps = ClassSteps.down(1, 1).from(14, 2, 1).from(40, 5, 1);
    assertThat(steps.apply(13.9)).isEqualTo(13);
    assertThat(steps.apply(14)).isEqualTo(14);
    assertThat(steps.apply(15.9)).isEqualTo(14);
    assertThat(steps.apply(39.9)).isEqualTo(38);
    assertThat(steps.apply(40)).isEqualTo(40);
    assertThat(ClassSteps.down(1, 1).from(15, 2, 1).apply(15)).isEqualTo(14);
    assertThat(steps.apply(44.9)).isEqualTo(40);
    assertThat(steps.words("cm")).isEqualTo("down to 1 cm, from 14 cm to 2 cm, from 40 cm to 5 cm");
    assertThat(steps.isNone()).isFalse();
  }

  @Test
  void noneLeavesValuesAlone() {
    assertThat(ClassSteps.NONE.isNone()).isTrue();
    assertThat(ClassSteps.NONE.apply(13.97)).isEqualTo(13.97);
    assertThat(ClassSteps.NONE.words("cm")).isEmpty();
    assertThat(ClassSteps.down(1, 1).apply(Double.NaN)).isNaN();
  }

  @Test
  void nearestAndMiddle() {
    assertThat(ClassSteps.nearest(1, 2).apply(0.75)).isEqualTo(1);
    assertThat(ClassSteps.nearest(1, 2).words("m")).isEqualTo("to the nearest 0.5 m");
    assertThat(ClassSteps.middle(2, 1).apply(21.9)).isEqualTo(21);
  }

  @Test
  void duodecimalsCarry() {
    assertThat(Duodecimals.text(0)).isEqualTo("0 ft 0 in 0 pts 0''");
    assertThat(Duodecimals.text(1 / 1728.0)).isEqualTo("0 ft 0 in 0 pts 1''");
    assertThat(Duodecimals.text(11 / 12.0 + 11 / 144.0 + 11 / 1728.0))
        .isEqualTo("0 ft 11 in 11 pts 11''");
    assertThat(Duodecimals.text(2 - 0.4 / 1728)).isEqualTo("2 ft 0 in 0 pts 0''");
    assertThat(Duodecimals.text(2 - 0.6 / 1728)).isEqualTo("1 ft 11 in 11 pts 11''");
    assertThat(Duodecimals.text(5e4)).isEqualTo("50000 ft 0 in 0 pts 0''");
    for (double bad : new double[] {-1, Double.NaN, Math.nextUp(5e4)}) {
      assertThatThrownBy(() -> Duodecimals.text(bad))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageStartingWith("feet, inches and parts of " + bad);
    }
  }
}
