package org.mensuration.validation.worked;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Plots of fixed size, worked by hand: 100 m² from 10 cm and 500 m² from 30 cm, so 100 and 20 trees
 * a hectare a tree. A tree of 20 cm has 0.031416 m², one of 40 cm 0.125664 m².
 */
class PlotsTest {
  private Folder notes = new Folder(Path.of("."));

  @BeforeEach
  void makeNotes(@TempDir Path path) {
    notes = new Folder(path);
    notes.put(
        "plots.csv",
        """
        kind,plot,stratum,slope_deg,layout,circle,area_m2,from_dbh_cm,tree,dbh_cm,volume_m3,condition
        circle,,,,,outer,500,30,,,,
        circle,,,,,inner,100,10,,,,
        plot,A,all,,,,,,,,,
        tree,A,,,,inner,,,1,20,0.3,
        tree,A,,,,,,,2,40,1.2,
        plot,B,all,,,,,,,,,
        """);
  }

  @Test
  void eachTreeStandsForTheTreesOfItsCircle() {
    // A: 100 + 20 stems, 3.1416 + 2.5133 m²/ha, 30 + 24 m³/ha; B nothing. Means 60, 2.8 and 27,
    // each error its mean: s/sqrt 2 of two readings of which one is 0. 10 ha hold 1000 plots of
    // 100 m²: times sqrt(1 - 2/1000) = 0.9990. t with 1 df 12.706: 59.94 · 12.706 = 761.6.
    assertThat(notes.run().words())
        .contains(
            "Fixed plots of all, 2 plots: another sample of the same stratum, not to be added")
        .contains("inner 10.0 100 100.0")
        .contains("outer 30.0 500 20.0")
        .contains("A level 0.0 5.64 12.62 1.000 2 5.7 120 54")
        .contains("B level 0.0 5.64 12.62 1.000 0 0.0 0 0")
        .contains("basal area m²/ha 2.8 2.8 99.9 -33.1 38.7 1")
        .contains("stems 1/ha 60 60 99.9 -702 822 1")
        .contains("volume m³/ha 27 27 99.9 -316 370 1")
        .contains(
            "Errors with the finite correction for 1000 plots of the smallest circle on 10.0 ha");
  }

  @Test
  void aSmallAreaMakesTheErrorSmaller() {
    // 0.1 ha hold 10 plots: 60 · sqrt(1 - 2/10) = 53.7, and 53.67 · 12.706 = 681.9.
    notes.swap("stand.csv", "all,10,4", "all,0.1,4");
    assertThat(notes.run().words()).contains("stems 1/ha 60 54 89.4 -622 742 1");
    // 150 m² hold 1.5 plots of 100 m², which is less than two.
    notes.swap("stand.csv", "all,0.1,4", "all,0.015,4");
    assertThat(notes.run().flat())
        .contains("Stratum smaller than its plots together, so their error has no finite correct")
        .contains("stems 1/ha 60 60 100.0 -702 822 1");
  }

  @Test
  void withoutAnAreaThereIsNoFiniteCorrection() {
    notes.swap("stand.csv", "all,10,4", "all,,4");
    assertThat(notes.run().flat())
        .contains("stems 1/ha 60 60 100.0 -702 822 1")
        .contains("Errors without a finite correction (sampling/standard-error): right if the");
  }

  @Test
  void aSlopeIsAllowedForByTheLayout() {
    // cos 60° = 0.5: radii 5.642 and 11.284 m as an ellipse, 7.979 m as a circle on the slope, and
    // with the plain radius each figure twice.
    notes.swap("plots.csv", "plot,A,all,,,", "plot,A,all,60,ellipse,");
    assertThat(notes.run().words())
        .contains("A ellipse 60.0 5.64 × 11.28 12.62 × 25.23 1.000 2 5.7 120 54");
    notes.swap("plots.csv", "60,ellipse", "60,circle on slope");
    assertThat(notes.run().words())
        .contains("A circle on slope 60.0 7.98 17.84 1.000 2 5.7 120 54");
    notes.swap("plots.csv", "60,circle on slope", "60,uncorrected");
    assertThat(notes.run().words()).contains("A uncorrected 60.0 5.64 12.62 2.000 2 11.3 240 108");
    notes.swap("plots.csv", "60,uncorrected", "60,level");
    assertThat(notes.run().words()).contains("A level 60.0 5.64 12.62 1.000 2 5.7 120 54");
  }

  @Test
  void usUnitsTurnTheSamePlots() {
    // 100 m² are 1076 ft², 100 trees a hectare 40.5 an acre, 5.642 m 18.51 ft and 60/ha 24/ac.
    assertThat(notes.run("--units", "us").words())
        .contains("inner 3.9 1076 40.5")
        .anyMatch(l -> l.startsWith("A level 0.0 18.51 41.39 "))
        .anyMatch(l -> l.startsWith("stems 1/ac 24 24 "));
  }

