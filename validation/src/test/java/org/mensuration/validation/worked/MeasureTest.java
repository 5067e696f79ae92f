package org.mensuration.validation.worked;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Trees and points measured beside the count, critical heights and part sweeps, worked by hand. A
 * stem of 40 cm has 0.125664 m², so 1.25664 m³ are a ratio of 10, and stands for 4/0.125664 =
 * 31.831 trees a hectare.
 */
class MeasureTest {
  private static final String HEADER =
      "point,stratum,status,tree,dbh_cm,weight,edge_weight,distance_m,distance_to,slope_deg,"
          + "height_m,critical_height_m,volume_m3,measure,sweep,condition\n";

  private Folder notes = new Folder(Path.of("."));

  @BeforeEach
  void makeNotes(@TempDir Path path) {
    notes = new Folder(path);
  }

  /** Three, one and two trees of 40 cm: 12, 4 and 8 m²/ha. */
  private Folder secondFactor() {
    notes
        .swap(
            "stand.csv", "stump_height_m\n", "stump_height_m,measure_factor_m2_per_ha,dead_trees\n")
        .swap("stand.csv", "7,0.3\n", "7,0.3,16,left out\n");
    return notes.put(
        "points.csv",
        HEADER
            + """
            P1,all,taken,1,40,,,,,,,,,,,
            P1,all,taken,2,40,,,,,,,,1.25664,tree,,
            P1,all,taken,3,40,,,,,,,,,,,
            P2,all,taken,1,40,,,,,,,,,,,
            P3,all,taken,1,40,,,,,,,,1.50796,tree,,
            P3,all,taken,2,40,,,,,,,,,,,
            """);
  }

  private Folder measuredPoints() {
    notes.put("stems.csv", notes.text("stems.csv").lines().findFirst().orElse("") + "\n");
    return notes.put(
        "points.csv",
        HEADER
            + """
            P1,all,taken,1,40,,,,,,,10,1,point,,
            P1,all,taken,2,40,,,,,,,12,1.1,point,,
            P1,all,taken,3,40,,,,,,,8,1.2,point,,
            P2,all,taken,1,40,,,,,,,9,,,,
            P3,all,taken,1,40,,,,,,25,10,1.1,point,,
            P3,all,taken,2,40,,,,,,,5,1.3,point,,
            """);
  }

  @Test
  void aSecondFactorGivesVolumeWithBothErrors() {
    // Count: mean 8, s 4, error 4/sqrt 3 = 2.309, 28.9 %. Ratios 10 and 12: mean 11, error
    // 1.414/sqrt 2 = 1, 9.1 %. First order: 833.33 + 82.64 = 30.27². Exact: 64 · 1 + 121 · 16/3 -
    // 16/3 = 704 = 26.53², 30.15 % of 88. Degrees of freedom: 915.98²/(833.33²/2 + 82.64²/1) =
    // 2.37.
    var words = secondFactor().run().words();
    assertThat(words)
        .contains(
            "Volume of all by trees measured by a second factor: another estimate, not to be added")
        .contains(
            "Counted 6.0 trees, with their weights, at 3 points, each standing for 4.000 m²/ha")
        .contains("Measured 2 trees, those in by the larger factor 16.000 m²/ha")
        .contains("Basal area 8.0 m²/ha, std. error 28.9 %, df 2")
        .contains(
            "Ratio 11.00 m³/m², std. error 9.1 %, df 1: mean of volume over basal area, a tree")
        .contains("Volume 88 m³/ha, bark as in the notes")
        .contains("Error 30.27 % combined to first order (sampling/combined-error),")
        .contains("30.15 % by the exact variance of a product (sampling/product-variance)")
        .anyMatch(l -> l.endsWith("with 95 %: first order, df 2.4 effective"));
  }

  @Test
  void usUnitsTurnTheSameVolume() {
    // 88 m³/ha times 14.2913 ft³/ac are 1258; 16 m²/ha times 4.35600 ft²/ac are 69.696.
    assertThat(secondFactor().run("--units", "us").words())
        .contains("Volume 1258 ft³/ac, bark as in the notes")
        .contains("Measured 2 trees, those in by the larger factor 69.696 ft²/ac");
  }

  @Test
  void aMeasuredStemGivesTheVolumeOfItsTree() {
    // The stem of P1 tree 1 has 8.19 m³ a m², see RulesTest: (8.19 + 12)/2 = 10.09.
    secondFactor()
        .swap("points.csv", "P1,all,taken,1,40,,,,,,,,,,,", "P1,all,taken,1,40,,,,,,,,,tree,,")
        .swap("points.csv", "1.25664,tree", ",");
    assertThat(notes.run().words())
        .contains("Measured 2 trees, those in by the larger factor 16.000 m²/ha")
        .anyMatch(l -> l.startsWith("Ratio 10.09 m³/m²"));
    // Without its tip it has no volume, and one tree is too few.
    notes.swap("stems.csv", "A,P1,1,gauge,,tip,21.3,,,,\n", "");
    assertThat(notes.run().flat())
        .contains("Measure trees left out, since their stem gives no volume: point P1 tree 1")
        .contains("No volume by the second factor of all: measured trees: 1;");
  }

