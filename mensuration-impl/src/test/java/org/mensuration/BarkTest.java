package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.cubicMetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.log.BarkRule;
import org.mensuration.log.Log;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.units.ForestUnits;

class BarkTest {
  private static double formula(String id, double... inputs) {
    return Catalogues.standard().formula(id).apply(inputs);
  }

  @Test
  void typedCallsAgreeWithTheirFormulas() {
    assertThat(in(Bark.inside(centimetres(40), 0.91), ForestUnits.CENTIMETRE))
        .isEqualTo(formula("bark/inside-from-factor", 40, 0.91));
    assertThat(in(Bark.inside(centimetres(40), centimetres(1.5)), ForestUnits.CENTIMETRE))
        .isEqualTo(37);
    assertThat(in(Bark.girthInside(centimetres(125.7), centimetres(1.5)), ForestUnits.CENTIMETRE))
        .isEqualTo(formula("bark/girth-inside", 125.7, 1.5));
    assertThat(in(Bark.volumeInside(cubicMetres(2), 0.9), ForestUnits.CUBIC_METRE))
        .isEqualTo(formula("bark/volume-inside", 2, 0.9));
    assertThat(Bark.volumeShare(0.9)).isEqualTo(formula("bark/volume-share", 0.9));
    assertThat(Bark.areaSharePercent(centimetres(40), centimetres(3)))
        .isEqualTo(formula("bark/area-share", 30, 40));
    assertThat(in(Bark.inchAndHalfInFoot(inches(12)), ForestUnits.INCH)).isEqualTo(1.5);
    assertThat(in(Bark.twelfthOfQuarterGirth(inches(18)), ForestUnits.INCH)).isEqualTo(1.5);
  }

  @Test
  void aLogLosesItsBarkAtEveryReading() {
    Log over =
        Log.of(centimetres(44), centimetres(31), metres(5))
            .withMiddle(centimetres(38))
            .withDiameterAt(0.25, centimetres(40))
            .withBark(BarkBasis.OVER);
    // 2 cm up to 29 cm of oak, 3 cm above.
    assertThat(Bark.customaryOak().inside(over))
        .isEqualTo(
            Log.of(centimetres(41), centimetres(28), metres(5))
                .withMiddle(centimetres(35))
                .withDiameterAt(0.25, centimetres(37))
                .withBark(BarkBasis.UNDER));
    assertThat(
            Bark.fvaSpruce()
                .inside(Log.ofMiddle(centimetres(50), metres(4)).withBark(BarkBasis.OVER))
                .middle())
        .contains(Bark.fvaSpruce().inside(centimetres(50)));
    for (BarkBasis basis : List.of(BarkBasis.UNDER, BarkBasis.UNKNOWN)) {
      assertThatThrownBy(() -> Bark.customaryOak().inside(over.withBark(basis)))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageEndingWith(
              "(bark/customary-oak) takes logs over bark, this one is " + basis.words());
    }
  }

  @Test
  void rulesBySpeciesAgreeWithTheirFormulas() {
    Map<String, BarkRule> rules = new LinkedHashMap<>();
    rules.put("bark/csn-spruce", Bark.csnSpruce());
    rules.put("bark/csn-pine", Bark.csnPine());
    rules.put("bark/csn-beech", Bark.csnBeech());
    rules.put("bark/fva-spruce", Bark.fvaSpruce());
    rules.put("bark/fva-fir", Bark.fvaFir());
    rules.put("bark/fva-pine", Bark.fvaPine());
    rules.put("bark/customary-spruce", Bark.customarySpruce());
    rules.put("bark/customary-pine", Bark.customaryPine());
    rules.put("bark/customary-oak", Bark.customaryOak());
    rules.put("bark/customary-beech", Bark.customaryBeech());
    rules.forEach(
        (id, rule) -> {
          assertThat(rule.formula().id()).isEqualTo(id);
          for (double diameter : new double[] {8, 29, 29.5, 32, 32.5, 49, 49.5, 60}) {
            double printed = formula(id, diameter);
            double centimetres = id.contains("fva") ? printed / 10 : printed;
            assertThat(in(rule.doubleBark(centimetres(diameter)), ForestUnits.CENTIMETRE))
                .as(id)
                .isCloseTo(centimetres, within(1e-15 * 10));
            assertThat(in(rule.inside(centimetres(diameter)), ForestUnits.CENTIMETRE))
                .as(id)
                .isCloseTo(diameter - centimetres, within(1e-13));
          }
        });
  }

  @Test
  void customaryDeductionsChangeAboveTheirLimit() {
    assertThat(customary(Bark.customarySpruce(), 32, 32.5)).isEqualTo("1.0 2.0");
    assertThat(customary(Bark.customaryPine(), 32, 32.5)).isEqualTo("2.0 3.0");
    assertThat(customary(Bark.customaryOak(), 29, 29.5)).isEqualTo("2.0 3.0");
    assertThat(customary(Bark.customaryBeech(), 49, 49.5)).isEqualTo("1.0 2.0");
  }

  private static String customary(BarkRule rule, double upto, double above) {
    return in(rule.doubleBark(centimetres(upto)), ForestUnits.CENTIMETRE)
        + " "
        + in(rule.doubleBark(centimetres(above)), ForestUnits.CENTIMETRE);
  }

  @Test
  void barkThickerThanTheStemIsRefused() {
    assertThatThrownBy(() -> Bark.customarySpruce().inside(centimetres(0.5)))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("b ≤ D/2");
    assertThatThrownBy(() -> Bark.inside(centimetres(4), centimetres(2.1)))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> Bark.inside(centimetres(4), 1.01))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("k = 1.01, allowed (0, 1]");
    assertThatThrownBy(() -> Bark.csnSpruce().doubleBark(Held.of(Double.NaN, ForestUnits.METRE)))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> Bark.volumeShare(Double.NaN)).isInstanceOf(OutOfDomainException.class);
  }

  @Property
  void girthAndDiameterLoseTheSameBark(
      @ForAll @DoubleRange(min = 5, max = 150) double diameter,
      @ForAll @DoubleRange(min = 0, max = 2) double thickness) {
    double inside =
        in(Bark.inside(centimetres(diameter), centimetres(thickness)), ForestUnits.CENTIMETRE);
    double girth =
        in(
            Bark.girthInside(centimetres(Math.PI * diameter), centimetres(thickness)),
            ForestUnits.CENTIMETRE);
    assertThat(girth / Math.PI).isCloseTo(inside, within(1e-12));
  }

  @Property
  void theShareOfVolumeIsWhatIsNotInside(@ForAll @DoubleRange(min = 0.01, max = 1) double factor) {
    double inside = in(Bark.volumeInside(cubicMetres(1), factor), ForestUnits.CUBIC_METRE);
    assertThat(Bark.volumeShare(factor)).isCloseTo(1 - inside, within(1e-15));
  }

  @Test
  void otherUnitsGiveTheSame() {
    assertThat(in(Bark.csnSpruce().doubleBark(metres(0.3)), ForestUnits.CENTIMETRE))
        .isEqualTo(in(Bark.csnSpruce().doubleBark(centimetres(30)), ForestUnits.CENTIMETRE));
  }
}
