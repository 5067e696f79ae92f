package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.TallyCorrectionsTest.basalArea;
import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.CUBIC_METRE_PER_HECTARE;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.ForestUnits.PER_HECTARE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE_PER_HECTARE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.cubicMetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.CountChoices;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.gauge.StemKind;
import org.mensuration.gauge.SweepCorrection;
import org.mensuration.kernel.LimitingDistance;
import org.mensuration.stand.DiameterClasses;
import org.mensuration.stand.DiameterUse;
import org.mensuration.stand.SampleLayout;
import org.mensuration.stand.StandEstimate;
import org.mensuration.stand.StandTable;
import org.mensuration.stand.StandTally;
import org.mensuration.stand.TallyPlan;

class StandTallyTest {
  private static final AngleGauge FOUR = AngleGauges.ofFactor(squareMetresPerHectare(4));
  private static final TallyPlan PLAN = TallyPlan.of(FOUR);
  private static final TallyPlan FULL =
      PLAN.tabulatedBy(DiameterClasses.ofWidth(centimetres(5))).withDensityBySummation();

  /** Points with every kind of tree, drawn by a seed. */
  private static List<CountPoint> points(long seed, int number) {
    Random random = new Random(seed);
    List<CountPoint> points = new ArrayList<>();
    for (int p = 0; p < number; p++) {
      List<CountedTree> trees = new ArrayList<>();
      for (int t = random.nextInt(9); t > 0; t--) {
        CountedTree tree =
            CountedTree.of(centimetres(7 + 60 * random.nextDouble()))
                .withHeight(metres(5 + 30 * random.nextDouble()))
                .withVolume(cubicMetres(4 * random.nextDouble()))
                .ofSpecies(random.nextBoolean() ? "spruce" : "beech");
        tree = random.nextInt(5) == 0 ? tree.half() : tree;
        trees.add(random.nextInt(7) == 0 ? tree.withEdgeWeight(1 + random.nextDouble()) : tree);
      }
      CountPoint point = new CountPoint("p" + p, trees);
      points.add(p % 11 == 10 ? point.correctedBy(SweepCorrection.HALF_SWEEP) : point);
    }
    return points;
  }

  private static List<Object> figures(StandEstimate stand) {
    return List.of(
        stand.points(),
        stand.basalArea(),
        stand.stems(),
        stand.volume(),
        stand.quadraticMeanDiameter(),
        stand.arithmeticMeanDiameter(),
        stand.loreyHeight(),
        stand.densityIndex(),
        stand.densityIndexBySummation(),
        stand.relativeDensityMetric(),
        stand.table(),
        stand.remarks());
  }

  @Property(tries = 60)
  void orderAndMergesDoNotShow(@ForAll long seed, @ForAll @IntRange(min = 1, max = 40) int number) {
    List<CountPoint> points = points(seed, number);
    List<Object> expected = figures(Stands.estimate(FULL, points));
    List<CountPoint> shuffled = new ArrayList<>();
    for (CountPoint point : points) {
      List<CountedTree> trees = new ArrayList<>(point.trees());
      Collections.shuffle(trees, new Random(seed));
      shuffled.add(point.withTrees(trees));
    }
    Collections.shuffle(shuffled, new Random(seed + 1));
    assertThat(figures(Stands.estimate(FULL, shuffled))).isEqualTo(expected);
    assertThat(figures(shuffled.parallelStream().collect(Stands.tallying(FULL))))
        .isEqualTo(expected);
    StandTally whole = Stands.tally(FULL);
    StandTally part = Stands.tally(FULL);
    part.speciesNumber("oak"); // numbers of species differ between the two
    part.speciesNumber("beech");
    for (CountPoint point : shuffled) {
      (point.hashCode() % 2 == 0 ? whole : part).add(point);
    }
    whole.merge(part);
    assertThat(figures(whole.estimate())).isEqualTo(expected);
  }

