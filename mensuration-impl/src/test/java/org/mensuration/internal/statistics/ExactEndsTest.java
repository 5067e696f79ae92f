package org.mensuration.internal.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;

/** Sums, deviations and sample sizes exactly at a half, at a limit or at the end of the numbers. */
class ExactEndsTest {
  @Test
  void aHalfGoesToTheEvenNumberWhereverTheLimbsBegin() {
    for (int exponent = -900; exponent <= 900; exponent++) {
      double power = Math.scalb(1.0, exponent);
      double half = Math.ulp(power) / 2;
      ExactSum sum = ExactSum.ofNumbers();
      sum.add(power);
      sum.add(half);
      assertThat(sum.value()).as("2^" + exponent).isEqualTo(power);
      sum.add(Double.MIN_VALUE);
      assertThat(sum.value()).isEqualTo(Math.nextUp(power));
      sum.add(half);
      assertThat(sum.value()).isEqualTo(Math.nextUp(power));
      sum.add(half);
      sum.add(-Double.MIN_VALUE);
      assertThat(sum.value()).as("odd and a half").isEqualTo(power + 4 * half);
    }
  }

  @Test
  void minuteSumsAreExact() {
    for (int exponent = -1074; exponent < -900; exponent++) {
      double power = Math.scalb(1.0, exponent);
      ExactSum sum = ExactSum.ofNumbers();
      sum.add(power);
      sum.add(power);
      assertThat(sum.value()).isEqualTo(2 * power);
    }
  }

  @Test
  void sumsOfSumsPassTheirCarriesOn() {
    // Fibonacci's numbers times 2³² - 1, all ones in a limb, soon need more than a word of 64 bits.
    BigInteger first = BigInteger.valueOf(0xffff_ffffL);
    BigInteger second = first;
    ExactSum one = ExactSum.ofNumbers();
    ExactSum other = ExactSum.ofNumbers();
    one.add(0xffff_ffffL);
    other.add(0xffff_ffffL);
    for (int i = 0; i < 60; i++) {
      one.add(other);
      first = first.add(second);
      other.add(one);
      second = second.add(first);
    }
    assertThat(one.exact().toBigIntegerExact()).isEqualTo(first);
    assertThat(other.value()).isEqualTo(second.doubleValue());
  }

  @Test
  void aPairThatWasNotEnoughIsForgottenToo() {
    PairSum sum = new PairSum();
    for (int i = 0; i < 3; i++) {
      sum.add(1e30);
      sum.add(1);
      sum.add(1e-30);
      sum.add(-1e30);
      assertThat(sum.value()).isEqualTo(1);
      sum.clear();
      assertThat(sum.value()).isZero();
    }
  }

  @Test
  void aDeviationBeyondTheNumbersIsRefused() {
    ExactMoments moments = new ExactMoments();
    moments.add(Double.MAX_VALUE);
    moments.add(-Double.MAX_VALUE);
    assertThat(moments.mean()).isZero();
    assertThatThrownBy(moments::standardDeviation)
        .isInstanceOf(ArithmeticException.class)
        .hasMessage("a mean or deviation is beyond the largest number");
  }

  @Test
  void aNumberOfPointsThatMeetsTheErrorExactlyIsEnough() {
    // Sixteen points have an error of a quarter of the variation, and t with 15 degrees of freedom.
    double t = StudentT.quantile(15, 95);
    assertThat(StudentT.pointsNeeded(20, 5 * t, 95)).isEqualTo(16);
    StrataPoints one = StrataPoints.neyman(new double[] {1}, new double[] {20});
    assertThat(one.needed(5 * t, 95).nominal()).isEqualTo(16);
    // 8 of 16 plots: the same error as 16 of endlessly many, since 1/8 = 1/16 + 1/16.
    assertThat(StudentT.plotsNeeded(20, 5 * StudentT.quantile(7, 95), 95, 16)).isEqualTo(8);
  }

  @Test
  void aPopulationWithoutEndNeedsWhatPointsNeed() {
    for (double error : new double[] {3, 7, 12, 20, 31, 45}) {
      assertThat(StudentT.plotsNeeded(30, error, 95, 1e15))
          .isEqualTo(StudentT.pointsNeeded(30, error, 95));
    }
  }

  @Test
  void noMorePlotsAreNeededThanThereAre() {
    for (int population = 2; population <= 200; population++) {
      assertThat(StudentT.plotsNeeded(1e12, 1, 95, population)).isEqualTo(population);
    }
  }
}
