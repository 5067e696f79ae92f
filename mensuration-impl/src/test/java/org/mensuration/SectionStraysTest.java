package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.Measures.in;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.mensuration.diameter.SectionFit;
import org.mensuration.diameter.SectionPoints;

/** Invented sections with strays, in many sizes and places. */
class SectionStraysTest {
  private static final double NOISE = 0.01;

  /** A round arc of radius 1 m with a clump of strays at the end of the list. */
  private static double[][] clump(long seed, int count, int strays, double arc, double away) {
    Random random = new Random(seed);
    double direction = Math.toRadians(arc * random.nextDouble());
    double[][] points = new double[2][count];
    for (int i = 0; i < count - strays; i++) {
      double t = Math.toRadians(arc * random.nextDouble());
      points[0][i] = Math.cos(t) + NOISE * random.nextGaussian();
      points[1][i] = Math.sin(t) + NOISE * random.nextGaussian();
    }
    for (int i = count - strays; i < count; i++) {
      points[0][i] = away * Math.cos(direction) + 0.1 * random.nextGaussian();
      points[1][i] = away * Math.sin(direction) + 0.1 * random.nextGaussian();
    }
    return points;
  }

  private static SectionPoints metres(double[][] points) {
    return SectionPoints.of(points[0], points[1], METRE);
  }

  @Test
  void aFarClumpOfStraysDoesNotDrawTheCircle() {
    for (int seed = 0; seed < 20; seed++) {
      double away = 2 + 0.1 * seed;
      double[][] points = clump(seed, 60, 14, 285, away);
      SectionFit fit = CrossSections.circle(metres(points));
      // Forty and more points of 0.01 m noise tell the diameter to a few times 0.003 m.
      assertThat(in(fit.diameter(), METRE)).as("seed " + seed).isCloseTo(2, within(0.02));
      assertThat(fit.strays()).contains(46, 47, 48, 49, 50, 51, 52, 53, 54, 55, 56, 57, 58, 59);
      assertThat(fit.strays()).hasSizeLessThan(18);
    }
  }

  @Test
  void theOrderOfThePointsDoesNotMatterHoweverManyAreStrays() {
    // Beyond a quarter the strays win, but they win in any order.
    for (int seed = 0; seed < 60; seed++) {
      double[][] points = clump(seed, 60, 17, 285, 3);
      assertThat(reported(points)).as("seed " + seed).isEqualTo(reported(turnedRound(points)));
    }
  }

  private static double[][] turnedRound(double[][] points) {
    int count = points[0].length;
    double[][] turned = new double[2][count];
    for (int i = 0; i < count; i++) {
      turned[0][i] = points[0][count - 1 - i];
      turned[1][i] = points[1][count - 1 - i];
    }
    return turned;
  }

  /** Points kept and the diameter to a tenth of a millimetre, or the refusal. */
  private static String reported(double[][] points) {
    try {
      SectionFit fit = CrossSections.circle(metres(points));
      return fit.points() + " points, " + Math.round(1e4 * in(fit.diameter(), METRE));
    } catch (ArithmeticException refused) {
      return "refused";
    }
  }

  @Test
  void theDeviationIsThatOfErrorsWithinThreeOfIt() {
    double[][] points = clump(5, 80, 12, 285, 2);
    SectionFit fit = CrossSections.circle(metres(points));
    List<Integer> kept = new ArrayList<>();
    for (int i = 0; i < 80; i++) {
      if (!fit.strays().contains(i)) {
        kept.add(i);
      }
    }
    double[] x = kept.stream().mapToDouble(i -> points[0][i]).toArray();
    double[] y = kept.stream().mapToDouble(i -> points[1][i]).toArray();
    SectionFit plain = CrossSections.circleThroughAll(SectionPoints.of(x, y, METRE));
    // Normal errors within three deviations have the variance 1 - 6 φ(3)/(2 Φ(3) - 1) = 0.97334.
    double ratio = in(plain.deviation(), METRE) / in(fit.deviation(), METRE);
    assertThat(ratio * ratio).isCloseTo(0.97334, within(5e-5));
    assertThat(fit.points()).isEqualTo(kept.size());
  }

  @Test
  void straysAreLookedForAmongTwentyPointsAndNotAmongFewer() {
    double[][] points = clump(3, 20, 1, 285, 1.2);
    assertThat(CrossSections.circle(metres(points)).strays()).contains(19);
    double[] x = Arrays.copyOfRange(points[0], 1, 20);
    double[] y = Arrays.copyOfRange(points[1], 1, 20);
    assertThat(CrossSections.circle(SectionPoints.of(x, y, METRE)).strays()).isEmpty();
  }

  @Test
  void anySizeGivesTheSameFigures() {
    double[][] points = clump(7, 60, 9, 285, 1.5);
    // A power of two changes no digit, however small it is.
    double size = 0x1p-40;
    double[] x = Arrays.stream(points[0]).map(value -> size * value).toArray();
    double[] y = Arrays.stream(points[1]).map(value -> size * value).toArray();
    SectionPoints small = SectionPoints.of(x, y, METRE);
    same(CrossSections.circle(small), CrossSections.circle(metres(points)), size);
    same(CrossSections.ellipse(small), CrossSections.ellipse(metres(points)), size);
  }

  private static void same(SectionFit small, SectionFit fit, double size) {
    assertThat(in(small.diameter(), METRE)).isEqualTo(size * in(fit.diameter(), METRE));
    assertThat(in(small.standardError(), METRE)).isEqualTo(size * in(fit.standardError(), METRE));
    assertThat(in(small.centreX(), METRE)).isEqualTo(size * in(fit.centreX(), METRE));
    assertThat(small.strays()).isEqualTo(fit.strays());
  }

  @Test
  void anyPlaceGivesTheSameFigures() {
    double[][] points = clump(7, 60, 9, 285, 1.5);
    SectionFit fit = CrossSections.ellipse(metres(points));
    for (double[] origin : new double[][] {{1 << 20, 0}, {0, 1 << 22}}) {
      double[] x = Arrays.stream(points[0]).map(value -> origin[0] + value).toArray();
      double[] y = Arrays.stream(points[1]).map(value -> origin[1] + value).toArray();
      SectionFit far = CrossSections.ellipse(SectionPoints.of(x, y, METRE));
      // Coordinates of millions of metres are rounded to a nanometre or so.
      assertThat(in(far.diameter(), METRE)).isCloseTo(in(fit.diameter(), METRE), within(1e-7));
      assertThat(in(far.centreX(), METRE) - origin[0])
          .isCloseTo(in(fit.centreX(), METRE), within(1e-7));
      assertThat(in(far.centreY(), METRE) - origin[1])
          .isCloseTo(in(fit.centreY(), METRE), within(1e-7));
    }
  }

  @Test
  void aPoorFitIsAnsweredWithItsErrorUpToHalfOfTheRadius() {
    // A short arc: the same relative noise, less and less to hold the circle.
    SectionFit poor = CrossSections.circleThroughAll(metres(clump(1, 60, 0, 40, 0)));
    double share = in(poor.standardError(), METRE) / in(poor.diameter(), METRE);
    assertThat(share).isBetween(0.05, 0.25);
    assertThat(poor.warnings()).hasSize(1);
    double[][] worse = clump(1, 60, 0, 15, 0);
    assertThatThrownBy(() -> CrossSections.circleThroughAll(metres(worse)))
        .isInstanceOf(ArithmeticException.class)
        .hasMessageContaining("the standard error of the diameter would be");
  }
}
