package org.mensuration.internal.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.sym;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.mensuration.Catalogues;
import org.mensuration.formula.Comparison;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Formula;
import org.mensuration.formula.Nature;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.source.Citation;

/** Rows in bulk give the bits of single rows, and refuse what single rows refuse. */
class BulkKernelTest {
  private static final int ROWS = 257;

  private static final List<String> IN_BULK =
      List.of(
          "log/huber",
          "log/smalian",
          "log/newton",
          "log/bruce-butt",
          "log/hossfeld",
          "log/simony",
          "log/three-eighths",
          "log/small-end-cylinder",
          "board/doyle",
          "board/scribner-formula",
          "board/vermont",
          "board/roy",
          "board/ontario",
          "board/british-columbia",
          "board/knouf",
          "board/ropp",
          "board/blodgett");

  private static Formula formula(String id) {
    return Catalogues.standard().formula(id);
  }

  /** Diameters that fall from column to column and are large enough for every rule. */
  private static double[][] columns(Formula formula, int rows) {
    Random random = new Random(formula.id().hashCode());
    int width = formula.parameters().size();
    double[][] columns = new double[width][rows];
    for (int row = 0; row < rows; row++) {
      double diameter = 30 + 60 * random.nextDouble();
      for (int i = 0; i < width - 1; i++) {
        columns[i][row] = diameter;
        diameter *= 0.8 + 0.2 * random.nextDouble();
      }
      columns[width - 1][row] = 8 + 12 * random.nextDouble();
    }
    return columns;
  }

  private static double[] row(double[][] columns, int row) {
    return Arrays.stream(columns).mapToDouble(column -> column[row]).toArray();
  }

  @TestFactory
  Stream<DynamicTest> bulkGivesTheBitsOfSingleRows() {
    return IN_BULK.stream()
        .map(
            id ->
                DynamicTest.dynamicTest(
                    id,
                    () -> {
                      Formula formula = formula(id);
                      double[][] columns = columns(formula, ROWS);
                      double[] results = new double[ROWS];
                      formula.applyAll(columns, results);
                      for (int row = 0; row < ROWS; row++) {
                        assertThat(results[row]).isEqualTo(formula.apply(row(columns, row)));
                      }
                    }));
  }

  @TestFactory
  Stream<DynamicTest> theFirstBadRowIsNamed() {
    return IN_BULK.stream()
        .map(
            id ->
                DynamicTest.dynamicTest(
                    id,
                    () -> {
                      Formula formula = formula(id);
                      for (double bad : new double[] {Double.NaN, -1, Double.POSITIVE_INFINITY}) {
                        for (int column = 0; column < formula.parameters().size(); column++) {
                          double[][] columns = columns(formula, ROWS);
                          columns[column][101] = bad;
                          columns[0][200] = Double.NaN;
                          assertThatThrownBy(() -> formula.applyAll(columns, new double[ROWS]))
                              .isInstanceOf(OutOfDomainException.class)
                              .hasMessageContaining(id + ": row 101, ");
                        }
                      }
                    }));
  }

  @Test
  void aRelationIsHeldInEveryRow() {
    Formula smalian = formula("log/smalian");
    double[][] columns = columns(smalian, ROWS);
    columns[1][ROWS - 1] = Math.nextUp(columns[0][ROWS - 1]);
    assertThatThrownBy(() -> smalian.applyAll(columns, new double[ROWS]))
        .hasMessageContaining("log/smalian: row 256, d_s = ")
        .hasMessageContaining("allowed d_s ≤ d_l");
    columns[1][ROWS - 1] = columns[0][ROWS - 1];
    double[] results = new double[ROWS];
    smalian.applyAll(columns, results);
    assertThat(results[ROWS - 1]).isEqualTo(smalian.apply(row(columns, ROWS - 1)));
    Formula simony = formula("log/simony");
    double[][] quarters = columns(simony, ROWS);
    quarters[1][7] = 1.5 * quarters[0][7];
    assertThatThrownBy(() -> simony.applyAll(quarters, new double[ROWS]))
        .hasMessageContaining("log/simony: row 7, ");
  }

  @Test
  void anOverflowIsRefusedWithItsRow() {
    Formula huber = formula("log/huber");
    double[][] columns = columns(huber, 5);
    columns[0][3] = 1e200;
    assertThatThrownBy(() -> huber.applyAll(columns, new double[5]))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("log/huber: row 3, V = Infinity m3, allowed a finite result");
  }

  /** The sum of two inputs, the second at most the first; the bulk kernel counts its calls. */
  private static Formula counted(AtomicInteger calls) {
    return Definition.of("test/sum", "Sum", Nature.GEOMETRIC)
        .input("first", "a", "1", Domain.closed(0, 10), "a number")
        .input("second", "b", "1", Domain.atLeast(0), "another")
        .relation("second", Comparison.AT_MOST, 1, "first", "b ≤ a")
        .gives("sum", "s", "1", plus(sym("a"), sym("b")))
        .cites(Citation.derived("addition"))
        .inBulk(
            (columns, results) -> {
              calls.incrementAndGet();
              for (int i = 0; i < results.length; i++) {
                results[i] = columns[0][i] + columns[1][i];
              }
            })
        .kernel2((a, b) -> a + b);
  }

  @Test
  void theBulkKernelIsCalledOnceForAllowedRowsAndNotForOthers() {
    AtomicInteger calls = new AtomicInteger();
    Formula sum = counted(calls);
    double[] results = new double[3];
    sum.applyAll(new double[][] {{10, 4, 0}, {10, 3, 0}}, results);
    assertThat(results).containsExactly(20, 7, 0);
    assertThat(calls).hasValue(1);
    for (double[][] refused :
        new double[][][] {
          {{1, 10.5, 2}, {0, 0, 0}},
          {{1, 2, -0.5}, {0, 0, 0}},
          {{1, 2, 3}, {-1, 0, 0}},
          {{1, 2, 3}, {0, 2.5, 0}},
          {{1, 2, 3}, {0, 0, Double.NaN}}
        }) {
      assertThatThrownBy(() -> sum.applyAll(refused, new double[3]))
          .isInstanceOf(OutOfDomainException.class);
    }
    assertThat(calls).hasValue(1);
    sum.applyAll(new double[][] {{1, 99}, {0, 0}}, new double[1]);
    assertThat(calls).hasValue(2);
  }

  @Test
  void longerColumnsAndNoRowsAreFine() {
    Formula newton = formula("log/newton");
    double[][] columns = columns(newton, 10);
    columns[3][9] = Double.NaN;
    double[] results = new double[9];
    newton.applyAll(columns, results);
    assertThat(results[8]).isEqualTo(newton.apply(row(columns, 8)));
    newton.applyAll(columns, new double[0]);
  }

  @Test
  void formulasWithoutABulkKernelGiveTheSameAsSingleRows() {
    Formula cone = formula("log/cone-frustum");
    double[][] columns = columns(cone, ROWS);
    double[] results = new double[ROWS];
    cone.applyAll(columns, results);
    for (int row = 0; row < ROWS; row++) {
      assertThat(results[row]).isEqualTo(cone.apply(row(columns, row)));
    }
  }
}
