package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.apache.commons.statistics.distribution.TriangularDistribution;
import org.apache.commons.statistics.distribution.UniformContinuousDistribution;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.Formula;
import org.mensuration.formula.Gradient;
import org.mensuration.uncertainty.CoverageInterval;
import org.mensuration.uncertainty.DrawnResult;
import org.mensuration.uncertainty.InputDistribution;
import org.mensuration.uncertainty.InputDistribution.ArcSine;
import org.mensuration.uncertainty.InputDistribution.Exact;
import org.mensuration.uncertainty.InputDistribution.Normal;
import org.mensuration.uncertainty.InputDistribution.Rectangular;
import org.mensuration.uncertainty.InputDistribution.StudentT;
import org.mensuration.uncertainty.InputDistribution.Triangular;

/**
 * What is drawn, beside distributions that are known. A drawn figure may miss by four of its own
 * standard errors, which follow from the known distribution and the number of draws.
 */
class DrawnUncertaintyTest {
  private static final int DRAWS = 200_000;
  private static final long SEED = 20;
  private static final double ERRORS = 4;

  private static DrawnResult drawn(InputDistribution input) {
    return DrawnUncertainty.through(x -> x[0], List.of(input), DRAWS, SEED, 95);
  }

  /** Mean, deviation and both ends of the symmetric interval. */
  private static void agrees(
      DrawnResult result,
      ContinuousDistribution known,
      double location,
      double scale,
      double kurtosis) {
    double root = Math.sqrt(DRAWS);
    double deviation = Math.sqrt(known.getVariance());
    assertThat((result.mean() - location) / scale)
        .isCloseTo(known.getMean(), within(ERRORS * deviation / root));
    assertThat(result.standardUncertainty() / scale)
        .isCloseTo(deviation, within(ERRORS * deviation * Math.sqrt(kurtosis - 1) / 2 / root));
    quantile((result.symmetric().lower() - location) / scale, known, 0.025);
    quantile((result.symmetric().upper() - location) / scale, known, 0.975);
    assertThat(result.shortest().length()).isLessThanOrEqualTo(result.symmetric().length());
  }

  private static void quantile(double end, ContinuousDistribution known, double probability) {
    double wanted = known.inverseCumulativeProbability(probability);
    double error = Math.sqrt(probability * (1 - probability) / DRAWS) / known.density(wanted);
    assertThat(end).isCloseTo(wanted, within(ERRORS * error));
  }

  @Test
  void eachKindIsTheDistributionOfTheLibrary() {
    agrees(drawn(new Normal(40, 0.5)), NormalDistribution.of(0, 1), 40, 0.5, 3);
    agrees(drawn(new Rectangular(-3, 2)), UniformContinuousDistribution.of(-1, 1), -3, 2, 1.8);
    agrees(drawn(new Triangular(7, 0.25)), TriangularDistribution.of(-1, 0, 1), 7, 0.25, 2.4);
    // sin of an even turn is a beta variable of halves, stretched from −1 to 1
    agrees(drawn(new ArcSine(20, 0.5)), BetaDistribution.of(0.5, 0.5), 19.5, 1, 1.5);
    agrees(drawn(new StudentT(12, 0.1, 8)), TDistribution.of(8), 12, 0.1, 3 + 6.0 / 4);
  }

  @Test
  void theStandardUncertaintyIsThatOfTheHalfWidth() {
    double a = 0.35;
    double share = ERRORS / Math.sqrt(2.0 * DRAWS); // none of the three has heavy tails
    assertThat(drawn(new Rectangular(1, a)).standardUncertainty())
        .isCloseTo(MeasurementErrors.rectangular(a), within(a * share));
    assertThat(drawn(new Triangular(1, a)).standardUncertainty())
        .isCloseTo(MeasurementErrors.triangular(a), within(a * share));
    assertThat(drawn(new ArcSine(1, a)).standardUncertainty())
        .isCloseTo(MeasurementErrors.arcSine(a), within(a * share));
  }

  @Test
  void twoRectangularMakeATriangular() {
    DrawnResult sum =
        DrawnUncertainty.through(
            x -> x[0] + x[1],
            List.of(new Rectangular(1, 0.5), new Rectangular(2, 0.5)),
            DRAWS,
            SEED,
            95);
    agrees(sum, TriangularDistribution.of(-1, 0, 1), 3, 1, 2.4);
    // by hand: a tail of a fortieth is (1 − z)²/2, so z = 1 − √0.05
    double error = Math.sqrt(0.025 * 0.975 / DRAWS) / Math.sqrt(0.05);
    assertThat(sum.symmetric().upper()).isCloseTo(4 - Math.sqrt(0.05), within(ERRORS * error));
  }

