package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import org.mensuration.log.ConventionRule;
import org.mensuration.log.Log;
import org.mensuration.log.LogReadings;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.quantity.LogScale;
import org.mensuration.units.ForestUnits;

/**
 * Whole readings given in another unit scale to the same bits: whole inches and feet given in
 * metres, whole centimetres and tenths of metres given in metres and centimetres. Refusals agree
 * too.
 */
@Tag("catalogue")
class WholeReadingsTest {
  private static final int MOST = 200;

  private static final List<ConventionRule> IN_INCHES =
      List.of(
          GirthRules.hoppus(),
          GirthRules.fifthGirth(),
          GirthRules.quarterGirth113(),
          GirthRules.cylinderTable(),
          GirthRules.twoThirds(),
          GirthRules.inscribedSquare());

  private static Quantity<Length> inMetres(Quantity<Length> length) {
    return metres(in(length, ForestUnits.METRE));
  }

  @TestFactory
  Stream<DynamicTest> inchesAndFeet() {
    return IN_INCHES.stream()
        .map(rule -> DynamicTest.dynamicTest(rule.name(), () -> inchesAndFeet(rule)));
  }

  private static void inchesAndFeet(ConventionRule rule) {
    for (int i = 1; i <= MOST; i++) {
      Quantity<Length> size = inches(i);
      Quantity<Length> sizeInMetres = inMetres(size);
      for (int j = 1; j <= MOST; j++) {
        Quantity<Length> length = feet(j);
        double natively = scale(rule, size, length);
        assertThat(scale(rule, sizeInMetres, inMetres(length)))
            .as("%s in by %s ft", i, j)
            .isEqualTo(natively)
            .isPositive();
      }
    }
  }

  private static double scale(ConventionRule rule, Quantity<Length> size, Quantity<Length> length) {
    return rule.scale(
            new LogReadings(
                List.of(), List.of(), List.of(size), Optional.of(size), length, BarkBasis.UNKNOWN))
        .amount();
  }

  @TestFactory
  Stream<DynamicTest> centimetresAndTenthsOfMetres() {
    Stream<ConventionRule> metric =
        ComparedRules.CONVENTIONS.stream().filter(rule -> !IN_INCHES.contains(rule));
    Stream<ConventionRule> ofClasses =
        Stream.of(
            LogConventions.swedishTopClassBottom(centimetres(2)),
            LogConventions.swedishTopClassMiddle(centimetres(2)));
    return Stream.concat(metric, ofClasses)
        .map(rule -> DynamicTest.dynamicTest(rule.name(), () -> wholeCentimetres(rule)));
  }

  private static void wholeCentimetres(ConventionRule rule) {
    int scaled = 0;
    for (int i = 1; i <= MOST; i++) {
      Quantity<Length> size = centimetres(i);
      Quantity<Length> sizeInMetres = metres(i / 100.0);
      for (int tenths = 1; tenths <= MOST; tenths += tenths < 20 ? 1 : 7) {
        Quantity<Length> length = metres(tenths / 10.0);
        String natively = all(rule, size, length);
        assertThat(all(rule, sizeInMetres, centimetres(tenths * 10)))
            .as("%s cm by %s dm", i, tenths)
            .isEqualTo(natively);
        scaled += natively.equals("refused") ? 0 : 1;
      }
    }
    assertThat(scaled).isPositive();
  }

  /** The scale of a log read alike everywhere, or that it is refused. */
  private static String all(ConventionRule rule, Quantity<Length> size, Quantity<Length> length) {
    List<Quantity<Length>> two = List.of(size, size);
    List<Quantity<Length>> large = List.of(size.multiply(1.25), size.multiply(1.25));
    try {
      LogScale scale =
          rule.scale(
              new LogReadings(large, two, two, Optional.of(size), length, BarkBasis.UNKNOWN));
      return Double.toString(scale.amount());
    } catch (IllegalArgumentException refusal) {
      return "refused";
    }
  }

  @TestFactory
  Stream<DynamicTest> aLogAndItsReadingsAgree() {
    return Stream.of(LogConventions.frenchMid(), LogConventions.swedishMid())
        .map(
            rule ->
                DynamicTest.dynamicTest(
                    rule.name(),
                    () -> {
                      Log log = Log.ofMiddle(centimetres(33), metres(4.2));
                      assertThat(rule.scale(log)).isEqualTo(rule.scale(LogReadings.of(log)));
                    }));
  }
}
