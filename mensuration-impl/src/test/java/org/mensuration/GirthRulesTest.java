package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.cubicMetres;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;

import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.log.Log;
import org.mensuration.log.LogReadings;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.quantity.LogScale;
import org.mensuration.units.ForestUnits;

class GirthRulesTest {
  @Test
  void hoppusFeetStandForMoreCubicFeet() {
    assertThat(in(GirthRules.solidVolumeOfHoppus(50), ForestUnits.CUBIC_METRE))
        .isCloseTo(1.8027, within(5e-5)); // a Hoppus ton
    assertThat(GirthRules.hoppusFeet(cubicMetres(1))).isCloseTo(27.736074, within(5e-7));
    assertThat(GirthRules.hoppusFeet(GirthRules.solidVolumeOfHoppus(12)))
        .isCloseTo(12, within(1e-14));
    assertThatThrownBy(() -> GirthRules.solidVolumeOfHoppus(-1))
        .isInstanceOf(OutOfDomainException.class);
  }

  @Test
  void squaredTimberIsAPrismoid() {
    // 32 by 20 and 16 by 8 inches, 25 feet: 61 1/9 and 58 1/3 cubic feet.
    assertThat(
            in(
                GirthRules.squaredTimber(inches(32), inches(20), inches(16), inches(8), feet(25)),
                ForestUnits.CUBIC_FOOT))
        .isCloseTo(550 / 9.0, within(1e-12));
    assertThat(
            in(
                GirthRules.squaredTimberByMeanSection(
                    inches(32), inches(20), inches(16), inches(8), feet(25)),
                ForestUnits.CUBIC_FOOT))
        .isCloseTo(175 / 3.0, within(1e-12));
    assertThatThrownBy(
            () ->
                GirthRules.squaredTimber(inches(32), inches(-20), inches(16), inches(8), feet(25)))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("b = -20 in");
  }

  private static double formula(String id, double... inputs) {
    return Catalogues.standard().formula(id).apply(inputs);
  }

  private static LogReadings girth(double girthIn, double lengthFt) {
    return LogReadings.girth(inches(girthIn), feet(lengthFt));
  }

  @Test
  void girthRulesAgreeWithTheirFormulas() {
    LogReadings log = girth(50, 15);
    assertThat(GirthRules.hoppus().scale(log).amount()).isEqualTo(formula("log/hoppus", 50, 15));
    assertThat(GirthRules.hoppus().scale(log).unit()).isEqualTo("hoppus_ft3");
    assertThat(GirthRules.fifthGirth().scale(log).amount())
        .isEqualTo(formula("log/fifth-girth", 50, 15));
    assertThat(GirthRules.quarterGirth113().scale(log).amount())
        .isEqualTo(formula("log/quarter-girth-113", 50, 15));
    assertThat(GirthRules.cylinderTable().scale(log).amount())
        .isEqualTo(formula("log/girth-cylinder-table", 50, 15));
    LogReadings metric = LogReadings.girth(metres(2), metres(10));
    assertThat(GirthRules.fifthDeducted().scale(metric).amount())
        .isEqualTo(formula("log/fifth-deducted", 2, 10));
    assertThat(GirthRules.sixthDeducted().scale(metric).amount())
        .isEqualTo(formula("log/sixth-deducted", 2, 10));
    assertThat(GirthRules.quarterGirthMetric().scale(metric).amount()).isEqualTo(2.5);
    Log timber = Log.of(inches(12), feet(16));
    assertThat(GirthRules.twoThirds().scale(timber).amount())
        .isEqualTo(formula("log/two-thirds", 12, 16));
    assertThat(GirthRules.inscribedSquare().scale(timber).amount())
        .isEqualTo(formula("log/inscribed-square", 12, 16));
  }

  @Test
  void theGirthOfARoundLogIsThatOfItsDiameter() {
    Log log = Log.ofMiddle(centimetres(40), metres(6));
    double girth = formula("diameter/girth-of-circle", 40);
    assertThat(GirthRules.fifthDeducted().scale(log).amount())
        .isEqualTo(formula("log/fifth-deducted", girth / 100, 6));
  }

  @Test
  void feetInchesAndPartsAreTwelfths() {
    LogScale scale = GirthRules.fifthGirth().scale(girth(80, 49 / 3.0));
    assertThat(GirthRules.feetInchesParts(scale)).isEqualTo("58 ft 0 in 10 pts 8''");
    assertThat(GirthRules.feetInchesParts(GirthRules.fifthGirth().scale(girth(95, 25))))
        .isEqualTo("125 ft 4 in 2 pts 0''");
    assertThat(GirthRules.feetInchesParts(GirthRules.hoppus().scale(girth(48, 6.5))))
        .isEqualTo("6 ft 6 in 0 pts 0''");
    LogScale metric = LogConventions.jas().scale(Log.of(centimetres(30), metres(4)));
    assertThatThrownBy(() -> GirthRules.feetInchesParts(metric))
        .hasMessageContaining("wanted a scale in cubic feet");
    LogScale huge = new LogScale("x", 2e9, "ft3", BarkBasis.UNKNOWN);
    assertThatThrownBy(() -> GirthRules.feetInchesParts(huge))
        .hasMessage("feet, inches and parts of 2.0E9 ft3, allowed [0, 50000] ft3");
  }
}
