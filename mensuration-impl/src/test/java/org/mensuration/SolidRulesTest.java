package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.log.Log;
import org.mensuration.log.SolidRule;
import org.mensuration.units.ForestUnits;

/** Every solid rule of the front door agrees with its formula and asks for what it needs. */
class SolidRulesTest {
  private static final Log ENDS = Log.of(centimetres(46), centimetres(30), metres(5));
  private static final Log LOG =
      ENDS.withMiddle(centimetres(39))
          .withDiameterAt(0.25, centimetres(42))
          .withDiameterAt(1.0 / 3, centimetres(41))
          .withDiameterAt(2.0 / 3, centimetres(36))
          .withDiameterAt(0.75, centimetres(35));

  private static double volume(SolidRule rule, Log log) {
    assertThat(rule.measure(log).volume()).isEqualTo(rule.volume(log));
    assertThat(rule.measure(log).rule()).isEqualTo(rule.formula().title());
    return in(rule.volume(log), ForestUnits.CUBIC_METRE);
  }

  private static void agrees(SolidRule rule, String id, double... inputs) {
    assertThat(rule.formula().id()).isEqualTo(id);
    assertThat(volume(rule, LOG)).as(id).isEqualTo(rule.formula().apply(inputs));
  }

  @Test
  void everyRuleAgreesWithItsFormula() {
    agrees(LogRules.huber(), "log/huber", 39, 5);
    agrees(LogRules.smalian(), "log/smalian", 46, 30, 5);
    agrees(LogRules.newton(), "log/newton", 46, 39, 30, 5);
    agrees(LogRules.coneFrustum(), "log/cone-frustum", 46, 30, 5);
    agrees(LogRules.neiloidFrustum(), "log/neiloid-frustum", 46, 30, 5);
    agrees(LogRules.meanDiameter(), "log/mean-diameter", 46, 30, 5);
    agrees(LogRules.bruceButt(), "log/bruce-butt", 46, 30, 5);
    agrees(LogRules.hossfeld(), "log/hossfeld", 41, 30, 5);
    agrees(LogRules.simony(), "log/simony", 42, 39, 35, 5);
    agrees(LogRules.threeEighths(), "log/three-eighths", 46, 41, 36, 30, 5);
    agrees(LogRules.smallEndCylinder(), "log/small-end-cylinder", 30, 5);
    agrees(LogRules.solidFrustum(1.5), "log/solid-frustum", 46, 30, 5, 1.5);
  }

  @Test
  void centroidWantsItsOwnPlace() {
    double share = LogRules.centroidShare(ENDS);
    double position = Catalogues.standard().formula("log/centroid-position").apply(46, 30, 5);
    assertThat(share).isCloseTo(1 - position / 5, within(1e-15)).isBetween(0.29, 0.5);
    Log log = ENDS.withDiameterAt(share, centimetres(40));
    assertThat(volume(LogRules.centroid(), log))
        .isEqualTo(LogRules.centroid().formula().apply(46, 40, 30, 5));
    assertThatThrownBy(() -> LogRules.centroid().volume(ENDS))
        .hasMessage(
            "Centroid rule (log/centroid) needs the diameter of the point at "
                + Math.rint(share * 1000) / 1000
                + " of the length");
    // A cylinder wants its middle; it is then Newton's rule.
    Log cylinder = Log.of(centimetres(30), centimetres(30), metres(4));
    assertThat(LogRules.centroidShare(cylinder)).isCloseTo(0.5, within(1e-15));
    assertThat(volume(LogRules.centroid(), cylinder.withMiddle(centimetres(30))))
        .isCloseTo(volume(LogRules.huber(), cylinder.withMiddle(centimetres(30))), within(1e-15));
    assertThat(LogRules.centroid().measure(log.withMiddle(centimetres(41))).warnings()).hasSize(1);
  }

  @Test
  void sorensonConvertsRatherThanTakingCentimetresForInches() {
    double cubicFeet = LogRules.sorenson().formula().apply(12, 16);
    assertThat(in(LogRules.sorenson().volume(Log.of(inches(12), feet(16))), ForestUnits.CUBIC_FOOT))
        .isEqualTo(cubicFeet);
    assertThat(
            in(
                LogRules.sorenson().volume(Log.of(centimetres(30.48), metres(4.8768))),
                ForestUnits.CUBIC_FOOT))
        .isCloseTo(cubicFeet, within(1e-13));
    // 0.05 in per ft is 0.41667 cm per m: half way up, 0.41667 · 4.8768 / 2 is not the taper meant.
    double middle = 12 + 0.05 * 16;
    assertThat(cubicFeet).isCloseTo(Math.PI / 576 * middle * middle * 16, within(1e-13));
  }

  @Test
  void missingReadingsAreNamed() {
    for (SolidRule rule : List.of(LogRules.threeEighths(), LogRules.hossfeld())) {
      assertThatThrownBy(() -> rule.volume(ENDS))
          .hasMessage(
              rule.formula().title()
                  + " ("
                  + rule.formula().id()
                  + ") needs the diameter of the point a third from the large end");
    }
    assertThatThrownBy(
            () -> LogRules.threeEighths().volume(ENDS.withDiameterAt(1.0 / 3, centimetres(40))))
        .hasMessageContaining("point two thirds from the large end");
    assertThatThrownBy(() -> LogRules.simony().volume(ENDS))
        .hasMessageContaining("point a quarter from the large end");
    assertThatThrownBy(
            () ->
                LogRules.simony()
                    .volume(ENDS.withDiameterAt(0.25, centimetres(40)).withMiddle(centimetres(39))))
        .hasMessageContaining("point three quarters from the large end");
    Log small = Log.of(centimetres(30), metres(5));
    assertThatThrownBy(() -> LogRules.solidFrustum(2).volume(small))
        .hasMessage(
            "Frustum of a solid of revolution (log/solid-frustum) needs the diameter of the large"
                + " end");
    assertThatThrownBy(() -> LogRules.centroidShare(small)).hasMessageContaining("large end");
  }

  @Test
  void anExponentOutsideIsRefusedWhenTheRuleIsMade() {
    for (double exponent : new double[] {0, 0.09, 4.1, Double.NaN}) {
      assertThatThrownBy(() -> LogRules.solidFrustum(exponent))
          .isInstanceOf(OutOfDomainException.class)
          .hasMessageContaining("allowed [0.1, 4]");
    }
    assertThat(LogRules.solidFrustum(2)).isEqualTo(LogRules.solidFrustum(2));
  }

  @Test
  void wholePowersAreTheNamedSolids() {
    double cone = volume(LogRules.coneFrustum(), LOG);
    assertThat(volume(LogRules.solidFrustum(1), LOG))
        .isCloseTo(volume(LogRules.smalian(), LOG), within(1e-15));
    assertThat(volume(LogRules.solidFrustum(2), LOG)).isCloseTo(cone, within(1e-15));
    assertThat(volume(LogRules.solidFrustum(3), LOG))
        .isCloseTo(volume(LogRules.neiloidFrustum(), LOG), within(1e-15));
    assertThat(volume(LogRules.solidFrustum(1.5), LOG)).isBetween(cone, 1.01 * cone);
    assertThat(LogRules.solidFrustum(2).measure(LOG.withMiddle(centimetres(42.5))).warnings())
        .hasSize(1);
  }
}
