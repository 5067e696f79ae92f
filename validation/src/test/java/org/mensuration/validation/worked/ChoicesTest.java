package org.mensuration.validation.worked;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a crew may state of a stratum, and what it changes. */
class ChoicesTest {
  private Folder notes = new Folder(Path.of("."));

  @BeforeEach
  void makeNotes(@TempDir Path path) {
    notes = new Folder(path);
  }

  private Folder choices(String header, String values) {
    return notes
        .swap("stand.csv", "stump_height_m\n", "stump_height_m," + header + "\n")
        .swap("stand.csv", "7,0.3\n", "7,0.3," + values + "\n");
  }

  @Test
  void aRuleForEdgesNeedsRecordedWeights() {
    var outcome = choices("edge_rule", "walkthrough").run();
    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.err())
        .contains(
            "stand.csv, line 2, column edge_rule: found \"walkthrough\", wanted an edge_weight in"
                + " at least one row of the stratum in points.csv, also where it is 1");
    notes.swap("points.csv", "1,20,,,", "1,20,,1,,");
    notes.swap("points.csv", "1,20,,1,,,,", "1,20,,1,,,");
    assertThat(notes.run().words()).anyMatch(l -> l.endsWith("edge weights by walkthrough"));
  }

  @Test
  void pointsStandTogether() {
    var outcome = notes.put("points.csv", notes.text("points.csv") + "P1,all,taken,3,30,,,,,\n");
    assertThat(outcome.run().err())
        .contains(
            "points.csv, line 6, column point: found \"P1\", wanted the rows of a point together,"
                + " each point once");
  }

  @Test
  void choicesOfOtherWordsAreRefused() {
    assertThat(choices("height_curve,dead_trees", "straight,counted").run().err())
        .contains(
            "column height_curve: found \"straight\", wanted naslund or petterson or curtis or"
                + " power");
  }

  @Test
  void deadTreesCanBeLeftOut() {
    notes
        .swap("points.csv", "slope_deg\n", "slope_deg,condition\n")
        .swap("points.csv", "P1,all,taken,1,40,,,,,\n", "P1,all,taken,1,40,,,,,,live\n")
        .swap("points.csv", "P1,all,taken,2,30,,,,,\n", "P1,all,taken,2,30,,,,,,dead\n")
        .swap("points.csv", "P2,all,taken,,,,,,,\n", "P2,all,taken,,,,,,,,\n")
        .swap("points.csv", "P3,all,taken,1,20,,,,,\n", "P3,all,taken,1,20,,,,,,live\n");
    assertThat(notes.run().words()).anyMatch(l -> l.startsWith("P1 all 2 2.0 8.0"));
    var without = choices("dead_trees", "left out").run();
    assertThat(without.words())
        .anyMatch(l -> l.startsWith("P1 all 2 1.0 4.0"))
        .contains("- Dead trees, left out as the notes say: point P1 tree 2");
  }

  @Test
  void aGridIsACaution() {
    assertThat(choices("points_chosen", "grid").run().flat())
        .contains("Stratum all: points on a systematic grid")
        .contains("points on a grid, dead trees: counted, edge weights as noted");
    assertThat(notes.swap("stand.csv", ",grid", ",judgement").run().flat())
        .contains("Stratum all: chosen by judgement");
  }

  private void heights(String one, String two, String three) {
    notes
        .swap("points.csv", "slope_deg\n", "slope_deg,height_m\n")
        .swap("points.csv", "P1,all,taken,1,40,,,,,\n", "P1,all,taken,1,40,,,,,," + one + "\n")
        .swap(
            "points.csv",
            "P1,all,taken,2,30,,,,,\n",
            "P1,all,taken,2,30,,,,,," + two + "\nP1,all,taken,3,25,,,,,,19\n")
        .swap("points.csv", "P2,all,taken,,,,,,,\n", "P2,all,taken,,,,,,,,\n")
        .swap(
            "points.csv",
            "P3,all,taken,1,20,,,,,\n",
            "P3,all,taken,1,20,,,,,," + three + "\nP3,all,taken,2,33,,,,,,\n");
  }

  @Test
  void missingHeightsComeFromTheCurve() {
    heights("25", "21.5", "16.5");
    var outcome = choices("height_curve", "naslund").run();
    assertThat(outcome.status()).isZero();
    assertThat(outcome.flat())
        .contains(
            "trees: height-curve/naslund, 4 heights of trees of 20.0 to 40.0 cm, residual error");
    // Four measured heights and one from the curve; the plain mean is Lorey's height of a sweep.
    assertThat(outcome.words()).anyMatch(l -> l.matches("all 20\\.9 20\\.0 1 \\d+ .*"));
  }

  @Test
  void withoutACurveThereIsNoHeight() {
    heights("25", "", "");
    var outcome = choices("height_curve", "naslund").run();
    assertThat(outcome.flat())
        .contains(
            "No height curve: trees without a species (height-curve/naslund: 2 measured heights,"
                + " wanted at least 3)");
    assertThat(outcome.words()).anyMatch(l -> l.matches("all - - 0 \\d+ .*"));
  }

  @Test
  void aHeightBelowBreastHeightIsRefused() {
    heights("25", "1.3", "16.5");
    assertThat(notes.run().err())
        .contains("column height_m: found \"1.3\", wanted a height above breast height");
  }

  @Test
  void classesGiveAStandTable() {
    var words = choices("class_width_cm", "10").run().words();
    assertThat(words)
        .contains("Stand table of all, lower limits belong to their class")
        .contains("20.0 to 30.0 not noted 1.0 42 1.3 11")
        .contains("20.0 to 30.0 all 1.0 42 1.3 11")
        .contains("all not noted 3.0 72 4.0 33")
        .contains("all all 3.0 72 4.0 33");
  }

  @Test
  void uncommonSizesArePointedOutAndTakenAsNoted() {
    notes.swap("points.csv", "P3,all,taken,1,20", "P3,all,taken,1,400");
    notes.swap("points.csv", "slope_deg\n", "slope_deg,height_m\n");
    String rows = notes.text("points.csv").replace(",,,,,\n", ",,,,,,\n");
    notes.put("points.csv", rows.replace("P1,all,taken,2,30,,,,,,", "P1,all,taken,2,30,,,,,,65"));

    assertThat(notes.run().flat())
        .contains("Uncommon sizes, taken as noted; look at these rows again: point P3 tree 1")
        .contains(
            "slender or squat trees, taken as noted; look at these rows again: point P1 tree 2");
  }
}
