package org.mensuration.validation.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mensuration.Catalogues;
import org.mensuration.validation.table.ReferenceData;
import org.mensuration.validation.table.Table;

/**
 * The cells that a table rule was typed from are its data; the same cells elsewhere are a check.
 */
class CopiesOfTablesTest {
  private static TableCheck check(String name) {
    Table table =
        ReferenceData.shipped().tables().stream()
            .filter(one -> one.name().equals(name))
            .findFirst()
            .orElseThrow();
    List<TableCheck> checks = ReferenceChecks.check(Catalogues.standard(), table);
    assertThat(checks).hasSize(1);
    return checks.get(0);
  }

  private static void counts(String name, int equal, int tabulated, int explained) {
    TableCheck check = check(name);
    assertThat(check.count(Verdict.EQUAL_AS_PRINTED)).as(name).isEqualTo(equal);
    assertThat(check.count(Verdict.TABULATED)).as(name).isEqualTo(tabulated);
    assertThat(check.count(Verdict.EXPLAINED)).as(name).isEqualTo(explained);
    assertThat(check.cells()).as(name).hasSize(equal + tabulated + explained);
  }

  @Test
  void copiesOfTheRussianTable() {
    counts("gost2708_copy_a/gost2708", 0, 208, 0);
    counts("gost2708_copy_b/gost2708", 88, 22, 0);
    counts("gost2708_copy_c/gost2708", 27, 0, 0);
  }

  @Test
  void copiesOfTheChineseTableFollowItsFormulasButForThirteenCells() {
    counts("gb4814_copy_1/small", 65, 0, 1);
    counts("gb4814_copy_1/large", 75, 0, 9);
    counts("gb4814_copy_2/smallest", 16, 0, 0);
    counts("gb4814_copy_2/small", 24, 0, 0);
    counts("gb4814_copy_2/large", 150, 0, 2);
    counts("gb4814_copy_3/smallest", 14, 0, 1);
  }
}
