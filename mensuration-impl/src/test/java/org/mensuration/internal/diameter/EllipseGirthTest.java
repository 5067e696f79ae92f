package org.mensuration.internal.diameter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class EllipseGirthTest {
  @Test
  void aCircleHasNoExcess() {
    assertThat(EllipseGirth.girth(40, 40)).isCloseTo(40 * Math.PI, within(1e-13));
    assertThat(EllipseGirth.excess(1)).isZero();
  }

  @Test
  void flatEllipses() {
    // Twice the complete elliptic integral of the second kind, worked out with 30 digits.
    assertThat(EllipseGirth.girth(1, 0.5)).isCloseTo(2.422112055136919, within(1e-15));
    assertThat(EllipseGirth.girth(10, 9)).isCloseTo(10 * 2.986580216262414, within(1e-14));
    assertThat(EllipseGirth.girth(1, 0.1)).isCloseTo(2.031987090050448, within(1e-15));
    assertThat(EllipseGirth.girth(1, 1e-9)).isCloseTo(2, within(1e-12));
    assertThat(EllipseGirth.excess(0.5)).isCloseTo(0.18882714427582528, within(1e-16));
    assertThat(EllipseGirth.excess(0.9)).isCloseTo(0.004167388375830077, within(1e-17));
    assertThat(EllipseGirth.excess(0.1)).isCloseTo(3.183522830637418, within(4e-15));
  }
}
