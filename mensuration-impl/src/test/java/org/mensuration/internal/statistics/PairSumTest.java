package org.mensuration.internal.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class PairSumTest {
  /** Any finite numbers, numbers of the size of tree factors, and whole numbers. */
  @Provide
  Arbitrary<List<Double>> numbers() {
    Arbitrary<Double> anyBits =
        Arbitraries.longs().map(Double::longBitsToDouble).filter(x -> Math.abs(x) < 1e300);
    Arbitrary<Double> usual = Arbitraries.doubles().between(0.01, 2000);
    Arbitrary<Double> whole = Arbitraries.integers().between(-3, 3).map(x -> (double) x);
    return Arbitraries.oneOf(
        usual.list().ofMaxSize(40), Arbitraries.oneOf(anyBits, usual, whole).list().ofMaxSize(12));
  }

  @Property
  void sumIsTheRoundedExactOneInAnyOrder(@ForAll("numbers") List<Double> terms) {
    BigDecimal exact = BigDecimal.ZERO;
    for (double term : terms) {
      exact = exact.add(new BigDecimal(term));
    }
    List<Double> shuffled = new ArrayList<>(terms);
    Collections.shuffle(shuffled, new Random(7));
    PairSum sum = new PairSum();
    for (double term : shuffled) {
      sum.add(term);
    }
    assertThat(sum.value()).isEqualTo(exact.doubleValue() + 0.0);
    ExactSum total = ExactSum.ofNumbers();
    double further = 0.1;
    total.add(further);
    sum.addTo(total);
    assertThat(total.exact()).isEqualByComparingTo(exact.add(new BigDecimal(further)));
    sum.clear();
    assertThat(sum.value()).isZero();
    sum.add(0.25);
    assertThat(sum.value()).isEqualTo(0.25);
  }

  @Test
  void whatTheLargeTermHidesIsKept() {
    PairSum sum = of(1e300, 1, 0x1p-60, -1e300, -1);
    assertThat(sum.value()).isEqualTo(0x1p-60);
    sum.add(0x1p-1074);
    ExactSum total = ExactSum.ofNumbers();
    sum.addTo(total);
    total.add(-0x1p-60);
    assertThat(total.value()).isEqualTo(Double.MIN_VALUE);
  }

  @Test
  void anOverflowOnTheWayIsNone() {
    assertThat(of(Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE).value())
        .isEqualTo(Double.MAX_VALUE);
  }

  @Test
  void whatIsNoFiniteSumIsRefused() {
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, -1.0 / 0}) {
      PairSum sum = of(2);
      assertThatThrownBy(() -> sum.add(bad)).hasMessageContaining("cannot take");
      assertThat(sum.value()).isEqualTo(2);
    }
    assertThatThrownBy(of(Double.MAX_VALUE, Double.MAX_VALUE)::value)
        .hasMessageContaining("beyond the largest number");
    assertThatThrownBy(of(Double.MAX_VALUE, Math.ulp(Double.MAX_VALUE) / 2)::value)
        .hasMessageContaining("beyond the largest number");
  }

  private static PairSum of(double... terms) {
    PairSum sum = new PairSum();
    for (double term : terms) {
      sum.add(term);
    }
    return sum;
  }
}
