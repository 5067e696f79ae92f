package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
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
import org.mensuration.log.Log;
import org.mensuration.log.LogWarning;
import org.mensuration.log.MeasuredVolume;
import org.mensuration.log.SolidRule;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.units.ForestUnits;

/** Logs whose readings do not fall from the large end to the small. */
class UntidyLogsTest {
  private static final Log ENDS = Log.of(centimetres(40), centimetres(30), metres(5));

  private static Log middle(double diameter) {
    return ENDS.withMiddle(centimetres(diameter));
  }

  private static double volumeOf(Quantity<Volume> volume) {
    return in(volume, ForestUnits.CUBIC_METRE);
  }

  @Test
  void aTidyLogHasNoWarning() {
    MeasuredVolume measured = LogRules.newton().measure(middle(35).withBark(BarkBasis.UNDER));
    assertThat(measured.warnings()).isEmpty();
    assertThat(measured.bark()).isEqualTo(BarkBasis.UNDER);
    assertThat(measured.rule()).isEqualTo("Newton volume");
    assertThat(volumeOf(measured.volume()))
        .isEqualTo(LogRules.newton().formula().apply(40, 35, 30, 5));
  }

  @Test
  void aWhorlAboveTheLargeEndIsComputedWithAWarning() {
    MeasuredVolume measured = LogRules.newton().measure(middle(41.5));
    assertThat(measured.warnings())
        .containsExactly(
            new LogWarning(
                "middle",
                "the middle of 41.50 cm is larger than the large end of 40.00 cm; computed as"
                    + " measured"));
    assertThat(measured.warnings().get(0)).hasToString(measured.warnings().get(0).message());
    assertThat(volumeOf(measured.volume()))
        .isEqualTo(LogRules.newton().formula().apply(40, 41.5, 30, 5));
    assertThat(LogRules.newton().volume(middle(41.5))).isEqualTo(measured.volume());
  }

  @Test
  void aMiddleBelowTheSmallEndIsComputedWithAWarning() {
    assertThat(LogRules.huber().measure(middle(29)).warnings())
        .extracting(LogWarning::message)
        .containsExactly(
            "the small end of 30.00 cm is larger than the middle of 29.00 cm; computed as"
                + " measured");
  }

  @Test
  void beyondTheLimitARuleRefusesAndNamesValueAndLimit() {
    assertThat(LogRules.newton().measure(middle(44)).warnings()).hasSize(1);
    assertThatThrownBy(() -> LogRules.newton().volume(middle(44.1)))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining(
            "log/newton: diameter of the middle = 44.1 cm, allowed at most 44.00 cm, a tenth or 1"
                + " cm above the large end of 40.00 cm (Newton volume; ");
    assertThatThrownBy(() -> LogRules.newton().measure(middle(44.1)))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> LogRules.newton().volume(middle(27)))
        .hasMessageContaining(
            "diameter of the small end = 30 cm, allowed at most 29.70 cm, a tenth or 1 cm above the"
                + " middle of 27.00 cm");
  }

  @Test
  void thinLogsMayMissByACentimetre() {
    Log thin = Log.of(centimetres(5), centimetres(5), metres(2));
    assertThat(LogRules.huber().measure(thin.withMiddle(centimetres(6))).warnings()).hasSize(1);
    assertThatThrownBy(() -> LogRules.huber().volume(thin.withMiddle(centimetres(6.1))))
        .hasMessageContaining("allowed at most 6.00 cm");
  }

  @Test
  void buttSwellIsNoOddity() {
    Log butt = Log.of(centimetres(95), centimetres(45), metres(4)).withMiddle(centimetres(48));
    for (SolidRule rule : new SolidRule[] {LogRules.newton(), LogRules.huber()}) {
      assertThat(rule.measure(butt).warnings()).isEmpty();
    }
  }

  @Test
  void aSmallEndAboveTheLargeIsRefusedByEveryRule() {
    Log reversed = Log.of(centimetres(30), centimetres(31), metres(5));
    assertThatThrownBy(() -> LogRules.smalian().volume(reversed))
        .hasMessageContaining("log/smalian: d_s = 31 cm, allowed d_s ≤ d_l");
    assertThatThrownBy(() -> LogRules.smallEndCylinder().volume(reversed))
        .hasMessageContaining(
            "log/small-end-cylinder: diameter of the small end = 31 cm, allowed at most that of the"
                + " large end, 30.00 cm");
    assertThatThrownBy(() -> LogRules.huber().measure(reversed.withMiddle(centimetres(30.5))))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("at most that of the large end");
  }

  @Test
  void aNumberThatIsNoneNeverPassesEvenIfTheRuleDoesNotReadIt() {
    Quantity<Length> nan = Held.of(Double.NaN, ForestUnits.CENTIMETRE);
    assertThatThrownBy(() -> LogRules.smalian().volume(ENDS.withMiddle(nan)))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("diameter of the middle = NaN cm");
    assertThatThrownBy(
            () -> LogRules.huber().volume(Log.of(nan, metres(3)).withMiddle(centimetres(3))))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(
            () ->
                LogRules.huber()
                    .volume(Log.of(nan, centimetres(3), metres(3)).withMiddle(centimetres(3))))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(
            () ->
                LogRules.huber()
                    .volume(Log.ofMiddle(centimetres(3), metres(3)).withDiameterAt(0.25, nan)))
        .hasMessageContaining("point at 0.25 of the length = NaN cm, allowed [0, ∞) cm");
    assertThatThrownBy(
            () ->
                LogRules.huber()
                    .volume(
                        Log.ofMiddle(centimetres(3), metres(3))
                            .withDiameterAt(0.75, centimetres(-1))))
        .isInstanceOf(OutOfDomainException.class);
  }

  @Test
  void readingsBetweenTheEndsAreLookedAtInTheirOrder() {
    Log log =
        Log.ofMiddle(centimetres(38), metres(6))
            .withDiameterAt(0.75, centimetres(36))
            .withDiameterAt(0.25, centimetres(37.5));
    assertThat(LogRules.simony().measure(log).warnings())
        .extracting(LogWarning::reading)
        .containsExactly("middle");
    assertThat(
            LogRules.simony()
                .measure(log.withDiameterAt(0.25, centimetres(40)).withMiddle(centimetres(35.5)))
                .warnings())
        .extracting(LogWarning::message)
        .containsExactly(
            "the point at 0.75 of the length of 36.00 cm is larger than the middle of 35.50 cm;"
                + " computed as measured");
    assertThat(
            LogRules.hossfeld()
                .measure(
                    Log.of(centimetres(30), metres(4)).withDiameterAt(0.3333, centimetres(29.5)))
                .warnings())
        .hasSize(1);
  }

  @Test
  void readingsThatDifferByConversionOnlyAreTheSame() {
    Log log =
        Log.of(inches(11.3), centimetres(20), feet(12))
            .withMiddle(centimetres(Math.nextUp(11.3 * 2.54)));
    assertThat(LogRules.newton().measure(log).warnings()).isEmpty();
  }

  @Test
  void anotherPartysRuleMeasuresWithoutLookingForOddities() {
    SolidRule own =
        new SolidRule() {
          @Override
          public Formula formula() {
            return LogRules.huber().formula();
          }

          @Override
          public Quantity<Volume> volume(Log log) {
            return cubicMetres(2);
          }
        };
    MeasuredVolume measured = own.measure(middle(80));
    assertThat(measured.warnings()).isEmpty();
    assertThat(measured.rule()).isEqualTo("Huber volume");
    assertThat(List.of(measured)).containsExactly(own.measure(middle(30)));
  }
}
