package org.mensuration.validation.worked;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BadInputTest {
  @TempDir Path path;
  private Folder notes;

  @BeforeEach
  void soundNotes() {
    notes = new Folder(path);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "stand.csv|all,10,4|all,-1,4|line 2, column area_ha: found \"-1\", wanted hectares above 0",
        "stand.csv|all,10,4|all,10,0|line 2, column gauge_factor_m2_per_ha: found \"0\"",
        "stand.csv|all,10,4|all,10,NaN|gauge_factor_m2_per_ha: found \"NaN\", wanted a number such",
        "stand.csv|all,10,4|all,10,Infinity|found \"Infinity\", wanted a number such as 12.5",
        "stand.csv|all,10,4|all,10,1e3|found \"1e3\", wanted a number such as 12.5",
        "stand.csv|1.3,in|1.3,maybe|column tie_rule: found \"maybe\", wanted in or out",
        "stand.csv|Small,all|Small,|column stratum: found an empty cell, wanted a name",
        "stations.csv|20,axis,yes|20,,yes|column distance_to: found an empty cell, wanted axis or",
        "stations.csv|20,face,no,40,1.3,10,0|20,face,no,40,1.3,10,|wanted the sight angle of the cal",
        "stations.csv|20,face,no,40,1.3,10,0|20,face,no,,1.3,,|wanted the diameter, half of which",
        "stations.csv|yes,40,|yes,,|line 2, column calibration_diameter_cm: found an empty cell",
        "stations.csv|flat,|steep,|column station: found \"steep\", wanted each station once",
        "stems.csv|,flat,|,nowhere,|column station: found \"nowhere\", wanted a station of stations",
        "stems.csv|,flat,|,,|line 5, column station: found an empty cell, wanted the station of",
        "stems.csv|5,,over|5,20,over|column diameter_cm: found \"20\", wanted either divisions or",
        "stems.csv|5,,over|5,,|line 5, column bark: found an empty cell, wanted over or under",
        "stems.csv|5,,over|5,,under|column bark: found \"under\", wanted over, as in the other",
        "stems.csv|11.3,,5|,30,5|wanted a base row of this stem with a sight angle from this station",
        "stems.csv|11.3,,5|11.3,90,5|column sight_angle_deg: found \"90\", wanted degrees between",
        "stems.csv|tip,21.3|tip,9|line 6, column height_m: found \"9\", wanted an end above every",
        "stems.csv|tip,21.3,,,,|tip,21.3,,,5,over|column kind: found \"tip\", wanted break or",
        "stems.csv|0.3,,,44|1.3,,,44|wanted one diameter at a height",
        "stems.csv|A,P1,1,gauge,,base|A,P1,,gauge,,base|column tree: found an empty cell, wanted both",
        "stems.csv|A,P1,1,gauge,,base|A,P3,1,gauge,,base|line 3, column tree: found \"1\", wanted the",
        "stems.csv|A,P1,1|A,P2,1|line 2, column tree: found point P2 tree 1, wanted a counted tree of",
        "points.csv|P3,all,taken,1|P3,all,seen,1|column status: found \"seen\", wanted taken or not",
        "points.csv|P3,all,taken,1|P3,all,not taken,1|wanted an empty cell: the point was not taken",
        "points.csv|P3,all|P3,other|column stratum: found \"other\", wanted a stratum of stand.csv",
        "points.csv|P3,all,taken,1|P2,all,taken,1|wanted one row without a tree where a point is",
        "points.csv|P3,all,taken,1,|P3,all,taken,,|column tree: found an empty cell, wanted a name",
        "points.csv|1,20,,,,,|1,20,1.5,,,,|column weight: found \"1.5\", wanted a weight of 0, 0.5 or 1",
        "points.csv|1,20,,,,,|1,20,,0.5,,,|column edge_weight: found \"0.5\", wanted a weight from 1",
        "points.csv|1,20,,,,,|1,20,,,5,,|column distance_to: found an empty cell, wanted axis or face",
        "points.csv|1,20,,,,,|1,,,,5,axis,|column dbh_cm: found an empty cell, wanted the diameter",
        "points.csv|1,20,,,,,|1,20,,,5,axis,91|column slope_deg: found \"91\", wanted degrees between",
        "points.csv|P1,all,taken,2|P1,all,taken,1|wanted each tree of a point once",
        "points.csv|1,20,|1,\"20,5\",|found \"20,5\", wanted a decimal point: a decimal comma is read",
        "points.csv|1,20,|1,20,5,|found 11 cells, wanted 10 as in the header (is there a decimal com",
        "points.csv|P3,all,taken,1,20,,,,,|P3,all,taken|found 3 cells, wanted 10 as in the header",
        "points.csv|1,20,|1,\"1,234.5\",|wanted a number without thousands marks, such as 1234.5",
        "points.csv|,slope_deg|,slope|line 1: found a header without slope_deg, wanted columns by",
        "points.csv|,slope_deg|,weight|line 1: found two columns called weight, wanted each column",
      })
  void isRefusedWithItsPlace(String file, String old, String with, String message) {
    var outcome = notes.swap(file, old, with).run();

    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err()).contains(file + ", line ").contains(message);
  }

  @Test
  void aScaleWithoutCompensationWantsTheSightAngleOfEachReading() {
    var outcome = notes.swap("stems.csv", ",flat,", ",steep,").run();

    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.err())
        .contains(
            "stems.csv, line 5, column sight_angle_deg: found an empty cell, wanted the sight angle:"
                + " station steep has a scale without slope compensation, which reads too low at an"
                + " elevation");
  }

  @Test
  void aMissingFileIsNamed() {
    var outcome = notes.drop("points.csv").run();

    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.err()).contains("points.csv: found nothing that can be read, wanted this");
  }

  @Test
  void filesWithoutRowsAreRefused() {
    String header = notes.text("points.csv").lines().findFirst().orElse("");

    assertThat(notes.put("points.csv", header).run().err())
        .contains("points.csv, line 2: found no");
    assertThat(notes.put("points.csv", "").run().err())
        .contains("found an empty file, wanted a he");
  }

  @Test
  void otherBytesThanUtf8AreRefused() throws IOException {
    notes.drop("points.csv");
    Files.write(path.resolve("points.csv"), "point;Größe\n".getBytes(StandardCharsets.ISO_8859_1));

    assertThat(notes.run().err()).contains("bytes that are not UTF-8");
  }

  @Test
  void everyOtherBadRowIsListedUpToFifty() {
    StringBuilder rows = new StringBuilder(notes.text("points.csv"));
    for (int i = 1; i <= 60; i++) {
      rows.append("P4,all,taken,").append(i).append(",thick,,,,,\n");
    }
    var outcome = notes.put("points.csv", rows.toString()).run();

    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.err())
        .startsWith("Nothing was computed. Bad rows: 60\npoints.csv, line 6, column dbh_cm")
        .contains("line 56, column dbh_cm")
        .doesNotContain("line 57,")
        .endsWith("  and 9 more\n");
  }

  @Test
  void rowsThatMissABadRowAreCountedBesideIt() {
    var outcome = notes.swap("stand.csv", "all,10,4", "all,10,0").run();

    assertThat(outcome.err())
        .startsWith("Nothing was computed. Bad rows: 6\nstand.csv, line 2, column gauge_factor")
        .endsWith(
            "Rows not used, since a row that they name is missing or bad: 5; the first is\n"
                + "  points.csv, line 2, column stratum: found \"all\", wanted a stratum of"
                + " stand.csv\n");
  }

  @Test
  void aSightBelowTheBaseIsNamedByItsOwnCell() {
    notes.swap("stems.csv", "gauge,,base,,,", "gauge,steep,base,,-5,");
    notes.swap("stems.csv", "flat,reading,11.3,,5", "steep,reading,,-60,5");

    assertThat(notes.run().err())
        .contains("line 5, column sight_angle_deg: found \"-60\", wanted an angle not below that")
        .contains("of the base, -5\n");
  }

  @Test
  void badRowsAreSkippedOnlyWhenAskedAndThenSaid() {
    notes.swap("points.csv", "P1,all,taken,2,30", "P1,all,taken,2,-30");

    assertThat(notes.run().status()).isEqualTo(1);
    var skipped = notes.run("--skip-bad-rows");
    assertThat(skipped.status()).isZero();
    assertThat(skipped.out())
        .contains("Bad rows were skipped, as asked: 1;")
        .contains("Skipped: points.csv, line 3, column dbh_cm: found \"-30\"");
  }

  @Test
  void aBrokenHeaderIsNotSkipped() {
    var outcome = notes.swap("points.csv", ",slope_deg", ",slope").run("--skip-bad-rows");

    assertThat(outcome.status()).isEqualTo(1);
  }

  @Test
  void unknownOptionsGiveTheHelp() {
    assertThat(Folder.run(List.of("--colour")).status()).isEqualTo(2);
    assertThat(Folder.run(List.of("--colour")).err())
        .startsWith("unknown option --colour\nWorks a");
    assertThat(Folder.run(List.of("--units", "UK")).err())
        .startsWith("--units wants one of metric, us, not UK");
    for (String top : List.of("0", "-1", "x", "1e3", "9".repeat(400))) {
      assertThat(Folder.run(List.of("--top", top)).err())
          .startsWith("--top wants centimetres above 0, not " + top);
    }
    assertThat(Folder.run(List.of("--units")).err()).startsWith("--units wants a value");
    assertThat(Folder.run(List.of("--help")).out()).contains("--skip-bad-rows");
    assertThat(Folder.run(List.of("--help")).status()).isZero();
  }
}