  /** JCGM 101, clause 9.2.3, from memory: the ends are ±2√3 (2 − (3/5)^(1/4)), about ±3.88. */
  @Test
  void fourRectangular() {
    double root = Math.sqrt(3);
    Rectangular one = new Rectangular(0, root);
    DrawnResult sum =
        DrawnUncertainty.through(
            x -> x[0] + x[1] + x[2] + x[3], List.of(one, one, one, one), DRAWS, SEED, 95);
    double end = 2 * root * (2 - Math.sqrt(Math.sqrt(0.6)));
    assertThat(end).isCloseTo(3.88, within(0.005));
    // beyond twice the half-width of one, the density is (4√3 − z)³ / (6 · 144)
    double density = Math.pow(4 * root - end, 3) / 864;
    double error = Math.sqrt(0.025 * 0.975 / DRAWS) / density;
    assertThat(sum.symmetric().upper()).isCloseTo(end, within(ERRORS * error));
    assertThat(sum.symmetric().lower()).isCloseTo(-end, within(ERRORS * error));
    // a normal distribution would end at 3.92
    assertThat(ERRORS * error).isLessThan(0.05);
    assertThat(sum.standardUncertainty())
        .isCloseTo(2, within(ERRORS * Math.sqrt(1.7) / Math.sqrt(DRAWS)));
  }

  @Test
  void aSlopedPlaneOfNormalOnesIsNormal() {
    DrawnResult plane =
        DrawnUncertainty.through(
            x -> 3 * x[0] - 2 * x[1] + 5,
            List.of(new Normal(10, 0.4), new Normal(-1, 0.3)),
            DRAWS,
            SEED,
            95);
    double error = MeasurementErrors.combined(new double[] {3, -2}, new double[] {0.4, 0.3});
    agrees(plane, NormalDistribution.of(0, 1), 37, error, 3);
  }

  /** The square of an even number falls from its least: the shortest interval begins there. */
  @Test
  void theShortestIntervalOfALopsidedResult() {
    DrawnResult square =
        DrawnUncertainty.through(
            x -> x[0] * x[0], List.of(new Rectangular(0.5, 0.5)), DRAWS, SEED, 95);
    double error = Math.sqrt(0.95 * 0.05 / DRAWS);
    assertThat(square.shortest().lower()).isCloseTo(0, within(1e-6));
    assertThat(square.shortest().upper()).isCloseTo(0.95 * 0.95, within(ERRORS * error * 2 * 0.95));
    assertThat(square.symmetric().lower())
        .isCloseTo(0.025 * 0.025, within(ERRORS * 2 * 0.025 * error));
    assertThat(square.symmetric().upper()).isCloseTo(0.975 * 0.975, within(ERRORS * 2 * error));
    assertThat(square.shortest().length()).isLessThan(square.symmetric().length());
    assertThat(square.shortest().confidencePercent()).isEqualTo(95);
  }

  /** A volume bends with its diameter, so first order misses what drawing finds. */
  @Test
  void huberBesideFirstOrder() {
    Formula huber = Catalogues.standard().formula("log/huber");
    double diameter = 40;
    double error = 4;
    double length = 5;
    DrawnResult drawn =
        DrawnUncertainty.through(
            huber, List.of(new Normal(diameter, error), new Exact(length)), DRAWS, SEED, 95);
    double volume = huber.apply(diameter, length);
    double firstOrder =
        MeasurementErrors.combined(slopes(huber, diameter, length), new double[] {error, 0});
    // the square of a normal variable: mean μ² + σ², variance 4 μ²σ² + 2 σ⁴
    double share = error / diameter;
    double mean = volume * (1 + share * share);
    double deviation = firstOrder * Math.sqrt(1 + share * share / 2);
    double errorOfMean = deviation / Math.sqrt(DRAWS);
    assertThat(drawn.mean()).isCloseTo(mean, within(ERRORS * errorOfMean));
    assertThat(drawn.mean()).isGreaterThan(volume + ERRORS * errorOfMean);
    assertThat(drawn.standardUncertainty())
        .isCloseTo(deviation, within(ERRORS * deviation / Math.sqrt(2.0 * DRAWS) * 1.1));
    assertThat(firstOrder).isCloseTo(2 * volume * share, within(1e-15));
    // to the right the interval reaches further than to the left
    CoverageInterval interval = drawn.symmetric();
    assertThat(interval.upper() - volume).isGreaterThan(volume - interval.lower());
  }