  @Test
  void aTreeBeyondTheSecondLimitIsPointedOut() {
    // 40 cm: in up to 40/(2 · 2) = 10 m by 4 m²/ha and 40/(2 · 4) = 5 m by 16.
    secondFactor().swap("points.csv", "P1,all,taken,2,40,,,,", "P1,all,taken,2,40,,,6,axis");
    assertThat(notes.run().flat())
        .contains(
            "Measure trees although their distance puts them outside the second factor: point P1"
                + " tree 2, 6.00 m level to the axis, limit 5.00 m");
    notes.swap("points.csv", "6,axis", "5,axis");
    assertThat(notes.run().flat()).doesNotContain("outside the second factor");
  }

  @Test
  void measuredPointsGiveARatioOfSums() {
    // 31.831 · 3.3 = 105.04 over 12 and 31.831 · 2.4 = 76.39 over 8: 181.44/20 = 9.072; residuals
    // ±3.820 over the mean of 10: error 0.382, 4.2 %. 8 · 9.072 = 73; 28.87 and 4.21 % are 29.17.
    // (833.3 + 17.7)²/(833.3²/2 + 17.7²/1) = 2.08 degrees of freedom.
    assertThat(measuredPoints().run().words())
        .contains("Measured 5 trees: every counted tree of 2 measured points with trees")
        .contains(
            "Ratio 9.07 m³/m², std. error 4.2 %, df 1: sum of volumes over sum of basal areas, a"
                + " point")
        .contains("Volume 73 m³/ha, bark as in the notes")
        .contains("Error 29.17 % combined to first order (sampling/combined-error),")
        .anyMatch(l -> l.endsWith("with 95 %: first order, df 2.1 effective"))
        .contains("P1 all 3 3.0 12.0 95 - every tree measured");
  }

  @Test
  void oneMeasuredPointIsTooFew() {
    String text = measuredPoints().text("points.csv");
    notes.put("points.csv", text.replace("10,1.1,point", "10,,").replace("5,1.3,point", "5,,"));
    assertThat(notes.run().flat())
        .contains("No volume by the measured points of all: measured points with trees: 1;")
        .doesNotContain("Volume of all by count points");
  }

  @Test
  void criticalHeightsGiveVolume() {
    // 4 · 30 = 120, 4 · 9 = 36 and 4 · 15 = 60: mean 72; squares 2304 + 1296 + 144, s 43.27, error
    // 24.98; t with 2 df 4.303, 107.5 apart.
    assertThat(measuredPoints().run().words())
        .contains("Volume of all by critical heights: another estimate, not to be added")
        .contains("volume m³/ha 72 25 34.7 -35 179 2");
    // A tree at the limit counts half: 4 · (10 + 12 + 4) = 104, and 200/3 = 67.
    notes.swap("points.csv", "P1,all,taken,3,40,,", "P1,all,taken,3,40,0.5,");
    assertThat(notes.run().words()).anyMatch(l -> l.startsWith("volume m³/ha 67 "));
    notes.swap("points.csv", "40,,,,,,,9,,", "40,,,,,,,,,");
    assertThat(notes.run().flat())
        .contains("since a counted tree has none; the first of each stratum: point P2 tree 1")
        .doesNotContain("Volume of all by critical heights");
  }

  @Test
  void partSweepsMultiplyTheirPoint() {
    // 12, 4 · 4 = 16 and 2 · 8 = 16 m²/ha: mean 14.7. Heights 4 · 9 · 4 = 144 and 4 · 15 · 2 = 120
    // beside 120: mean 128.
    measuredPoints()
        .swap("points.csv", "9,,,,\n", "9,,,quarter,\n")
        .swap("points.csv", "10,1.1,point,,", "10,1.1,point,half,")
        .swap("points.csv", "5,1.3,point,,", "5,1.3,point,half,");
    var outcome = notes.run();
    assertThat(outcome.words())
        .anyMatch(l -> l.startsWith("all basal area m²/ha 14.7 "))
        .anyMatch(l -> l.startsWith("volume m³/ha 128 "))
        .contains("P2 all 1 4.0 16.0 127 - quarter sweep")
        .contains("P3 all 2 4.0 16.0 127 - half sweep, every tree measured");
    assertThat(outcome.flat())
        .contains(
            "Part sweeps, right only if a rule moved points near the edge onto it: point P2,"
                + " quarter sweep; point P3, half sweep");
  }