  @Property(tries = 60)
  void meansAreTheRoundedExactOnes(
      @ForAll long seed, @ForAll @IntRange(min = 2, max = 30) int number) {
    List<CountPoint> points = points(seed, number);
    BigDecimal count = BigDecimal.ZERO;
    BigDecimal stems = BigDecimal.ZERO;
    List<BigDecimal> counts = new ArrayList<>();
    for (CountPoint point : points) {
      BigDecimal here = BigDecimal.ZERO;
      for (CountedTree tree : point.trees()) {
        double weight = tree.weight() * tree.edgeWeight() * point.sweep().factor();
        double diameter = in(tree.diameter().get(), CENTIMETRE);
        here = here.add(new BigDecimal(weight));
        stems = stems.add(new BigDecimal(weight * LimitingDistance.treeFactor(4, diameter)));
      }
      count = count.add(here);
      counts.add(new BigDecimal(here.doubleValue()));
    }
    StandEstimate stand = Stands.estimate(FOUR, points);
    BigDecimal n = BigDecimal.valueOf(number);
    assertThat(in(stand.stems().value(), PER_HECTARE))
        .isEqualTo(stems.divide(n, MathContext.DECIMAL128).doubleValue());
    BigDecimal four = BigDecimal.valueOf(4);
    assertThat(in(stand.basalArea().value(), SQUARE_METRE_PER_HECTARE))
        .isEqualTo(count.multiply(four).divide(n, MathContext.DECIMAL128).doubleValue());
    BigDecimal mean = count.divide(n, MathContext.DECIMAL128);
    BigDecimal squares = BigDecimal.ZERO;
    for (BigDecimal here : counts) {
      squares = squares.add(here.subtract(mean).pow(2));
    }
    double variance = squares.doubleValue() / (number - 1) / number;
    double error = in(stand.basalArea().standardError(), SQUARE_METRE_PER_HECTARE);
    assertThat(error).isCloseTo(4 * Math.sqrt(variance), within(1e-12));
  }

  @Test
  void equalPointsHaveNoErrorAtAll() {
    List<CountPoint> points = new ArrayList<>();
    for (int i = 0; i < 97; i++) {
      points.add(
          CountPoint.of(
              "p" + i,
              CountedTree.of(centimetres(31.7)).withEdgeWeight(1.1).withVolume(cubicMetres(0.7)),
              CountedTree.of(centimetres(17.3)).withVolume(cubicMetres(0.1))));
    }
    StandEstimate stand = Stands.estimate(FOUR, points);
    assertThat(in(stand.stems().standardError(), PER_HECTARE)).isZero();
    assertThat(in(stand.basalArea().standardError(), SQUARE_METRE_PER_HECTARE)).isZero();
    assertThat(in(stand.volume().standardError(), CUBIC_METRE_PER_HECTARE)).isZero();
  }

  @Test
  void figuresOfOneSweepByHand() {
    StandEstimate stand =
        Stands.estimate(
            FULL,
            List.of(
                CountPoint.of(
                    "1",
                    CountedTree.of(centimetres(20))
                        .withHeight(metres(16))
                        .withVolume(cubicMetres(0.25)),
                    CountedTree.of(centimetres(40))
                        .withPredictedHeight(metres(24))
                        .withVolume(cubicMetres(1.5)))));
    double thin = 4 / (Math.PI * 0.01); // stems per hectare of each
    double thick = 4 / (Math.PI * 0.04);
    assertThat(in(stand.stems().value(), PER_HECTARE)).isCloseTo(thin + thick, within(1e-10));
    assertThat(in(stand.volume().value(), CUBIC_METRE_PER_HECTARE))
        .isCloseTo(thin * 0.25 + thick * 1.5, within(1e-10));
    assertThat(in(stand.loreyHeight().get(), METRE)).isEqualTo(20); // the plain mean of a sweep
    assertThat(in(stand.arithmeticMeanDiameter().get(), CENTIMETRE))
        .isCloseTo((thin * 20 + thick * 40) / (thin + thick), within(1e-12));
    double quadratic = Math.sqrt((thin * 400 + thick * 1600) / (thin + thick));
    assertThat(in(stand.quadraticMeanDiameter().get(), CENTIMETRE))
        .isCloseTo(quadratic, within(1e-12));
    assertThat(in(stand.densityIndex().stems(), PER_HECTARE))
        .isCloseTo((thin + thick) * Math.pow(quadratic / 25.4, 1.605), within(1e-9));
    assertThat(in(stand.densityIndexBySummation().stems(), PER_HECTARE))
        .isCloseTo(
            thin * Math.pow(20 / 25.4, 1.605) + thick * Math.pow(40 / 25.4, 1.605), within(1e-9));
    assertThat(in(stand.densityIndex().referenceDiameter(), CENTIMETRE)).isEqualTo(25.4);
    assertThat(stand.relativeDensityMetric().get())
        .isCloseTo(8 / Math.sqrt(quadratic), within(1e-12));
    assertThat(stand.predictedHeights()).isEqualTo(1);
    assertThat(stand.remarks())
        .contains("heights from a height curve: 1", "one point: no standard error and no interval");
  }

