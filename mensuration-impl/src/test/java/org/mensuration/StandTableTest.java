package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.PER_HECTARE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE_PER_HECTARE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.mensuration.gauge.CountChoices;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.gauge.StemKind;
import org.mensuration.stand.DiameterClasses;
import org.mensuration.stand.StandEstimate;
import org.mensuration.stand.StandTable;
import org.mensuration.stand.StandTally;
import org.mensuration.stand.TableGroup;
import org.mensuration.stand.TallyPlan;

final class StandTableTest {
  private static final TallyPlan PLAN =
      TallyPlan.of(AngleGauges.ofFactor(squareMetresPerHectare(4)))
          .with(new CountChoices(true, true, true));
  private static final DiameterClasses CLASSES = DiameterClasses.ofWidth(centimetres(10));

  private static final List<CountPoint> POINTS =
      List.of(
          CountPoint.of(
              "1",
              CountedTree.of(centimetres(31)).ofSpecies("oak").ofClass("crop"),
              CountedTree.of(centimetres(38)).ofSpecies("oak").ofClass("crop").withEdgeWeight(2),
              CountedTree.of(centimetres(24)).ofSpecies("ash").ofClass("other").half()),
          CountPoint.of(
              "2",
              CountedTree.of(centimetres(33)).ofSpecies("ash").ofClass("crop"),
              CountedTree.of(centimetres(22)).ofSpecies("ash").dead(),
              CountedTree.of(centimetres(21)).ofClass("other")),
          CountPoint.of("3"));

  @Test
  void speciesAreToldApartUnlessAnotherGroupIsAskedFor() {
    StandTable table = Stands.estimate(PLAN.tabulatedBy(CLASSES), POINTS).table();
    assertThat(table.group()).isEqualTo(TableGroup.SPECIES);
    assertThat(counts(table)).containsExactly(" 1.0", "ash 2.5", "oak 3.0");
    assertThat(cells(table)).containsExactly(" 20 1.0", "ash 20 1.5", "ash 30 1.0", "oak 30 3.0");
  }

  @Test
  void classesOfTheCrewAreToldApart() {
    TallyPlan plan = PLAN.tabulatedBy(CLASSES, TableGroup.TREE_CLASS);
    StandEstimate stand = Stands.estimate(plan, POINTS);
    assertThat(stand.remarks()).contains("table by class of the tree");
    StandTable table = stand.table();
    assertThat(counts(table)).containsExactly(" 1.0", "crop 4.0", "other 1.5");
    assertThat(cells(table)).containsExactly(" 20 1.0", "crop 30 4.0", "other 20 1.5");
    closes(stand);
  }

  @Test
  void theLivingAndTheDeadAreToldApart() {
    StandEstimate stand = Stands.estimate(PLAN.tabulatedBy(CLASSES, TableGroup.CONDITION), POINTS);
    assertThat(counts(stand.table())).containsExactly("dead 1.0", "living 5.5");
    closes(stand);
  }

  private static void closes(StandEstimate stand) {
    StandTable table = stand.table();
    double basalArea = in(stand.basalArea().value(), SQUARE_METRE_PER_HECTARE);
    double stems = in(stand.stems().value(), PER_HECTARE);
    assertThat(in(table.total().basalArea(), SQUARE_METRE_PER_HECTARE)).isEqualTo(basalArea);
    for (List<StandTable.Row> rows :
        List.of(table.cells(), table.groups(), table.diameterClasses())) {
      assertThat(rows.stream().mapToDouble(r -> in(r.stems(), PER_HECTARE)).sum())
          .isCloseTo(stems, within(1e-12 * stems));
      assertThat(rows.stream().mapToDouble(r -> in(r.basalArea(), SQUARE_METRE_PER_HECTARE)).sum())
          .isCloseTo(basalArea, within(1e-12 * basalArea));
    }
  }

  @Test
  void plainNumbersGiveTheSameTables() {
    for (TableGroup group : TableGroup.values()) {
      TallyPlan plan = PLAN.tabulatedBy(CLASSES, group);
      StandTally first = Stands.tally(plan);
      StandTally second = Stands.tally(plan);
      second.treeClassNumber("unlike"); // numbers differ between the two
      for (CountPoint point : POINTS) {
        StandTally tally = point.id().equals("1") ? second : first;
        tally.begin(point.id());
        point.trees().forEach(tree -> give(tally, tree));
        tally.end();
      }
      first.merge(second);
      assertThat(first.estimate().table()).isEqualTo(Stands.estimate(plan, POINTS).table());
    }
  }

  private static void give(StandTally tally, CountedTree tree) {
    tally.tree(in(tree.diameter().get(), CENTIMETRE), tree.weight(), tree.edgeWeight());
    tally.species(tally.speciesNumber(tree.detail().species()));
    tally.treeClass(tally.treeClassNumber(tree.detail().treeClass()));
    if (tree.detail().dead()) {
      tally.stem(StemKind.SINGLE, true);
    }
  }

  @Test
  void aNumberOfNoClassIsRefused() {
    StandTally tally = Stands.tally(PLAN.tabulatedBy(CLASSES, TableGroup.TREE_CLASS));
    tally.begin("7");
    tally.tree(30, 1, 1);
    assertThatThrownBy(() -> tally.treeClass(1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "point 7: class of the tree number 1; allowed: a number that this tally gave, below 1");
    assertThatThrownBy(() -> tally.species(-1))
        .hasMessage("point 7: species number -1; allowed: a number that this tally gave, below 1");
    assertThat(tally.treeClassNumber("crop")).isEqualTo(1);
    tally.treeClass(1);
    tally.end();
    assertThat(counts(tally.estimate().table())).containsExactly("crop 1.0");
  }

  private static List<String> counts(StandTable table) {
    return table.groups().stream()
        .map(row -> row.group().get() + " " + row.count())
        .collect(Collectors.toList());
  }

  private static List<String> cells(StandTable table) {
    return table.cells().stream()
        .map(
            row ->
                row.group().get()
                    + " "
                    + Math.round(in(row.diameterClass().get().lower(), CENTIMETRE))
                    + " "
                    + row.count())
        .collect(Collectors.toList());
  }
}
