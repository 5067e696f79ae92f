package org.mensuration.internal.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.mensuration.Catalogues;
import org.mensuration.formula.Formula;
import org.mensuration.formula.OutOfDomainException;

class StudentTTest {
  private static final Formula NEEDED = formula("sampling/points-needed");

  @Test
  void quantilesInClosedForm() {
    assertThat(StudentT.quantile(1, 50)).isCloseTo(1, within(1e-12));
    assertThat(StudentT.quantile(1, 95)).isCloseTo(Math.tan(0.95 * Math.PI / 2), within(1e-10));
    // Two degrees of freedom: t = C sqrt(2/(1 - C²)).
    assertThat(StudentT.quantile(2, 95))
        .isCloseTo(0.95 * Math.sqrt(2 / (1 - 0.95 * 0.95)), within(1e-10));
  }

  @Test
  void thirtyPerCentAndTenSettle() {
    // Substitution swings between 37 and 38 here.
    assertThat(NEEDED.apply(30, 10, 95)).isEqualTo(38);
    assertThat(NEEDED.apply(0, 10, 95)).isEqualTo(2);
  }

  @Property(tries = 200)
  void theNumberIsEnoughAndOneLessIsNot(
      @ForAll @DoubleRange(min = 1, max = 200) double variation,
      @ForAll @DoubleRange(min = 1, max = 50) double error,
      @ForAll @DoubleRange(min = 50, max = 99.9) double confidence) {
    double points = NEEDED.apply(variation, error, confidence);
    assertThat(points).isEqualTo(Math.rint(points)).isGreaterThanOrEqualTo(2);
    assertThat(points).isGreaterThanOrEqualTo(wanted(points, variation, error, confidence));
    if (points > 2) {
      assertThat(points - 1).isLessThan(wanted(points - 1, variation, error, confidence));
    }
  }

  @Property(tries = 200)
  void aFiniteNumberNeedsNoMore(
      @ForAll @DoubleRange(min = 0, max = 200) double variation,
      @ForAll @DoubleRange(min = 1, max = 50) double error,
      @ForAll @IntRange(min = 2, max = 5000) int population) {
    double finite =
        formula("sampling/points-needed-finite").apply(variation, error, 95, population);
    assertThat(finite)
        .isBetween(2.0, (double) population)
        .isLessThanOrEqualTo(NEEDED.apply(variation, error, 95));
  }

  @Test
  void endsAreRefused() {
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, -1}) {
      assertThatThrownBy(() -> NEEDED.apply(bad, 10, 95)).isInstanceOf(OutOfDomainException.class);
      assertThatThrownBy(() -> NEEDED.apply(30, bad, 95)).isInstanceOf(OutOfDomainException.class);
      assertThatThrownBy(() -> NEEDED.apply(30, 10, bad)).isInstanceOf(OutOfDomainException.class);
    }
    assertThatThrownBy(() -> NEEDED.apply(30, 0, 95))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("E = 0 %, allowed (0, ∞) %");
    assertThatThrownBy(() -> NEEDED.apply(30, 10, 100)).isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> NEEDED.apply(1e300, 1e-300, 95)).hasMessageContaining("finite");
  }

  @Test
  void publishedExamples() {
    // Sample size with t = 2 is not iterated in print; the weighted variance of two areas is.
    assertThat(formula("sampling/standard-error").apply(Math.sqrt(8281), 40))
        .isCloseTo(Math.sqrt(207.025), within(1e-12));
    assertThat(formula("sampling/combined-error").apply(3, 4)).isEqualTo(5);
    assertThat(
            formula("sampling/stratified-mean")
                .applyTo(new double[] {400, 100}, new double[] {100, 25}))
        .isEqualTo(42500.0 / 500);
    // Finite factors 1 - 50/400 and 1 - 50/100 taken into the errors of the strata.
    double first = Math.sqrt((1 - 50 / 400.0) * 100 / 50);
    double second = Math.sqrt((1 - 50 / 100.0) * 25 / 50);
    assertThat(
            formula("sampling/stratified-standard-error")
                .applyTo(new double[] {400, 100}, new double[] {first, second}))
        .isCloseTo(Math.sqrt(282500) / 500, within(1e-12));
    assertThat(
            formula("stand/lorey-height")
                .applyTo(
                    repeated(new double[] {10, 17, 24, 31, 38, 45}),
                    repeated(new double[] {9.0, 13.5, 17.0, 19.5, 21.5, 23.0})))
        .isCloseTo(18.49, within(0.005));
  }

  private static double[] repeated(double[] classes) {
    int[] counts = {62, 49, 28, 25, 13, 8};
    double[] trees = new double[185];
    int next = 0;
    for (int i = 0; i < counts.length; i++) {
      for (int j = 0; j < counts[i]; j++) {
        trees[next++] = classes[i];
      }
    }
    return trees;
  }

  private static double wanted(double n, double variation, double error, double confidence) {
    double root = StudentT.quantile(n - 1, confidence) * variation / error;
    return root * root;
  }

  private static Formula formula(String id) {
    return Catalogues.standard().formula(id);
  }
}
