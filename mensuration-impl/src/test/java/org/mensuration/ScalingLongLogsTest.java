package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mensuration.units.ForestUnits.FOOT;
import static org.mensuration.units.ForestUnits.INCH;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;

import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.mensuration.log.Log;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.scaling.LogScaler;
import org.mensuration.scaling.LongLogs;
import org.mensuration.scaling.ScaledLog;
import org.mensuration.scaling.ScaledSegment;
import org.mensuration.scaling.ScalingConvention;
import org.mensuration.scaling.ScalingStep;
import org.mensuration.scaling.SizeClass;
import org.mensuration.scaling.Split;
import org.mensuration.scaling.Taper;

/** How long logs are cut on paper and where the diameters at the cuts come from. */
class ScalingLongLogsTest {
  private static final ScalingConvention PLAIN =
      ScalingConvention.of("test", SizeClass.nearest(inches(1)), SizeClass.full(feet(1)));

  private static LogScaler doyle(LongLogs custom) {
    return Scaling.scaler(PLAIN.withLongLogs(custom), LogRules.doyle());
  }

  private static List<Double> lengths(ScaledLog scaled) {
    return scaled.segments().stream()
        .map(segment -> in(segment.log().length(), FOOT))
        .collect(Collectors.toList());
  }

  private static List<Double> diameters(ScaledLog scaled) {
    return scaled.segments().stream()
        .map(segment -> in(segment.log().small().get(), INCH))
        .collect(Collectors.toList());
  }

  private static Log log(double large, double small, double length) {
    return Log.of(inches(large), inches(small), feet(length));
  }

  @Test
  void georgiaSplitsWhereTheStatuteSays() {
    LogScaler georgia = Scaling.scaler(Scaling.georgia(), LogRules.doyle());
    assertThat(lengths(georgia.scale(log(14, 12, 16)))).containsExactly(16.0);
    assertThat(lengths(georgia.scale(log(14, 12, 17.9)))).containsExactly(16.0);
    assertThat(lengths(georgia.scale(log(14, 12, 18)))).containsExactly(8.0, 10.0);
    assertThat(lengths(georgia.scale(log(16, 12, 32)))).containsExactly(16.0, 16.0);
    assertThat(lengths(georgia.scale(log(16, 12, 33.9)))).containsExactly(16.0, 16.0);
    assertThat(lengths(georgia.scale(log(18, 12, 34)))).containsExactly(10.0, 12.0, 12.0);
  }

  @Test
  void fullSegmentsLieAtTheSmallEnd() {
    LogScaler vermont = Scaling.scaler(Scaling.vermont(), LogRules.vermont());
    ScaledLog scaled = vermont.scale(log(16, 12, 28).withBark(BarkBasis.UNDER));
    assertThat(lengths(scaled)).containsExactly(12.0, 12.0, 4.0);
    // 12 + 4 · 12/28 = 13.71 and 12 + 4 · 24/28 = 15.43, to the nearest inch.
    assertThat(diameters(scaled)).containsExactly(12.0, 14.0, 15.0);
    // Half the square for 12 ft: 72, 98, and a third of 112.5.
    assertThat(scaled.gross().amount()).isEqualTo(72 + 98 + 37.5);
    assertThat(scaled.gross().bark()).isEqualTo(BarkBasis.UNDER);
    assertThat(scaled.segments().stream().map(ScaledSegment::number)).containsExactly(1, 2, 3);
    assertThat(scaled.segments().get(2).gross().amount()).isEqualTo(37.5);
  }

  @Test
  void everyStepOfASplitIsWrittenDown() {
    ScaledLog scaled =
        doyle(LongLogs.split(feet(16), Split.NEAR_EQUAL, Taper.even())).scale(log(15.5, 12.2, 32));
    assertThat(scaled.steps())
        .extracting(ScalingStep::what)
        .containsExactly(
            "length to its class",
            "segment 1 of the length",
            "segment 2 of the length",
            "small end to its class",
            "small end of segment 2 by taper",
            "small end of segment 2 to its class");
    assertThat(scaled.steps().get(1))
        .isEqualTo(new ScalingStep("segment 1 of the length", 32, 16, "ft"));
    assertThat(scaled.steps().get(4))
        .isEqualTo(
            new ScalingStep(
                "small end of segment 2 by taper", 12.2, 12.2 + (15.5 - 12.2) / 2, "in"));
    assertThat(scaled.steps().get(5).after()).isEqualTo(14);
    assertThat(scaled.steps().get(5).changed()).isTrue();
    assertThat(scaled.steps().get(0).changed()).isFalse();
    assertThat(scaled.toString())
        .startsWith("test\n  length to its class: 32.0 ft → 32.0 ft\n")
        .endsWith(
            "  gross 164.0 bf Doyle (bark not stated)\n  net 164.0 bf Doyle (bark not stated)");
  }

