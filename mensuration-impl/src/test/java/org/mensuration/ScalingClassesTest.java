package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.FOOT;
import static org.mensuration.units.ForestUnits.INCH;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;

import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.mensuration.log.Log;
import org.mensuration.scaling.LogScaler;
import org.mensuration.scaling.LogToScale;
import org.mensuration.scaling.Minimums;
import org.mensuration.scaling.ScaledLog;
import org.mensuration.scaling.ScalingConvention;
import org.mensuration.scaling.ScalingStep;
import org.mensuration.scaling.SizeClass;
import org.mensuration.scaling.StepRounding;

/** Classes of diameter and length, trim, minimums, and what becomes of an exact half. */
class ScalingClassesTest {
  private static ScalingConvention inchAndFoot(StepRounding rounding) {
    return ScalingConvention.of(
        "test", new SizeClass(inches(1), rounding), SizeClass.full(feet(1)));
  }

  private static LogScaler doyle(ScalingConvention convention) {
    return Scaling.scaler(convention, LogRules.doyle());
  }

  private static double small(ScaledLog scaled) {
    return in(scaled.segments().get(0).log().small().get(), INCH);
  }

  private static double length(ScaledLog scaled) {
    return in(scaled.segments().get(0).log().length(), FOOT);
  }

  @Test
  void eachRoundingDoesAsItSays() {
    double[][] expected = {
      // 10.4, 10.5, 10.6 in
      {10, 10, 10}, {11, 11, 11}, {10, 11, 11}, {10, 10, 11}, {10, 11, 11}, {10, 10, 11}
    };
    StepRounding[] roundings = StepRounding.values();
    for (int i = 0; i < expected.length; i++) {
      LogScaler scaler = doyle(inchAndFoot(roundings[i]));
      double[] readings = {10.4, 10.5, 10.6};
      for (int j = 0; j < readings.length; j++) {
        assertThat(small(scaler.scale(Log.of(inches(readings[j]), feet(16)))))
            .as(roundings[i] + " of " + readings[j])
            .isEqualTo(expected[i][j]);
      }
    }
  }