  @Test
  void aPartSweepIsTheRecordThatItsEdgeRuleAsksFor() {
    notes
        .swap("stand.csv", "stump_height_m\n", "stump_height_m,edge_rule\n")
        .swap("stand.csv", "7,0.3\n", "7,0.3,part sweep\n");
    assertThat(notes.run().err())
        .contains("also where it is 1, or a sweep that is half or quarter");
    measuredPoints().swap("points.csv", "9,,,,\n", "9,,,half,\n");
    assertThat(notes.run().words()).anyMatch(l -> l.endsWith("edge weights by part sweep"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "stand.csv|0.3,16|0.3,4|measure_factor_m2_per_ha: found \"4\", wanted a factor above that of",
        "stand.csv|0.3,16|0.3,2|wanted a factor above that of the count, 4 m²/ha, or empty",
        "stand.csv|0.3,16|0.3,|line 3, column measure: found \"tree\", wanted a measure_factor_m2_per",
        "points.csv|taken,2,40,|taken,2,40,0|column measure: found \"tree\", wanted an empty cell: a t",
        "points.csv|taken,2,40,|taken,2,40,0.5|within the smaller one, and this one has the weight 0.5",
        "points.csv|taken,2,40,,,,|taken,2,40,,,10.5,axis|by its distance the tree is out even by the",
        "points.csv|taken,2,40|taken,2,|line 3, column dbh_cm: found an empty cell, wanted the diameter",
        "points.csv|1.25664,tree|,tree|column volume_m3: found an empty cell, wanted the volume of a",
        "points.csv|1.25664,tree|0,tree|column volume_m3: found \"0\", wanted cubic metres above 0",
        "points.csv|P2,all,taken,1,40,,,,,,,,,|P2,all,taken,1,40,,,,,,,,1,point|the stratum has a sec",
        "points.csv|1.25664,tree,,|1.25664,tree,,dead|wanted an empty cell: this tree is left out of",
        "points.csv|taken,2,40|taken,2,6|wanted an empty cell: this tree is left out of the count",
        "points.csv|1.25664,tree|1.25664,yes|column measure: found \"yes\", wanted tree or point",
        "points.csv|taken,1,40,,,,,,,,,,,|taken,1,40,,,,,,,,1,,,|line 2, column volume_m3: found \"1\"",
        "points.csv|1.25664,tree,|1.25664,tree,third|column sweep: found \"third\", wanted full or half",
        "points.csv|1.25664,tree,|1.25664,tree,half|wanted the same sweep in all rows of a point",
        "points.csv|taken,2,40,,,,,,,|taken,2,40,,,,,,9,9.5|found \"9.5\", wanted a height on the stem",
        "points.csv|P2,all,taken,1,40,,,,,,,,,|P2,all,taken,,,,,,,,,,,tree|since the row has figures",
      })
  void whatCannotBeIsRefused(String file, String old, String with, String message) {
    var outcome = secondFactor().swap(file, old, with).run();
    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.err()).contains(".csv, line ").contains(message);
  }

  @Test
  void allRowsOfAMeasuredPointSaySo() {
    measuredPoints().swap("points.csv", "12,1.1,point", "12,1.1,");
    assertThat(notes.run().err())
        .contains("column measure: found an empty cell, wanted point in all rows of a measured po");
  }

  @Test
  void aPartSweepIsNotWeighedAgain() {
    measuredPoints()
        .swap("points.csv", "P2,all,taken,1,40,,,,,,,9,,,,", "P2,all,taken,1,40,,2,,,,,9,,,half,");
    assertThat(notes.run().err())
        .contains(
            "edge_weight: found \"2\", wanted 1 or an empty cell: a half sweep is its own we");
  }

  @Test
  void anEdgeWeightOfAMeasureTreeWeighsItsRatio() {
    // 10 twice and 12 once: 32/3. Residuals from it 2 (10 - 10.67) and 12 - 10.67, both 1.333
    // apart:
    // sqrt(2 (1.778 + 1.778)/1)/3 = 0.889, 8.3 %.
    secondFactor().swap("points.csv", "P1,all,taken,2,40,,", "P1,all,taken,2,40,,2");
    var outcome = notes.run();
    assertThat(outcome.words())
        .anyMatch(l -> l.startsWith("Ratio 10.67 m³/m², std. error 8.3 %, df 1"))
        .contains("Measured 2 trees, those in by the larger factor 16.000 m²/ha")
        .anyMatch(l -> l.startsWith("Counted 7.0 trees, with their weights, at 3 points"));
  }

  @Test
  void volumesWithoutAMarkAreSaid() {
    secondFactor().swap("points.csv", "1.50796,tree", "1.50796,");
    var outcome = notes.run();
    assertThat(outcome.status()).isZero();
    assertThat(outcome.flat())
        .contains("Volumes of trees that are not marked as measured, not used: point P3 tree 1");
  }
}
