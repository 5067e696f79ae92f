package org.mensuration.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Proxy;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.mensuration.source.Citation;

class CatalogueTest {
  private static final Formula HUBER = named("log/huber");
  private static final Formula SMALIAN = named("log/smalian");
  private static final Formula TANGENT = named("height/tangent");
  private static final Catalogue CATALOGUE = Catalogue.of(List.of(HUBER, TANGENT, SMALIAN));

  @Test
  void keepsItsOrderAndFindsByIdAndTopic() {
    assertThat(CATALOGUE.formulas()).containsExactly(HUBER, TANGENT, SMALIAN);
    assertThat(CATALOGUE.topics()).containsExactly("log", "height");
    assertThat(CATALOGUE.ofTopic("log")).containsExactly(HUBER, SMALIAN);
    assertThat(CATALOGUE.formula("log/smalian")).isSameAs(SMALIAN);
    assertThat(CATALOGUE.find("log/none")).isEmpty();
  }

  @Test
  void aMissingIdNamesItsNeighbours() {
    assertThatThrownBy(() -> CATALOGUE.formula("log/none"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("catalogue: no formula log/none; its topic has [log/huber, log/smalian]");
    assertThatThrownBy(() -> CATALOGUE.formula("none"))
        .hasMessage("catalogue: no formula none; topics are [log, height]");
  }

  @Test
  void anIdStandsForOneFormula() {
    assertThatThrownBy(() -> Catalogue.of(List.of(HUBER, named("log/huber"))))
        .hasMessage("catalogue: two formulas are called log/huber");
  }

  @Test
  void aRefusalNamesSymbolValueUnitAndInterval() {
    var refusal = new OutOfDomainException(HUBER, "L", -1, "m", "[0, ∞)");
    assertThat(refusal.getMessage())
        .startsWith("log/huber: L = -1 m, allowed [0, ∞) m (log/huber in words; ");
    assertThat(refusal.formulaId()).isEqualTo("log/huber");
    assertThat(refusal.symbol()).isEqualTo("L");
    assertThat(refusal.value()).isEqualTo(-1);
    assertThat(refusal.unit()).isEqualTo("m");
    assertThat(refusal.allowed()).isEqualTo("[0, ∞)");
  }

  @Test
  void aRefusalAmongManyNamesTheRowAndLeavesOutTheUnitOfPlainNumbers() {
    assertThat(new OutOfDomainException(HUBER, "row 17", "n", 2.5, "1", "whole, [1, ∞)"))
        .hasMessageStartingWith("log/huber: row 17, n = 2.5, allowed whole, [1, ∞) (");
    assertThat(new OutOfDomainException(HUBER, "d_s", 9, "cm", "d_s ≤ d_l"))
        .hasMessageStartingWith("log/huber: d_s = 9 cm, allowed d_s ≤ d_l (");
  }

  @Test
  void anExplanationReadsFromTitleToSource() {
    var explanation =
        new Explanation(
            "Twice",
            "y = 2 x",
            List.of("x = 3 m"),
            List.of("z = 1"),
            "y = 2 · 3",
            "y = 6 m",
            List.of("derived: doubling"));
    assertThat(explanation.toString().lines())
        .containsExactly(
            "Twice",
            "  y = 2 x",
            "  x = 3 m",
            "  z = 1",
            "  y = 2 · 3",
            "  y = 6 m",
            "  source: derived: doubling");
  }

  /** A formula that knows its name and where it comes from. */
  private static Formula named(String id) {
    return (Formula)
        Proxy.newProxyInstance(
            Formula.class.getClassLoader(),
            new Class<?>[] {Formula.class},
            (self, method, arguments) ->
                switch (method.getName()) {
                  case "id", "toString" -> id;
                  case "title" -> id + " in words";
                  case "citations" -> List.of(Citation.derived("by doubling"));
                  case "equals" -> self == arguments[0];
                  case "hashCode" -> id.hashCode();
                  default -> throw new AssertionError(method);
                });
  }
}
