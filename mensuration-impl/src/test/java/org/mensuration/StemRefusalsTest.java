package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mensuration.StemsTest.OVIEDO;
import static org.mensuration.StemsTest.m3;
import static org.mensuration.StemsTest.readings;
import static org.mensuration.StemsTest.refused;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.metres;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.stem.Butt;
import org.mensuration.stem.StemProfile;
import org.mensuration.stem.StemReading;
import org.mensuration.stem.Tip;

/** Stems, heights and choices that have no meaning. */
class StemRefusalsTest {
  @Test
  void readingsThatMakeNoStemAreRefusedWithTheReason() {
    refused(() -> Stems.profile(List.of(), metres(20)), "no readings");
    refused(() -> Stems.profile(readings(21, 3), metres(20)), "reading at 21.0 m", "tip at 20.0 m");
    refused(
        () -> Stems.profile(readings(5, 30, 5, 31), metres(20)),
        "two readings at 5.0 m",
        "30.0 cm and 31.0 cm");
    refused(() -> Stems.profile(readings(-1, 30), metres(20)), "reading at -1.0 m", "base");
    refused(() -> Stems.profile(readings(5, -1), metres(20)), "diameter at 5.0 m: -1.0 cm");
    refused(() -> Stems.profile(readings(5, 0, 6, 2), metres(20)), "0 cm, but the stem goes on");
    refused(() -> Stems.profile(readings(20, 5), metres(20)), "reading at the tip, 20.0 m: 5.0 cm");
    refused(
        () ->
            Stems.profile(
                readings(5, 30), BarkBasis.OVER, Butt.atLowestReading(), Tip.atHighestReading()),
        "one reading",
        "at least two");
    refused(
        () -> Stems.profile(readings(5, 30), BarkBasis.OVER, Butt.extended(), Tip.cone(metres(20))),
        "two lowest readings",
        "there is one");
    refused(
        () ->
            Stems.profile(
                readings(5, 10, 6, 30), BarkBasis.OVER, Butt.extended(), Tip.cone(metres(20))),
        "no area at the base",
        "take a cylinder");
  }

  @Test
  void heightsAndDiametersOutsideTheStemAreRefused() {
    StemProfile stem = Stems.profile(OVIEDO, metres(23));
    refused(() -> stem.diameterAt(metres(23.5)), "height: 23.5 m", "[0.0, 23.0] m");
    refused(() -> stem.areaAt(metres(-0.5)), "height: -0.5 m");
    refused(() -> stem.volume(metres(3), metres(2)), "from 3.0 m to 2.0 m");
    refused(() -> stem.volume(metres(3), metres(30)), "upper height: 30.0 m");
    refused(() -> stem.heightsOf(centimetres(-1)), "diameter: -1.0 cm");
    refused(() -> stem.merchantableLength(metres(0), centimetres(-1)), "top diameter: -1.0 cm");
    refused(() -> stem.logs(metres(0), List.of(metres(0))), "log 1", "length 0.0 m");
    refused(() -> stem.logs(metres(0), List.of(metres(20), metres(4))), "log 2", "24.0 m");
    refused(() -> stem.logs(metres(0), List.of(), metres(-1)), "trim: -1.0 m");
    assertThat(m3(stem.volume(metres(3), metres(3)))).isZero();
  }

  @Test
  void choicesThatContradictThemselvesAreRefused() {
    refused(() -> Butt.atLowestReading().from(metres(1)), "no base can be given");
    assertThatThrownBy(
            () ->
                new Tip(
                    org.mensuration.stem.TipForm.CONE,
                    java.util.Optional.empty(),
                    java.util.Optional.empty()))
        .hasMessageContaining("give the height of the tip");
    assertThatThrownBy(
            () ->
                new Tip(
                    org.mensuration.stem.TipForm.NOT_MEASURED,
                    java.util.Optional.of(metres(3)),
                    java.util.Optional.empty()))
        .hasMessageContaining("no height can be given");
    assertThat(Tip.cone(metres(3))).isEqualTo(Tip.cone(centimetres(300)));
    assertThat(Tip.cone(metres(3))).isNotEqualTo(Tip.neiloid(metres(3)));
    assertThat(Tip.cone(metres(3)).hashCode()).isEqualTo(Tip.cone(centimetres(300)).hashCode());
    assertThat(Butt.cylinder().from(metres(1))).isEqualTo(Butt.cylinder().from(centimetres(100)));
    assertThat(Butt.cylinder()).isNotEqualTo(Butt.extended());
    assertThat(Butt.cylinder().hashCode()).isEqualTo(Butt.cylinder().hashCode());
    assertThat(StemReading.of(metres(1), centimetres(3)))
        .isEqualTo(StemReading.of(centimetres(100), metres(0.03)))
        .isNotEqualTo(StemReading.of(metres(2), centimetres(3)));
  }
}
