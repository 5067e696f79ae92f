package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.cubicFeet;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.quantity.LogScale;
import org.mensuration.source.Standing;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.wood.ConversionFactor;
import org.mensuration.wood.FactorAddition;
import org.mensuration.wood.WoodAmount;
import org.mensuration.wood.WoodMeasure;

class WoodConversionsTest {
  @Test
  void aFactorLeadsOneWay() {
    ConversionFactor down = WoodConversions.factor("se:m3sk", "se:m3fub");
    ConversionFactor up = WoodConversions.factor("se:m3fub", "se:m3sk");
    WoodAmount standing = WoodConversions.amount(100, "se:m3sk");
    assertThat(down.convert(standing)).isEqualTo(WoodConversions.amount(84, "se:m3fub"));
    // Both are published, 0.84 and 1.20; their product is 1.008 and not 1.
    assertThat(up.convert(down.convert(standing)).amount()).isCloseTo(100.8, within(1e-12));
    assertThatThrownBy(() -> down.convert(WoodConversions.amount(84, "se:m3fub")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("the factor se:m3sk to se:m3fub 0.84 (")
        .hasMessageContaining("does not convert 84.0 m3 se:m3fub")
        .hasMessageEndingWith("; it is not published for that direction");
    assertThatThrownBy(() -> down.convert(WoodConversions.amount(84, "se:m3t")))
        .hasMessageContaining("does not convert 84.0 m3 se:m3t")
        .hasMessageNotContaining("direction");
  }

  @Test
  void aFactorIsNeverTurnedRound() {
    assertThatThrownBy(() -> WoodConversions.factor("fr:m3", "fr:stere"))
        .hasMessageContaining("no factor is published from fr:m3 (")
        .hasMessageEndingWith("; there is one the other way, which is not turned round");
    assertThatThrownBy(() -> WoodConversions.factor("fr:m3", "se:m3t"))
        .hasMessageContaining("no factor is published from fr:m3 (")
        .hasMessageNotContaining("turned round");
  }

  @Test
  void whereTheWoodMattersTheUserChooses() {
    assertThatThrownBy(() -> WoodConversions.factor("fr:stere", "fr:m3"))
        .hasMessageContaining("8 factors are published from fr:stere (")
        .hasMessageContaining("well split quarters | ");
    assertThat(WoodConversions.factors("fr:stere", "fr:m3"))
        .filteredOn(factor -> factor.condition().equals("straight rounds"))
        .singleElement()
        .satisfies(factor -> assertThat(factor.factor()).isEqualTo("0.60"));
  }

  @Test
  void stackedWoodDoesNotAddToSolidWood() {
    WoodAmount stack = WoodConversions.amount(10, "de:rm-ob");
    WoodAmount solid = WoodConversions.amount(7, "de:fm-ub");
    assertThatThrownBy(() -> stack.plus(solid))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "cannot add stacked volume and solid volume: 10.0 m3 de:rm-ob (cubic metre of stack"
                + " over bark, Germany), 7.0 m3 de:fm-ub (solid wood under bark, Germany)");
    assertThatThrownBy(() -> stack.minus(solid)).hasMessageContaining("cannot subtract");
    assertThatThrownBy(() -> stack.compareTo(WoodConversions.amount(10, "de:rm-ub")))
        .hasMessageContaining("cannot compare stacked volume and stacked volume");
    assertThat(stack.plus(stack).minus(WoodConversions.amount(5, "de:rm-ob")).amount())
        .isEqualTo(15);
    assertThat(stack).isGreaterThan(WoodConversions.amount(9, "de:rm-ob"));
    assertThatThrownBy(() -> WoodConversions.solidVolume(stack))
        .hasMessageContaining("is stacked volume in m3, no solid volume");
    assertThatThrownBy(() -> WoodConversions.solidVolume(WoodConversions.amount(1, "se:m3to")))
        .hasMessageContaining("is volume by a custom in m3");
    assertThatThrownBy(
            () -> WoodConversions.solidVolume(WoodConversions.amount(1, "gb:load-unhewn")))
        .hasMessageContaining("is solid volume in load");
    assertThat(in(WoodConversions.solidVolume(solid), ForestUnits.CUBIC_METRE)).isEqualTo(7);
    assertThat(
            in(
                WoodConversions.solidVolume(WoodConversions.amount(79, "us:ft3")),
                ForestUnits.CUBIC_FOOT))
        .isEqualTo(79);
    for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> WoodConversions.amount(bad, "us:cord"))
          .hasMessageContaining("us:cord: ")
          .hasMessageContaining("is no amount; allowed [0, ∞)");
    }
  }

  @Test
  void aStackIsMeasuredOutside() {
    assertThat(WoodConversions.stack(metres(8), metres(1.25), centimetres(100)))
        .isEqualTo(WoodConversions.amount(10, "stacked-m3"));
    assertThat(WoodConversions.stackAs(metres(8), metres(1.25), metres(1), "fr:stere").amount())
        .isEqualTo(10);
    // A cord is 4 by 4 by 8 ft, an eighth of it 16 cubic feet (NIST Handbook 130, 2.4).
    assertThat(WoodConversions.cords(feet(8), feet(4), feet(4)))
        .isEqualTo(WoodConversions.amount(1, "us:cord"));
    assertThat(WoodConversions.cords(feet(4), feet(2), feet(2)).amount()).isEqualTo(0.125);
    assertThatThrownBy(() -> WoodConversions.stackAs(metres(1), metres(1), metres(1), "us:cord"))
        .hasMessageContaining("is stacked volume in cord; wanted stacked volume in m3 or st");
    assertThatThrownBy(() -> WoodConversions.stackAs(metres(1), metres(1), metres(1), "se:m3s"))
        .hasMessageContaining("is loose volume in m3");
    assertThatThrownBy(() -> WoodConversions.stack(metres(-1), metres(1), metres(1)))
        .isInstanceOf(OutOfDomainException.class);
  }

  @Test
  void overrunCountsFromTheScale() {
    LogScale scale = new LogScale("Doyle", 1000, "bf", BarkBasis.UNDER);
    assertThat(
            WoodConversions.overrunPercent(Measures.of(1200, ForestUnits.LUMBER_BOARD_FOOT), scale))
        .isEqualTo(20);
    assertThat(WoodConversions.overrunPercent(cubicFeet(75), scale))
        .isCloseTo(-10, within(1e-12)); // 900 board feet of lumber
    assertThat(WoodConversions.boardFeetPerCubicFoot(scale, cubicFeet(200))).isEqualTo(5);
    assertThatThrownBy(
            () ->
                WoodConversions.overrunPercent(
                    cubicFeet(75), new LogScale("Scribner Decimal C", 100, "10 bf", scale.bark())))
        .hasMessageContaining("is not in board feet");
    assertThatThrownBy(
            () ->
                WoodConversions.overrunPercent(
                    cubicFeet(75), new LogScale("Doyle", 0, "bf", scale.bark())))
        .isInstanceOf(OutOfDomainException.class);
  }

  @Test
  void aPrintedAdditionMakesAnotherFactor() {
    // OST 13-43-79, text above the table: 0.04 for roughly, 0.06 for clean debarked wood.
    ConversionFactor factor = WoodConversions.factors("su:stacked-m3", "su:m3-ub").get(0);
    FactorAddition rough = WoodConversions.additions().get(0);
    ConversionFactor debarked = factor.plus(rough);
    assertThat(debarked.factor()).isEqualTo("0.68");
    assertThat(factor.plus(WoodConversions.additions().get(1)).factor()).isEqualTo("0.70");
    assertThat(debarked.condition()).isEqualTo(factor.condition() + "; roughly debarked");
    assertThat(debarked.convert(WoodConversions.amount(50, "su:stacked-m3")).amount())
        .isCloseTo(34, within(1e-13));
    ConversionFactor plain = WoodConversions.factor("se:m3s", "se:m3f");
    assertThat(plain.plus(addition(plain, plain, "0.01")).condition()).isEqualTo("dry");
    assertThatThrownBy(() -> plain.plus(addition(plain, plain, "-0.36")))
        .hasMessageContaining("is not above zero");
    assertThatThrownBy(() -> plain.plus(rough))
        .hasMessageStartingWith(
            "the addition for roughly debarked is printed for factors from su:stacked-m3 (")
        .hasMessageContaining(", not for se:m3s to se:m3f 0.36 (");
    assertThatThrownBy(() -> plain.plus(addition(plain, factor, "0.01")))
        .hasMessageContaining(", not for se:m3s to se:m3f");
  }

  private static FactorAddition addition(
      ConversionFactor from, ConversionFactor to, String printed) {
    return new FactorAddition(
        from.from(), to.to(), new BigDecimal(printed), "dry", from.citation());
  }

  @Test
  void everyFactorIsPublishedAndLeadsBetweenDifferentMeasures() {
    Set<List<Object>> seen = new HashSet<>();
    for (ConversionFactor factor : WoodConversions.factors()) {
      assertThat(factor.citation().standing()).isEqualTo(Standing.PUBLISHED);
      assertThat(factor.from()).as(factor.toString()).isNotEqualTo(factor.to());
      assertThat(
              seen.add(List.of(factor.from(), factor.to(), factor.condition(), factor.citation())))
          .as(factor.toString())
          .isTrue();
    }
    Map<String, WoodMeasure> byCode = new HashMap<>();
    for (WoodMeasure measure : WoodConversions.measures()) {
      assertThat(byCode.put(measure.code(), measure)).as(measure.code()).isNull();
      assertThat(WoodConversions.measure(measure.code())).isEqualTo(measure);
    }
    assertThatThrownBy(() -> WoodConversions.measure("m3"))
        .hasMessageContaining("no measure m3; there are se:m3sk, se:m3fpb, ");
  }

  @Test
  void theMatricesAreNearlyButNotQuiteReciprocal() {
    // Between 0.9928 and 1.0080 for the Swedish matrix, 0.98 and 1.02 for the Austrian one.
    reciprocal("se:", 20, 0.9928, 1.0080);
    reciprocal("at:", 20, 0.98, 1.02);
  }

  private static void reciprocal(String country, int cells, double least, double most) {
    int found = 0;
    double low = 1;
    double high = 1;
    for (ConversionFactor there : WoodConversions.factors()) {
      List<ConversionFactor> back = WoodConversions.factors(there.to().code(), there.from().code());
      if (there.from().code().startsWith(country) && !back.isEmpty()) {
        double product = there.factor().multiply(back.get(0).factor()).doubleValue();
        low = Math.min(low, product);
        high = Math.max(high, product);
        found++;
      }
    }
    assertThat(found).isEqualTo(cells);
    assertThat(low).isCloseTo(least, within(5e-5));
    assertThat(high).isCloseTo(most, within(5e-5));
  }

  @Test
  void longerPiecesStackLooser() {
    List<ConversionFactor> soviet = WoodConversions.factors("su:stacked-m3", "su:m3-ub");
    assertThat(soviet).hasSize(20);
    for (String wood : List.of("conifer pulpwood and pit wood", "conifer pulpwood grade 4")) {
      List<BigDecimal> open =
          soviet.stream()
              .filter(f -> f.condition().startsWith(wood + " of"))
              .filter(f -> f.condition().endsWith("wagon without cap or lorry"))
              .map(ConversionFactor::factor)
              .toList();
      assertThat(open).hasSize(4).isSortedAccordingTo((a, b) -> b.compareTo(a));
    }
    assertThat(WoodConversions.factors("de:rm-ob", "de:fm-ub"))
        .extracting(ConversionFactor::condition)
        .containsExactly("HKS, pieces of 1 m", "HKS, pieces of 2 m", "HKS, pieces of 3 m", "RVR");
    assertThat(WoodConversions.factors("de:t-dry-ob", "de:fm-ub")).hasSize(9);
  }

  @Test
  void everyFactorOfTheReferencesIsThere() {
    assertThat(count("se:")).isEqualTo(21);
    assertThat(count("at:")).isEqualTo(21);
    assertThat(count("de:")).isEqualTo(16);
    assertThat(count("fr:")).isEqualTo(8);
    assertThat(count("su:")).isEqualTo(20);
    assertThat(count("nb:")).isEqualTo(3);
    assertThat(count("gb:")).isEqualTo(2);
    assertThat(WoodConversions.factor("nb:m3", "nb:mbf").factor()).isEqualTo("0.424");
    assertThat(WoodConversions.factor("us:cord", "us:stacked-ft3").factor()).isEqualTo("128");
    assertThat(WoodConversions.factor("us:pulp-cord", "us:stacked-ft3").factor()).isEqualTo("160");
    assertThat(WoodConversions.factor("us:cord", "us:ft3").factor()).isEqualTo("79");
    assertThat(WoodConversions.factor("us:mbf-lumber", "lumber-ft3").factor()).isEqualTo("83.3");
    assertThat(WoodConversions.factor("us:bf-west-side", "us:bf-east-side").factor())
        .isEqualTo("1.20");
    assertThat(WoodConversions.factors("log-m3", "lumber-m3"))
        .extracting(ConversionFactor::factor)
        .containsExactly(new BigDecimal("0.41"), new BigDecimal("0.63"));
    assertThat(WoodConversions.factor("de:rm-ob-measured", "de:rm-ob").factor()).isEqualTo("0.96");
    // A cord is 128 cubic feet of 0.3048³ m³.
    assertThat(WoodConversions.factor("us:cord", "stacked-m3").factor().doubleValue())
        .isCloseTo(128 * 0.3048 * 0.3048 * 0.3048, within(0.00005));
  }

  private static int count(String country) {
    return (int)
        WoodConversions.factors().stream()
            .filter(factor -> factor.from().code().startsWith(country))
            .count();
  }

  @Test
  void aMeasureIsWhatItSays() {
    WoodMeasure measure = WoodConversions.measure("us:cord");
    assertThat(measure.kind()).isEqualTo(WoodMeasure.Kind.STACKED);
    assertThat(measure).hasToString("us:cord (cord, ranked and well stowed)");
    assertThatThrownBy(
            () ->
                new ConversionFactor(
                    measure,
                    measure,
                    BigDecimal.ZERO,
                    "",
                    WoodConversions.factors().get(0).citation()))
        .hasMessage("factor 0 is not above zero");
  }
}
