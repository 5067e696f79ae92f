package org.mensuration.internal.scaling;

import java.util.List;
import org.mensuration.formula.Formula;

/** The rules whose feet are of Scribner's kind. Stateless and thread-safe. */
final class ScribnerKind {
  private static final List<String> IDS =
      List.of("board/scribner-formula", "board/scribner-decimal-c", "board/knouf", "board/ropp");

  private ScribnerKind() {}

  static boolean holds(Formula formula) {
    return IDS.contains(formula.id());
  }

  static String words() {
    return String.join(", ", IDS);
  }
}
