package org.mensuration.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.sym;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class CasesTest {
  private static final Equation.Cases CASES =
      new Equation.Cases(
          List.of(
              new Equation.Branch(
                  new Equation.Condition(sym("D"), Comparison.LESS, num(12)), sym("a")),
              new Equation.Branch(
                  new Equation.Condition(sym("D"), Comparison.EQUAL, sym("L")), sym("b"))),
          sym("c"));

  @Test
  void theFirstCaseThatHoldsIsChosen() {
    assertThat(CASES.chosen(Map.of("D", 11.0, "L", 11.0))).contains(sym("a"));
    assertThat(CASES.chosen(Map.of("D", 12.0, "L", 12.0))).contains(sym("b"));
    assertThat(CASES.chosen(Map.of("D", 12.0, "L", 13.0))).contains(sym("c"));
  }

  @Test
  void whatHangsOnMoreThanInputsIsLeftOpen() {
    assertThat(CASES.chosen(Map.of("D", 12.0))).isEmpty();
    assertThat(CASES.chosen(Map.of("D", 11.0))).contains(sym("a"));
    Equation.Cases sum =
        new Equation.Cases(
            List.of(
                new Equation.Branch(
                    new Equation.Condition(plus(sym("D"), num(1)), Comparison.LESS, num(12)),
                    sym("a"))),
            sym("c"));
    assertThat(sum.chosen(Map.of("D", 1.0))).isEmpty();
  }
}
