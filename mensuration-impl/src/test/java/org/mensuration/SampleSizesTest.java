package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.Measures.acres;
import static org.mensuration.units.Measures.hectares;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.stand.Allocation;
import org.mensuration.stand.CostedStratum;
import org.mensuration.stand.StratumPlan;
import org.mensuration.stand.StratumWeight;

/** Points over strata, by their own t, by cost and by area. */
class SampleSizesTest {
  private static final List<StratumPlan> HAND_OUT =
      List.of(
          new StratumPlan("1", 30, 40),
          new StratumPlan("2", 10, 65),
          new StratumPlan("3", 20, 80),
          new StratumPlan("4", 40, 35));

  /** Units 300 and 700, deviations 10 and 5, costs 20 and 10: the printed example. */
  private static final List<CostedStratum> COSTED =
      List.of(new CostedStratum("1", 300, 10, 20), new CostedStratum("2", 700, 5, 10));

  @Test
  void pointsOverStrataSatisfyTheTOfTheirEstimate() {
    Allocation neyman = SampleSizes.pointsByNeyman(StratumWeight.AREA, HAND_OUT, 10, 95);
    assertThat(neyman.shares())
        .extracting(Allocation.Share::points)
        .containsExactly(23L, 13L, 31L, 27L); // every number tried by another library
    assertThat(neyman.weight()).isEqualTo(StratumWeight.AREA);
    assertThat(neyman.shares().get(0).exact()).isCloseTo(91 * 12 / 48.5, within(1e-12));
    Allocation proportional =
        SampleSizes.pointsInProportion(StratumWeight.VOLUME, HAND_OUT, 10, 95);
    assertThat(proportional.shares())
        .extracting(Allocation.Share::points)
        .containsExactly(32L, 11L, 22L, 43L);
    assertThat(proportional.weight()).isEqualTo(StratumWeight.VOLUME);
    assertThat(proportional.shares().get(3).stratum()).isEqualTo("4");
  }

  @Property(tries = 200)
  void noFewerPointsWouldDo(
      @ForAll @DoubleRange(min = 5, max = 120) double first,
      @ForAll @DoubleRange(min = 5, max = 120) double second,
      @ForAll @IntRange(min = 1, max = 9) int weight,
      @ForAll @DoubleRange(min = 4, max = 40) double error) {
    List<StratumPlan> strata =
        List.of(new StratumPlan("a", weight, first), new StratumPlan("b", 3, second));
    for (boolean byVariation : new boolean[] {true, false}) {
      Allocation found =
          byVariation
              ? SampleSizes.pointsByNeyman(StratumWeight.AREA, strata, error, 95)
              : SampleSizes.pointsInProportion(StratumWeight.AREA, strata, error, 95);
      assertThat(halfWidth(strata, found)).isLessThanOrEqualTo(error * (1 + 1e-12));
      long nominal = Math.round(found.shares().get(0).exact() + found.shares().get(1).exact());
      for (long fewer = 1; fewer < nominal; fewer++) {
        Allocation one =
            byVariation
                ? SampleSizes.neyman(StratumWeight.AREA, strata, fewer)
                : SampleSizes.proportional(StratumWeight.AREA, strata, fewer);
        assertThat(halfWidth(strata, one)).isGreaterThan(error * (1 - 1e-12));
      }
    }
  }

  private static double halfWidth(List<StratumPlan> strata, Allocation allocation) {
    double all = strata.stream().mapToDouble(StratumPlan::weight).sum();
    double variance = 0;
    double below = 0;
    for (int i = 0; i < strata.size(); i++) {
      double part = strata.get(i).weight() / all * strata.get(i).variationPercent();
      double points = allocation.shares().get(i).points();
      variance += part * part / points;
      below += Math.pow(part * part / points, 2) / (points - 1);
    }
    double freedom = variance * variance / below;
    return TDistribution.of(freedom).inverseSurvivalProbability(0.025) * Math.sqrt(variance);
  }

