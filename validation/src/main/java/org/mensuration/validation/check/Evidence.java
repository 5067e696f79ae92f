package org.mensuration.validation.check;

import java.util.List;
import java.util.Objects;
import org.mensuration.validation.table.Standing;

/**
 * What the tables say for one formula. Immutable and thread-safe.
 *
 * @param formula identifier of the formula
 * @param published cells of published tables and examples that support it
 * @param recalled cells from memory or common practice that support it
 * @param computed computed cells that support it; test vectors, no references
 */
public record Evidence(String formula, int published, int recalled, int computed) {
  /**
   * Checks that a formula is named.
   *
   * @param formula identifier of the formula
   * @param published cells of published tables and examples that support it
   * @param recalled cells from memory or common practice that support it
   * @param computed computed cells that support it; test vectors, no references
   */
  public Evidence {
    Objects.requireNonNull(formula, "formula");
  }

  static Evidence of(String formula, List<TableCheck> checks) {
    int published = 0;
    int recalled = 0;
    int computed = 0;
    for (TableCheck check : checks) {
      if (check.subject().equals(formula)) {
        Standing standing = check.table().head().standing();
        int support = (int) check.cells().stream().filter(c -> c.verdict().supports()).count();
        if (standing.published()) {
          published += support;
        } else if (standing == Standing.COMPUTED) {
          computed += support;
        } else {
          recalled += support;
        }
      }
    }
    return new Evidence(formula, published, recalled, computed);
  }

  /**
   * The evidence in words.
   *
   * @return for example {@code no published check; 120 computed}
   */
  public String words() {
    String others =
        (recalled > 0 ? "; " + recalled + " from memory or common practice" : "")
            + (computed > 0 ? "; " + computed + " computed" : "");
    return (published > 0 ? published + " published" : "no published check") + others;
  }
}