  @Test
  void evenTaperRunsOverTheLengthAsMeasured() {
    ScalingConvention trimmed =
        PLAIN
            .withTrim(inches(12))
            .withLongLogs(LongLogs.split(feet(16), Split.NEAR_EQUAL, Taper.even()));
    // 33 ft with the trim; the cut lies at 16 ft: 10 + 6.6 · 16/33 = 13.2 in.
    ScaledLog scaled = Scaling.scaler(trimmed, LogRules.doyle()).scale(log(16.6, 10, 33));
    assertThat(diameters(scaled)).containsExactly(10.0, 13.0);
    assertThat(scaled.steps().get(5).after()).isEqualTo(10 + (16.6 - 10) * 16 / 33);
  }

  @Test
  void taperInWholeClassesGoesToTheButt() {
    LogScaler whole = doyle(LongLogs.split(feet(16), Split.NEAR_EQUAL, Taper.wholeClasses()));
    assertThat(diameters(whole.scale(log(17, 12, 32)))).containsExactly(12.0, 14.0);
    assertThat(diameters(whole.scale(log(16, 12, 32)))).containsExactly(12.0, 14.0);
    assertThat(diameters(whole.scale(log(17, 12, 48)))).containsExactly(12.0, 13.0, 15.0);
    assertThat(diameters(whole.scale(log(13, 12, 48)))).containsExactly(12.0, 12.0, 12.0);
    ScaledLog scaled = whole.scale(log(17.3, 11.6, 48));
    assertThat(scaled.steps())
        .extracting(ScalingStep::what)
        .endsWith(
            "small end to its class",
            "large end to its class",
            "small end of segment 2 by whole classes of taper",
            "small end of segment 3 by whole classes of taper");
    assertThat(scaled.steps().get(scaled.steps().size() - 1).after()).isEqualTo(15);
  }

  @Test
  void endsThatRoundApartDoNotTaperBackwards() {
    ScalingConvention turns =
        ScalingConvention.of(
                "turns",
                new SizeClass(
                    inches(1), org.mensuration.scaling.StepRounding.HALF_ALTERNATING_UP_FIRST),
                SizeClass.full(feet(1)))
            .withLongLogs(LongLogs.split(feet(16), Split.NEAR_EQUAL, Taper.wholeClasses()));
    assertThat(diameters(Scaling.scaler(turns, LogRules.doyle()).scale(log(12.5, 12.5, 32))))
        .containsExactly(13.0, 13.0);
  }

  @Test
  void noTaperTakesTheSmallEndThroughout() {
    LogScaler none = doyle(LongLogs.split(feet(16), Split.NEAR_EQUAL, Taper.none()));
    ScaledLog scaled = none.scale(Log.of(inches(12), feet(40)));
    assertThat(lengths(scaled)).containsExactly(13.0, 13.0, 14.0);
    assertThat(diameters(scaled)).containsExactly(12.0, 12.0, 12.0);
    assertThat(scaled.gross().amount()).isEqualTo(4 * 40);
  }

  @Test
  void aStatedTaperNeedsNoLargeEnd() {
    // Half an inch in four feet, the taper of the 1940 proposal: d + L/8, and d + L/16 half way.
    LogScaler stated =
        doyle(LongLogs.split(feet(16), Split.NEAR_EQUAL, Taper.stated(inches(0.5), feet(4))));
    ScaledLog scaled = stated.scale(Log.of(inches(12), feet(32)));
    assertThat(diameters(scaled)).containsExactly(12.0, 14.0);
    assertThat(scaled.steps().get(4).after()).isEqualTo(12 + 32 / 16.0);
  }