  @Property(tries = 30)
  void theTableCloses(@ForAll long seed) {
    StandEstimate stand = Stands.estimate(FULL, points(seed, 25));
    StandTable table = stand.table();
    double basalArea = in(stand.basalArea().value(), SQUARE_METRE_PER_HECTARE);
    assertThat(in(table.total().basalArea(), SQUARE_METRE_PER_HECTARE)).isEqualTo(basalArea);
    assertThat(in(table.total().stems(), PER_HECTARE))
        .isEqualTo(in(stand.stems().value(), PER_HECTARE));
    assertThat(table.total().volume().map(v -> in(v, CUBIC_METRE_PER_HECTARE)))
        .contains(in(stand.volume().value(), CUBIC_METRE_PER_HECTARE));
    for (List<StandTable.Row> rows :
        List.of(table.cells(), table.groups(), table.diameterClasses())) {
      assertThat(rows.stream().mapToDouble(row -> in(row.stems(), PER_HECTARE)).sum())
          .isCloseTo(in(stand.stems().value(), PER_HECTARE), within(1e-9));
      assertThat(rows.stream().mapToDouble(StandTable.Row::count).sum())
          .isCloseTo(table.total().count(), within(1e-12));
      assertThat(
              rows.stream().mapToDouble(row -> in(row.basalArea(), SQUARE_METRE_PER_HECTARE)).sum())
          .isCloseTo(basalArea, within(1e-12));
      assertThat(
              rows.stream()
                  .mapToDouble(row -> in(row.volume().get(), CUBIC_METRE_PER_HECTARE))
                  .sum())
          .isCloseTo(in(stand.volume().value(), CUBIC_METRE_PER_HECTARE), within(1e-9));
    }
  }

  @Test
  void classLimitsBelongWhereThePlanSays() {
    assertThat(lowerLimits(DiameterClasses.ofWidth(centimetres(5)), 10, 12.4, 14.999))
        .containsExactly(10.0);
    assertThat(lowerLimits(DiameterClasses.ofWidth(centimetres(5)), 15 - 1e-12, 15 + 1e-12))
        .containsExactly(15.0);
    DiameterClasses upper =
        new DiameterClasses(centimetres(5), centimetres(0), DiameterClasses.ClosedEnd.UPPER);
    assertThat(lowerLimits(upper, 10, 10 + 1e-12)).containsExactly(5.0);
    assertThat(lowerLimits(upper, 10.01, 15)).containsExactly(10.0);
    assertThat(lowerLimits(DiameterClasses.centredOnMultiplesOf(centimetres(5)), 7.5, 12.4))
        .containsExactly(7.5);
    StandTable table = table(DiameterClasses.centredOnMultiplesOf(centimetres(5)), 11);
    StandTable.DiameterClass of = table.diameterClasses().get(0).diameterClass().get();
    assertThat(in(of.centre(), CENTIMETRE)).isEqualTo(10);
    assertThat(in(of.upper(), CENTIMETRE)).isEqualTo(12.5);
  }

  private static List<Double> lowerLimits(DiameterClasses classes, double... diametersCm) {
    return table(classes, diametersCm).diameterClasses().stream()
        .map(row -> in(row.diameterClass().get().lower(), CENTIMETRE))
        .toList();
  }

  private static StandTable table(DiameterClasses classes, double... diametersCm) {
    StandTally tally = Stands.tally(PLAN.tabulatedBy(classes));
    tally.begin("1");
    for (double diameter : diametersCm) {
      tally.tree(diameter, 1, 1);
    }
    tally.end();
    return tally.estimate().table();
  }

  @Test
  void manyClassesAndSpeciesKeepApart() {
    StandTally tally = Stands.tally(FULL);
    tally.begin("1");
    for (int i = 0; i < 2000; i++) {
      tally.tree(2.5 + 5 * (i % 100), 1, 1);
      tally.species(tally.speciesNumber("s" + i % 20));
    }
    tally.end();
    StandTable table = tally.estimate().table();
    assertThat(table.cells()).hasSize(100).allMatch(row -> row.count() == 20);
    assertThat(table.groups()).hasSize(20).allMatch(row -> row.count() == 100);
    assertThat(table.diameterClasses()).hasSize(100).allMatch(row -> row.count() == 20);
  }

