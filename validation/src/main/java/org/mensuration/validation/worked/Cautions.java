package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Collects what a reader must know, a bounded number of cases a kind. Not thread-safe. */
final class Cautions {
  private static final int CASES = 10;

  private final Map<String, List<String>> cases = new LinkedHashMap<>();
  private final Map<String, Long> counts = new LinkedHashMap<>();
  private final List<String> unused = new ArrayList<>();

  /** A caution that stands alone. */
  void add(String caution) {
    add(caution, "");
  }

  /** One more case of a kind of caution. */
  void add(String kind, String oneCase) {
    counts.merge(kind, 1L, Long::sum);
    List<String> kept = cases.computeIfAbsent(kind, k -> new ArrayList<>());
    if (!oneCase.isEmpty() && kept.size() < CASES) {
      kept.add(oneCase);
    }
  }

  void unusedColumns(String file, List<String> columns) {
    if (!columns.isEmpty()) {
      unused.add(file + " " + String.join(", ", columns));
    }
  }

  List<String> unused() {
    return List.copyOf(unused);
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (Map.Entry<String, List<String>> entry : cases.entrySet()) {
      long more = counts.getOrDefault(entry.getKey(), 0L) - entry.getValue().size();
      String list = String.join("; ", entry.getValue());
      String rest = entry.getValue().isEmpty() || more == 0 ? "" : "; and " + more + " more";
      lines.add(list.isEmpty() ? entry.getKey() : entry.getKey() + ": " + list + rest);
    }
    return lines;
  }
}
