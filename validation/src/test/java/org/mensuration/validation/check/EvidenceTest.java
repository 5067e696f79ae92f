package org.mensuration.validation.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.mensuration.Catalogues;
import org.mensuration.WoodConversions;
import org.mensuration.stem.SectionRule;
import org.mensuration.validation.table.ReferenceData;

class EvidenceTest {
  private static Evidence evidence(Map<Verdict, Integer> published, int recalled, int computed) {
    return new Evidence("log/huber", published, recalled, computed);
  }

  @Test
  void theWordsCountByVerdict() {
    assertThat(evidence(Map.of(Verdict.TABULATED, 7, Verdict.EQUAL_AS_PRINTED, 97), 2, 3).words())
        .isEqualTo(
            "104 cells: 97 equal as printed, 7 tabulated, none failed;"
                + " 2 from memory or common practice; 3 computed");
    assertThat(evidence(Map.of(Verdict.FAILED, 1, Verdict.WITHIN_STEP, 1), 0, 0).words())
        .isEqualTo("2 cells: 1 within step, 1 failed");
    assertThat(evidence(Map.of(), 0, 0).words()).isEqualTo("no published check");
    assertThat(evidence(Map.of(Verdict.FAILED, 1), 0, 4).words())
        .isEqualTo("no published check; 1 cell: 1 failed; 4 computed");
  }

  @Test
  void onlyACellThatAgreesIsACheck() {
    assertThat(evidence(Map.of(Verdict.EXPLAINED, 1), 0, 0).checked()).isTrue();
    for (Verdict none : List.of(Verdict.TABULATED, Verdict.UNDECIDED, Verdict.FAILED)) {
      assertThat(evidence(Map.of(none, 1), 1, 1).checked()).as(none.words()).isFalse();
    }
  }

  @Test
  void everyFactorOfTheLibraryStandsInATable() {
    List<CellCheck> factors =
        ReferenceChecks.run(Catalogues.standard(), ReferenceData.shipped().tables())
            .cells()
            .filter(cell -> cell.subject().startsWith("factor"))
            .collect(Collectors.toList());
    assertThat(factors)
        .hasSize(WoodConversions.factors().size() + WoodConversions.additions().size())
        .allSatisfy(cell -> assertThat(cell.verdict()).isEqualTo(Verdict.TABULATED));
    // A number or a pair stands once.
    assertThat(factors)
        .extracting(cell -> cell.subject() + " " + cell.row().inputs())
        .doesNotHaveDuplicates();
  }

  @Test
  void aProcedureThatIsAFormulaCountsForIt() {
    assertThat(new SectionAreas(SectionRule.NEWTON).evidenceFor())
        .containsExactly("log/sectional-newton");
    assertThat(Procedures.find("korean-small-end").orElseThrow().evidenceFor()).isEmpty();
  }
}
