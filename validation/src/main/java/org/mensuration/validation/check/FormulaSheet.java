package org.mensuration.validation.check;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.mensuration.formula.Formula;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.Relation;
import org.mensuration.source.Citation;

/**
 * All that is known of a formula on a sheet: equation, symbols, limits, sources, notes, and what
 * the checks say. Stateless and thread-safe.
 */
final class FormulaSheet {
  private FormulaSheet() {}

  static List<String> lines(Formula formula, CheckReport report) {
    List<String> lines = new ArrayList<>();
    lines.add(formula.title() + " (" + formula.id() + ")");
    lines.add("  " + formula.equationText());
    lines.add("where");
    lines.add(
        "  "
            + formula.result().symbol()
            + "  "
            + named(formula.result().name(), formula.result().unit()));
    for (Parameter parameter : formula.parameters()) {
      lines.add("  " + parameter.symbol() + "  " + symbol(parameter));
    }
    for (Relation relation : formula.relations()) {
      lines.add("  wanted: " + relation.text());
    }
    lines.add("Sources");
    for (Citation citation : formula.citations()) {
      lines.add("  " + citation.role().name().toLowerCase(Locale.ROOT) + ": " + citation);
    }
    section(lines, "Notes", formula.notes());
    lines.add("Checks");
    report.evidence().stream()
        .filter(evidence -> evidence.formula().equals(formula.id()))
        .forEach(evidence -> lines.add("  " + evidence.words()));
    report.checks().stream()
        .filter(check -> Evidence.isAbout(formula.id(), check.subject()))
        .forEach(check -> lines.add("  " + table(check)));
    return lines;
  }

  private static String table(TableCheck check) {
    int cells = check.cells().size();
    String verdicts =
        Stream.of(Verdict.values())
            .filter(verdict -> check.count(verdict) > 0)
            .map(verdict -> check.count(verdict) + " " + verdict.words())
            .collect(Collectors.joining(", "));
    return check.table().name()
        + " ("
        + check.table().source().shortForm()
        + "; "
        + check.table().head().locator()
        + "): "
        + cells
        + (cells == 1 ? " cell, " : " cells, ")
        + verdicts
        + "; largest difference "
        + check.largestDifference().setScale(2, RoundingMode.HALF_UP).toPlainString()
        + " "
        + check.column().precision().measureName();
  }

  private static String symbol(Parameter parameter) {
    return parameter.meaning()
        + (parameter.list() ? ", a list" : "")
        + ": "
        + named(parameter.name(), parameter.unit())
        + ", allowed "
        + parameter.domain()
        + parameter.published().map(range -> ", published for " + range).orElse("");
  }

  private static String named(String name, String unit) {
    return name + (unit.equals("1") ? "" : " in " + unit);
  }

  private static void section(List<String> lines, String title, List<String> texts) {
    if (!texts.isEmpty()) {
      lines.add(title);
      texts.forEach(text -> lines.add("  " + text));
    }
  }
}
