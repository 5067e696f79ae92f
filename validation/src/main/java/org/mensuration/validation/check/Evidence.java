package org.mensuration.validation.check;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.mensuration.validation.table.Standing;

/**
 * What the tables say for one formula. Immutable and thread-safe.
 *
 * @param formula identifier of the formula
 * @param published cells of published tables and examples by verdict
 * @param recalled cells from memory or common practice that support it
 * @param computed computed cells that support it; test vectors, no references
 */
public record Evidence(
    String formula, Map<Verdict, Integer> published, int recalled, int computed) {
  /**
   * Copies the counts.
   *
   * @param formula identifier of the formula
   * @param published cells of published tables and examples by verdict
   * @param recalled cells from memory or common practice that support it
   * @param computed computed cells that support it; test vectors, no references
   */
  public Evidence {
    Objects.requireNonNull(formula, "formula");
    published = Map.copyOf(published);
  }

  static Evidence of(String formula, List<TableCheck> checks) {
    Map<Verdict, Integer> published = new EnumMap<>(Verdict.class);
    int recalled = 0;
    int computed = 0;
    for (TableCheck check : checks) {
      if (isAbout(formula, check.subject())) {
        Standing standing = check.table().head().standing();
        if (standing.published()) {
          check.cells().forEach(cell -> published.merge(cell.verdict(), 1, Integer::sum));
        } else if (standing == Standing.COMPUTED) {
          computed += supporting(check);
        } else {
          recalled += supporting(check);
        }
      }
    }
    return new Evidence(formula, published, recalled, computed);
  }

  /** Whether a table of a subject is evidence for the formula. */
  static boolean isAbout(String formula, String subject) {
    return subject.equals(formula)
        || Procedures.find(subject)
            .filter(procedure -> procedure.evidenceFor().contains(formula))
            .isPresent();
  }

  private static int supporting(TableCheck check) {
    return (int) check.cells().stream().filter(cell -> cell.verdict().supports()).count();
  }

  /**
   * Whether a published cell supports the formula.
   *
   * @return false if all that was published is its own data, undecided or failed
   */
  public boolean checked() {
    return published.keySet().stream().anyMatch(Verdict::supports);
  }

  /**
   * The evidence in words.
   *
   * @return for example {@code 104 cells: 97 equal as printed, 7 tabulated, none failed; 3
   *     computed}
   */
  public String words() {
    String counts =
        Stream.of(Verdict.values())
            .filter(published::containsKey)
            .map(verdict -> published.get(verdict) + " " + verdict.words())
            .collect(Collectors.joining(", "));
    int cells = published.values().stream().mapToInt(Integer::intValue).sum();
    return (checked() ? "" : "no published check")
        + (checked() || cells == 0 ? "" : "; ")
        + (cells == 0 ? "" : cells + (cells == 1 ? " cell: " : " cells: ") + counts)
        + (cells == 0 || published.containsKey(Verdict.FAILED) ? "" : ", none failed")
        + (recalled > 0 ? "; " + recalled + " from memory or common practice" : "")
        + (computed > 0 ? "; " + computed + " computed" : "");
  }
}
