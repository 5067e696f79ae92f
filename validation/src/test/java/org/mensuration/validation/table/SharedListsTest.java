package org.mensuration.validation.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SharedListsTest {
  private static final String HEAD =
      """
      # source: s
      # locator: map
      # procedure: one
      # standing: computed
      # lists: map.lists
      # column x [m] exact
      # column y [m] result step=1 rounding=nearest
      # column z [m] result step=1 rounding=nearest procedure=two
      x,y,z
      7,1,2
      8,3,4
      """;
  private static final String LISTS =
      """
      # note: trees
      # column d [cm] exact
      # column h [m] rounded step=0.5
      h,d
      20.5,31
      18,24
      """;

  private static Table read(String text, String lists) {
    return TableReader.read(
        "s/t",
        text,
        Map.of("s", new SourceEntry("s", "", "", "Invented", "", "", "read")),
        List.of(),
        file -> file.equals("map.lists") ? Optional.of(lists) : Optional.empty());
  }

  private static void refuses(String text, String lists, String message) {
    assertThatThrownBy(() -> read(text, lists))
        .isInstanceOf(TableException.class)
        .hasMessage(message);
  }

  @Test
  void everyRowTakesTheLists() {
    Table table = read(HEAD, LISTS);
    assertThat(table.head().inputs().stream().map(InputColumn::name))
        .containsExactly("x", "d", "h");
    assertThat(table.head().inputs().get(2).step()).contains(new BigDecimal("0.5"));
    for (TableRow row : table.rows()) {
      assertThat(row.inputs().get(1)).containsExactly(new BigDecimal("31"), new BigDecimal("24"));
      assertThat(row.inputs().get(2)).containsExactly(new BigDecimal("20.5"), new BigDecimal("18"));
    }
    assertThat(table.rows().get(1).key()).isEqualTo("x=8");
    assertThat(table.rows().get(1).inputs().get(0)).containsExactly(new BigDecimal("8"));
  }

  @Test
  void aColumnMayNameItsOwnProcedure() {
    TableHead head = read(HEAD, LISTS).head();
    assertThat(head.subject(head.results().get(0))).isEqualTo("one");
    assertThat(head.subject(head.results().get(1))).isEqualTo("two");
    refuses(
        HEAD.replace("procedure: one", "formula: one"),
        LISTS,
        "s/t, line 8: found procedure=two, wanted it only below a procedure: of the head");
    refuses(
        HEAD.replace("procedure=two", "procedure=two formula=three"),
        LISTS,
        "s/t, line 8: found procedure=two, wanted it only below a procedure: of the head");
  }

  @Test
  void listsAreReadStrictly() {
    refuses(HEAD.replace("map.lists", "no.lists"), LISTS, "s/t: no.lists is not beside it");
    refuses(
        HEAD,
        LISTS.replace("# note", "# source: s\n# note"),
        "s/t, map.lists, line 4: found a head of other lines, wanted only column NAME [UNIT] of"
            + " inputs and note:");
    refuses(
        HEAD,
        LISTS.replace("h,d", "h,d,x").replace("31", "31,1").replace("24", "24,1"),
        "s/t, map.lists, line 4: found 3 columns and 2 rows, wanted the columns that the head"
            + " describes and at least one row");
    refuses(
        HEAD,
        LISTS.replace("20.5,31\n18,24\n", ""),
        "s/t, map.lists, line 4: found 2 columns and 0 rows, wanted the columns that the head"
            + " describes and at least one row");
    refuses(
        HEAD,
        LISTS.replace("24", "24 1"),
        "s/t, map.lists, line 6: found d \"24 1\", wanted a number such as 12.5");
    refuses(
        HEAD,
        LISTS.replace(" d ", " x ").replace("h,d", "h,x"),
        "s/t: column x stands in the table and in its lists");
  }

  @Test
  void listsStandBesideTheirTable(@TempDir Path folder) throws IOException {
    Files.createDirectories(folder.resolve("s"));
    Files.writeString(folder.resolve("s/t.csv"), HEAD);
    Files.writeString(folder.resolve("s/map.lists"), LISTS);
    Files.writeString(
        folder.resolve("sources.csv"),
        "source_id,author,year,title,publisher,address,read\ns,,,Invented,,,read\n");
    ReferenceData data = ReferenceData.of(folder, ReferenceData.shipped());
    assertThat(data.problems()).isEmpty();
    assertThat(data.tables()).singleElement().satisfies(t -> assertThat(t.rows()).hasSize(2));
    assertThat(data.tables().get(0).head().inputs()).hasSize(3);
  }
}
