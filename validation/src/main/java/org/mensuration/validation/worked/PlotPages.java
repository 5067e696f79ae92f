package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.mensuration.gauge.PlotRadii;
import org.mensuration.gauge.SlopeLayout;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.validation.worked.PlotEstimate.PlotSum;

/** Prints plots of fixed size. Not thread-safe. */
final class PlotPages {
  private final PrintUnits units;
  private final List<String> lines = new ArrayList<>();

  private PlotPages(PrintUnits units) {
    this.units = units;
  }

  static List<String> of(List<PlotEstimate> estimates, PrintUnits units) {
    PlotPages pages = new PlotPages(units);
    estimates.forEach(pages::page);
    return pages.lines;
  }

  private void page(PlotEstimate estimate) {
    lines.add("");
    lines.add(
        "Fixed plots of "
            + estimate.stratum().name()
            + ", "
            + estimate.plots().size()
            + " plots: another sample of the same stratum, not to be added");
    circles(estimate);
    plots(estimate);
    lines.addAll(EstimateRows.of(units, estimate.basalArea(), estimate.stems(), estimate.volume()));
    if (estimate.population().isPresent()) {
      Wrapped.add(
          lines,
          "  ",
          "Errors with the finite correction for "
              + PrintUnits.fixed(estimate.population().getAsDouble(), 0)
              + " plots of the smallest circle on "
              + units.land(estimate.stratum().area().orElseThrow())
              + " (sampling/standard-error-finite).");
    } else {
      Wrapped.add(
          lines,
          "  ",
          "Errors without a finite correction (sampling/standard-error): right if the area is large"
              + " beside the plots.");
    }
  }

  private void circles(PlotEstimate estimate) {
    Grid grid = new Grid(1);
    grid.row(
        "circle",
        "trees from " + units.diameterUnit(),
        "area " + units.areaUnit(),
        "a tree stands for " + units.stemsUnit());
    for (int i = 0; i < estimate.circles().size(); i++) {
      PlotNotes.NamedCircle circle = estimate.circles().get(i);
      grid.row(
          circle.name(),
          units.diameter(circle.fromDbh()),
          units.area(circle.area()),
          units.expansion(estimate.factors().get(i)));
    }
    lines.addAll(grid.lines(false));
  }

  private void plots(PlotEstimate estimate) {
    Grid grid = new Grid(2);
    List<String> head = new ArrayList<>(List.of("plot", "layout", "slope °"));
    estimate.circles().forEach(c -> head.add(c.name() + " radius " + units.lengthUnit()));
    head.addAll(
        List.of(
            "slope factor",
            "trees",
            units.basalAreaUnit(),
            units.stemsUnit(),
            units.densityUnit()));
    grid.row(head.toArray(String[]::new));
    for (PlotSum sum : estimate.plots()) {
      List<String> cells =
          new ArrayList<>(
              List.of(
                  sum.plot().name(),
                  words(sum.plot().layout()),
                  PrintUnits.fixed(sum.plot().slope(), 1)));
      sum.radii().forEach(radii -> cells.add(radii(radii)));
      cells.addAll(
          List.of(
              PrintUnits.fixed(sum.factor(), 3),
              Integer.toString(sum.plot().trees().size()),
              units.basalArea(sum.basalArea()),
              units.stems(sum.stems()),
              PrintUnits.orDash(sum.volume(), units::density)));
      grid.row(cells.toArray(String[]::new));
    }
    lines.addAll(grid.lines(false));
    Wrapped.add(
        lines,
        "  ",
        "Radii as staked on the ground, across × along the slope. Slope factor: what the figures of"
            + " a plain circle on a slope are multiplied by (plot/slope-area-factor).");
  }

  private String radii(PlotRadii radii) {
    String across = units.radius(Measures.in(radii.across(), ForestUnits.METRE));
    String along = units.radius(Measures.in(radii.along(), ForestUnits.METRE));
    return radii.layout() == SlopeLayout.ELLIPSE ? across + " × " + along : across;
  }

  private static String words(SlopeLayout layout) {
    return layout == SlopeLayout.HORIZONTAL
        ? "level"
        : layout.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
