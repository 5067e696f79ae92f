package org.mensuration.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class DomainTest {
  @Test
  void endsCountAsStated() {
    assertThat(Domain.above(0).contains(0)).isFalse();
    assertThat(Domain.above(0).contains(Double.MIN_VALUE)).isTrue();
    assertThat(Domain.atLeast(4).contains(4)).isTrue();
    assertThat(Domain.atLeast(4).contains(Math.nextDown(4.0))).isFalse();
    assertThat(Domain.open(-90, 90).contains(90)).isFalse();
    assertThat(Domain.open(-90, 90).contains(Math.nextDown(90.0))).isTrue();
    assertThat(Domain.closed(0, 1).contains(1)).isTrue();
    assertThat(Domain.aboveUpTo(0, 1).contains(1)).isTrue();
    assertThat(Domain.aboveUpTo(0, 1).contains(0)).isFalse();
    assertThat(Domain.fromBelow(0, 1).contains(0)).isTrue();
    assertThat(Domain.fromBelow(0, 1).contains(1)).isFalse();
  }

  @Test
  void wholeNumbersOnlyWhereSaid() {
    assertThat(Domain.wholeFrom(2).contains(2)).isTrue();
    assertThat(Domain.wholeFrom(2).contains(2.5)).isFalse();
    assertThat(Domain.atLeast(2).contains(2.5)).isTrue();
  }

  @Test
  void nanAndInfinitiesAreNowhere() {
    for (Domain domain : new Domain[] {Domain.any(), Domain.atLeast(0), Domain.wholeFrom(1)}) {
      assertThat(domain.contains(Double.NaN)).isFalse();
      assertThat(domain.contains(Double.POSITIVE_INFINITY)).isFalse();
      assertThat(domain.contains(Double.NEGATIVE_INFINITY)).isFalse();
    }
  }

  @Test
  void printsAsAnInterval() {
    assertThat(Domain.above(0)).hasToString("(0, ∞)");
    assertThat(Domain.fromBelow(-0.5, 90)).hasToString("[-0.5, 90)");
    assertThat(Domain.any()).hasToString("(-∞, ∞)");
    assertThat(Domain.wholeFrom(2)).hasToString("[2, ∞), whole numbers");
  }

  @Test
  void refusesWhatIsNoInterval() {
    assertThatThrownBy(() -> Domain.closed(2, 1)).hasMessageContaining("no interval");
    assertThatThrownBy(() -> Domain.above(Double.NaN)).hasMessageContaining("no interval");
    assertThatThrownBy(() -> Domain.closed(0, Double.POSITIVE_INFINITY))
        .hasMessageContaining("infinite end");
  }
}
