package org.mensuration.validation.worked;

import java.util.List;

/** Breaks long lines of the print. Stateless and thread-safe. */
final class Wrapped {
  private static final int WIDTH = 96;

  private Wrapped() {}

  /** Breaks a long line at blanks; what follows is indented like the first. */
  static void add(List<String> lines, String indent, String text) {
    String start = indent;
    String rest = text;
    while (start.length() + rest.length() > WIDTH) {
      int cut = rest.lastIndexOf(' ', WIDTH - start.length());
      if (cut <= 0) {
        break;
      }
      lines.add(start + rest.substring(0, cut));
      rest = rest.substring(cut + 1);
      start = " ".repeat(indent.length());
    }
    lines.add(start + rest);
  }
}
