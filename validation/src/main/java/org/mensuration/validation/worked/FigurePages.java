package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.mensuration.gauge.CountChoices;
import org.mensuration.stand.SampleLayout;
import org.mensuration.stand.StandTable;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;

/** Prints heights, densities and the stand tables of the strata. Not thread-safe. */
final class FigurePages {
  private final Findings found;
  private final PrintUnits units;
  private final Arithmetic arithmetic;
  private final List<String> lines = new ArrayList<>();

  FigurePages(Findings found, PrintUnits units, Arithmetic arithmetic) {
    this.found = found;
    this.units = units;
    this.arithmetic = arithmetic;
  }

  /** The choices of a stratum in one line. */
  static String choices(Stratum stratum) {
    StratumChoices choices = stratum.choices();
    List<String> counted = new CountChoices(true, true, choices.dead()).text();
    String layout =
        choices.layout() == SampleLayout.RANDOM
            ? "at random"
            : choices.layout() == SampleLayout.SYSTEMATIC ? "on a grid" : "by judgement";
    return "points "
        + layout
        + ", "
        + counted.get(counted.size() - 1)
        + (choices.extendedGrid()
            ? ", edges by " + choices.edgeRule() + ": means over the points inside, errors over all"
            : ", edge weights "
                + (choices.edgeRule().isEmpty() ? "as noted" : "by " + choices.edgeRule()));
  }

  List<String> lines() {
    figures();
    for (Group group : found.groups()) {
      Optional<StandTable> table = group.figures().flatMap(Group.Figures::table);
      if (table.isPresent()) {
        table(group.name(), table.get());
      }
    }
    return lines;
  }

  private void figures() {
    lines.add("");
    lines.add("Heights and density");
    Grid grid = new Grid(1);
    grid.row(
        "stratum",
        "Lorey's height " + units.lengthUnit(),
        "dominant height " + units.lengthUnit(),
        "trees by curve",
        "density index " + units.stemsUnit(),
        "relative density");
    for (Group group : found.groups()) {
      if (group.figures().isPresent()) {
        Group.Figures figures = group.figures().get();
        grid.row(
            group.name(),
            PrintUnits.orDash(figures.loreyHeight(), units::height),
            PrintUnits.orDash(figures.dominantHeight(), units::height),
            Long.toString(figures.predictedHeights()),
            PrintUnits.orDash(figures.densityIndex(), units::stems),
            PrintUnits.orDash(relativeDensity(group), d -> PrintUnits.fixed(d, 2)));
      }
    }
    lines.addAll(grid.lines(true));
    lines.add(
        "  Dominant height: "
            + StandFigures.DOMINANT.text()
            + (units == PrintUnits.METRIC
                ? "."
                : ", "
                    + PrintUnits.fixed(perAcre(StandFigures.DOMINANT.number()), 1)
                    + " per acre."));
    lines.add("  Density index: Reineke, at a quadratic mean diameter of 25.4 cm (10 in).");
    lines.add(
        "  Relative density: Curtis, from "
            + units.basalAreaUnit()
            + " and "
            + units.diameterUnit()
            + "; the other units give another figure.");
  }

  private static double perAcre(double perHectare) {
    return Measures.in(Measures.of(perHectare, ForestUnits.PER_HECTARE), ForestUnits.PER_ACRE);
  }

  private OptionalDouble relativeDensity(Group group) {
    if (units == PrintUnits.METRIC || group.quadraticMean().isEmpty()) {
      return group.figures().orElseThrow().relativeDensity();
    }
    return OptionalDouble.of(
        arithmetic.relativeDensityImperial(
            Measures.in(
                Measures.squareMetresPerHectare(group.basalArea().mean()),
                ForestUnits.SQUARE_FOOT_PER_ACRE),
            Measures.in(
                Measures.centimetres(group.quadraticMean().getAsDouble()), ForestUnits.INCH)));
  }

  private void table(String stratum, StandTable table) {
    lines.add("");
    lines.add("Stand table of " + stratum + ", lower limits belong to their class");
    Grid grid = new Grid(2);
    grid.row(
        "class " + units.diameterUnit(),
        "species",
        "weighted",
        units.stemsUnit(),
        units.basalAreaUnit(),
        units.densityUnit(),
        "");
    for (StandTable.Row all : table.diameterClasses()) {
      StandTable.DiameterClass limits = all.diameterClass().orElseThrow();
      String name =
          units.diameter(Measures.in(limits.lower(), ForestUnits.CENTIMETRE))
              + " to "
              + units.diameter(Measures.in(limits.upper(), ForestUnits.CENTIMETRE));
      for (StandTable.Row cell : table.cells()) {
        if (cell.diameterClass().equals(all.diameterClass())) {
          row(grid, name, cell);
        }
      }
      row(grid, name, all);
    }
    for (StandTable.Row row : table.groups()) {
      row(grid, "all", row);
    }
    row(grid, "all", table.total());
    lines.addAll(grid.lines(true));
    Estimate ratio = found.ratios().mean();
    if (ratio != null) {
      lines.add(
          "  "
              + units.densityUnit()
              + ": basal area × the ratio "
              + units.ratio(ratio.mean())
              + " "
              + units.ratioUnit()
              + " of measured trees, the same for each tree");
    }
  }

  private void row(Grid grid, String name, StandTable.Row row) {
    double basalArea = Measures.in(row.basalArea(), ForestUnits.SQUARE_METRE_PER_HECTARE);
    grid.row(
        name,
        row.group().map(species -> species.isEmpty() ? "not noted" : species).orElse("all"),
        PrintUnits.fixed(row.count(), 1),
        units.stems(Measures.in(row.stems(), ForestUnits.PER_HECTARE)),
        units.basalArea(basalArea),
        PrintUnits.orDash(found.ratios().volume(arithmetic, basalArea), units::density),
        "");
  }
}
