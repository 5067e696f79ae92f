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
  private long count;

  void add(BadNotes bad) {
    count++;
    List<Problem> kept = bad.reference() ? references : rows;
    if (kept.size() < KEPT) {
      kept.add(bad.problem());
    }
  }

  boolean none() {
    return count == 0;
  }

  long count() {
    return count;
  }

  List<Problem> kept() {
    List<Problem> kept = new ArrayList<>(rows);
    kept.addAll(references);
    return List.copyOf(kept.subList(0, Math.min(KEPT, kept.size())));
  }

  /** The first in full, then the others a line each. */
  List<String> lines() {
    List<Problem> kept = kept();
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < kept.size(); i++) {
      if (i == 1) {
        lines.add("Other bad rows:");
      }
      lines.add((i == 0 ? "" : "  ") + kept.get(i).text());
    }
    if (count > kept.size()) {
      lines.add("  and " + (count - kept.size()) + " more");
    }
    return lines;
  }
}