  @Test
  void onePlotHasNoErrorAndATreeWithoutVolumeNoVolume() {
    notes.swap("plots.csv", "plot,B,all,,,,,,,,,\n", "").swap("plots.csv", "40,1.2,", "40,,");
    var outcome = notes.run();
    assertThat(outcome.words()).contains("stems 1/ha 120 - - - - -").contains("volume m³/ha -");
    assertThat(outcome.flat())
        .contains("Trees on plots without a volume, so no volume from plots: plot A tree 2");
  }

  @Test
  void deadTreesCountAsAtThePoints() {
    notes.swap("plots.csv", "40,1.2,", "40,1.2,dead");
    assertThat(notes.run().words()).anyMatch(l -> l.startsWith("stems 1/ha 60 "));
    notes
        .swap("stand.csv", "stump_height_m\n", "stump_height_m,dead_trees\n")
        .swap("stand.csv", "7,0.3\n", "7,0.3,left out\n");
    assertThat(notes.run().words())
        .anyMatch(l -> l.startsWith("stems 1/ha 50 "))
        .contains("- Dead trees, left out as the notes say: plot A tree 2");
  }

  @Test
  void badRowsAreSkippedOnlyWhenAsked() {
    notes.swap("plots.csv", "2,40,1.2", "2,-40,1.2");
    assertThat(notes.run().status()).isEqualTo(1);
    var skipped = notes.run("--skip-bad-rows");
    assertThat(skipped.flat()).contains("Skipped: plots.csv, line 6, column dbh_cm: found \"-40\"");
    assertThat(skipped.words()).anyMatch(l -> l.startsWith("stems 1/ha 50 "));
  }

  @Test
  void columnsThatAreNotKnownAreSaid() {
    notes.put(
        "plots.csv", notes.text("plots.csv").replace("volume_m3,condition", "volume_m3,crew"));
    assertThat(notes.run().flat()).contains("Columns not used: plots.csv crew");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1,20,0.3|1,9.9,0.3|line 5, column dbh_cm: found \"9.9\", wanted 10.0 cm or more: the circle",
        "tree,A,,,,,,,2,40|tree,A,,,,outer,,,2,29.9|wanted 30.0 cm or more: the circle outer takes no",
        "tree,A,,,,,,,2,40|tree,A,,,,inner,,,2,40|column circle: found \"inner\", wanted outer, on whic",
        "tree,A,,,,,,,2,40|tree,A,,,,middle,,,2,40|found \"middle\", wanted a circle of this file, or em",
        "tree,A,,,,,,,2,40|tree,A,,,,,,,1,40|column tree: found \"1\", wanted each tree of a plot once",
        "tree,A,,,,,,,2,40|tree,A,,,,,,,,40|column tree: found an empty cell, wanted a name of the tree",
        "tree,A,,,,,,,2,40|tree,A,,,,,,,2,|column dbh_cm: found an empty cell, wanted centimetres above",
        "tree,A,,,,,,,2,40|tree,C,,,,,,,2,40|column plot: found \"C\", wanted a plot row above its trees",
        "2,40,1.2|2,40,0|column volume_m3: found \"0\", wanted cubic metres above 0, or empty",
        "plot,B,all,,|plot,A,all,,|line 7, column plot: found \"A\", wanted each plot once",
        "plot,B,all,,|plot,B,every,,|column stratum: found \"every\", wanted a stratum of stand.csv",
        "plot,B,all,,|plot,B,all,10,|column layout: found an empty cell, wanted how the plot was staked",
        "plot,B,all,,|plot,B,all,90,level|column slope_deg: found \"90\", wanted degrees from 0 and bel",
        "plot,B,all,,|plot,B,all,9,round|column layout: found \"round\", wanted level or ellipse or circ",
        "plot,B,all|row,B,all|line 7, column kind: found \"row\", wanted circle or plot or tree",
        "inner,100,10|inner,0,10|line 3, column area_m2: found \"0\", wanted horizontal square metres",
        "inner,100,10|inner,100,|column from_dbh_cm: found an empty cell, wanted centimetres from which",
        "inner,100,10|inner,100,30|column from_dbh_cm: found \"30\", wanted another diameter than circle",
        "inner,100,10|outer,100,10|column circle: found \"outer\", wanted each circle once",
        "plot,B,all,,,|circle,,,,,wide|column area_m2: found an empty cell",
      })
  void whatCannotBeIsRefused(String old, String with, String message) {
    var outcome = notes.swap("plots.csv", old, with).run();
    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err()).contains("plots.csv, line ").contains(message);
  }

  @Test
  void circlesComeFirst() {
    notes.put("plots.csv", notes.text("plots.csv") + "circle,,,,,wide,900,50,,,,\n");
    assertThat(notes.run().err())
        .contains("line 8, column kind: found \"circle\", wanted the circles above the plots");
    String without =
        notes.text("plots.csv").lines().filter(l -> !l.startsWith("circle")).toList().toString();
    notes.put("plots.csv", without.substring(1, without.length() - 1).replace(", ", "\n") + "\n");
    assertThat(notes.run().err())
        .contains(
            "column kind: found no circle above this plot, wanted a circle row with its area");
  }
}
