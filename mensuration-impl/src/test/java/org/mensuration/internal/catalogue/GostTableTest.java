package org.mensuration.internal.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.internal.table.RuleTable;

/** What a table without a formula can be held to: its order, its differences, its refusals. */
class GostTableTest {
  private static final RuleTable TABLE = LogTableFormulas.GOST2708_TABLE;

  private static double mark(int axis, int at) {
    return TABLE.axes().get(axis).printed().get(at).doubleValue();
  }

  @Test
  void everyCellThatWasReadIsThere() {
    int cells = 0;
    for (BigDecimal diameter : TABLE.axes().get(0).printed()) {
      for (BigDecimal length : TABLE.axes().get(1).printed()) {
        Optional<BigDecimal> cell = TABLE.cell(diameter.doubleValue(), length.doubleValue());
        cells += cell.isPresent() ? 1 : 0;
      }
    }
    assertThat(cells).isEqualTo(230);
  }

  @Test
  void volumeGrowsWithDiameterAndWithLength() {
    int compared = 0;
    for (int row = 0; row < TABLE.axes().get(0).printed().size(); row++) {
      for (int column = 0; column < TABLE.axes().get(1).printed().size(); column++) {
        double here = TABLE.value(mark(0, row), mark(1, column));
        if (row > 0) {
          double thinner = TABLE.value(mark(0, row - 1), mark(1, column));
          assertThat(here <= thinner).as("%d %d", row, column).isFalse();
          compared += thinner < here ? 1 : 0;
        }
        if (column > 0) {
          double shorter = TABLE.value(mark(0, row), mark(1, column - 1));
          assertThat(here <= shorter).as("%d %d", row, column).isFalse();
          compared += shorter < here ? 1 : 0;
        }
      }
    }
    // 13 rows of 15 steps and 2 of 10 along the length; 12 and 2 rows of steps up the diameters.
    assertThat(compared).isEqualTo(13 * 15 + 2 * 10 + 12 * 16 + 2 * 11);
  }

  @Test
  void cellsLieBetweenTheCylinderOfTheTopAndOneOfTwiceItsArea() {
    for (BigDecimal diameter : TABLE.axes().get(0).printed()) {
      for (BigDecimal length : TABLE.axes().get(1).printed()) {
        double volume = TABLE.value(diameter.doubleValue(), length.doubleValue());
        double cylinder = LogFormulas.HUBER.value(diameter.doubleValue(), length.doubleValue());
        if (!Double.isNaN(volume)) {
          assertThat(volume).isBetween(cylinder, 2.02 * cylinder);
        }
      }
    }
  }

  @Test
  void onlyTheSuspectCellsStandOutFromTheirNeighbours() {
    // Second differences along the length: a growing log gains more with every half metre, to one
    // unit of the print. The two suspect cells break that by more.
    assertThat(bend(14, 1.5, 2, 2.5)).isLessThan(-0.0015);
    assertThat(bend(16, 1, 1.5, 2)).isLessThan(-0.0045);
    for (double diameter : new double[] {18, 20, 22, 24, 26}) {
      assertThat(bend(diameter, 1, 1.5, 2)).isGreaterThan(-0.0015);
    }
  }

  private static double bend(double diameter, double before, double at, double after) {
    return TABLE.value(diameter, before)
        - 2 * TABLE.value(diameter, at)
        + TABLE.value(diameter, after);
  }

  @Test
  void aCellThatIsNotPrintedIsRefusedByEveryCall() {
    String odd =
        "log/gost2708: d = 15 cm, allowed as printed in GOST 2708-75, table 1 as far as read";
    assertThatThrownBy(() -> LogTableFormulas.GOST2708.value(15, 4))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageStartingWith(odd + ": 10 to 38 by 2 cm (GOST 2708-75; ");
    assertThatThrownBy(() -> LogTableFormulas.GOST2708.apply(15, 4)).hasMessageStartingWith(odd);
    assertThatThrownBy(() -> LogTableFormulas.GOST2708.exact(20, 15, 4))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageStartingWith(odd);
    assertThatThrownBy(() -> LogTableFormulas.GOST2708.gradient(15, 4)).hasMessageStartingWith(odd);
    assertThatThrownBy(() -> LogTableFormulas.GOST2708.value(10, 2))
        .hasMessageStartingWith("log/gost2708: L = 2 m, allowed as printed in ")
        .hasMessageContaining(" at 10 cm: 3 to 8 by 0.5 m");
    assertThatThrownBy(
            () ->
                LogTableFormulas.GOST2708.applyAll(
                    new double[][] {{14, 15}, {4, 4}}, new double[2]))
        .hasMessageStartingWith("log/gost2708: row 1, d = 15 cm, allowed");
    assertThat(LogTableFormulas.GOST2708.covers(14, 4)).isTrue();
    assertThat(LogTableFormulas.GOST2708.covers(15, 4)).isFalse();
    assertThat(LogTableFormulas.GOST2708.covers(10, 2)).isFalse();
  }

  @Test
  void printedCellsPassEveryCall() {
    double[] results = new double[2];
    LogTableFormulas.GOST2708.applyAll(new double[][] {{14, 38}, {4, 8.5}}, results);
    assertThat(results).containsExactly(0.073, 1.22);
    assertThat(LogTableFormulas.GOST2708.exact(10, 14, 4)).isEqualByComparingTo("0.073");
    assertThat(LogTableFormulas.GOST2708.gradient(14, 4).stepwise()).isTrue();
    assertThat(List.of(LogTableFormulas.GOST2708.apply(14, 4))).containsExactly(0.073);
  }
}
