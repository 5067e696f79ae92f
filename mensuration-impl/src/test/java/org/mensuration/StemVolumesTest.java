package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.CUBIC_FOOT;
import static org.mensuration.units.ForestUnits.CUBIC_METRE;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.cubicMetres;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.Formula;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.stem.StemReading;

class StemVolumesTest {
  private static double apply(String id, double... inputs) {
    Formula formula = Catalogues.standard().formula(id);
    return formula.apply(inputs);
  }

  private static double m3(Quantity<Volume> volume) {
    return in(volume, CUBIC_METRE);
  }

  @Test
  void callsAgreeWithTheirFormulas() {
    Quantity<Length> d = inches(20);
    Quantity<Length> h = metres(24);
    assertThat(m3(StemVolumes.fromFormFactor(0.45, d, h)))
        .isEqualTo(apply("stem/volume-from-form-factor", 0.45, 50.8, 24));
    assertThat(m3(StemVolumes.pressler(d, metres(15)))).isEqualTo(apply("stem/pressler", 50.8, 15));
    assertThat(m3(StemVolumes.presslerFromBreastHeight(d, metres(15), metres(1.3))))
        .isEqualTo(apply("stem/pressler-breast-height", 50.8, 15, 1.3));
    assertThat(m3(StemVolumes.presslerFromCut(d, metres(16), metres(1.2))))
        .isEqualTo(apply("stem/pressler-from-cut", 50.8, 16, 1.2));
    assertThat(m3(StemVolumes.hossfeld(d, h))).isEqualTo(apply("stem/hossfeld", 50.8, 24));
    assertThat(
            m3(
                StemVolumes.hohenadl(
                    centimetres(40),
                    centimetres(34),
                    centimetres(29),
                    centimetres(22),
                    centimetres(9),
                    h)))
        .isEqualTo(apply("stem/hohenadl", 40, 34, 29, 22, 9, 24));
    assertThat(
            m3(
                StemVolumes.twoPointPower(
                    StemReading.of(metres(1.3), centimetres(45)),
                    StemReading.of(metres(8), centimetres(31)),
                    h)))
        .isEqualTo(apply("stem/two-point-power", 45, 1.3, 31, 8, 24));
    assertThat(m3(StemVolumes.quick(centimetres(30)))).isEqualTo(0.9);
    assertThatThrownBy(() -> StemVolumes.quick(centimetres(-1)))
        .isInstanceOf(OutOfDomainException.class);
  }

  @Test
  void heightAccumulationIsTheSumOfFrusta() {
    List<Quantity<Length>> lengths =
        List.of(feet(24), feet(20), feet(28), feet(16), feet(32), feet(36), feet(40));
    double cubicFeet = in(StemVolumes.heightAccumulation(lengths, inches(2)), CUBIC_FOOT);
    assertThat(cubicFeet).isCloseTo(84.328492, within(5e-7));
    double frusta = 0;
    for (int j = 1; j <= 7; j++) {
      frusta +=
          m3(
              LogRules.coneFrustum()
                  .volume(
                      org.mensuration.log.Log.of(
                          inches(2 * j), inches(2 * j - 2), lengths.get(j - 1))));
    }
    assertThat(m3(StemVolumes.heightAccumulation(lengths, inches(2))))
        .isCloseTo(frusta, within(1e-13));
    assertThatThrownBy(() -> StemVolumes.heightAccumulation(List.of(), inches(2)))
        .hasMessageContaining("no lengths");
    assertThatThrownBy(() -> StemVolumes.heightAccumulation(List.of(feet(-3)), inches(2)))
        .hasMessageContaining("length 1 from the tip is -3.0 ft");
  }

  @Test
  void formsAgreeWithTheirFormulas() {
    Quantity<Volume> v = cubicMetres(1.35);
    Quantity<Length> d = centimetres(40);
    Quantity<Length> h = metres(22);
    assertThat(StemForms.formFactor(v, d, h)).isEqualTo(apply("stem/form-factor", 1.35, 40, 22));
    assertThat(StemForms.formFactorHohenadl(v, d, h))
        .isEqualTo(apply("stem/form-factor-hohenadl", 1.35, 40, 22));
    assertThat(StemForms.formFactorOnBase(v, d, h))
        .isEqualTo(apply("stem/form-factor-absolute", 1.35, 40, 22));
    assertThat(StemForms.formFactorAboveBreastHeight(v, d, h, metres(1.3)))
        .isEqualTo(apply("stem/form-factor-absolute-above", 1.35, 40, 22, 1.3));
    assertThat(StemForms.formQuotient(centimetres(26), d)).isEqualTo(0.65);
    assertThat(StemForms.formQuotientHohenadl(centimetres(26), d)).isEqualTo(0.65);
    assertThat(in(StemForms.absoluteQuotientHeight(metres(24), metres(1.3)), METRE))
        .isEqualTo(12.65);
    assertThat(StemForms.girardFormClass(inches(17.08), inches(21.9)))
        .isCloseTo(77.99, within(0.005));
    assertThatThrownBy(() -> StemForms.formFactor(v, centimetres(0), h))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("stem/form-factor");
  }
}
