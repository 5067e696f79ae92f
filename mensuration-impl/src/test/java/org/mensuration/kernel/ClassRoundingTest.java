package org.mensuration.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class ClassRoundingTest {
  @Test
  void downAndUpStayOnALimitThatIsMissedByAnUlp() {
    for (int centimetres = 1; centimetres <= 300; centimetres++) {
      for (double value :
          new double[] {
            centimetres, Math.nextDown((double) centimetres), Math.nextUp((double) centimetres)
          }) {
        assertThat(ClassRounding.down(value, 1, 1)).isEqualTo(centimetres);
        assertThat(ClassRounding.up(value, 1, 1)).isEqualTo(centimetres);
        assertThat(ClassRounding.middle(value, 1, 1)).isEqualTo(centimetres + 0.5);
      }
    }
  }

  @Test
  void tenthsComeOutAsTheNearestDouble() {
    for (int tenths = 1; tenths <= 300; tenths++) {
      double limit = tenths / 10.0;
      assertThat(ClassRounding.down(limit, 1, 10)).isEqualTo(limit);
      assertThat(ClassRounding.down(limit + 0.04, 1, 10)).isEqualTo(limit);
      assertThat(ClassRounding.up(limit - 0.04, 1, 10)).isEqualTo(limit);
      assertThat(ClassRounding.down(limit / 100 * 100, 1, 10)).isEqualTo(limit);
    }
  }

  @Test
  void theReachIsABillionth() {
    assertThat(ClassRounding.down(40 * (1 - 0.9e-9), 1, 1)).isEqualTo(40);
    assertThat(ClassRounding.down(40 * (1 - 1.1e-9), 1, 1)).isEqualTo(39);
    assertThat(ClassRounding.up(40 * (1 + 0.9e-9), 1, 1)).isEqualTo(40);
    assertThat(ClassRounding.up(40 * (1 + 1.1e-9), 1, 1)).isEqualTo(41);
    assertThat(ClassRounding.halfUp(40.5 * (1 - 0.9e-9), 1, 1)).isEqualTo(41);
    assertThat(ClassRounding.halfUp(40.5 * (1 - 1.1e-9), 1, 1)).isEqualTo(40);
    assertThat(ClassRounding.halfDown(40.5 * (1 + 0.9e-9), 1, 1)).isEqualTo(40);
    assertThat(ClassRounding.halfDown(40.5 * (1 + 1.1e-9), 1, 1)).isEqualTo(41);
    assertThat(ClassRounding.snapped(37.25 * (1 + 0.9e-9))).isEqualTo(37.25);
    assertThat(ClassRounding.snapped(37.25 * (1 + 1.1e-9))).isEqualTo(37.25 * (1 + 1.1e-9));
    assertThat(ClassRounding.snapped(37.2505)).isEqualTo(37.2505);
    assertThat(ClassRounding.snapped(0)).isZero();
  }

  @Test
  void halvesGoTheirWay() {
    assertThat(ClassRounding.halfUp(7.5, 1, 1)).isEqualTo(8);
    assertThat(ClassRounding.halfDown(7.5, 1, 1)).isEqualTo(7);
    assertThat(ClassRounding.halfEven(7.5, 1, 1)).isEqualTo(8);
    assertThat(ClassRounding.halfEven(8.5, 1, 1)).isEqualTo(8);
    assertThat(ClassRounding.halfUp(7.4, 1, 1)).isEqualTo(7);
    assertThat(ClassRounding.halfDown(7.6, 1, 1)).isEqualTo(8);
    assertThat(ClassRounding.halfUp(0.0335, 1, 1000)).isEqualTo(0.034);
    assertThat(ClassRounding.halfUp(3, 2, 1)).isEqualTo(4);
    assertThat(ClassRounding.halfDown(3, 2, 1)).isEqualTo(2);
    assertThat(ClassRounding.halfEven(3, 2, 1)).isEqualTo(4);
    assertThat(ClassRounding.halfMarked(0.725, true, 1, 100)).isEqualTo(0.72);
    assertThat(ClassRounding.halfMarked(0.725, false, 1, 100)).isEqualTo(0.73);
    assertThat(ClassRounding.down(15.9, 2, 1)).isEqualTo(14);
    assertThat(ClassRounding.up(15.9, 2, 1)).isEqualTo(16);
    assertThat(ClassRounding.middle(21.9, 2, 1)).isEqualTo(21);
    assertThat(ClassRounding.middle(22, 2, 1)).isEqualTo(23);
    assertThat(ClassRounding.down(4.39, 1, 5)).isEqualTo(4.2);
  }

  @Test
  void nanStaysNan() {
    assertThat(ClassRounding.snapped(Double.NaN)).isNaN();
    assertThat(ClassRounding.down(Double.NaN, 1, 1)).isNaN();
    assertThat(ClassRounding.up(Double.NaN, 1, 1)).isNaN();
    assertThat(ClassRounding.middle(Double.NaN, 1, 1)).isNaN();
    assertThat(ClassRounding.halfUp(Double.NaN, 1, 1)).isNaN();
    assertThat(ClassRounding.halfDown(Double.NaN, 1, 1)).isNaN();
    assertThat(ClassRounding.halfEven(Double.NaN, 1, 1)).isNaN();
  }

  @Property
  void aClassHoldsItsValue(
      @ForAll @DoubleRange(min = 0.5, max = 500) double value,
      @ForAll @IntRange(min = 1, max = 5) int width,
      @ForAll @IntRange(min = 1, max = 10) int parts) {
    double step = (double) width / parts;
    double slack = 1e-8 * value;
    assertThat(ClassRounding.down(value, width, parts))
        .isBetween(value - step - slack, value + slack);
    assertThat(ClassRounding.up(value, width, parts))
        .isBetween(value - slack, value + step + slack);
    assertThat(ClassRounding.halfUp(value, width, parts))
        .isBetween(value - step / 2 - slack, value + step / 2 + slack);
    assertThat(ClassRounding.halfEven(value, width, parts))
        .isBetween(value - step / 2 - slack, value + step / 2 + slack);
  }
}
