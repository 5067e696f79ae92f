package org.mensuration.validation.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.mensuration.Catalogues;

class CheckRunTest {
  private static final String HEAD =
      """
      # source: own
      # locator: p. 1
      # formula: log/huber
      # standing: published-table
      # column middle_diameter [cm] exact
      # column length [m] exact
      # column volume [m3] result step=0.01 rounding=nearest
      middle_diameter,length,volume
      """;
  private static final String SOURCES =
      "source_id,author,year,title,publisher,address,read\nown,Nobody,1900,Invented,,,read\n";

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

  private int run(String... arguments) {
    PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    return CheckRun.run(Catalogues.standard(), List.of(arguments), out);
  }

  private String printed() {
    return bytes.toString(StandardCharsets.UTF_8);
  }

  private static void table(Path folder, String rows) throws IOException {
    Files.createDirectories(folder.resolve("own"));
    Files.writeString(folder.resolve("own/huber.csv"), HEAD + rows);
  }

  @Test
  void shippedTablesPass() {
    assertThat(run()).isEqualTo(CheckRun.PASSED);
    assertThat(printed())
        .contains("board/doyle | chase1913/doyle")
        .contains("optics/division-width: no published check; ")
        .contains("\nboard/doyle: 270 cells: 270 equal as printed, none failed; 3 computed\n")
        .contains("\nlog/gost2708: 345 cells: 115 equal as printed, 230 tabulated, none failed\n")
        .contains("\nlog/sectional-newton: 2 cells: 2 equal as printed, none failed; ")
        .contains(" reference cells, 0 failed");
  }

  @Test
  void furtherTablesAreRead(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("sources.csv"), SOURCES);
    table(folder, "40,9,1.13\n");
    assertThat(run("--data", folder.toString())).isEqualTo(CheckRun.PASSED);
    assertThat(printed()).contains("log/huber | own/huber (Nobody 1900, published-table)");
  }

  @Test
  void aWrongRowEndsWithAStatus(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("sources.csv"), SOURCES);
    table(folder, "40,9,1.15\n");
    assertThat(run("--data", folder.toString())).isEqualTo(CheckRun.FAILED);
    assertThat(printed())
        .contains("FAILED own/huber, line 9, middle_diameter=40 length=9, volume: printed 1.15");
  }

  @Test
  void anUnreadableTableEndsWithAStatus(@TempDir Path folder) throws IOException {
    table(folder, "40,9,1.13\n");
    assertThat(run("--data", folder.toString())).isEqualTo(CheckRun.FAILED);
    assertThat(printed()).contains("UNREADABLE own/huber: source own is not in sources.csv");
  }

  @Test
  void aDeviationOfAMissingTableIsAProblem(@TempDir Path folder) throws IOException {
    String row = "table,row,amount,reason,second_source\nown/none,x=1,0.5,misprint,\n";
    Files.writeString(folder.resolve("deviations.csv"), row);
    assertThat(run("--data", folder.toString())).isEqualTo(CheckRun.FAILED);
    assertThat(printed()).contains("deviations.csv: table own/none is not there");
  }

  @Test
  void aFileThatIsNotUtf8IsNamed(@TempDir Path folder) throws IOException {
    Files.write(folder.resolve("t.csv"), new byte[] {(byte) 0xE4, (byte) 0xFF, 10});
    assertThat(run("--data", folder.toString())).isEqualTo(CheckRun.FAILED);
    assertThat(printed()).contains("cannot be read as UTF-8");
  }

  @Test
  void wrongArgumentsAreNamed(@TempDir Path folder) {
    assertThat(run("--date")).isEqualTo(CheckRun.USAGE);
    assertThat(run("--data")).isEqualTo(CheckRun.USAGE);
    assertThat(printed()).contains("found --date, wanted --data DIR");
    assertThat(run("--data", folder.resolve("none").toString())).isEqualTo(CheckRun.FAILED);
  }

  @Test
  void aSheetShowsAFormulaWithItsChecks() {
    assertThat(run("--formula", "log/smalian", "--formula", "board/doyle"))
        .isEqualTo(CheckRun.PASSED);
    assertThat(printed())
        .startsWith("Smalian volume (log/smalian)\n  V = (g_l + g_s)/2 · L, where ")
        .contains("\n  d_s  diameter of the small end: small_diameter in cm, allowed [0, ∞)\n")
        .contains("\n  wanted: d_s ≤ d_l\n")
        .contains(
            "\n  defines: D. Briggs, 1994: Forest Products Measurements and Conversion Factors")
        .contains("\n  exact for a cylinder and a paraboloid; high for a cone")
        .contains("\n  common_practice_scale/section (")
        .contains("): 1 cell, 1 equal as printed; largest difference 0.40 step\n")
        .contains("\nDoyle")
        .contains("\n  270 cells: 270 equal as printed, none failed; 3 computed\n")
        .doesNotContain("board/scribner");
  }

  @Test
  void anUnknownFormulaIsAnsweredWithThoseOfItsTopic() {
    assertThat(run("--formula", "log/smelian")).isEqualTo(CheckRun.USAGE);
    assertThat(printed()).contains("log/huber, log/smalian").doesNotContain("board/");
    bytes.reset();
    assertThat(run("--formula", "smalian")).isEqualTo(CheckRun.USAGE);
    assertThat(printed()).contains(" log/..., ").doesNotContain("log/huber");
    bytes.reset();
    assertThat(run("--formula")).isEqualTo(CheckRun.USAGE);
  }
}
