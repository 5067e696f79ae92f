package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.List;

/** Aligns columns: the first ones to the left, the others to the right. Not thread-safe. */
final class Grid {
  private final int left;
  private final List<String[]> rows = new ArrayList<>();

  Grid(int left) {
    this.left = left;
  }

  Grid row(String... cells) {
    rows.add(cells);
    return this;
  }

  /** Lines with an indent of two; a last column of words stays to the left. */
  List<String> lines(boolean wordsLast) {
    int columns = rows.stream().mapToInt(r -> r.length).max().orElse(0);
    int[] widths = new int[columns];
    for (String[] row : rows) {
      for (int i = 0; i < row.length; i++) {
        widths[i] = Math.max(widths[i], row[i].length());
      }
    }
    List<String> lines = new ArrayList<>();
    for (String[] row : rows) {
      StringBuilder line = new StringBuilder(" ");
      for (int i = 0; i < row.length; i++) {
        boolean words = i < left || (wordsLast && i == columns - 1);
        String pad = " ".repeat(widths[i] - row[i].length());
        line.append(i == 0 ? " " : "  ").append(words ? row[i] + pad : pad + row[i]);
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }
}