  @Test
  void choicesAreKeptAndPrinted() {
    CountPoint point =
        CountPoint.of(
            "1",
            CountedTree.of(centimetres(30)),
            CountedTree.of(centimetres(30)).dead(),
            CountedTree.of(centimetres(30)).ofKind(StemKind.FURTHER_OF_FORK),
            CountedTree.of(centimetres(30)).ofKind(StemKind.FURTHER_OF_COPPICE),
            CountedTree.of(centimetres(9)),
            CountedTree.of(centimetres(30)).out());
    StandEstimate usual = Stands.estimate(PLAN, List.of(point));
    assertThat(basalArea(usual)).isEqualTo(16);
    assertThat(usual.leftOut()).isEqualTo(1);
    assertThat(usual.remarks())
        .contains(
            "fork below breast height: each stem counts as a tree",
            "dead trees: not counted",
            "diameters as recorded",
            "no smallest diameter",
            "stems left out by these choices: 1");
    StandEstimate strict =
        Stands.estimate(
            PLAN.with(new CountChoices(false, false, true))
                .fromDiameter(centimetres(10))
                .with(SampleLayout.JUDGEMENT),
            List.of(point));
    assertThat(basalArea(strict)).isEqualTo(8);
    assertThat(strict.leftOut()).isEqualTo(3);
    assertThat(strict.remarks())
        .contains(
            "coppice stool: only the leading stem counts",
            "dead trees: counted",
            "smallest diameter counted: 10 cm")
        .anyMatch(line -> line.startsWith("chosen by judgement"));
    assertThat(Stands.estimate(PLAN.with(SampleLayout.SYSTEMATIC), List.of(point)).remarks())
        .anyMatch(line -> line.startsWith("points on a systematic grid"));
  }

  @Test
  void flooredDiametersCanBeUsedAtTheMiddle() {
    CountPoint point = CountPoint.ofDiameters("1", centimetres(31));
    StandEstimate middle = Stands.estimate(PLAN.with(DiameterUse.MID_CENTIMETRE), List.of(point));
    assertThat(in(middle.quadraticMeanDiameter().get(), CENTIMETRE)).isCloseTo(31.5, within(1e-12));
    assertThat(in(Stands.estimate(PLAN, List.of(point)).arithmeticMeanDiameter().get(), CENTIMETRE))
        .isCloseTo(31, within(1e-12));
    CountPoint almost = CountPoint.ofDiameters("1", centimetres(31 - 1e-12));
    StandEstimate snapped = Stands.estimate(PLAN.with(DiameterUse.MID_CENTIMETRE), List.of(almost));
    assertThat(in(snapped.quadraticMeanDiameter().get(), CENTIMETRE)).isCloseTo(31.5, within(1e-9));
  }

  @Test
  void treesBeyondTheirLimitAreReportedAndCounted() {
    StandEstimate stand =
        Stands.estimate(
            FOUR,
            List.of(
                CountPoint.of(
                    "7",
                    CountedTree.of(centimetres(30)).at(metres(7.5)),
                    CountedTree.of(centimetres(30)).at(metres(7.6)))));
    assertThat(basalArea(stand)).isEqualTo(8);
    assertThat(stand.beyondLimit()).isEqualTo(1);
    assertThat(stand.remarks())
        .contains(
            "trees counted beyond their limit: 1",
            "point 7, tree 2: counted, but measured at 7.600 m, beyond its limit of 7.500 m");
  }

  @Test
  void ofManyReportsTheFirstByNameStay() {
    List<CountPoint> points = new ArrayList<>();
    for (int i = 100; i < 350; i++) {
      points.add(CountPoint.of("p" + i, CountedTree.of(centimetres(30)).at(metres(9))));
    }
    List<String> remarks = Stands.estimate(FOUR, points).remarks();
    Collections.reverse(points);
    assertThat(Stands.estimate(FOUR, points).remarks()).isEqualTo(remarks);
    assertThat(remarks).filteredOn(line -> line.startsWith("point ")).hasSize(100);
    assertThat(remarks).contains("trees counted beyond their limit: 250");
    assertThat(remarks).anyMatch(line -> line.startsWith("point p100, tree 1: counted"));
  }
}
