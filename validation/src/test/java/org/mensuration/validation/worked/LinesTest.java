package org.mensuration.validation.worked;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Lines, worked by hand. By 4 m²/ha a tree of 40 cm is in up to 10 m, so a line of 20 m takes it
 * from 20 · 2 · 10 = 400 m² and it stands for 25 trees a hectare, or 25 · 0.125664 = 3.14 m²/ha.
 */
class LinesTest {
  private Folder notes = new Folder(Path.of("."));

  @BeforeEach
  void makeNotes(@TempDir Path path) {
    notes = new Folder(path);
    notes.put(
        "lines.csv",
        """
        line,stratum,length_m,slope_deg,factor_m2_per_ha,top_angle_deg,tree,dbh_cm,height_above_eye_m,volume_m3,condition
        L1,all,20,,4,,1,40,,1.2,
        L1,all,20,,4,,2,20,,0.3,
        L2,all,40,,4,,,,,,
        """);
  }

  @Test
  void linesAreWeighedByTheirLength() {
    // 20 cm: in up to 5 m, 50 trees a hectare, 1.57 m²/ha. L1: 75 stems, 4.71 m²/ha and
    // 25 · 1.2 + 50 · 0.3 = 45 m³/ha. Over both: 75 · 20/60 = 25, 1.57 and 15. Residuals of the
    // sums along the line 1500 - 25 · 20 = 1000 and -25 · 40: error 1000/30 = 33.3, 133.3 %; t with
    // 1 df 12.706, 423.5 apart.
    assertThat(notes.run().words())
        .contains(
            "Lines of all, 2 lines by diameter: another sample of the same stratum, not to be added")
        .contains("In: trees to both sides that fill a gauge of 4.000 m²/ha")
        .contains("L1 20.0 2 4.7 75 45")
        .contains("L2 40.0 0 0.0 0 0")
        .contains("basal area m²/ha 1.6 2.1 133.3 -25.0 28.2 1")
        .contains("stems 1/ha 25 33 133.3 -399 449 1")
        .contains("volume m³/ha 15 20 133.3 -239 269 1");
  }

  @Test
  void aTapedLineOnASlopeIsLevelled() {
    // 40 m at 60° are 20 m level: means of two lines of one length, 75/2 = 37.5 and error 37.5.
    notes.swap("lines.csv", "L2,all,40,,4", "L2,all,40,60,4");
    assertThat(notes.run().words())
        .contains("L2 20.0 0 0.0 0 0")
        .anyMatch(l -> l.matches("stems 1/ha 3[78] 3[78] 100\\.0 .* 1"));
  }

  @Test
  void aLineByHeightTakesTreesFromAStripOfTheirHeight() {
    // A top 20 m above the eye is in up to 20/tan 45° = 20 m: 20 · 2 · 20 = 800 m², 12.5 trees a
    // hectare; the other with 10 m 25. Basal area 12.5 · 0.125664 + 25 · 0.031416 = 2.36.
    notes.put(
        "lines.csv",
        notes
            .text("lines.csv")
            .replace("20,,4,,1,40,,", "20,,,45,1,40,20,")
            .replace("20,,4,,2,20,,", "20,,,45,2,20,10,")
            .replace("40,,4,,", "20,,,45,"));
    assertThat(notes.run().words())
        .contains(
            "Lines of all, 2 lines by height: another sample of the same stratum, not to be added")
        .contains("In: trees to both sides whose top stands at 45.0° or more, on level ground")
        .anyMatch(l -> l.matches("L1 20\\.0 2 2\\.4 3[78] 2[23]"))
        .anyMatch(l -> l.startsWith("basal area m²/ha 1.2 1.2 100.0 "));
  }

  @Test
  void usUnitsTurnTheSameLines() {
    // 20 m are 65.6 ft, 25 stems a hectare 10 an acre, 15 m³/ha 214 ft³/ac.
    assertThat(notes.run("--units", "us").words())
        .contains("In: trees to both sides that fill a gauge of 17.424 ft²/ac")
        .anyMatch(l -> l.startsWith("L1 65.6 2 "))
        .anyMatch(l -> l.startsWith("stems 1/ac 10 "))
        .anyMatch(l -> l.startsWith("volume ft³/ac 214 "));
  }

  @Test
  void oneLineHasNoErrorAndATreeWithoutVolumeNoVolume() {
    notes.swap("lines.csv", "L2,all,40,,4,,,,,,\n", "").swap("lines.csv", "1,40,,1.2", "1,40,,");
    var outcome = notes.run();
    assertThat(outcome.words()).contains("stems 1/ha 75 - - - - -").contains("volume m³/ha -");
    assertThat(outcome.flat())
        .contains("Trees on lines without a volume, so no volume from these lines: line L1 tree 1");
  }

  @Test
  void deadTreesCountAsAtThePoints() {
    notes
        .swap("lines.csv", "1,40,,1.2,", "1,40,,1.2,dead")
        .swap("stand.csv", "stump_height_m\n", "stump_height_m,dead_trees\n")
        .swap("stand.csv", "7,0.3\n", "7,0.3,left out\n");
    assertThat(notes.run().words())
        .contains("L1 20.0 1 1.6 50 15")
        .contains("- Dead trees, left out as the notes say: line L1 tree 1");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "L2,all,40|L2,all,0|line 4, column length_m: found \"0\", wanted metres above 0",
        "L2,all,40|L2,all,|line 4, column length_m: found an empty cell, wanted metres above 0",
        "L2,all,40|L2,all,-5|column length_m: found \"-5\", wanted metres above 0",
        "L2,all,40|,all,40|column line: found an empty cell, wanted a name of the line",
        "L2,all,40|L2,every,40|column stratum: found \"every\", wanted a stratum of stand.csv",
        "L2,all,40,,4|L2,all,40,90,4|column slope_deg: found \"90\", wanted degrees between",
        "L2,all,40,,4|L2,all,40,,|column factor_m2_per_ha: found an empty cell, wanted either the fact",
        "L2,all,40,,4,|L2,all,40,,4,60|found \"4\", wanted either the factor of the gauge or a top_ang",
        "L2,all,40,,4|L2,all,40,,0|column factor_m2_per_ha: found \"0\", wanted a factor above 0",
        "L2,all,40,,4,|L2,all,40,,,90|column top_angle_deg: found \"90\", wanted degrees above 0 and b",
        "L2,all,40,,4|L2,all,40,,2|found \"2\", wanted the same as on line L1, in one stratum",
        "L2,all,40,,4|L1,all,20,,4|wanted one row without a tree where a line is empty, and else none",
        "L1,all,20,,4,,2|L1,all,25,,4,,2|wanted the same length and slope in all rows of a line",
        "L1,all,20,,4,,2|L1,all,20,,2,,2|wanted the same choice of trees in all rows of a line",
        "L1,all,20,,4,,2|L1,all,20,,4,,1|column tree: found \"1\", wanted each tree of a line once",
        "2,20,,0.3|2,,,0.3|column dbh_cm: found an empty cell, wanted the diameter of each tree",
        "2,20,,0.3|,20,,0.3|column tree: found an empty cell, wanted a name, since the row has figures",
        "2,20,,0.3|2,20,,0|column volume_m3: found \"0\", wanted cubic metres above 0, or empty",
        "L2,all,40,,4,,,,,|L2,all,40,,,60,1,30,,|column height_above_eye_m: found an empty cell, wante",
      })
  void whatCannotBeIsRefused(String old, String with, String message) {
    var outcome = notes.swap("lines.csv", old, with).run();
    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err()).contains("lines.csv, line ").contains(message);
  }
}
