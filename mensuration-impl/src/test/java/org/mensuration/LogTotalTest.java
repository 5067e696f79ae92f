package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.cubicMetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.mensuration.log.DiameterAt;
import org.mensuration.log.Log;
import org.mensuration.log.LogTotal;
import org.mensuration.log.LogWarning;
import org.mensuration.log.MeasuredVolume;
import org.mensuration.log.SolidRule;
import org.mensuration.log.Tip;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.units.ForestUnits;

class LogTotalTest {
  private static final Log OVER =
      Log.of(centimetres(40), centimetres(30), metres(5)).withBark(BarkBasis.OVER);
  private static final Log UNDER = OVER.withBark(BarkBasis.UNDER);

  private static double volume(LogTotal total) {
    return in(total.volume(), ForestUnits.CUBIC_METRE);
  }

  @Test
  void theTotalKeepsItsPartsTheirRulesAndWarnings() {
    MeasuredVolume smalian = LogRules.smalian().measure(OVER);
    MeasuredVolume huber = LogRules.huber().measure(OVER.withMiddle(centimetres(41)));
    LogTotal total = LogRules.total(List.of(smalian, huber, smalian));
    assertThat(total.bark()).isEqualTo(BarkBasis.OVER);
    assertThat(total.parts()).containsExactly(smalian, huber, smalian);
    assertThat(total.rules()).containsExactly("Smalian volume", "Huber volume");
    assertThat(total.warnings()).extracting(LogWarning::reading).containsExactly("middle");
    assertThat(volume(total))
        .isCloseTo(
            2 * LogRules.smalian().formula().apply(40, 30, 5)
                + LogRules.huber().formula().apply(41, 5),
            within(1e-15));
  }

