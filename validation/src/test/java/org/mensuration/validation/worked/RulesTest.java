package org.mensuration.validation.worked;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Figures worked by hand; areas are in units of pi/40000 m², so that 40 cm is 1600. */
class RulesTest {
  private static final String STEMS =
      "stem,point,tree,chosen,station,kind,height_m,sight_angle_deg,divisions,diameter_cm,bark,"
          + "length_m\n";

  @TempDir Path path;
  private Folder notes;

  @BeforeEach
  void soundNotes() {
    notes = new Folder(path);
  }

  @Test
  void smalianWithAConicalTip() {
    // 1 m (1936 + 1600)/2 = 1768, 10 m (1600 + 400)/2 = 10000, cone 10 m 400/3 = 1333.3: 13101.3,
    // or 1.029 m³; by 1600 8.19 m. Stump 0.3 m 1936 = 580.8 or 0.046 m³, not in it.
    var lines = notes.run().words();

    assertThat(lines)
        .contains("stump 0.0 0.3 - - 44.0 0.046 as wide as the lowest reading; not in the volume")
        .contains("section 0.3 1.3 44.0 - 40.0 0.139 by hand")
        .contains("section 1.3 11.3 40.0 - 20.0 0.785 5.00 div at flat")
        .contains("tip 11.3 21.3 20.0 - 0.0 0.105 as a cone")
        .contains("volume 1.029")
        .contains("point P1 tree 1 A 40.0 1.029 8.19");
  }

  @Test
  void aParaboloidTipIsHalfItsCylinder() {
    // 10 m 400/2 = 2000 or 0.157 m³.
    assertThat(notes.run("--tip", "paraboloid").words())
        .contains("tip 11.3 21.3 20.0 - 0.0 0.157 as a paraboloid");
  }

  @Test
  void pointsGiveMeanErrorAndInterval() {
    // Points 8, 0 and 4 m²/ha: mean 4, s = 4, error 4/sqrt 3 = 2.31, t with 2 df 4.303: 9.94 apart.
    // Stems 31.83 + 56.59, 0, 127.32 a hectare: 71.9. Volume 4 times 8.19.
    var lines = notes.run().words();

    assertThat(lines)
        .contains("all basal area m²/ha 4.0 2.3 57.7 -5.9 13.9 2")
        .anyMatch(l -> l.startsWith("stems 1/ha 72 "))
        .anyMatch(l -> l.startsWith("volume m³/ha 33 - "))
        .contains("P2 all 0 0.0 0.0 0 0 empty, counts as zero");
  }

  @Test
  void usUnitsTurnTheSameFigures() {
    // 4 m²/ha times 4.356 is 17.4 ft²/ac; 1.029 m³ is 36.3 ft³; 21.3 m is 70 ft.
    var lines = notes.run("--units", "us").words();

    assertThat(lines)
        .anyMatch(l -> l.startsWith("all basal area ft²/ac 17.4 "))
        .contains("volume 36.3")
        .anyMatch(l -> l.startsWith("tip 37.1 69.9 7.9 "));
  }

  @Test
  void theTopDiameterIsTheSameWoodInAllUnits() {
    // A cone of 20 cm at 11.3 m to 21.3 m has 10 cm at 16.3 m, 53.5 ft; the profile ends so too.
    assertThat(notes.run("--top", "10").words())
        .anyMatch(l -> l.startsWith("to top 0.3 16.3 - - 10.0 "));
    assertThat(notes.run("--top", "10", "--units", "us").words())
        .anyMatch(l -> l.startsWith("to top 1.0 53.5 - - 3.9 "));
  }

  @Test
  void aTopDiameterThatIsNotReachedIsSaid() {
    assertThat(notes.swap("stems.csv", "tip,21.3", "break,11.3").run().words())
        .anyMatch(
            l ->
                l.startsWith("to top 0.3 11.3 ")
                    && l.endsWith(
                        "not reached: the stem breaks off thicker than the top diameter"));
    notes.swap("stems.csv", "A,P1,1,gauge,,break,11.3,,,,\n", "");
    assertThat(notes.run().words())
        .anyMatch(l -> l.endsWith("the highest reading is thicker than the top diameter"));
  }

  @Test
  void aScaleWithoutCompensationIsCorrectedByItsSight() {
    // 5 divisions of 4 cm at 30°: 20/cos 30° = 23.1 cm.
    var outcome = notes.swap("stems.csv", "flat,reading,11.3,,5", "steep,reading,11.3,30,5").run();

    assertThat(outcome.words())
        .contains("section 1.3 11.3 40.0 - 23.1 0.838 5.00 div at steep, +30.0°");
  }

