package org.mensuration.internal.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mensuration.formula.Equations.lookUp;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.rounded;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;
import static org.mensuration.formula.Equations.where;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.Comparison;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.PrintedTable;
import org.mensuration.formula.RoundingMode;
import org.mensuration.internal.catalogue.BoardFormulas;

/** Where in an equation a table stands decides when its cells are asked for. */
class PrintedCellsTest {
  /** Prints a cell for even keys. */
  private static final PrintedTable EVEN =
      new PrintedTable() {
        @Override
        public String name() {
          return "even numbers";
        }

        @Override
        public Optional<BigDecimal> cell(double... keys) {
          return keys[0] % 2 == 0 ? Optional.of(BigDecimal.ONE) : Optional.empty();
        }
      };

  private static final Equation D = sym("D");
  private static final Equation L = sym("L");

  private static final List<Parameter> PARAMETERS = List.of(parameter("D"), parameter("L"));

  private static Parameter parameter(String symbol) {
    return new Parameter(symbol, symbol, "in", "x", Domain.any(), Optional.empty(), false);
  }

  private static boolean holds(Equation equation, double d, double l) {
    return new PrintedCells(equation, PARAMETERS).holds(new double[][] {{d}, {l}});
  }

  private static void needsEvenLength(Equation equation) {
    assertThat(holds(equation, 1, 2)).isTrue();
    assertThat(holds(equation, 2, 1)).isFalse();
  }

  @Test
  void aTableIsFoundWhereverItStands() {
    Equation table = lookUp(EVEN, L);
    needsEvenLength(table);
    needsEvenLength(where("x", table, D));
    needsEvenLength(where("x", D, table));
    needsEvenLength(rounded(table, RoundingMode.HALF_UP, "5"));
    needsEvenLength(times(D, table));
    needsEvenLength(plus(D, table));
    needsEvenLength(over(table, D));
    needsEvenLength(over(D, table));
    assertThat(holds(D, 1, 1)).isTrue();
  }

  @Test
  void aTableOfACaseIsAskedInItsCaseOnly() {
    Equation cases =
        new Equation.Cases(
            List.of(
                new Equation.Branch(
                    new Equation.Condition(D, Comparison.LESS, num(12)), lookUp(EVEN, L)),
                new Equation.Branch(
                    new Equation.Condition(D, Comparison.EQUAL, num(20)),
                    new Equation.Cases(
                        List.of(
                            new Equation.Branch(
                                new Equation.Condition(L, Comparison.LESS, num(6)),
                                lookUp(EVEN, L))),
                        D))),
            lookUp(EVEN, D));
    assertThat(holds(cases, 11, 4)).isTrue();
    assertThat(holds(cases, 11, 3)).isFalse();
    assertThat(holds(cases, 20, 3)).isFalse();
    assertThat(holds(cases, 20, 4)).isTrue();
    assertThat(holds(cases, 20, 7)).isTrue();
    assertThat(holds(cases, 14, 3)).isTrue();
    assertThat(holds(cases, 15, 4)).isFalse();
  }

  @Test
  void aCaseThatHangsOnMoreThanInputsAsksAllItsTables() {
    Equation cases =
        new Equation.Cases(
            List.of(
                new Equation.Branch(
                    new Equation.Condition(plus(D, num(1)), Comparison.LESS, num(12)),
                    lookUp(EVEN, L))),
            num(1));
    assertThat(holds(cases, 30, 3)).isFalse();
    assertThat(holds(cases, 30, 4)).isTrue();
  }

  @Test
  void aKeyThatIsNoInputIsTheBusinessOfItsOwnEquation() {
    assertThat(holds(lookUp(EVEN, plus(L, num(1))), 1, 1)).isTrue();
    assertThat(holds(lookUp(EVEN, sym("x")), 1, 1)).isTrue();
  }

  @Test
  void theRefusalNamesTheInputOfTheGap() {
    PrintedCells cells = new PrintedCells(lookUp(EVEN, L), PARAMETERS);
    cells.require(BoardFormulas.DOYLE, "", new double[][] {{1}, {2}});
    assertThatThrownBy(() -> cells.require(BoardFormulas.DOYLE, "", new double[][] {{2}, {1}}))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("L = 1 ft, allowed a cell printed in even numbers");
  }
}
