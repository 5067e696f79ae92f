package org.mensuration.validation.worked;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Notes with points beyond the edge; figures worked by hand. */
class ExtendedGridNotesTest {
  @TempDir Path path;
  private Folder notes;

  @BeforeEach
  void notesWithPointsBeyondTheEdge() {
    notes =
        new Folder(path)
            .swap("stand.csv", "stump_height_m\n", "stump_height_m,edge_rule\n")
            .swap("stand.csv", "7,0.3\n", "7,0.3,extended grid\n");
    notes.put(
        "points.csv",
        notes.text("points.csv") + "E1,all,outside,1,30,,,,,\nE2,all,outside,,,,,,,\n");
  }

  @Test
  void theMeanIsOverThePointsInside() {
    // 8, 0 and 4 m²/ha inside, 4 and 0 outside: 16/3 = 5.33. Residuals from it 2.67, -5.33, -1.33
    // inside, 4 and 0 outside: squares 7.11 + 28.44 + 1.78 + 16 = 53.33; error
    // sqrt(5 x 53.33/4)/3 = 2.72 or 51.0 %, t with 4 df 2.776: 7.56 apart.
    // Stems 31.83 + 56.59 + 127.32 + 56.59 = 272.3 over three points.
    var lines = notes.run().words();

    assertThat(lines)
        .contains("all basal area m²/ha 5.3 2.7 51.0 -2.2 12.9 4")
        .anyMatch(l -> l.startsWith("stems 1/ha 91 "))
        .contains("E1 all 1 1.0 4.0 57 33 beyond the edge")
        .contains("E2 all 0 0.0 0.0 0 0 beyond the edge, empty, counts as zero");
    assertThat(String.join(" ", lines))
        .contains("edges by extended grid: means over the points inside, errors over all");
  }

  @Test
  void whatDoesNotGoWithTheRuleIsRefused() {
    Folder inside = new Folder(path).put("points.csv", notes.text("points.csv"));
    assertThat(inside.run().err()).contains("points outside go with the edge rule extended grid");

    String points = notes.text("points.csv");
    assertThat(notes.put("points.csv", points.replace("outside", "taken")).run().err())
        .contains("status taken and others with the status outside");
    assertThat(notes.put("points.csv", points.replace("1,30,,,,,", "1,30,,2,,,")).run().err())
        .contains("1 or an empty cell: the edge rule is extended grid");
    assertThat(
            notes.put("points.csv", points.replace("E2,all,outside", "E1,all,taken")).run().err())
        .contains("the same status in all rows of a point");
  }
}
