package org.mensuration.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class CompensatedTest {
  private static final double BIG = 1e16;

  @Test
  void whatAnAdditionLoses() {
    assertThat(Compensated.lost(BIG, 1)).isEqualTo(1);
    assertThat(Compensated.lost(1, BIG)).isEqualTo(1);
    assertThat(Compensated.lost(-BIG, 3)).isEqualTo(-1); // -1e16 + 3 rounds to -1e16 + 4
    assertThat(Compensated.lost(1, 2)).isEqualTo(0);
  }

  @Test
  void sumsKeepWhatTheyLose() {
    assertThat(Compensated.sum(new double[] {1, BIG, 1, -BIG})).isEqualTo(2);
    assertThat(Compensated.sum(new double[] {BIG, 1, -BIG})).isEqualTo(1);
    assertThat(Compensated.products(new double[] {1, 1e8, -1e8}, new double[] {1, 1e8, 1e8}))
        .isEqualTo(1);
    assertThat(Compensated.products(new double[] {2, 3}, new double[] {5, 7})).isEqualTo(31);
  }

  @Property
  void differencesOfProductsAreRoundedOnce(
      @ForAll @IntRange(min = 1, max = 999) int first,
      @ForAll @IntRange(min = 1, max = 999) int second,
      @ForAll @IntRange(min = -1000, max = 1000) int shift) {
    double a = first / 700.0;
    double b = second / 300.0;
    double c = a * (1 + shift * 1e-12);
    BigDecimal exact =
        new BigDecimal(a)
            .multiply(new BigDecimal(b))
            .subtract(new BigDecimal(c).multiply(new BigDecimal(b)));
    // Both products lose up to an ulp of 4; the difference has none of that left.
    assertThat(Compensated.crossDifference(a, b, c, b))
        .isCloseTo(exact.doubleValue(), within(2 * Math.ulp(exact.doubleValue()) + 1e-31));
  }

  @Test
  void productsThatAgreeInTheirRoundingDiffer() {
    double e = 0x1p-30;
    // (1 + e)² - (1 + 2 e) 1 = e², which both rounded products lack.
    assertThat(Compensated.crossDifference(1 + e, 1 + e, 1 + 2 * e, 1)).isEqualTo(e * e);
    assertThat(Compensated.crossDifference(1 + 2 * e, 1, 1 + e, 1 + e)).isEqualTo(-e * e);
    assertThat(Compensated.crossDifference(1 + e, 1 - e, 1, 1)).isEqualTo(-e * e);
  }

  @Test
  void standFiguresKeepThemToo() {
    double[] diameters = {1, 1e8, 1};
    assertThat(StandFigures.loreyHeight(diameters, new double[] {0, 1, 0}))
        .isEqualTo(1e16 / (1e16 + 2));
    assertThat(StandFigures.loreyHeight(new double[] {10, 20}, new double[] {5, 10})).isEqualTo(9);
    assertThat(
            StandFigures.densityIndexBySummation(
                new double[] {1, BIG, 1}, new double[] {25.4, 25.4, 25.4}))
        .isEqualTo(BIG + 2);
  }
}
