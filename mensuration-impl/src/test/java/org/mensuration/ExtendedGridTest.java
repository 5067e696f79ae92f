package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.ForestUnits.PER_HECTARE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE_PER_HECTARE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.cubicMetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.mensuration.edge.Boundary;
import org.mensuration.edge.EdgeRule;
import org.mensuration.edge.MapTally;
import org.mensuration.edge.MapTree;
import org.mensuration.edge.Position;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.stand.DiameterClasses;
import org.mensuration.stand.DominantHeightRule;
import org.mensuration.stand.Estimated;
import org.mensuration.stand.SampleLayout;
import org.mensuration.stand.StandEstimate;
import org.mensuration.stand.StandTally;
import org.mensuration.stand.TallyPlan;

/** Points inside and beyond the edge of a stand, from which only its own trees are counted. */
class ExtendedGridTest {
  private static final AngleGauge FOUR = AngleGauges.ofFactor(squareMetresPerHectare(4));
  private static final TallyPlan PLAN = TallyPlan.of(FOUR).with(EdgeRule.EXTENDED_GRID);
  private static final CountedTree TREE = CountedTree.of(centimetres(30));

  /** 3, 2 and 5 trees inside, 1 and none beyond: 12, 8, 20, 4 and 0 m²/ha. */
  private static final List<CountPoint> POINTS =
      List.of(
          point("1", 3),
          point("2", 2),
          point("3", 5),
          point("N", 1).beyondEdge(),
          CountPoint.of("E").beyondEdge());

  private static CountPoint point(String id, int trees) {
    return new CountPoint(id, Collections.nCopies(trees, TREE));
  }

  @Test
  void theMeanIsOverThePointsInsideAndTheErrorOverAll() {
    StandEstimate stand = Stands.estimate(PLAN, POINTS);
    assertThat(stand.points()).isEqualTo(5);
    assertThat(stand.pointsBeyondEdge()).isEqualTo(2);
    double mean = 44.0 / 3;
    assertThat(in(stand.basalArea().value(), SQUARE_METRE_PER_HECTARE))
        .isCloseTo(mean, within(1e-14));
    double squares =
        (12 - mean) * (12 - mean)
            + (8 - mean) * (8 - mean)
            + (20 - mean) * (20 - mean)
            + 4 * 4
            + 0 * 0;
    double error = Math.sqrt(5 * squares / 4) / 3;
    assertThat(in(stand.basalArea().standardError(), SQUARE_METRE_PER_HECTARE))
        .isCloseTo(error, within(1e-13));
    assertThat(
            Catalogues.standard()
                .formula("edge/extended-grid-standard-error")
                .applyTo(new double[] {12, 8, 20, 4, 0}, new double[] {1, 1, 1, 0, 0}))
        .isCloseTo(error, within(1e-13));
    assertThat(stand.basalArea().degreesOfFreedom()).isEqualTo(4);
    assertThat(stand.basalArea().coefficientOfVariation())
        .isCloseTo(100 * error * Math.sqrt(5) / mean, within(1e-11));
    // 11 trees of 4 m²/ha over three points, each of 0.0706858 m².
    assertThat(in(stand.stems().value(), PER_HECTARE))
        .isCloseTo(mean / (Math.PI * 0.09 / 4), within(1e-10));
    assertThat(stand.remarks())
        .contains(
            "edges: extended grid, which needs points beyond the edge, at least as far as the"
                + " circles reach",
            "points beyond the edge: 2 of 5; figures per area are over the 3 inside, errors and"
                + " points needed are of all");
  }

  @Test
  void tableDensityAndDominantHeightAreOverThePointsInside() {
    TallyPlan plan =
        PLAN.tabulatedBy(DiameterClasses.ofWidth(centimetres(5))).withDensityBySummation();
    List<CountPoint> points = new ArrayList<>();
    for (CountPoint point : POINTS) {
      List<CountedTree> trees = new ArrayList<>();
      point.trees().forEach(tree -> trees.add(tree.withHeight(metres(20 + trees.size()))));
      points.add(point.withTrees(trees));
    }
    StandEstimate stand = Stands.estimate(plan, points);
    double stems = in(stand.stems().value(), PER_HECTARE);
    assertThat(in(stand.table().total().stems(), PER_HECTARE)).isEqualTo(stems);
    // All trees are alike, so that summed and mean index are one.
    assertThat(in(stand.densityIndexBySummation().stems(), PER_HECTARE))
        .isCloseTo(in(stand.densityIndex().stems(), PER_HECTARE), within(1e-9));
    // Each tree stands for 56.6 stems at one point; a rule of 3 points wants 3 times its number.
    DominantHeightRule all = perHectare(stems);
    assertThat(
            Stands.dominantHeight(plan, points, all)
                .quadraticMeanDiameter()
                .getValue()
                .doubleValue())
        .isCloseTo(30, within(1e-9));
    assertThatThrownBy(() -> Stands.dominantHeight(plan, points, perHectare(1.01 * stems)))
        .hasMessageContaining("stand for only");
    // Heights run 20, 21 ... at each point; alike in diameter, so each point gives its mean.
    assertThat(
            in(
                Stands.dominantHeight(plan, points, DominantHeightRule.THICKEST_OF_EACH_POINT)
                    .height(),
                METRE))
        .isCloseTo((21 + 20.5 + 22) / 3, within(1e-9));
  }