  @Test
  void anUnsettledHalfIsRefusedAndNothingElse() {
    LogScaler scaler = doyle(Scaling.vermont());
    assertThat(small(scaler.scale(Log.of(inches(10.49), feet(12))))).isEqualTo(10);
    assertThat(small(scaler.scale(Log.of(inches(10.51), feet(12))))).isEqualTo(11);
    assertThatThrownBy(() -> scaler.scale(Log.of(inches(10.5), feet(12))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "Vermont: small end of 10.5 in lies half way between two classes of 1.0 in; the source"
                + " does not settle it, choose a rounding of halves");
  }

  @Test
  void halvesGoByTurnsFromLogToLog() {
    List<LogToScale> logs =
        List.of(
            LogToScale.of(Log.of(inches(10.5), feet(16))),
            LogToScale.of(Log.of(inches(11.2), feet(16))),
            LogToScale.of(Log.of(inches(12.5), feet(16))),
            LogToScale.of(Log.of(inches(13.5), feet(16))));
    LogScaler up = doyle(inchAndFoot(StepRounding.HALF_ALTERNATING_UP_FIRST));
    LogScaler down = doyle(inchAndFoot(StepRounding.HALF_ALTERNATING_DOWN_FIRST));
    assertThat(up.scaleAll(logs).stream().map(ScalingClassesTest::small))
        .containsExactly(11.0, 11.0, 12.0, 14.0);
    assertThat(down.scaleAll(logs).stream().map(ScalingClassesTest::small))
        .containsExactly(10.0, 11.0, 13.0, 13.0);
    // A call of its own begins anew.
    assertThat(small(up.scale(Log.of(inches(10.5), feet(16))))).isEqualTo(11);
    assertThat(small(up.scale(Log.of(inches(12.5), feet(16))))).isEqualTo(13);
  }

  @Test
  void theRefusalOfOneOfManySaysWhich() {
    List<LogToScale> logs =
        List.of(
            LogToScale.of(Log.of(inches(10), feet(16))),
            LogToScale.of(Log.of(inches(3), feet(16))));
    assertThatThrownBy(() -> doyle(inchAndFoot(StepRounding.HALF_UP)).scaleAll(logs))
        .hasMessageStartingWith("log 2: board/doyle: D = 3 in, allowed [4, ∞) in");
  }

  @Test
  void idahoReadsTenFromNineAndAHalfAndNothingBelowItsMinimum() {
    LogScaler scaler = doyle(Scaling.idaho());
    assertThat(small(scaler.scale(Log.of(inches(9.5), feet(16))))).isEqualTo(10);
    assertThat(small(scaler.scale(Log.of(inches(10.49), feet(16))))).isEqualTo(10);
    assertThat(small(scaler.scale(Log.of(inches(10.5), feet(16))))).isEqualTo(11);
    assertThat(small(scaler.scale(Log.of(inches(5.51), feet(16))))).isEqualTo(6);
    assertThat(small(scaler.scale(Log.of(metres(5.51 * 0.0254), feet(16))))).isEqualTo(6);
    assertThatThrownBy(() -> scaler.scale(Log.of(inches(5.5), feet(16))))
        .hasMessage("Idaho: diameter of the small end is 5.5 in, allowed at least 5.51 in");
    assertThat(length(scaler.scale(Log.of(inches(10), feet(17.9))))).isEqualTo(16);
  }

  @Test
  void twoReadingsOfAButt() {
    // Readings as the supplement words them; the figures are worked from the words.
    assertThat(in(Scaling.ofTwoReadings(inches(20.5), inches(24), inches(1)), INCH)).isEqualTo(22);
    assertThat(in(Scaling.ofTwoReadings(inches(24), inches(20.5), inches(1)), INCH)).isEqualTo(22);
    assertThat(in(Scaling.ofTwoReadings(inches(20.5), inches(23.5), inches(1)), INCH))
        .isEqualTo(22);
    assertThat(in(Scaling.ofTwoReadings(inches(20.4), inches(21.6), inches(1)), INCH))
        .isEqualTo(21);
    assertThat(in(Scaling.ofTwoReadings(centimetres(50.8), inches(22), inches(1)), INCH))
        .isEqualTo(21);
    assertThatThrownBy(() -> Scaling.ofTwoReadings(inches(-1), inches(5), inches(1)))
        .hasMessageContaining("-1.0 in, allowed zero or more");
    assertThatThrownBy(() -> Scaling.ofTwoReadings(inches(5), inches(5), inches(0)))
        .hasMessageContaining("width of a class");
  }

  @Test
  void trimIsLeftOutBeforeTheLengthGoesToItsClass() {
    ScalingConvention convention = inchAndFoot(StepRounding.HALF_UP).withTrim(inches(4));
    ScaledLog scaled = doyle(convention).scale(Log.of(inches(14.2), feet(16 + 4 / 12.0)));
    assertThat(length(scaled)).isEqualTo(16);
    assertThat(scaled.gross().amount()).isEqualTo(100);
    assertThat(scaled.net()).isEqualTo(scaled.gross());
    assertThat(scaled.cull()).isFalse();
    assertThat(scaled.convention()).isEqualTo("test");
    assertThat(scaled.steps().stream().map(ScalingStep::what).collect(Collectors.toList()))
        .containsExactly("length less trim", "length to its class", "small end to its class");
    ScalingStep trim = scaled.steps().get(0);
    assertThat(trim.before()).isEqualTo(16 + 4 / 12.0);
    assertThat(trim.after()).isCloseTo(16, within(1e-14));
    assertThat(trim.unit()).isEqualTo("ft");
    assertThat(scaled.steps().get(2))
        .isEqualTo(new ScalingStep("small end to its class", 14.2, 14, "in"));
    // A quarter inch short of its trim, the log falls to the class below.
    assertThat(length(doyle(convention).scale(Log.of(inches(14), inches(16 * 12 + 3.75)))))
        .isEqualTo(15);
  }

  @Test
  void tooShortIsRefusedWithLengthAndLimit() {
    ScalingConvention convention = inchAndFoot(StepRounding.HALF_UP).withTrim(inches(4));
    assertThatThrownBy(() -> doyle(convention).scale(Log.of(inches(14), feet(1.2))))
        .hasMessage(
            "test: length is 1.2 ft, without trim and in its class 0.0 ft, allowed above zero");
    assertThatThrownBy(() -> doyle(convention).scale(Log.of(inches(14), inches(3))))
        .hasMessageContaining("in its class 0.0 ft, allowed above zero");
    LogScaler eight = doyle(convention.withMinimums(Minimums.none().withLength(feet(8))));
    assertThat(length(eight.scale(Log.of(inches(14), metres(2.54))))).isEqualTo(8);
    assertThatThrownBy(() -> eight.scale(Log.of(inches(14), feet(8.2))))
        .hasMessage(
            "test: length is 8.2 ft, without trim and in its class 7.0 ft, allowed at least 8.0"
                + " ft");
  }

  @Test
  void measurementsThatCannotBeAreRefused() {
    LogScaler scaler = doyle(inchAndFoot(StepRounding.HALF_UP));
    assertThatThrownBy(() -> scaler.scale(Log.ofMiddle(inches(14), feet(16))))
        .hasMessage("test needs the diameter of the small end");
    assertThatThrownBy(() -> scaler.scale(Log.of(inches(12), inches(13), feet(16))))
        .hasMessage(
            "test: diameter of the small end is 13.0 in, allowed at most that of the large end,"
                + " 12.0 in");
    assertThatThrownBy(() -> scaler.scale(Log.of(inches(-2), feet(16))))
        .hasMessage("test: diameter of the small end is -2.0 in, allowed zero or more");
    assertThat(small(scaler.scale(Log.of(metres(0.3048), inches(12), feet(16))))).isEqualTo(12);
    // Zero is a reading; what it means is for the rule to say.
    assertThatThrownBy(() -> scaler.scale(Log.of(inches(0), feet(16))))
        .hasMessageContaining("board/doyle: D = 0 in, allowed [4, ∞) in");
    assertThatThrownBy(() -> scaler.scale(Log.of(inches(14), feet(0))))
        .hasMessageContaining("test: length is 0.0 ft");
    assertThat(in(Scaling.ofTwoReadings(inches(0), inches(1), inches(1)), INCH)).isZero();
  }

  @Test
  void aMetricConventionKeepsItsUnits() {
    ScalingConvention metric =
        ScalingConvention.of("metric", SizeClass.full(centimetres(1)), SizeClass.full(metres(0.1)));
    ScaledLog scaled = doyle(metric).scale(Log.of(centimetres(35.9), metres(4.96)));
    assertThat(scaled.steps().get(0))
        .isEqualTo(new ScalingStep("length to its class", 4.96, 49 * 0.1, "m"));
    assertThat(scaled.steps().get(1))
        .isEqualTo(new ScalingStep("small end to its class", 35.9, 35, "cm"));
    assertThat(scaled.gross())
        .isEqualTo(LogRules.doyle().scale(Log.of(centimetres(35), metres(49 * 0.1))));
  }

  @Property
  void aClassIsNeverFartherThanItsRoundingAllows(
      @ForAll @DoubleRange(min = 5, max = 60) double diameter,
      @ForAll @DoubleRange(min = 1, max = 60) double feet) {
    ScaledLog scaled =
        doyle(inchAndFoot(StepRounding.HALF_UP)).scale(Log.of(inches(diameter), feet(feet)));
    assertThat(small(scaled)).isBetween(diameter - 0.5 - 1e-7, diameter + 0.5 + 1e-7);
    assertThat(length(scaled)).isBetween(feet - 1, feet + 1e-7);
    assertThat(scaled.gross())
        .isEqualTo(LogRules.doyle().scale(Log.of(inches(small(scaled)), feet(length(scaled)))));
  }

  @Test
  void everyWholeClassGivenInMetresScalesAlike() {
    for (ScalingConvention convention : Scaling.published()) {
      LogScaler scaler = doyle(convention.withMinimums(Minimums.none()));
      double trim = in(convention.trim(), FOOT);
      // Taper may put a cut on a half, which some conventions refuse.
      boolean refuses = convention.diameters().rounding() == StepRounding.HALF_REFUSED;
      double growth = refuses ? 0 : 8;
      for (int size = 1; size <= 200; size++) {
        double diameter = Math.max(4, size);
        Log natural = Log.of(inches(diameter + growth), inches(diameter), feet(size + 1 + trim));
        Log metric =
            Log.of(
                metres(in(inches(diameter + growth), METRE)),
                metres(in(inches(diameter), METRE)),
                metres(in(feet(size + 1 + trim), METRE)));
        assertThat(scaler.scale(metric).net())
            .as(convention.name() + " " + size)
            .isEqualTo(scaler.scale(natural).net());
      }
    }
  }
}
