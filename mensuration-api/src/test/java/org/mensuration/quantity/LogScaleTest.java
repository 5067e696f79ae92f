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
}