  @Test
  void anglesGiveHeightsFromTheAxis() {
    // The distance to the face, 20 m, and 0.2 m: 20.2 (tan 27° + tan 5°) = 12.06 m.
    notes.swap("stems.csv", "gauge,,base,,,", "gauge,steep,base,,-5,");
    notes.swap("stems.csv", "flat,reading,11.3,,5", "steep,reading,,27,5");

    assertThat(notes.run().words()).anyMatch(l -> l.startsWith("section 1.3 12.1 40.0 - 22.4"));
  }

  @Test
  void huberTakesStatedLengths() {
    // 4 m 1600 + 4 m 900 + cone 10 m 676/3: 12253, or 0.962 m³.
    notes.put(
        "stems.csv",
        STEMS
            + """
            B,P1,1,gauge,,base,,,,,,
            B,P1,1,gauge,,reading,2.3,,,40,over,4
            B,P1,1,gauge,,reading,6.3,,,30,over,4
            B,P1,1,gauge,,reading,8.3,,,26,over,
            B,P1,1,gauge,,tip,18.3,,,,,
            """);

    assertThat(notes.run("--section", "huber").words())
        .contains("section 0.3 4.3 - 40.0 - 0.503 by hand")
        .contains("section 4.3 8.3 - 30.0 - 0.283 by hand")
        .contains("volume 0.962");
  }

  @Test
  void huberWantsALengthAndLeavesNoGapUnsaid() {
    assertThat(notes.run("--section", "huber").err())
        .contains("stems.csv, line 3, column length_m: found an empty cell, wanted the length aro");
    notes.put(
        "stems.csv",
        STEMS
            + """
            B,P1,1,gauge,,base,,,,,,
            B,P1,1,gauge,,reading,2.3,,,40,over,4
            B,P1,1,gauge,,reading,8.3,,,30,over,4
            B,P1,1,gauge,,tip,18.3,,,,,
            """);

    assertThat(notes.run("--section", "huber").words())
        .contains("gap 4.3 6.3 - - - - no section covers this")
        .contains("tip 10.3 18.3 - - - - no diameter at the foot of its tip");
  }

  @Test
  void newtonNamesTheSectionWithoutAMiddle() {
    // 10 m (1936 + 4 · 1024 + 400)/6 = 10720, or 0.842 m³.
    notes.put(
        "stems.csv",
        STEMS
            + """
            B,P1,1,gauge,,base,,,,,,
            B,P1,1,gauge,,reading,0.3,,,44,over,
            B,P1,1,gauge,,reading,5.3,,,32,over,
            B,P1,1,gauge,,reading,10.3,,,20,over,
            B,P1,1,gauge,,reading,15.3,,,10,over,
            B,P1,1,gauge,,tip,20.3,,,,,
            """);
    var outcome = notes.run("--section", "newton");

    assertThat(outcome.words())
        .contains("section 0.3 10.3 44.0 32.0 20.0 0.842 by hand")
        .contains("section 10.3 15.3 - - - - no reading in its middle, which Newton's rule needs")
        .contains("No volume: no measured tree can be used, see the cautions.");
  }

  @Test
  void newtonRefusesAMiddleThatIsNone() {
    assertThat(notes.run("--section", "newton").words())
        .contains(
            "section 0.3 11.3 - - - - its middle reading is not in the middle, which Newton's rule"
                + " needs");
  }

  @Test
  void aButtAboveTheStumpIsALineOfItsOwn() {
    // 1 m 1600 or 0.126 m³ between the stump and the lowest reading.
    notes.swap("stems.csv", "A,P1,1,gauge,,reading,0.3,,,44,over\n", "");

    assertThat(notes.run().words())
        .contains("stump 0.0 0.3 - - 40.0 0.038 as wide as the lowest reading; not in the volume")
        .contains("butt 0.3 1.3 - - 40.0 0.126 as wide as the lowest reading");
  }

  @Test
  void withoutABaseNothingIsAddedBelow() {
    notes.swap("stems.csv", "A,P1,1,gauge,,base,,,,,\n", "");

    assertThat(notes.run().words())
        .contains("butt - 0.3 - - - - no base row: nothing below is added")
        .contains("No volume: no measured tree can be used, see the cautions.");
  }

  @Test
  void aBrokenTopEndsAtTheBreak() {
    notes.swap("stems.csv", "tip,21.3,,,,", "break,14.3,,,15,over");

    assertThat(notes.run().words())
        .contains("section 11.3 14.3 20.0 - 15.0 0.074 by hand")
        .contains("break 14.3 14.3 - - - - the stem ends here; what broke off is not counted")
        .noneMatch(l -> l.startsWith("tip "));
  }

