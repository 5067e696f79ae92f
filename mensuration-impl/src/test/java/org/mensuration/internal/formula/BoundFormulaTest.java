package org.mensuration.internal.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.mensuration.Catalogues;
import org.mensuration.formula.Formula;
import org.mensuration.formula.Gradient;
import org.mensuration.formula.OutOfDomainException;

class BoundFormulaTest {
  private static final Formula SMALIAN = Catalogues.standard().formula("log/smalian");
  private static final Formula INTERNATIONAL =
      Catalogues.standard().formula("board/international-quarter");

  @Test
  void exactHasTheDigitsAskedFor() {
    // pi (40² + 30²) 5 / 80000 = 2500 pi / 16000 = 0.15625 pi
    assertThat(SMALIAN.exact(20, 40, 30, 5)).isEqualTo(new BigDecimal("0.49087385212340519351"));
    assertThatThrownBy(() -> SMALIAN.exact(0, 40, 30, 5)).hasMessageContaining("0 digits");
    assertThatThrownBy(() -> SMALIAN.exact(1001, 40, 30, 5)).hasMessageContaining("1 to 1000");
  }

  @Test
  void theGradientIsTheDerivative() {
    Gradient gradient = SMALIAN.gradient(40, 30, 5);
    assertThat(gradient.value()).isCloseTo(SMALIAN.apply(40, 30, 5), within(1e-15));
    assertThat(gradient.partial(0)).isCloseTo(Math.PI * 40 * 5 / 40000, within(1e-15));
    assertThat(gradient.partial(1)).isCloseTo(Math.PI * 30 * 5 / 40000, within(1e-15));
    assertThat(gradient.partial(2)).isCloseTo(Math.PI * 2500 / 80000, within(1e-15));
    assertThat(gradient.stepwise()).isFalse();
    assertThat(INTERNATIONAL.gradient(12, 16).stepwise()).isTrue();
  }

  @Test
  void explainPutsTheNumbersIn() {
    assertThat(SMALIAN.explain(46, 31.5, 5.2).toString())
        .contains(
            "Smalian volume",
            "V = (g_l + g_s)/2 · L, where g_s = π · d_s²/40000, g_l = π · d_l²/40000",
            "d_l = 46 cm, diameter of the large end",
            "g_l = 0.166",
            "V = (g_l + g_s)/2 · 5.2, where g_s = π · 31.5²/40000, g_l = π · 46²/40000",
            " m3",
            "source: ",
            "Table 2-1");
  }

  @Test
  void manyRowsAreTheSameBitsAsOneByOne() {
    double[][] columns = {{46, 30, 10}, {31.5, 30, 0}, {5.2, 4, 3}};
    double[] volumes = new double[3];
    SMALIAN.applyAll(columns, volumes);
    for (int row = 0; row < 3; row++) {
      assertThat(volumes[row])
          .isEqualTo(SMALIAN.apply(columns[0][row], columns[1][row], columns[2][row]));
    }
  }

  @Test
  void aBadRowIsNamed() {
    double[][] columns = {{46, 30}, {31.5, 31}, {5.2, 4}};
    assertThatThrownBy(() -> SMALIAN.applyAll(columns, new double[2]))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("log/smalian: row 1, d_s = 31 cm, allowed d_s ≤ d_l");
    assertThatThrownBy(() -> SMALIAN.applyAll(new double[2][1], new double[1]))
        .hasMessageContaining("2 columns given, 3 needed");
  }

  @Test
  void theNumberOfInputsIsChecked() {
    assertThatThrownBy(() -> SMALIAN.apply(46, 31.5))
        .hasMessage(
            "log/smalian: 2 inputs given, 3 needed: [large_diameter, small_diameter, length]");
    assertThatThrownBy(() -> SMALIAN.applyTo(new double[] {1, 2}, new double[1], new double[1]))
        .hasMessageContaining("large_diameter has 2 values, one needed");
  }

  @Test
  void aRelationIsToldWithTheNumbersGiven() {
    assertThatThrownBy(() -> SMALIAN.apply(31.5, 46, 5.2))
        .hasMessageContaining("d_s = 46 cm, allowed d_s ≤ d_l; given d_l = 31.5 cm, d_s = 46 cm");
  }

  @Test
  void anOverflowIsRefused() {
    assertThatThrownBy(() -> SMALIAN.apply(1e200, 1, 1))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("V = Infinity m3, allowed a finite result");
  }

  @Test
  void coversIsNarrowerThanTheDomain() {
    Formula doyle = Catalogues.standard().formula("board/doyle");
    assertThat(doyle.covers(12, 16)).isTrue();
    assertThat(doyle.covers(5, 16)).isFalse();
    assertThat(doyle.apply(5, 16)).isEqualTo(1);
    assertThat(doyle.covers(12)).isFalse();
    assertThat(doyle.covers(Double.NaN, 16)).isFalse();
    assertThat(SMALIAN.covers(30, 31, 1)).isFalse();
    assertThat(SMALIAN.covers(31, 30, 1)).isTrue();
  }

  @Test
  void aDerivativeThatIsNotFiniteIsRefused() {
    assertThat(INTERNATIONAL.gradient(12, 10).size()).isEqualTo(2);
    assertThat(SMALIAN).hasToString("log/smalian");
  }
}