  @Test
  void barkBasesDoNotMix() {
    assertThatThrownBy(() -> LogRules.total(LogRules.smalian(), List.of(OVER, OVER, UNDER)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("cannot add volumes over bark and under bark: log 3 of 3 is under bark");
    assertThatThrownBy(
            () ->
                LogRules.total(
                    LogRules.smalian(), List.of(UNDER, OVER.withBark(BarkBasis.UNKNOWN))))
        .hasMessageContaining("under bark and bark not stated");
  }

  @Test
  void nothingAddsUpToNothing() {
    LogTotal none = LogRules.total(List.of());
    assertThat(volume(none)).isZero();
    assertThat(none.bark()).isEqualTo(BarkBasis.UNKNOWN);
    assertThat(none.parts()).isEmpty();
  }

  @Test
  void theOrderDoesNotMatter() {
    List<Log> logs = new ArrayList<>();
    Random random = new Random(11);
    for (int i = 0; i < 200; i++) {
      double large = 10 + 60 * random.nextDouble();
      logs.add(
          Log.of(
              centimetres(large),
              centimetres(large * random.nextDouble()),
              metres(1 + random.nextDouble())));
    }
    double once = volume(LogRules.total(LogRules.smalian(), logs));
    Collections.reverse(logs);
    assertThat(volume(LogRules.total(LogRules.smalian(), logs))).isEqualTo(once);
    Collections.shuffle(logs, random);
    assertThat(volume(LogRules.total(LogRules.smalian(), logs))).isEqualTo(once);
  }

  @Test
  void aTipIsAConeOrAParaboloid() {
    Quantity<Length> foot = centimetres(30);
    LogTotal cone = LogRules.total(LogRules.smalian(), List.of(UNDER), Tip.cone(foot, metres(6)));
    LogTotal round =
        LogRules.total(LogRules.smalian(), List.of(UNDER), Tip.paraboloid(foot, metres(6)));
    double area = Math.PI * 0.3 * 0.3 / 4;
    double below = LogRules.smalian().formula().apply(40, 30, 5);
    assertThat(volume(cone) - below).isCloseTo(area * 6 / 3, within(1e-15));
    assertThat(volume(round) - below).isCloseTo(area * 6 / 2, within(1e-15));
    assertThat(cone.bark()).isEqualTo(BarkBasis.UNDER);
    assertThat(cone.parts()).hasSize(2);
    assertThatThrownBy(
            () -> LogRules.total(LogRules.smalian(), List.of(), Tip.cone(foot, metres(6))))
        .hasMessage("a tip needs at least one section below it; none given");
  }

  @Test
  void sectionsOfAParaboloidAddUpToIt() {
    // Area in proportion to the distance from the tip: 0.1 m² at the foot of 20 m, so 1 m³.
    List<Log> sections = new ArrayList<>();
    for (int metre = 20; metre > 1; metre--) {
      sections.add(
          Log.of(diameter(metre), diameter(metre - 1), metres(1))
              .withMiddle(diameter(metre - 0.5)));
    }
    for (SolidRule rule :
        new SolidRule[] {LogRules.huber(), LogRules.smalian(), LogRules.newton()}) {
      LogTotal total = LogRules.total(rule, sections, Tip.paraboloid(diameter(1), metres(1)));
      assertThat(volume(total)).isCloseTo(1, within(1e-14));
    }
  }

  @Test
  void areasOfACalculusExerciseAddUp() {
    // Areas at every metre, Stewart, Calculus, 8th edition, section 5.2, exercise 44. Huber over 2
    // m
    // gives the 5.80 of a printed solution; by Smalian over 1 m and by Newton over 2 m it is 5.75
    // and 5.7667.
    double[] areas = {0.68, 0.65, 0.64, 0.61, 0.58, 0.59, 0.53, 0.55, 0.52, 0.50, 0.48};
    List<Log> oneMetre = new ArrayList<>();
    for (int i = 1; i < areas.length; i++) {
      Quantity<Length> low = circle(Math.max(areas[i - 1], areas[i]));
      oneMetre.add(Log.of(low, circle(Math.min(areas[i - 1], areas[i])), metres(1)));
    }
    List<Log> twoMetres = new ArrayList<>();
    for (int i = 2; i < areas.length; i += 2) {
      twoMetres.add(
          Log.of(circle(areas[i - 2]), circle(areas[i]), metres(2))
              .withMiddle(circle(areas[i - 1])));
    }
    assertThat(volume(LogRules.total(LogRules.huber(), twoMetres))).isCloseTo(5.80, within(1e-12));
    assertThat(volume(LogRules.total(LogRules.smalian(), oneMetre))).isCloseTo(5.75, within(1e-12));
    assertThat(volume(LogRules.total(LogRules.newton(), twoMetres)))
        .isCloseTo(5.7667, within(0.00005));
  }

  private static Quantity<Length> circle(double area) {
    return metres(Math.sqrt(4 * area / Math.PI));
  }

  private static Quantity<Length> diameter(double metresFromTip) {
    return metres(Math.sqrt(4 / Math.PI * 0.1 * metresFromTip / 20));
  }

  @Test
  void recordsAreEqualByWhatTheyMeasure() {
    MeasuredVolume one = LogRules.smalian().measure(UNDER);
    MeasuredVolume same =
        new MeasuredVolume(cubicMetres(2), "Smalian volume", BarkBasis.UNDER, List.of());
    assertThat(same).isNotEqualTo(one).isNotEqualTo("no volume");
    assertThat(one).hasSameHashCodeAs(LogRules.smalian().measure(UNDER));
    assertThat(LogRules.total(List.of(one)))
        .isEqualTo(LogRules.total(List.of(one)))
        .hasSameHashCodeAs(LogRules.total(List.of(one)))
        .isNotEqualTo(LogRules.total(List.of(one, one)))
        .isNotEqualTo("no total");
    Tip tip = Tip.cone(centimetres(30), metres(2));
    assertThat(Tip.cone(metres(0.3), centimetres(200)))
        .isEqualTo(tip)
        .hasSameHashCodeAs(tip)
        .isNotEqualTo(Tip.paraboloid(centimetres(30), metres(2)))
        .isNotEqualTo("no tip");
    DiameterAt at = new DiameterAt(0.25, centimetres(30));
    assertThat(new DiameterAt(0.25, metres(0.3)))
        .isEqualTo(at)
        .hasSameHashCodeAs(at)
        .isNotEqualTo(new DiameterAt(0.3, metres(0.3)))
        .isNotEqualTo("no reading");
  }

  @Test
  void aLogKeepsItsReadingsInOrderOncePerPlace() {
    Log log =
        UNDER
            .withDiameterAt(0.75, centimetres(32))
            .withDiameterAt(0.25, centimetres(37))
            .withDiameterAt(0.7504, centimetres(33))
            .withDiameterAt(0.4999, centimetres(35));
    assertThat(log.between())
        .containsExactly(
            new DiameterAt(0.25, centimetres(37)), new DiameterAt(0.7504, centimetres(33)));
    assertThat(log.diameterAt(0.75)).contains(centimetres(33));
    assertThat(log.diameterAt(0.5)).contains(centimetres(35)).isEqualTo(log.middle());
    assertThat(log.diameterAt(0.26)).isEmpty();
    assertThat(log.withBark(BarkBasis.OVER).between()).isEqualTo(log.between());
    assertThat(log).isNotEqualTo(log.withDiameterAt(0.25, centimetres(36)));
    for (double share : new double[] {0, 1, -0.1, Double.NaN}) {
      assertThatThrownBy(() -> UNDER.withDiameterAt(share, centimetres(30)))
          .hasMessageContaining("is not between the ends; allowed (0, 1)");
    }
    DiameterAt quarter = new DiameterAt(0.25, centimetres(30));
    assertThatThrownBy(() -> with(List.of(quarter, new DiameterAt(0.2505, centimetres(31)))))
        .hasMessage("two diameters at 0.2505 of the length");
    assertThatThrownBy(() -> with(List.of(new DiameterAt(0.5, centimetres(31)))))
        .hasMessageContaining("is the middle; give it by withMiddle");
  }

  private static Log with(List<DiameterAt> between) {
    return new Log(
        UNDER.large(), UNDER.middle(), UNDER.small(), UNDER.length(), UNDER.bark(), between);
  }
}