  @Test
  void smalianWithSmallErrorsIsFirstOrder() {
    Formula smalian = Catalogues.standard().formula("log/smalian");
    double[] at = {46, 38, 4};
    double[] errors = {0.3, 0.2, 0.01};
    List<InputDistribution> inputs = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      inputs.add(new Normal(at[i], errors[i]));
    }
    DrawnResult drawn = DrawnUncertainty.through(smalian, inputs, DRAWS, SEED, 95);
    double firstOrder = MeasurementErrors.combined(slopes(smalian, at), errors);
    double share = ERRORS / Math.sqrt(2.0 * DRAWS);
    assertThat(drawn.standardUncertainty()).isCloseTo(firstOrder, within(firstOrder * share));
    assertThat(drawn.mean())
        .isCloseTo(smalian.apply(at), within(ERRORS * firstOrder / Math.sqrt(DRAWS) + 1e-5));
  }

  private static double[] slopes(Formula formula, double... at) {
    Gradient gradient = formula.gradient(at);
    double[] slopes = new double[at.length];
    Arrays.setAll(slopes, gradient::partial);
    return slopes;
  }

  @Test
  void oneSeedOneResult() {
    List<InputDistribution> inputs =
        List.of(
            new Normal(1, 2),
            new Triangular(0, 1),
            new ArcSine(3, 1),
            new StudentT(0, 1, 5),
            new Rectangular(2, 1));
    DrawnResult first =
        DrawnUncertainty.through(x -> x[0] * x[1] + x[2] - x[3] * x[4], inputs, 5000, 7, 90);
    DrawnResult again =
        DrawnUncertainty.through(x -> x[0] * x[1] + x[2] - x[3] * x[4], inputs, 5000, 7, 90);
    DrawnResult other =
        DrawnUncertainty.through(x -> x[0] * x[1] + x[2] - x[3] * x[4], inputs, 5000, -8, 90);
    assertThat(again).isEqualTo(first);
    assertThat(other.mean()).isNotEqualTo(first.mean());
    assertThat(first.draws()).isEqualTo(5000);
    assertThat(other.seed()).isEqualTo(-8);
  }

  /** The generator and the order that are promised, so that anybody can draw the same. */
  @Test
  void theBitsAreThoseOfTheNamedGenerator() {
    Well19937c generator = new Well19937c(11L); // an int would start elsewhere
    UniformRandomProvider source = generator::nextLong;
    double[] wanted = new double[2];
    for (int draw = 0; draw < 2; draw++) {
      double first = UniformContinuousDistribution.of(1, 3).createSampler(source).sample();
      double second = UniformContinuousDistribution.of(-5, 5).createSampler(source).sample();
      wanted[draw] = first - 10 * second;
    }
    List<Double> seen = new ArrayList<>();
    DrawnResult drawn =
        DrawnUncertainty.through(
            x -> {
              seen.add(x[0] - 10 * x[1]);
              return x[0] - 10 * x[1];
            },
            List.of(new Rectangular(2, 1), new Rectangular(0, 5)),
            2,
            11,
            50);
    assertThat(seen).containsExactly(wanted[0], wanted[1]);
    Arrays.sort(wanted);
    assertThat(drawn.symmetric()).isEqualTo(new CoverageInterval(wanted[0], wanted[1], 50));
    assertThat(drawn.shortest()).isEqualTo(drawn.symmetric());
    assertThat(drawn.mean()).isCloseTo((wanted[0] + wanted[1]) / 2, within(1e-13));
    assertThat(drawn.standardUncertainty())
        .isCloseTo((wanted[1] - wanted[0]) / Math.sqrt(2), within(1e-13));
  }

  @Test
  void exactInputsHaveNoUncertainty() {
    DrawnResult drawn =
        DrawnUncertainty.through(
            x -> x[0] / x[1], List.of(new Exact(1), new Exact(3)), 1000, SEED, 95);
    assertThat(drawn.mean()).isEqualTo(1.0 / 3);
    assertThat(drawn.standardUncertainty()).isZero();
    assertThat(drawn.shortest()).isEqualTo(new CoverageInterval(1.0 / 3, 1.0 / 3, 95));
  }
}