  @Test
  void aBreakWithoutADiameterLeavesTheTreeOut() {
    notes.swap("stems.csv", "tip,21.3,,,,", "break,14.3,,,,");

    assertThat(notes.run().words())
        .contains("break 11.3 14.3 - - - - no diameter at the break")
        .contains(
            "- Measured trees left out of the volume ratio: point P1 tree 1 (no diameter at the"
                + " break)");
  }

  @Test
  void noStemNoVolume() {
    String header = notes.text("stems.csv").lines().findFirst().orElse("");
    var outcome = notes.put("stems.csv", header + "\n").run();

    assertThat(outcome.status()).isZero();
    assertThat(outcome.words()).contains("No volume: no stem was measured.");
  }

  @Test
  void stemsOverAndUnderBarkAreNotMixed() {
    String other = notes.text("stems.csv").replace("A,P1,1", "B,P3,1").replace("over", "under");
    notes.put("stems.csv", notes.text("stems.csv") + other.substring(other.indexOf('\n') + 1));

    assertThat(notes.run().out()).contains("are partly over and partly under bark");
  }

  @Test
  void aTreeWithoutDiameterCountsButNotAsStems() {
    notes.swap("points.csv", "P1,all,taken,2,30", "P1,all,taken,2,");
    var lines = notes.run().words();

    assertThat(lines)
        .contains("all basal area m²/ha 4.0 2.3 57.7 -5.9 13.9 2")
        .contains("stems 1/ha -")
        .contains("- Trees without a diameter, so no stems a hectare in their stratum: point P1");
  }

  @Test
  void distancesDecideByTheTieRule() {
    // 30 cm at factor 4: 30/(2 · 2) = 7.50 m.
    String said = "Trees counted although their distance puts them outside: point P1 tree 2, 7.5";
    notes.swap("points.csv", "2,30,,,,,", "2,30,,,7.5,axis,");
    assertThat(notes.run().flat()).doesNotContain(said);

    notes.swap("stand.csv", "1.3,in", "1.3,out");
    assertThat(notes.run().flat()).contains(said + "0 m level to the axis, limit 7.50 m");

    // Level, 7.6 m at 10° are 7.48 m, and to the face 7.40 m at 10° are 7.29 m and 0.15 m.
    notes.swap("points.csv", "7.5,axis,", "7.6,axis,10");
    assertThat(notes.run().flat()).doesNotContain(said);
    notes.swap("points.csv", "7.6,axis,10", "7.4,face,10");
    assertThat(notes.run().flat()).doesNotContain(said);
    notes.swap("points.csv", "2,30,,,7.4,face,10", "2,30,0,,7.4,face,10");
    assertThat(notes.run().flat())
        .contains("Trees of weight 0 although their distance puts them inside: point P1 tree 2");
  }

  @Test
  void strataWithoutAreasAreNotPutTogether() {
    notes.put(
        "stand.csv", notes.text("stand.csv").replace("10,4", ",4") + "Small,b,,4,1.3,in,7,\n");
    notes.swap("points.csv", "P3,all", "P3,b");
    var lines = notes.run().words();

    assertThat(lines)
        .contains("- An area is missing, so the strata are not put together")
        .contains("- Without an area there is no total")
        .contains("b basal area m²/ha 4.0 - - - - -")
        .noneMatch(l -> l.contains("weighted by area"));
  }

  @Test
  void aStratumWithoutPointsIsSaid() {
    notes.put("stand.csv", notes.text("stand.csv") + "Small,b,5,4,1.3,in,7,\n");

    assertThat(notes.run().words())
        .contains("- A stratum has no point, so the strata are not put together");
  }

  @Test
  void treesThinnerThanTheMinimumAreLeftOut() {
    notes.swap("points.csv", "P3,all,taken,1,20", "P3,all,taken,1,6.9");

    assertThat(notes.run().words())
        .contains("P3 all 1 0.0 0.0 0 0")
        .contains("- Trees below the smallest diameter, left out of the count: point P3 tree 1");
  }

  @Test
  void aStemOfNoCountedTreeTakesItsDiameterFromItsReading() {
    notes.put("stems.csv", notes.text("stems.csv").replace("A,P1,1,gauge", "A,,,judgement"));
    var lines = notes.run().words();

    assertThat(lines)
        .contains("stem A A 40.0 1.029 8.19")
        .contains(
            "- Stems not chosen by chance, so the error of the ratio is no sampling error: stem A");
  }
}
