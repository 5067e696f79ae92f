package org.mensuration.validation.worked;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.mensuration.formula.Domain;
import org.mensuration.formula.OutOfDomainException;

/** One row of notes, its cells by the name of their column. */
final class Row {
  private final String file;
  private final long line;
  private final Map<String, Integer> columns;
  private final List<String> cells;
  private final NumberText numbers;

  Row(
      String file,
      long line,
      Map<String, Integer> columns,
      List<String> cells,
      NumberText numbers) {
    this.file = file;
    this.line = line;
    this.columns = columns;
    this.cells = cells;
    this.numbers = numbers;
  }

  long line() {
    return line;
  }

  /** The cell without blanks at its ends; empty if it, or its optional column, is not there. */
  String text(String column) {
    Integer at = columns.get(column);
    return at == null ? "" : cells.get(at).strip();
  }

  String required(String column, String wanted) {
    String text = text(column);
    if (text.isEmpty()) {
      throw bad(column, wanted);
    }
    return text;
  }

  /** One of a few words, or empty where that is listed. */
  String oneOf(String column, List<String> words) {
    String text = text(column);
    if (!words.contains(text)) {
      throw bad(column, String.join(" or ", words.stream().filter(w -> !w.isEmpty()).toList()));
    }
    return text;
  }

  /** A number inside a domain, or nothing where nothing was measured. */
  OptionalDouble number(String column, Domain domain, String wanted) {
    String text = text(column);
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    String fault = numbers.fault(text, line);
    if (!fault.isEmpty()) {
      throw bad(column, fault);
    }
    double value = NumberText.value(text);
    if (!domain.contains(value)) {
      throw bad(column, wanted);
    }
    return OptionalDouble.of(value);
  }

  double requiredNumber(String column, Domain domain, String wanted) {
    return number(column, domain, wanted).orElseThrow(() -> bad(column, wanted));
  }

  BadNotes bad(String column, String wanted) {
    return bad(column, Problem.quote(text(column)), wanted);
  }

  BadNotes bad(String column, String found, String wanted) {
    return new BadNotes(new Problem(file, line, column, found, wanted));
  }

  /** A row that is missed; it may be there and bad itself. */
  BadNotes missed(String column, String found, String wanted) {
    return new BadNotes(new Problem(file, line, column, found, wanted), true);
  }

  /** What a formula refused to compute from this row. */
  BadNotes refused(OutOfDomainException e) {
    return bad(
        "", e.symbol() + " = " + e.value() + " " + e.unit(), e.allowed() + " for " + e.formulaId());
  }
}