  @Test
  void strataThatDoNotVaryTakeTwoPointsEach() {
    List<StratumPlan> even = List.of(new StratumPlan("a", 1, 0), new StratumPlan("b", 2, 0));
    assertThat(SampleSizes.pointsByNeyman(StratumWeight.AREA, even, 5, 95).points()).isEqualTo(4);
    assertThat(SampleSizes.pointsInProportion(StratumWeight.AREA, even, 5, 95).points())
        .isEqualTo(4);
  }

  @Test
  void whatCannotBePlannedIsRefused() {
    for (double bad : new double[] {0, -1, Double.NaN}) {
      assertThatThrownBy(() -> SampleSizes.pointsByNeyman(StratumWeight.AREA, HAND_OUT, bad, 95))
          .isInstanceOf(OutOfDomainException.class)
          .hasMessageContaining("sampling/points-needed-neyman")
          .hasMessageContaining("E = ");
    }
    assertThatThrownBy(() -> SampleSizes.pointsInProportion(StratumWeight.AREA, HAND_OUT, 10, 100))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> SampleSizes.pointsByNeyman(StratumWeight.AREA, HAND_OUT, 1e-30, 95))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("N = Infinity, allowed a finite result");
    // A speck of a stratum that varies wildly: in proportion it would need points beyond reason.
    List<StratumPlan> speck =
        List.of(new StratumPlan("a", 1e9, 1e-3), new StratumPlan("b", 1, 1e9));
    assertThatThrownBy(() -> SampleSizes.pointsInProportion(StratumWeight.AREA, speck, 0.5, 95))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("N = Infinity");
  }

  @Test
  void costsDecide() {
    Allocation budget = SampleSizes.plotsForBudget(COSTED, 5000);
    assertThat(budget.weight()).isEqualTo(StratumWeight.UNITS);
    assertThat(budget.shares()).extracting(Allocation.Share::points).containsExactly(136L, 226L);
    assertThat(budget.shares().get(0).exact()).isCloseTo(136.99, within(0.005));
    Allocation bound = SampleSizes.plotsForBound(COSTED, 1000, 2);
    assertThat(bound.shares()).extracting(Allocation.Share::points).containsExactly(56L, 92L);
    assertThat(bound.shares().get(1).exact()).isCloseTo(91.09, within(0.005));
    assertThatThrownBy(() -> SampleSizes.plotsForBudget(COSTED, 60))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("stratum 1: a budget of 60.0 pays for 1.6")
        .hasMessageEndingWith("units; an error of its own needs two");
    assertThatThrownBy(() -> SampleSizes.plotsForBound(List.of(), 10, 2))
        .hasMessageContaining("no strata");
    assertThatThrownBy(() -> SampleSizes.plotsForBound(COSTED, 0, 2))
        .isInstanceOf(OutOfDomainException.class);
    for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> new CostedStratum("x", bad, 1, 1)).hasMessageContaining("units");
      assertThatThrownBy(() -> new CostedStratum("x", 1, bad, 1)).hasMessageContaining("deviation");
      assertThatThrownBy(() -> new CostedStratum("x", 1, 1, bad)).hasMessageContaining("cost");
    }
    assertThatThrownBy(() -> new CostedStratum("x", 1, 1, 0))
        .hasMessage("stratum x: cost 0.0, allowed above 0");
  }

  @Test
  void aRuleOfThumbGoesByArea() {
    assertThat(SampleSizes.pointsByArea(acres(25))).isEqualTo(25);
    assertThat(SampleSizes.pointsByArea(acres(25.5))).isEqualTo(26);
    assertThat(SampleSizes.pointsByArea(hectares(16))).isEqualTo(40);
    assertThatThrownBy(() -> SampleSizes.pointsByArea(acres(201)))
        .isInstanceOf(OutOfDomainException.class);
  }
}
