package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.List;

/** Prints lines. Not thread-safe. */
final class LinePages {
  private final PrintUnits units;
  private final List<String> lines = new ArrayList<>();

  private LinePages(PrintUnits units) {
    this.units = units;
  }

  static List<String> of(List<LineEstimate> estimates, PrintUnits units) {
    LinePages pages = new LinePages(units);
    estimates.forEach(pages::page);
    return pages.lines;
  }

  private void page(LineEstimate estimate) {
    NotedLine first = estimate.lines().get(0).line();
    boolean byTop = first.angle().isPresent();
    lines.add("");
    lines.add(
        "Lines of "
            + estimate.stratum().name()
            + ", "
            + estimate.lines().size()
            + " lines by "
            + (byTop ? "height" : "diameter")
            + ": another sample of the same stratum, not to be added");
    lines.add(
        byTop
            ? "  In: trees to both sides whose top stands at "
                + PrintUnits.fixed(first.angle().getAsDouble(), 1)
                + "° or more, on level ground"
            : "  In: trees to both sides that fill a gauge of "
                + units.factor(first.factor().orElseThrow()));
    Grid table = new Grid(1);
    table.row(
        "line",
        "length " + units.lengthUnit(),
        "trees",
        units.basalAreaUnit(),
        units.stemsUnit(),
        units.densityUnit());
    for (LineEstimate.LineSum sum : estimate.lines()) {
      table.row(
          sum.line().name(),
          units.height(sum.line().length()),
          Integer.toString(sum.line().counted().size()),
          units.basalArea(sum.basalArea()),
          units.stems(sum.stems()),
          PrintUnits.orDash(sum.volume(), units::density));
    }
    lines.addAll(table.lines(false));
    lines.addAll(EstimateRows.of(units, estimate.basalArea(), estimate.stems(), estimate.volume()));
    Wrapped.add(
        lines,
        "  ",
        "What each tree stands for: "
            + (byTop ? "line/vertical-line-tree-factor" : "line/horizontal-tree-factor")
            + "; means weighted by the length of the lines (sampling/ratio-estimate, error by"
            + " sampling/ratio-standard-error); df lines less one.");
  }
}
