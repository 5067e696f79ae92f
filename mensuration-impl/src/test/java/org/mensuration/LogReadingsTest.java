package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.metres;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mensuration.log.Log;
import org.mensuration.log.LogReadings;
import org.mensuration.log.RoundingStep;
import org.mensuration.quantity.BarkBasis;

class LogReadingsTest {
  @Test
  void aLogGivesOneReadingAPlace() {
    Log log =
        Log.of(centimetres(46), centimetres(31), metres(5))
            .withMiddle(centimetres(40))
            .withBark(BarkBasis.UNDER);
    LogReadings readings = LogReadings.of(log);
    assertThat(readings.large()).containsExactly(centimetres(46));
    assertThat(readings.middle()).containsExactly(centimetres(40));
    assertThat(readings.small()).containsExactly(centimetres(31));
    assertThat(readings.middleGirth()).isEmpty();
    assertThat(readings.bark()).isEqualTo(BarkBasis.UNDER);
    assertThat(LogReadings.of(Log.ofMiddle(centimetres(40), metres(5))).small()).isEmpty();
  }

  @Test
  void readingsAreEqualByWhatTheyMeasure() {
    LogReadings two =
        LogReadings.crossedMiddle(centimetres(40), centimetres(42), metres(4))
            .withBark(BarkBasis.UNDER);
    LogReadings inMetres =
        LogReadings.crossedMiddle(metres(0.4), metres(0.42), centimetres(400))
            .withBark(BarkBasis.UNDER);
    assertThat(inMetres).isEqualTo(two).hasSameHashCodeAs(two);
    assertThat(two.withBark(BarkBasis.OVER)).isNotEqualTo(two);
    assertThat(LogReadings.crossedMiddle(centimetres(42), centimetres(40), metres(4)))
        .isNotEqualTo(LogReadings.crossedMiddle(centimetres(40), centimetres(42), metres(4)));
    assertThat(LogReadings.of(Log.ofMiddle(centimetres(40), metres(4))))
        .isNotEqualTo(LogReadings.crossedMiddle(centimetres(40), centimetres(42), metres(4)));
    LogReadings small = LogReadings.crossedSmallEnd(centimetres(40), centimetres(42), metres(4));
    assertThat(small).isNotEqualTo(two.withBark(BarkBasis.UNKNOWN)).isNotEqualTo(null);
    assertThat(small.hashCode()).isNotEqualTo(two.withBark(BarkBasis.UNKNOWN).hashCode());
    LogReadings ends =
        LogReadings.ends(List.of(centimetres(50)), List.of(centimetres(40)), metres(4));
    assertThat(ends)
        .isNotEqualTo(
            LogReadings.ends(List.of(centimetres(51)), List.of(centimetres(40)), metres(4)));
    assertThat(ends)
        .isNotEqualTo(
            LogReadings.ends(List.of(centimetres(50)), List.of(centimetres(41)), metres(4)));
    LogReadings taped = LogReadings.girth(centimetres(130), metres(4));
    assertThat(taped)
        .isEqualTo(LogReadings.girth(metres(1.3), metres(4)))
        .isNotEqualTo(LogReadings.girth(centimetres(130), metres(4.1)))
        .isNotEqualTo(LogReadings.girth(centimetres(131), metres(4)));
  }

  @Test
  void aStepReadsAsASentence() {
    assertThat(new RoundingStep("length", 4.37, 4.2, "m"))
        .hasToString("length 4.37 m counts as 4.2 m");
  }
}
