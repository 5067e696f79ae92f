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
import org.mensuration.Catalogues;
import org.mensuration.validation.table.ReferenceData;

/** Measured data under other licences: run like a folder that a user adds, and in no jar. */
class MeasuredTablesTest {
  static final Path FOLDER = Path.of("src/test/resources/measured");

  @Test
  void everyTableAgrees() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    int status = CheckRun.run(Catalogues.standard(), List.of("--data", FOLDER.toString()), out);
    assertThat(status).as(bytes.toString(StandardCharsets.UTF_8)).isEqualTo(CheckRun.PASSED);
    for (String table : Files.readAllLines(FOLDER.resolve("index.txt"))) {
      assertThat(bytes.toString(StandardCharsets.UTF_8))
          .contains("| " + table.substring(0, table.length() - ".csv".length()) + " ");
    }
  }

  @Test
  void theIndexListsEveryTable() throws IOException {
    assertThat(Files.readAllLines(FOLDER.resolve("index.txt")))
        .isEqualTo(ShippedTablesTest.tablesIn(FOLDER));
  }

  @Test
  void theyComeWithANoticeAndAreNotShipped() throws IOException {
    String notice = Files.readString(FOLDER.resolve("NOTICE"));
    ReferenceData shipped = ReferenceData.shipped();
    ReferenceData measured = ReferenceData.of(FOLDER, shipped);
    assertThat(measured.problems()).isEmpty();
    assertThat(measured.tables())
        .isNotEmpty()
        .allSatisfy(
            table -> {
              String folder = table.name().substring(0, table.name().indexOf('/'));
              assertThat(notice).contains("\n" + folder + " ");
              assertThat(measured.sources()).containsKey(table.head().source());
              assertThat(shipped.tables()).noneMatch(t -> t.name().equals(table.name()));
            });
  }
}
