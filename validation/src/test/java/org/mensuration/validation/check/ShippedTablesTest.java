package org.mensuration.validation.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.mensuration.Catalogues;
import org.mensuration.validation.table.ReferenceData;
import org.mensuration.validation.table.Table;

class ShippedTablesTest {
  private static final Path FOLDER =
      Path.of("src/main/resources/org/mensuration/validation/reference-data");

  @TestFactory
  Stream<DynamicContainer> everyRowAgrees() {
    return ReferenceData.shipped().tables().stream()
        .map(table -> DynamicContainer.dynamicContainer(table.name(), rows(table)));
  }

  private static Stream<DynamicTest> rows(Table table) {
    Map<Long, List<CellCheck>> byLine =
        ReferenceChecks.check(Catalogues.standard(), table).stream()
            .flatMap(check -> check.cells().stream())
            .collect(
                Collectors.groupingBy(
                    cell -> cell.row().line(), TreeMap::new, Collectors.toList()));
    return byLine.values().stream()
        .map(cells -> DynamicTest.dynamicTest(cells.get(0).row().key(), () -> agree(cells)));
  }

  private static void agree(List<CellCheck> cells) {
    for (CellCheck cell : cells) {
      assertThat(cell.verdict()).as(cell.message()).isNotEqualTo(Verdict.FAILED);
    }
  }

  @Test
  void everyTableCanBeRead() {
    assertThat(ReferenceData.shipped().problems()).isEmpty();
    assertThat(ReferenceData.shipped().tables()).isNotEmpty();
  }

  @Test
  void theIndexListsEveryTable() throws IOException {
    assertThat(Files.readAllLines(FOLDER.resolve("index.txt"))).isEqualTo(tablesIn(FOLDER));
  }

  /** The tables of a folder's folders, in order. */
  static List<String> tablesIn(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(file -> file.toString().endsWith(".csv"))
          .filter(file -> !folder.equals(file.getParent()))
          .map(file -> folder.relativize(file).toString().replace('\\', '/'))
          .sorted()
          .toList();
    }
  }

  @Test
  void computedRowsAreNoPublishedCheck() {
    assertThat(report().evidence())
        .filteredOn(one -> one.formula().equals("optics/division-width"))
        .singleElement()
        .satisfies(one -> assertThat(one.words()).startsWith("no published check; "));
  }

  @Test
  void boardFootTablesAgreeButForTheKnownDeviations() {
    CheckReport report = report();
    assertThat(report.cells().filter(c -> c.subject().equals("board/international-quarter")))
        .filteredOn(cell -> cell.verdict() == Verdict.EXPLAINED)
        .hasSize(3);
    assertThat(report.cells().filter(c -> c.subject().equals("board/doyle")))
        .hasSizeGreaterThanOrEqualTo(269)
        .allSatisfy(c -> assertThat(c.verdict()).isEqualTo(Verdict.EQUAL_AS_PRINTED));
  }

  private static CheckReport report() {
    return ReferenceChecks.run(Catalogues.standard(), ReferenceData.shipped().tables());
  }
}
