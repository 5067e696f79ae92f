package org.mensuration.validation.check;

import java.io.PrintStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import org.mensuration.validation.table.Standing;

/** Prints a report: a line a table, then a line a formula. Stateless and thread-safe. */
final class CheckPrinter {
  private CheckPrinter() {}

  static void print(CheckReport report, PrintStream out) {
    out.println(
        "Reference checks: cells, equal as printed, within step, explained, tabulated, undecided,"
            + " failed, largest difference");
    for (TableCheck check : report.checks()) {
      out.println(line(check));
    }
    report
        .cells()
        .filter(cell -> cell.verdict() == Verdict.FAILED)
        .forEach(cell -> out.println("FAILED " + cell.message()));
    report
        .cells()
        .filter(cell -> cell.verdict() == Verdict.EXPLAINED)
        .forEach(cell -> out.println("explained " + cell.message()));
    report.problems().forEach(problem -> out.println("UNREADABLE " + problem));
    evidence(report.evidence(), out);
    out.println(total(report, false) + "; " + total(report, true));
    out.println(Safety.LINE);
  }

  private static String line(TableCheck check) {
    String counts =
        List.of(Verdict.values()).stream()
            .map(verdict -> Integer.toString(check.count(verdict)))
            .collect(Collectors.joining(" "));
    BigDecimal largest = check.largestDifference().setScale(2, RoundingMode.HALF_UP);
    return check.subject()
        + " | "
        + check.table().name()
        + " ("
        + check.table().source().shortForm()
        + ", "
        + check.table().head().standing().word()
        + ") | "
        + check.cells().size()
        + " cells: "
        + counts
        + " | "
        + largest.toPlainString()
        + " "
        + check.column().precision().measureName();
  }

  private static void evidence(List<Evidence> evidence, PrintStream out) {
    out.println("Formulas: published cells by verdict, then cells of other standing");
    evidence.forEach(one -> out.println(one.formula() + ": " + one.words()));
  }

  private static String total(CheckReport report, boolean computed) {
    List<CellCheck> cells =
        report.checks().stream()
            .filter(c -> (c.table().head().standing() == Standing.COMPUTED) == computed)
            .flatMap(c -> c.cells().stream())
            .toList();
    long failed = cells.stream().filter(c -> c.verdict() == Verdict.FAILED).count();
    return cells.size()
        + (computed ? " computed cells (test vectors, no references), " : " reference cells, ")
        + failed
        + " failed";
  }
}
