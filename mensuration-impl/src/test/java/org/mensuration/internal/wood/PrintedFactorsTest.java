package org.mensuration.internal.wood;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mensuration.wood.ConversionFactor;
import org.mensuration.wood.WoodMeasure;

/** The lists made afresh, cell by cell beside what the sources print. */
class PrintedFactorsTest {
  private static List<String> printed(List<ConversionFactor> all, WoodMeasure from) {
    return all.stream()
        .filter(factor -> factor.from().equals(from))
        .map(factor -> factor.to().code() + " " + factor.factor().toPlainString())
        .toList();
  }

  @Test
  void theSwedishMatrixStandsRowByRow() {
    List<ConversionFactor> all = EuropeanFactors.all();
    List<List<String>> rows =
        WoodMeasures.SWEDISH.stream().map(measure -> printed(all, measure)).toList();
    assertThat(rows)
        .containsExactly(
            List.of("se:m3fpb 0.95", "se:m3fub 0.84", "se:m3to 0.68", "se:m3t 1.49"),
            List.of("se:m3sk 1.05", "se:m3fub 0.88", "se:m3to 0.71", "se:m3t 1.56"),
            List.of("se:m3sk 1.20", "se:m3fpb 1.14", "se:m3to 0.81", "se:m3t 1.78"),
            List.of("se:m3sk 1.46", "se:m3fpb 1.40", "se:m3fub 1.23", "se:m3t 2.19"),
            List.of("se:m3sk 0.67", "se:m3fpb 0.64", "se:m3fub 0.56", "se:m3to 0.46"));
    assertThat(printed(all, WoodMeasures.SE_LOOSE)).containsExactly("se:m3f 0.36");
  }

  @Test
  void theAustrianMatrixStandsRowByRow() {
    List<ConversionFactor> all = EuropeanFactors.all();
    List<List<String>> rows =
        WoodMeasures.AUSTRIAN.stream().map(measure -> printed(all, measure)).toList();
    assertThat(rows)
        .containsExactly(
            List.of(
                "at:rm-split 1.40", "at:rm-short 1.20", "at:srm-short 2.00", "at:srm-chips 2.50"),
            List.of(
                "at:fm-round 0.70", "at:rm-short 0.85", "at:srm-short 1.40", "at:srm-chips 1.80"),
            List.of(
                "at:fm-round 0.85", "at:rm-split 1.20", "at:srm-short 1.67", "at:srm-chips 2.00"),
            List.of(
                "at:fm-round 0.50", "at:rm-split 0.70", "at:rm-short 0.60", "at:srm-chips 1.25"),
            List.of(
                "at:fm-round 0.40", "at:rm-split 0.55", "at:rm-short 0.50", "at:srm-short 0.80"));
    assertThat(printed(all, WoodMeasures.AT_ENERGY_ROUND)).containsExactly("at:fm 0.6");
  }

  @Test
  void stacksStandWithTheirWood() {
    List<ConversionFactor> all = EuropeanFactors.all();
    assertThat(printed(all, WoodMeasures.DE_STACKED_OVER))
        .containsExactly("de:fm-ub 0.7", "de:fm-ub 0.65", "de:fm-ub 0.6", "de:fm-ub 0.7");
    assertThat(printed(all, WoodMeasures.DE_STACKED_UNDER)).containsExactly("de:fm-ub 0.8");
    assertThat(printed(all, WoodMeasures.DE_DRY_TONNE))
        .hasSize(9)
        .startsWith("de:fm-ub 1.4", "de:fm-ub 1.5", "de:fm-ub 2.2")
        .endsWith("de:fm-ub 1.8");
    assertThat(printed(all, WoodMeasures.FR_STERE))
        .containsExactly(
            "fr:m3 0.75",
            "fr:m3 0.65",
            "fr:m3 0.60",
            "fr:m3 0.57", // a school
            "fr:m3 0.67",
            "fr:m3 0.76",
            "fr:m3 0.60",
            "fr:m3 0.55"); // a popular page
    assertThat(printed(all, WoodMeasures.SU_STACKED)).hasSize(20);
    assertThat(all).extracting(ConversionFactor::citation).doesNotContainNull();
    assertThat(EuropeanFactors.additions())
        .extracting(addition -> addition.added() + " " + addition.forWood())
        .containsExactly("0.04 roughly debarked", "0.06 clean debarked");
  }

  @Test
  void loadsCordsLumberAndMassStandInTheirOrder() {
    assertThat(TradeFactors.all())
        .extracting(
            factor ->
                factor.from().code()
                    + " "
                    + factor.factor().toPlainString()
                    + " "
                    + factor.to().code())
        .containsExactly(
            "gb:load-squared 50 gb:ft3",
            "gb:load-unhewn 40 gb:ft3",
            "us:cord 128 us:stacked-ft3",
            "us:cord 3.6246 stacked-m3",
            "us:pulp-cord 160 us:stacked-ft3",
            "us:cord 79 us:ft3",
            "nb:cord 2.5 nb:m3",
            "nb:m3 0.415 nb:cord",
            "nb:m3 0.424 nb:mbf",
            "us:mbf-lumber 83.3 lumber-ft3",
            "us:mbf-lumber 2.36 lumber-m3",
            "us:bf-west-side 1.20 us:bf-east-side",
            "log-m3 0.41 lumber-m3",
            "log-m3 0.63 lumber-m3",
            "m3-ub 860 kg-with-bark",
            "m3-ub 80 kg-bark");
  }
}
