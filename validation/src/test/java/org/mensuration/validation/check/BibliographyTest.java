package org.mensuration.validation.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.mensuration.Catalogues;
import org.mensuration.formula.Formula;
import org.mensuration.source.Citation;
import org.mensuration.source.Source;
import org.mensuration.validation.table.ReferenceData;
import org.mensuration.validation.table.SourceEntry;

/** A work that both a formula and a table cite is described once, so the two must agree. */
class BibliographyTest {
  @Test
  void formulasAndTablesDescribeAWorkAlike() {
    Map<String, SourceEntry> works = ReferenceData.shipped().sources();
    int shared = 0;
    for (Formula formula : Catalogues.standard().formulas()) {
      for (Citation citation : formula.citations()) {
        if (!citation.source().isPresent()) {
          continue;
        }
        Source cited = citation.source().get();
        SourceEntry listed = works.get(cited.id());
        if (listed != null) {
          assertThat(listed.title()).as(cited.id()).isEqualTo(cited.title());
          assertThat(listed.year()).as(cited.id()).isEqualTo(cited.year());
          shared++;
        }
      }
    }
    assertThat(shared).isGreaterThan(10);
  }
}
