package org.mensuration.validation.worked;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("locale")
class FormatsTest {
  @TempDir Path path;
  private Folder notes;
  private String plain = "";

  @BeforeEach
  void soundNotes() {
    notes = new Folder(path);
    var outcome = notes.run();
    assertThat(outcome.err()).isEmpty();
    plain = outcome.out();
  }

  @Test
  void semicolonsAndDecimalCommasGiveTheSamePrint() {
    for (String file : new String[] {"stand.csv", "stations.csv", "stems.csv", "points.csv"}) {
      notes.put(file, notes.text(file).replace(',', ';').replace('.', ','));
    }
    assertThat(notes.run().out()).isEqualTo(plain);
  }

  @Test
  void semicolonsAllowDecimalPointsToo() {
    notes.put("stems.csv", notes.text("stems.csv").replace(',', ';'));
    assertThat(notes.run().out()).isEqualTo(plain);
  }

  @Test
  void aByteOrderMarkAndOtherLineEndsChangeNothing() {
    notes.put("stand.csv", "\ufeff" + notes.text("stand.csv"));
    notes.put("points.csv", "\ufeff" + notes.text("points.csv").replace("\n", "\r\n"));
    assertThat(notes.run().out()).isEqualTo(plain);
  }

  @Test
  void thousandsMarksAreRefusedByName() {
    String file = notes.text("points.csv").replace(',', ';');
    notes.put("points.csv", file.replace("1;20;", "1;1.234,5;"));
    assertThat(notes.run().err())
        .contains(
            "points.csv, line 5, column dbh_cm: found \"1.234,5\", wanted a number without thousands"
                + " marks, such as 1234,5");
  }

  @Test
  void aFileKeepsToOneDecimalMark() {
    // 1.234 beside 20,5 may be a thousand; nobody can tell.
    String file = notes.text("points.csv").replace(',', ';');
    notes.put("points.csv", file.replace(";2;30;", ";2;30,5;").replace(";1;20;", ";1;20.5;"));
    assertThat(notes.run().err())
        .contains("found \"20.5\", wanted the decimal mark ',' that this file uses since line 3");
  }

  @Test
  void unknownColumnsAreNamedAndColumnsMayStandInAnyOrder() {
    notes.put(
        "points.csv",
        """
        crew,slope_deg,distance_to,distance_m,edge_weight,weight,dbh_cm,tree,status,stratum,point
        a,,,,,,40,1,taken,all,P1
        a,,,,,,30,2,taken,all,P1
        b,,,,,,,,taken,all,P2
        b,,,,,,20,1,taken,all,P3
        """);
    String print = notes.run().out();
    assertThat(print).contains("Columns not used: points.csv crew");
    assertThat(print.replace("  Columns not used: points.csv crew\n", "")).isEqualTo(plain);
  }
}
