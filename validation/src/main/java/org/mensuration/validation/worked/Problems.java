package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.List;

/**
 * Collects what is wrong; keeps a bounded number, counts the rest. Rows that only miss another row
 * come last, since that row may be the bad one. Not thread-safe.
 */
final class Problems {
  /** The first one, and fifty others. */
  private static final int KEPT = 51;

  private final List<Problem> rows = new ArrayList<>();
  private final List<Problem> references = new ArrayList<>();
  private long rowCount;
  private long referenceCount;

  void add(BadNotes bad) {
    if (bad.reference()) {
      referenceCount++;
    } else {
      rowCount++;
    }
    List<Problem> kept = bad.reference() ? references : rows;
    if (kept.size() < KEPT) {
      kept.add(bad.problem());
    }
  }

  boolean none() {
    return count() == 0;
  }

  long count() {
    return rowCount + referenceCount;
  }

  List<Problem> kept() {
    List<Problem> kept = new ArrayList<>(rows);
    kept.addAll(references);
    return List.copyOf(kept.subList(0, Math.min(KEPT, kept.size())));
  }

  /**
   * The first in full, then the others a line each. Of rows that only miss another one, beside bad
   * rows, the first stands for all: most are good once the bad row is.
   */
  List<String> lines() {
    List<Problem> listed = rows.isEmpty() ? references : rows;
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < listed.size(); i++) {
      if (i == 1) {
        lines.add("Other bad rows:");
      }
      lines.add((i == 0 ? "" : "  ") + listed.get(i).text());
    }
    long more = (rows.isEmpty() ? referenceCount : rowCount) - listed.size();
    if (more > 0) {
      lines.add("  and " + more + " more");
    }
    if (!rows.isEmpty() && !references.isEmpty()) {
      lines.add(
          "Rows not used, since a row that they name is missing or bad: "
              + referenceCount
              + "; the first is");
      lines.add("  " + references.get(0).text());
    }
    return lines;
  }
}
