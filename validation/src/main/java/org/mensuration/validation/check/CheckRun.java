package org.mensuration.validation.check;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.mensuration.formula.Catalogue;
import org.mensuration.formula.Formula;
import org.mensuration.validation.table.ReferenceData;
import org.mensuration.validation.table.Table;

/** The command: arguments in, report and exit status out. Stateless and thread-safe. */
final class CheckRun {
  static final int PASSED = 0;
  static final int FAILED = 1;
  static final int USAGE = 2;

  private CheckRun() {}

  static int run(Catalogue catalogue, List<String> arguments, PrintStream out) {
    ReferenceData shipped = ReferenceData.shipped();
    List<Table> tables = new ArrayList<>(shipped.tables());
    List<String> problems = new ArrayList<>(shipped.problems());
    List<Formula> sheets = new ArrayList<>();
    for (int i = 0; i < arguments.size(); i += 2) {
      String option = arguments.get(i);
      boolean known = option.equals("--data") || option.equals("--formula");
      if (!known || i + 1 == arguments.size()) {
        out.println("found " + option + ", wanted --data DIR or --formula ID, as often as needed");
        return USAGE;
      }
      String value = arguments.get(i + 1);
      if (option.equals("--formula")) {
        Optional<Formula> formula = find(catalogue, value);
        if (formula.isEmpty()) {
          out.println("found --formula " + value + ", wanted one of " + ids(catalogue, value));
          return USAGE;
        }
        sheets.add(formula.get());
      } else {
        add(value, shipped, tables, problems);
      }
    }
    CheckReport found = ReferenceChecks.run(catalogue, tables);
    problems.addAll(found.problems());
    CheckReport report = new CheckReport(found.checks(), found.evidence(), problems);
    if (sheets.isEmpty()) {
      CheckPrinter.print(report, out);
    } else {
      sheets.forEach(formula -> FormulaSheet.lines(formula, report).forEach(out::println));
    }
    return report.passed() ? PASSED : FAILED;
  }

  private static void add(
      String folder, ReferenceData shipped, List<Table> tables, List<String> problems) {
    try {
      ReferenceData further = ReferenceData.of(Path.of(folder), shipped);
      tables.addAll(further.tables());
      problems.addAll(further.problems());
    } catch (IOException | InvalidPathException e) {
      problems.add("--data " + folder + " cannot be read: " + e.getMessage());
    }
  }

  private static Optional<Formula> find(Catalogue catalogue, String id) {
    return catalogue.formulas().stream().filter(formula -> formula.id().equals(id)).findFirst();
  }

  /** The ids of the topic that was asked for, or the topics. */
  private static String ids(Catalogue catalogue, String asked) {
    String topic = asked.substring(0, asked.indexOf('/') + 1);
    List<String> ids = catalogue.formulas().stream().map(Formula::id).toList();
    List<String> near =
        ids.stream().filter(id -> !topic.isEmpty() && id.startsWith(topic)).toList();
    return near.isEmpty()
        ? ids.stream()
            .map(id -> id.substring(0, id.indexOf('/') + 1) + "...")
            .distinct()
            .collect(Collectors.joining(", "))
        : String.join(", ", near);
  }
}