  @Test
  void numbersPartsAndOrderGiveTheSameBits() {
    StandTally tally = Stands.tally(PLAN);
    List<CountPoint> backwards = new ArrayList<>(POINTS);
    Collections.reverse(backwards);
    for (CountPoint point : backwards) {
      StandTally part = Stands.tally(PLAN);
      if (point.outside()) {
        part.beginBeyondEdge(point.id());
      } else {
        part.begin(point.id());
      }
      for (int i = 0; i < point.trees().size(); i++) {
        part.tree(30, 1, 1);
      }
      part.end();
      tally.merge(part);
    }
    StandEstimate one = Stands.estimate(PLAN, POINTS);
    StandEstimate other = tally.estimate();
    assertThat(other.pointsBeyondEdge()).isEqualTo(2);
    assertThat(in(other.basalArea().standardError(), SQUARE_METRE_PER_HECTARE))
        .isEqualTo(in(one.basalArea().standardError(), SQUARE_METRE_PER_HECTARE));
    assertThat(in(other.stems().value(), PER_HECTARE))
        .isEqualTo(in(one.stems().value(), PER_HECTARE));
  }

  @Test
  void measuredPointsBeyondTheEdgeServeTheRatio() {
    CountedTree measured = TREE.withVolume(cubicMetres(0.7));
    List<CountPoint> some =
        List.of(CountPoint.of("1", measured, measured), CountPoint.of("N", measured).beyondEdge());
    double ratio =
        Estimators.countAndMeasure(Stands.estimate(PLAN, POINTS), some, SampleLayout.RANDOM)
            .ratio()
            .value();
    assertThat(ratio).isCloseTo(0.7 / (Math.PI * 0.09 / 4), within(1e-12));
  }

  @Test
  void whatDoesNotGoWithTheRuleIsRefused() {
    assertThatThrownBy(() -> Stands.estimate(FOUR, POINTS))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "point N lies beyond the edge; only a plan with the rule \"extended grid\" takes such"
                + " points");
    assertThatThrownBy(
            () -> Stands.dominantHeight(TallyPlan.of(FOUR), POINTS.subList(3, 4), perHectare(1)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("point N lies beyond the edge");
    assertThatThrownBy(() -> Stands.estimate(PLAN, POINTS.subList(0, 3)))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageStartingWith("extended grid is asked for, but no point lies beyond the edge");
    assertThatThrownBy(() -> Stands.estimate(PLAN, POINTS.subList(3, 5)))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageStartingWith("all points lie beyond the edge");
    assertThatThrownBy(
            () -> Stands.estimate(PLAN, List.of(CountPoint.of("1", TREE.withEdgeWeight(2)))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("point 1: edge weight 2.0; on an extended grid a tree counts once");
  }

  /**
   * On a map of 60 m by 40 m with trees up to its edge the plan finds the census, and its 95 %
   * intervals hold it about as often as they say. 400 samples of 40 points, seeded.
   */
  @Test
  void theIntervalHoldsTheCensus() {
    Random random = new Random(20261128);
    List<MapTree> trees = new ArrayList<>();
    double area = 0;
    for (int i = 0; i < 150; i++) {
      double diameter = 15 + 25 * random.nextDouble();
      area += Math.PI * diameter * diameter / 40000;
      Position place = at(60 * random.nextDouble(), 40 * random.nextDouble());
      trees.add(MapTree.of("t" + i, place, centimetres(diameter)));
    }
    double census = area / 0.24; // m² on 0.24 ha
    double reach = 10.0; // 0.25 m a centimetre of 40 cm at factor 4
    Boundary tract = EdgeCorrections.rectangle(at(0, 0), at(60, 40));
    MapTally map = EdgeCorrections.tally(trees, FOUR, tract, EdgeRule.EXTENDED_GRID);
    int samples = 400;
    int held = 0;
    double sum = 0;
    double squares = 0;
    for (int s = 0; s < samples; s++) {
      List<CountPoint> points = new ArrayList<>();
      for (int p = 0; p < 40; p++) {
        double x = -reach + (60 + 2 * reach) * random.nextDouble();
        double y = -reach + (40 + 2 * reach) * random.nextDouble();
        points.add(map.countFrom("p" + p, at(x, y)));
      }
      Estimated<?> found = Stands.estimate(PLAN, points).basalArea();
      double mean = found.value().getValue().doubleValue();
      double half = mean - found.interval(95).lower().getValue().doubleValue();
      held += Math.abs(mean - census) <= half ? 1 : 0;
      sum += mean - census;
      squares += (mean - census) * (mean - census);
    }
    // Three standard errors of a share of 0.95 and of the mean difference.
    assertThat(held / (double) samples)
        .isCloseTo(0.95, within(3 * Math.sqrt(0.95 * 0.05 / samples)));
    assertThat(sum / samples).isCloseTo(0, within(3 * Math.sqrt(squares / samples / samples)));
  }

  private static DominantHeightRule perHectare(double stems) {
    return new DominantHeightRule(DominantHeightRule.Kind.THICKEST_PER_HECTARE, stems);
  }

  private static Position at(double x, double y) {
    return Position.of(metres(x), metres(y));
  }
}
