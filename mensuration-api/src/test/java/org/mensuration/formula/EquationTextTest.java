package org.mensuration.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mensuration.formula.Equations.fn;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.pow;
import static org.mensuration.formula.Equations.sqrt;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sumOver;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.tanDegrees;
import static org.mensuration.formula.Equations.times;
import static org.mensuration.formula.Equations.where;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class EquationTextTest {
  private static String text(Equation equation) {
    return EquationText.of("V", equation);
  }

  @Test
  void bracketsStandWhereTheyAreNeeded() {
    assertThat(text(times(plus(sym("a"), sym("b")), sym("L")))).isEqualTo("V = (a + b) · L");
    assertThat(text(over(times(pi(), squared(sym("d"))), num(4)))).isEqualTo("V = π · d²/4");
    assertThat(text(over(num(1), times(sym("a"), sym("b"))))).isEqualTo("V = 1/(a · b)");
    assertThat(text(minus(sym("a"), plus(sym("b"), sym("c"))))).isEqualTo("V = a - (b + c)");
    assertThat(text(squared(minus(sym("D"), num(4))))).isEqualTo("V = (D - 4)²");
    assertThat(text(pow(sym("x"), plus(sym("m"), num(1))))).isEqualTo("V = x^(m + 1)");
    assertThat(text(times(num(-2), sym("a")))).isEqualTo("V = (-2) · a");
    assertThat(text(pow(sym("x"), num(3)))).isEqualTo("V = x³");
    assertThat(text(new Equation.Negative(plus(sym("a"), sym("b"))))).isEqualTo("V = -(a + b)");
  }

  @Test
  void functionsRootsAndSums() {
    assertThat(text(sqrt(sym("k")))).isEqualTo("V = √(k)");
    assertThat(text(new Equation.Root(sym("g"), 3))).isEqualTo("V = ∛(g)");
    assertThat(text(new Equation.Root(sym("g"), 5))).isEqualTo("V = 5√(g)");
    assertThat(text(tanDegrees(sym("t")))).isEqualTo("V = tan(t°)");
    assertThat(text(fn(Equation.FunctionName.LN, sym("x")))).isEqualTo("V = ln(x)");
    assertThat(text(sumOver(over(sym("k"), sym("g")), "g"))).isEqualTo("V = Σ(k/g)");
    assertThat(text(new Equation.ReadingCount("d"))).isEqualTo("V = n(d)");
    assertThat(text(new Equation.IndexSum("i", num(1), sym("n"), sym("i"))))
        .isEqualTo("V = Σ[i = 1 … n](i)");
  }

  @Test
  void stepsAndCases() {
    assertThat(text(new Equation.Rounded(sym("x"), RoundingMode.HALF_UP, new BigDecimal("5"))))
        .isEqualTo("V = round(x; nearest, halves up, step 5)");
    var branch =
        new Equation.Branch(
            new Equation.Condition(sym("D"), Comparison.AT_MOST, num(28)), sym("a"));
    assertThat(text(new Equation.Cases(List.of(branch), sym("b"))))
        .isEqualTo("V = {a if D ≤ 28; b otherwise}");
    assertThat(text(new Equation.Solved("the smallest n"))).isEqualTo("V = the smallest n");
    PrintedTable table =
        new PrintedTable() {
          @Override
          public String name() {
            return "table";
          }

          @Override
          public Optional<BigDecimal> cell(double... keys) {
            return Optional.empty();
          }
        };
    assertThat(text(new Equation.LookUp(table, List.of(sym("D"), sym("L")))))
        .isEqualTo("V = table[D; L]");
  }

  @Test
  void intermediatesFollowTheMainLine() {
    assertThat(
            text(
                where(
                    "g",
                    over(times(pi(), squared(sym("d"))), num(40000)),
                    times(sym("g"), sym("L")))))
        .isEqualTo("V = g · L, where g = π · d²/40000");
  }

  @Test
  void numbersAreShownInFullAndWithoutTheLocale() {
    assertThat(EquationText.number(0.1)).isEqualTo("0.1");
    assertThat(EquationText.number(0)).isEqualTo("0");
    assertThat(EquationText.number(1234567)).isEqualTo("1234567");
    assertThat(EquationText.number(1e300)).isEqualTo("1E+300");
    assertThat(EquationText.number(Double.NaN)).isEqualTo("NaN");
  }
}
