package org.mensuration.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ContractsTest {
  @Test
  void comparisonsNeverHoldForNan() {
    for (Comparison comparison : Comparison.values()) {
      assertThat(comparison.holds(Double.NaN, 1)).isFalse();
      assertThat(comparison.holds(1, 1)).isEqualTo(comparison.allowsEqual());
    }
    assertThat(Comparison.LESS.holds(1, 2)).isTrue();
    assertThat(Comparison.GREATER.holds(-1)).isFalse();
    assertThat(Comparison.AT_LEAST.sign()).isEqualTo("≥");
  }

  @Test
  void aRelationComparesAnInputWithAMultipleOfAnother() {
    Relation relation = Relation.between("d", Comparison.LESS, 200, "R", "d < 200 R");
    assertThat(relation.terms())
        .containsExactly(new Relation.Term(1, "d"), new Relation.Term(-200, "R"));
    assertThat(relation).hasToString("d < 200 R");
    assertThatThrownBy(() -> new Relation.Term(Double.NaN, "d")).hasMessageContaining("factor");
    assertThatThrownBy(() -> new Relation(List.of(), Comparison.LESS, 0, "x"))
        .hasMessageContaining("no terms");
  }

  @Test
  void aParameterPrintsWhatAReaderNeeds() {
    var parameter =
        new Parameter(
            "length", "L", "m", "length of the log", Domain.above(0), Optional.empty(), false);
    assertThat(parameter).hasToString("L, length of the log, (0, ∞) m");
    assertThatThrownBy(() -> new Result(" ", "V", "m3")).hasMessage("name is blank");
  }

  @Test
  void aGradientKeepsItsOwnCopy() {
    double[] partials = {1, 2};
    Gradient gradient = new Gradient(3, partials, true);
    partials[0] = 9;
    assertThat(gradient.partial(0)).isEqualTo(1);
    assertThat(gradient.size()).isEqualTo(2);
    assertThat(gradient.value()).isEqualTo(3);
    assertThat(gradient.stepwise()).isTrue();
  }

  @Test
  void anUnknownIdListsWhatThereIs() {
    Catalogue empty = Catalogue.of(List.of());
    assertThat(empty.formulas()).isEmpty();
    assertThat(empty.ofTopic("log")).isEmpty();
    assertThatThrownBy(() -> empty.formula("log/none"))
        .hasMessage("catalogue: no formula log/none; topics are []");
  }

  @Test
  void roundingModesAreNamed() {
    assertThat(RoundingMode.HALF_EVEN.words()).isEqualTo("nearest, halves to even");
  }
}
