package org.mensuration.validation.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.mensuration.Catalogues;
import org.mensuration.validation.table.ReferenceData;

/** How the printed cells of the board-foot rules stand, counted. */
class BoardTablesTest {
  private static Map<Verdict, Long> verdicts(String formula, String... works) {
    return ReferenceChecks.run(
            Catalogues.standard(),
            ReferenceData.shipped().tables().stream()
                .filter(
                    table ->
                        List.of(works)
                            .contains(table.name().substring(0, table.name().indexOf('/'))))
                .toList())
        .cells()
        .filter(cell -> cell.subject().equals(formula))
        .collect(Collectors.groupingBy(CellCheck::verdict, Collectors.counting()));
  }

  @Test
  void doyleMeetsBothOfItsTables() {
    assertThat(verdicts("board/doyle", "chase1913", "millpage_doyle"))
        .isEqualTo(Map.of(Verdict.EQUAL_AS_PRINTED, 269L));
  }

  @Test
  void theSumOfSectionsMissesTheThreeMarkedCells() {
    assertThat(verdicts("board/international-quarter", "wengert2001a", "millpage_int14"))
        .isEqualTo(Map.of(Verdict.EQUAL_AS_PRINTED, 101L, Verdict.EXPLAINED, 3L));
  }

  @Test
  void theInternationalTableHoldsTheThreeCellsAndThoseOf18Feet() {
    assertThat(verdicts("board/international-quarter-table", "wengert2001a"))
        .isEqualTo(Map.of(Verdict.EQUAL_AS_PRINTED, 73L, Verdict.TABULATED, 3L));
    assertThat(verdicts("board/international-quarter-table", "millpage_int14"))
        .isEqualTo(Map.of(Verdict.EQUAL_AS_PRINTED, 24L, Verdict.TABULATED, 4L));
  }

  @Test
  void decimalCHoldsTwentyCellsAndItsFactorsMeetTheOthers() {
    assertThat(verdicts("board/scribner-decimal-c", "wengert2001a"))
        .isEqualTo(Map.of(Verdict.EQUAL_AS_PRINTED, 32L, Verdict.TABULATED, 20L));
    // Two other works print cells that the rule was not built from.
    assertThat(verdicts("board/scribner-decimal-c", "bailey1911", "answers_va"))
        .isEqualTo(Map.of(Verdict.EQUAL_AS_PRINTED, 2L));
  }
}
