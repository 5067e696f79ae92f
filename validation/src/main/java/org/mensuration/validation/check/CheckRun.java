package org.mensuration.validation.check;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.mensuration.formula.Catalogue;
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
    for (int i = 0; i < arguments.size(); i += 2) {
      if (!arguments.get(i).equals("--data") || i + 1 == arguments.size()) {
        out.println("found " + arguments.get(i) + ", wanted --data DIR, as often as needed");
        return USAGE;
      }
      String folder = arguments.get(i + 1);
      try {
        ReferenceData further = ReferenceData.of(Path.of(folder), shipped);
        tables.addAll(further.tables());
        problems.addAll(further.problems());
      } catch (IOException | InvalidPathException e) {
        problems.add("--data " + folder + " cannot be read: " + e.getMessage());
      }
    }
    CheckReport found = ReferenceChecks.run(catalogue, tables);
    problems.addAll(found.problems());
    CheckReport report = new CheckReport(found.checks(), found.evidence(), problems);
    CheckPrinter.print(report, out);
    return report.passed() ? PASSED : FAILED;
  }
}
