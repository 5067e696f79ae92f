package org.mensuration.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class CitationTest {
  private static final Source WORK = new Source("w", "A. Author", "1913", "A Title", "", "");

  @Test
  void printsWorkPlaceAndStanding() {
    assertThat(Citation.published(Role.DEFINES, WORK, "p. 4"))
        .hasToString("A. Author, 1913: A Title, p. 4");
    assertThat(Citation.fromMemory(Role.TABULATES, WORK, "Table 2"))
        .hasToString("A. Author, 1913: A Title, Table 2 (from memory)");
    assertThat(Citation.fromMemory("a rule")).hasToString("a rule (from memory)");
    assertThat(Citation.commonPractice("a habit"))
        .hasToString("a habit (common practice, no source)");
    assertThat(Citation.derived("by algebra")).hasToString("by algebra (derived)");
    assertThat(new Source("t", "", "", "Only a Title", "", "").shortForm())
        .isEqualTo("Only a Title");
    assertThat(new Source("t", "", "1900", "Title", "", "").shortForm()).isEqualTo("1900: Title");
  }

  @Test
  void aPublishedCitationNeedsWorkAndPlace() {
    assertThatThrownBy(() -> Citation.published(Role.DEFINES, WORK, " "))
        .hasMessage("locator: text is blank");
    assertThatThrownBy(
            () ->
                new Citation(
                    Optional.empty(), new Locator("p. 1"), Role.DEFINES, Standing.PUBLISHED))
        .hasMessageContaining("needs its source");
    assertThatThrownBy(() -> new Source("", "", "", "T", "", "")).hasMessageContaining("id");
  }
}
