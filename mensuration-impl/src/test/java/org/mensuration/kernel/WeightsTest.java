package org.mensuration.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The weights of the rules as they are said in words. */
class WeightsTest {
  private static final double CM = Math.PI / 40000;

  @Test
  void areasAreWeighedAsTheRulesSay() {
    assertThat(WeightedAreas.HUBER.volume(20, 0, 0, 0, 3)).isCloseTo(CM * 400 * 3, within(1e-16));
    assertThat(WeightedAreas.SMALIAN.volume(20, 10, 0, 0, 3))
        .isCloseTo(CM * (400 + 100) / 2 * 3, within(1e-16));
    assertThat(WeightedAreas.NEWTON.volume(20, 15, 10, 0, 3))
        .isCloseTo(CM * (400 + 4 * 225 + 100) / 6 * 3, within(1e-16));
    assertThat(WeightedAreas.BRUCE_BUTT.volume(20, 10, 0, 0, 3))
        .isCloseTo(CM * (0.25 * 400 + 0.75 * 100) * 3, within(1e-16));
    assertThat(WeightedAreas.HOSSFELD.volume(20, 10, 0, 0, 3))
        .isCloseTo(CM * (3 * 400 + 100) / 4 * 3, within(1e-16));
    assertThat(WeightedAreas.SIMONY.volume(20, 15, 10, 0, 3))
        .isCloseTo(CM * (2 * 400 - 225 + 2 * 100) / 3 * 3, within(1e-16));
    assertThat(WeightedAreas.THREE_EIGHTHS.volume(20, 18, 15, 10, 3))
        .isCloseTo(CM * (400 + 3 * 324 + 3 * 225 + 100) / 8 * 3, within(1e-16));
  }

  @Test
  void aCylinderIsTheSameByEveryRule() {
    double cylinder = CM * 900 * 4;
    for (WeightedAreas rule :
        new WeightedAreas[] {
          WeightedAreas.HUBER,
          WeightedAreas.SMALIAN,
          WeightedAreas.NEWTON,
          WeightedAreas.BRUCE_BUTT,
          WeightedAreas.HOSSFELD,
          WeightedAreas.SIMONY,
          WeightedAreas.THREE_EIGHTHS
        }) {
      assertThat(rule.volume(30, 30, 30, 30, 4)).isCloseTo(cylinder, within(1e-15));
    }
  }

  @Test
  void arraysGiveTheBitsOfSingleLogs() {
    double[] large = {46, 38.5, 61.25};
    double[] firstThird = {43, 38, 55};
    double[] secondThird = {40, 37.25, 52};
    double[] small = {31.5, 36, 50};
    double[] length = {5.2, 3, 4.75};
    double[] volume = new double[3];
    double[][] diameters = {large, firstThird, secondThird, small};
    WeightedAreas.THREE_EIGHTHS.volumes(diameters, length, volume);
    for (int i = 0; i < 3; i++) {
      assertThat(volume[i])
          .isEqualTo(
              LogVolume.threeEighths(large[i], firstThird[i], secondThird[i], small[i], length[i]));
    }
    WeightedAreas.SMALIAN.volumes(new double[][] {large, small}, length, volume);
    assertThat(volume[1]).isEqualTo(LogVolume.smalian(38.5, 36, 3));
    WeightedAreas.NEWTON.volumes(new double[][] {large, firstThird, small}, length, volume);
    assertThat(volume[2]).isEqualTo(LogVolume.newton(61.25, 55, 50, 4.75));
    WeightedAreas.HUBER.volumes(new double[][] {large}, length, volume);
    assertThat(volume[0]).isEqualTo(LogVolume.huber(46, 5.2));
    double[] scale = new double[3];
    BoardPolynomial.BRITISH_COLUMBIA.scales(large, length, scale);
    assertThat(scale[2]).isEqualTo(BoardFeet.britishColumbia(61.25, 4.75));
  }

  @Test
  void doyleIsTheSquareOfAQuarterOfTheRest() {
    for (double diameter = 4; diameter < 60; diameter += 0.37) {
      double quarter = (diameter - 4) / 4;
      assertThat(BoardPolynomial.DOYLE.scale(diameter, 14.3)).isEqualTo(quarter * quarter * 14.3);
    }
  }
}
