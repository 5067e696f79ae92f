package org.mensuration.internal.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

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

class ExactSumTest {
  /** Every finite double by its bits: subnormal, huge, of either sign, and whole numbers. */
  @Provide
  Arbitrary<List<Double>> numbers() {
    Arbitrary<Double> anyBits =
        Arbitraries.longs().map(Double::longBitsToDouble).filter(x -> Math.abs(x) < 1e300);
    Arbitrary<Double> subnormal =
        Arbitraries.longs().between(-99, 99).map(x -> x * Double.MIN_VALUE);
    Arbitrary<Double> usual = Arbitraries.doubles().between(-1000, 1000);
    return Arbitraries.oneOf(anyBits, subnormal, usual).list().ofMaxSize(40);
  }

  @Property
  void sumIsTheRoundedExactOneInAnyOrder(@ForAll("numbers") List<Double> terms) {
    BigDecimal exact = BigDecimal.ZERO;
    ExactSum sum = ExactSum.ofNumbers();
    for (double term : terms) {
      exact = exact.add(new BigDecimal(term));
      sum.add(term);
    }
    assertThat(sum.exact()).isEqualByComparingTo(exact);
    assertThat(sum.value()).isEqualTo(exact.doubleValue() + 0.0);
    List<Double> shuffled = new ArrayList<>(terms);
    Collections.shuffle(shuffled, new Random(7));
    ExactSum left = ExactSum.ofNumbers();
    ExactSum right = ExactSum.ofNumbers();
    for (int i = 0; i < shuffled.size(); i++) {
      (i % 3 == 0 ? left : right).add(shuffled.get(i));
    }
    right.add(left);
    assertThat(right.value()).isEqualTo(sum.value());
    assertThat(left.value() + 0.0).isEqualTo(left.exact().doubleValue() + 0.0);
    sum.clear();
    assertThat(sum.value()).isZero();
    sum.add(3);
    assertThat(sum.value()).isEqualTo(3);
  }

  @Property
  void productsAreExact(@ForAll("numbers") List<Double> terms) {
    BigDecimal exact = BigDecimal.ZERO;
    ExactSum sum = ExactSum.ofProducts();
    for (int i = 0; i + 1 < terms.size(); i += 2) {
      exact = exact.add(new BigDecimal(terms.get(i)).multiply(new BigDecimal(terms.get(i + 1))));
      sum.addProduct(terms.get(i), terms.get(i + 1));
    }
    assertThat(sum.exact()).isEqualByComparingTo(exact);
    if (Double.isInfinite(exact.doubleValue())) {
      assertThatThrownBy(sum::value).hasMessageContaining("beyond the largest number");
    } else {
      assertThat(sum.value() + 0.0).isEqualTo(exact.doubleValue() + 0.0);
    }
    sum.add(0.75);
    assertThat(sum.exact()).isEqualByComparingTo(exact.add(new BigDecimal("0.75")));
  }

  @Test
  void halvesGoToTheEvenDigit() {
    double even = 0x1p53;
    assertThat(sum(even, 1)).isEqualTo(even);
    assertThat(sum(even + 2, 1)).isEqualTo(even + 4);
    assertThat(sum(even, 1, Double.MIN_VALUE)).isEqualTo(even + 2);
    assertThat(sum(even + 2, 1, -Double.MIN_VALUE)).isEqualTo(even + 2);
    assertThat(sum(even * 2 - 1, 1)).isEqualTo(even * 2);
    assertThat(sum(1e308, 1, -1e308)).isEqualTo(1);
    assertThat(sum(-5, 2)).isEqualTo(-3);
    assertThat(sum(-1, 1)).isZero();
  }

  @Test
  void extremesAreKeptOrRefused() {
    assertThat(sum(Double.MIN_VALUE, Double.MIN_VALUE)).isEqualTo(2 * Double.MIN_VALUE);
    assertThat(sum(Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE))
        .isEqualTo(Double.MAX_VALUE);
    assertThat(sum(-0.0, 0.0)).isZero();
    ExactSum large = ExactSum.ofNumbers();
    large.add(Double.MAX_VALUE);
    large.add(Double.MAX_VALUE);
    assertThatThrownBy(large::value).isInstanceOf(ArithmeticException.class);
    // Half of the last digit of the largest number rounds up, beyond it.
    ExactSum halfUp = ExactSum.ofNumbers();
    halfUp.add(Double.MAX_VALUE);
    halfUp.add(Math.ulp(Double.MAX_VALUE) / 2);
    assertThatThrownBy(halfUp::value).isInstanceOf(ArithmeticException.class);
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, -1.0 / 0}) {
      assertThatThrownBy(() -> sum(bad)).hasMessageContaining("cannot take");
      assertThatThrownBy(() -> ExactSum.ofProducts().addProduct(1, bad))
          .hasMessageContaining("cannot take");
      assertThatThrownBy(() -> ExactSum.ofProducts().addProduct(bad, 0))
          .hasMessageContaining("cannot take");
    }
    assertThatThrownBy(() -> ExactSum.ofNumbers().addProduct(1, 2))
        .hasMessageContaining("takes no products");
    assertThatThrownBy(() -> ExactSum.ofNumbers().add(ExactSum.ofProducts()))
        .hasMessageContaining("do not mix");
  }

  @Test
  void productsBelowTheSmallestNumberAreKept() {
    ExactSum sum = ExactSum.ofProducts();
    sum.addProduct(Double.MIN_VALUE, Double.MIN_VALUE);
    assertThat(sum.value()).isZero();
    assertThat(sum.exact()).isEqualByComparingTo(new BigDecimal(Double.MIN_VALUE).pow(2));
    sum.addProduct(Double.MIN_VALUE, 0.5);
    assertThat(sum.value()).isEqualTo(Double.MIN_VALUE); // just above half of it
    sum.addProduct(Double.MIN_VALUE, -Double.MIN_VALUE);
    assertThat(sum.value()).isZero(); // half of it, to the even zero
    sum.addProduct(0x1p-537, 0x1p-537);
    assertThat(sum.value()).isEqualTo(2 * Double.MIN_VALUE); // one and a half, to the even two
  }

  @Test
  void equalPointsHaveNoDeviation() {
    ExactMoments moments = new ExactMoments();
    for (int i = 0; i < 1000; i++) {
      moments.add(0.1);
    }
    assertThat(moments.standardDeviation()).isZero();
    assertThat(moments.mean()).isEqualTo(0.1);
    ExactMoments more = new ExactMoments();
    more.add(0.3);
    moments.add(more);
    assertThat(moments.count()).isEqualTo(1001);
    assertThat(moments.standardDeviation()).isGreaterThan(0);
  }

  @Test
  void deviationsOfExtremeNumbersNeitherOverflowNorVanish() {
    assertThat(deviation(1e300, 3e300)).isEqualTo(Math.sqrt(2) * 1e300);
    assertThat(deviation(1e-300, 3e-300) * 1e300).isCloseTo(Math.sqrt(2), within(1e-15));
    assertThat(deviation(1, 3)).isEqualTo(Math.sqrt(2));
  }

  private static double deviation(double... values) {
    ExactMoments moments = new ExactMoments();
    for (double value : values) {
      moments.add(value);
    }
    return moments.standardDeviation();
  }

  private static double sum(double... terms) {
    ExactSum sum = ExactSum.ofNumbers();
    for (double term : terms) {
      sum.add(term);
    }
    return sum.value();
  }
}