  @Test
  void whatALongLogNeedsIsNamed() {
    LogScaler even = doyle(LongLogs.split(feet(16), Split.NEAR_EQUAL, Taper.even()));
    assertThatThrownBy(() -> even.scale(Log.of(inches(12), feet(17))))
        .hasMessage("test needs the diameter of the large end to share the taper of a long log");
    LogScaler whole = doyle(LongLogs.split(feet(16), Split.NEAR_EQUAL, Taper.wholeClasses()));
    assertThatThrownBy(() -> whole.scale(Log.of(inches(12), feet(17))))
        .hasMessageContaining("needs the diameter of the large end");
    LogScaler refusing = doyle(LongLogs.refusedAbove(feet(16)));
    assertThat(lengths(refusing.scale(Log.of(inches(12), feet(16.9))))).containsExactly(16.0);
    assertThatThrownBy(() -> refusing.scale(Log.of(inches(12), feet(17))))
        .hasMessage("test: length is 17.0 ft in its class, allowed at most 16.0 ft");
    LogScaler none = doyle(LongLogs.split(feet(16), Split.NEAR_EQUAL, Taper.none()));
    assertThat(none.scale(Log.of(inches(12), feet(1600))).segments()).hasSize(100);
    assertThatThrownBy(() -> none.scale(Log.of(inches(12), feet(1e12))))
        .hasMessageContaining("allowed at most 1600.0 ft");
  }

  @Test
  void segmentsAreNeverLongerThanTheLongest() {
    // The longest of 15 ft holds seven classes of 2 ft.
    ScalingConvention twoFeet =
        ScalingConvention.of("test", SizeClass.nearest(inches(1)), SizeClass.full(feet(2)))
            .withLongLogs(LongLogs.split(feet(15), Split.NEAR_EQUAL, Taper.none()));
    assertThat(lengths(Scaling.scaler(twoFeet, LogRules.doyle()).scale(log(14, 12, 30))))
        .containsExactly(10.0, 10.0, 10.0);
  }

  @Test
  void aLogInOnePieceKeepsItsOtherDiameters() {
    ScaledLog scaled =
        Scaling.scaler(PLAIN, LogRules.doyle())
            .scale(log(16.4, 12.3, 40).withMiddle(inches(14.6)).withBark(BarkBasis.OVER));
    Log segment = scaled.segments().get(0).log();
    assertThat(segment).isEqualTo(log(16, 12, 40).withMiddle(inches(15)).withBark(BarkBasis.OVER));
  }

  @Test
  void taperInClassesOfTwoInches() {
    ScalingConvention twoInches =
        ScalingConvention.of("test", SizeClass.nearest(inches(2)), SizeClass.full(feet(1)))
            .withLongLogs(LongLogs.split(feet(16), Split.NEAR_EQUAL, Taper.wholeClasses()));
    assertThat(diameters(Scaling.scaler(twoInches, LogRules.doyle()).scale(log(18, 12, 32))))
        .containsExactly(12.0, 14.0);
    assertThat(diameters(Scaling.scaler(twoInches, LogRules.doyle()).scale(log(20, 12, 32))))
        .containsExactly(12.0, 16.0);
  }

  @Property
  void aSplitLosesNoLength(
      @ForAll @IntRange(min = 1, max = 120) int length,
      @ForAll @IntRange(min = 4, max = 40) int longest,
      @ForAll Split split) {
    if (split == Split.NONE) {
      return;
    }
    ScaledLog scaled =
        doyle(LongLogs.split(feet(longest), split, Taper.even())).scale(log(20, 12, length));
    assertThat(lengths(scaled).stream().mapToDouble(Double::doubleValue).sum()).isEqualTo(length);
    assertThat(lengths(scaled)).allSatisfy(part -> assertThat(part).isBetween(1.0, longest + 0.0));
    assertThat(lengths(scaled)).hasSize((length + longest - 1) / longest);
    assertThat(diameters(scaled)).isSorted();
    if (split == Split.NEAR_EQUAL) {
      assertThat(lengths(scaled)).isSorted();
      assertThat(lengths(scaled).get(lengths(scaled).size() - 1) - lengths(scaled).get(0))
          .isBetween(0.0, 1.0);
    }
  }
}
