package org.mensuration.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class LogScaleTest {
  private static LogScale doyle(double amount) {
    return new LogScale("Doyle", amount, "bf", BarkBasis.UNDER);
  }

  @Test
  void amountsOfOneRuleAddAndCompare() {
    assertThat(doyle(100).plus(doyle(44))).isEqualTo(doyle(144));
    assertThat(doyle(100).minus(doyle(44))).isEqualTo(doyle(56));
    assertThat(doyle(100)).isGreaterThan(doyle(44));
  }

  @Test
  void anotherRuleIsRefusedByName() {
    LogScale other = new LogScale("Scribner", 80, "bf", BarkBasis.UNDER);
    assertThatThrownBy(() -> doyle(64).plus(other))
        .hasMessage(
            "cannot add 64.0 bf Doyle (under bark) and 80.0 bf Scribner (under bark):"
                + " they are different scales");
    assertThatThrownBy(() -> doyle(64).compareTo(other)).hasMessageContaining("cannot compare");
    assertThatThrownBy(() -> doyle(64).minus(new LogScale("Doyle", 1, "bf", BarkBasis.OVER)))
        .hasMessageContaining("different scales");
  }

  @Test
  void noNegativeAndNoNan() {
    assertThatThrownBy(() -> doyle(-1)).hasMessageContaining("no scale");
    assertThatThrownBy(() -> doyle(Double.NaN)).hasMessageContaining("no scale");
    assertThatThrownBy(() -> doyle(1).minus(doyle(2))).hasMessageContaining("no scale");
  }

  @Test
  void barkBasesDoNotMixAndAreBothNamed() {
    for (BarkBasis one : BarkBasis.values()) {
      for (BarkBasis other : BarkBasis.values()) {
        LogScale left = new LogScale("Doyle", 60, "bf", one);
        LogScale right = new LogScale("Doyle", 4, "bf", other);
        if (one == other) {
          assertThat(left.plus(right)).isEqualTo(new LogScale("Doyle", 64, "bf", one));
          continue;
        }
        assertThatThrownBy(() -> left.plus(right))
            .hasMessage(
                "cannot add 60.0 bf Doyle ("
                    + one.words()
                    + ") and 4.0 bf Doyle ("
                    + other.words()
                    + "): they are different scales");
        assertThatThrownBy(() -> left.minus(right)).hasMessageContaining("cannot subtract");
        assertThatThrownBy(() -> left.compareTo(right)).hasMessageContaining("cannot compare");
      }
    }
  }

  @Test
  void unitsDoNotMix() {
    LogScale units = new LogScale("Doyle", 1, "units", BarkBasis.UNDER);
    assertThatThrownBy(() -> doyle(1).plus(units)).hasMessageContaining("different scales");
  }
}
