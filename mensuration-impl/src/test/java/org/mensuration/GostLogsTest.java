package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.metres;

import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.log.CubicConvention;
import org.mensuration.log.Log;
import org.mensuration.log.LogReadings;
import org.mensuration.log.RoundingStep;

/** GOST 2708-75 beyond its first table, and from diameters as read. */
class GostLogsTest {
  private static Log log(double smallCm, double lengthM) {
    return Log.of(centimetres(smallCm), metres(lengthM));
  }

  private static Log parted(double smallCm, double cutCm, double lengthM) {
    return log(smallCm, lengthM).withMiddle(centimetres(cutCm));
  }

  private static double scale(CubicConvention rule, Log log) {
    return rule.scale(log).amount();
  }

  @Test
  void aLongLogIsTheSumOfTwoNearlyEqualParts() {
    CubicConvention rule = LogConventions.gost2708();
    // 14.5 m: 7 m above the cut and 7.5 m at the butt.
    assertThat(scale(rule, parted(20, 26, 14.5)))
        .isCloseTo(scale(rule, log(20, 7)) + scale(rule, log(26, 7.5)), within(1e-15));
    assertThat(scale(rule, parted(20, 26, 14)))
        .isCloseTo(scale(rule, log(20, 7)) + scale(rule, log(26, 7)), within(1e-15));
    assertThat(scale(rule, parted(20, 20, 14))).isCloseTo(2 * scale(rule, log(20, 7)), within(0.0));
    assertThat(rule.steps(LogReadings.of(parted(20, 26, 14.5))))
        .containsExactly(new RoundingStep("upper part", 7.25, 7, "m"));
    assertThat(rule.roundings()).containsExactly("over 13.5 m two parts, the upper down to 0.5 m");
  }

  @Test
  void whatIsMissingFromALongLogIsNamed() {
    CubicConvention rule = LogConventions.gost2708();
    assertThatThrownBy(() -> rule.scale(log(20, 14)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "GOST 2708-75 (log/gost2708) needs the diameter where a log over 13.5 m is parted,"
                + " given as its middle; the log of 14.0 m is then the sum of two nearly equal"
                + " parts");
    assertThatThrownBy(() -> rule.scale(parted(20, 18, 14)))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("d = 18 cm, allowed at least the small end, 20");
    assertThatThrownBy(() -> rule.scale(parted(20, 25, 14)))
        .hasMessageContaining("d = 25 cm, allowed as printed in");
    // Table 3 of the standard, of which no cell was read.
    assertThatThrownBy(() -> rule.scale(parted(20, 26, 13.5)))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("L = 13.5 m, allowed [1, 9.5] m");
    assertThatThrownBy(() -> rule.scale(parted(20, 26, 14.3))).hasMessageContaining("L = 7.3");
  }

  @Test
  void readingsGoToTheirClasses() {
    CubicConvention rule = LogConventions.gost2708Readings();
    CubicConvention table = LogConventions.gost2708();
    assertThat(scale(rule, log(11.5, 4))).isEqualTo(scale(table, log(12, 4)));
    assertThat(scale(rule, log(12.4, 4))).isEqualTo(scale(table, log(12, 4)));
    assertThat(scale(rule, log(13.5, 4))).isEqualTo(scale(table, log(14, 4)));
    assertThat(scale(rule, log(14.9, 4))).isEqualTo(scale(table, log(14, 4)));
    assertThat(scale(rule, log(15, 4))).isEqualTo(scale(table, log(16, 4)));
    assertThat(scale(rule, log(16.9, 4))).isEqualTo(scale(table, log(16, 4)));
    assertThat(scale(rule, parted(20.3, 25.8, 14))).isEqualTo(scale(table, parted(20, 26, 14)));
    assertThatThrownBy(() -> rule.scale(log(12.6, 4))).hasMessageContaining("d = 13 cm");
    assertThat(rule.roundings())
        .first()
        .isEqualTo("each small end diameter to the nearest 1 cm, from 14 cm to 2 cm");
    assertThatThrownBy(() -> rule.scale(log(20, 4)).plus(table.scale(log(20, 4))))
        .hasMessageContaining("GOST 2708-75, diameters classed");
  }

  @Test
  void betweenTheCellsALongLogIsPartedToo() {
    CubicConvention rule = LogConventions.gost2708Interpolated();
    assertThat(scale(rule, parted(21, 25, 14)))
        .isCloseTo(scale(rule, log(21, 7)) + scale(rule, log(25, 7)), within(1e-15));
  }
}
