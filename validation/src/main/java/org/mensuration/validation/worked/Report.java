package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.mensuration.Catalogues;
import org.mensuration.height.HeightCurve;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.validation.check.Safety;

/** Lays the findings out, in the order in which they are wanted in the field. Not thread-safe. */
final class Report {
  static final String SAFETY = Safety.LINE;

  private final Findings found;
  private final Options options;
  private final PrintUnits units;
  private final Arithmetic arithmetic = new Arithmetic(Catalogues.standard());
  private final List<String> lines = new ArrayList<>();

  private Report(Findings found, Options options) {
    this.found = found;
    this.options = options;
    this.units = options.units();
  }

  static List<String> of(Findings found, Options options) {
    Report report = new Report(found, options);
    report.wrap("", SAFETY);
    report.cautions();
    report.measured();
    report.stand();
    report.lines.addAll(new FigurePages(found, report.units, report.arithmetic).lines());
    report.lines.addAll(MeasurePages.of(found.measured(), report.units));
    report.lines.addAll(PlotPages.of(found.plots(), report.units));
    report.lines.addAll(LinePages.of(found.lines(), report.units));
    report.points();
    report.lines.addAll(new StemPages(found, report.units).lines());
    return report.lines;
  }

  private void cautions() {
    head("Cautions that change figures");
    if (found.cautions().isEmpty()) {
      lines.add("  none");
    }
    for (String caution : found.cautions()) {
      wrap("  - ", caution);
    }
  }

  private void measured() {
    head("What was measured");
    Stratum first = found.strata().get(0);
    long taken = found.points().stream().filter(PointSum::taken).count();
    long trees = found.points().stream().mapToLong(PointSum::trees).sum();
    wrap(
        "  ",
        "Stand " + first.stand() + (options.folder() == null ? " (invented demo notes)" : ""));
    Grid grid = new Grid(2);
    for (Stratum stratum : found.strata()) {
      grid.row(
          "Stratum",
          stratum.name()
              + ": "
              + (stratum.area().isPresent()
                  ? units.land(stratum.area().getAsDouble())
                  : "area not given")
              + ", a counted tree stands for "
              + units.factor(stratum.factor()));
      grid.row(
          "",
          "breast height "
              + units.finely(stratum.breastHeight())
              + ", tree exactly at its limit: "
              + (stratum.tieIsIn() ? "in" : "out")
              + (stratum.minimumDbh().isPresent()
                  ? ", trees from "
                      + units.diameter(stratum.minimumDbh().getAsDouble())
                      + " "
                      + units.diameterUnit()
                  : ", trees of any diameter")
              + ", stump "
              + (stratum.stumpHeight().isPresent()
                  ? units.finely(stratum.stumpHeight().getAsDouble())
                  : "not set apart"));
      grid.row("", FigurePages.choices(stratum));
    }
    grid.row(
        "Count",
        trees
            + " trees noted at "
            + taken
            + " points, "
            + found.checked()
            + " checked by their distance");
    grid.row("Sections", options.rule().words() + " (" + options.rule().formula() + ")");
    grid.row(
        "Tip",
        (options.tip() == TipForm.CONE ? "cone" : "paraboloid")
            + " on the last reading ("
            + options.tip().formula()
            + ")");
    grid.row(
        "Foot", "butt and stump as wide as the lowest reading (log/huber); stump not in volume");
    grid.row("Profile", "beside the sections: area as a monotone cubic through the readings,");
    grid.row(
        "",
        "from the stump up, and to a top of "
            + units.diameter(options.topDiameterCm())
            + " "
            + units.diameterUnit());
    grid.row("Diameters", "optics/diameter-from-divisions; scale without slope compensation:");
    grid.row("", "optics/diameter-from-divisions-elevated");
    grid.row("Heights", "by tape or pole, or height/tangent from the distance to the axis");
    grid.row("Estimates", "point/basal-area, gauge/tree-factor, tree/volume-basal-area-ratio,");
    grid.row("", "stand/quadratic-mean-diameter, stand/volume, sampling/standard-error,");
    grid.row("", "sampling/mean-interval, sampling/points-needed, sampling/combined-error,");
    if (found.stand() != null) {
      grid.row("", "sampling/stratified-mean, sampling/stratified-standard-error,");
      grid.row("", "sampling/points-needed-neyman for the points needed in the stand");
    }
    for (HeightCurve curve : found.heights().curves()) {
      grid.row(
          "Curve",
          (curve.species().isEmpty() ? "trees" : curve.species())
              + ": "
              + curve.formula().id()
              + ", "
              + curve.trees()
              + " heights of trees of "
              + units.diameter(Measures.in(curve.smallestDiameter(), ForestUnits.CENTIMETRE))
              + " to "
              + units.diameter(Measures.in(curve.largestDiameter(), ForestUnits.CENTIMETRE))
              + " "
              + units.diameterUnit()
              + ",");
      grid.row(
          "",
          "residual error "
              + units.finely(Measures.in(curve.residualError(), ForestUnits.METRE))
              + "; in cm and m b0 "
              + PrintUnits.fixed(curve.coefficients().get(0), 4)
              + ", b1 "
              + PrintUnits.fixed(curve.coefficients().get(1), 4));
    }
    lines.addAll(grid.lines(false));
    if (!found.unused().isEmpty()) {
      wrap("  ", "Columns not used: " + String.join("; ", found.unused()));
    }
  }

  private void stand() {
    head("The stand per " + (units == PrintUnits.METRIC ? "hectare" : "acre"));
    lines.add("  95 % intervals: Student's t, sampling error only");
    Grid grid = EstimateRows.grid();
    for (Group group : found.groups()) {
      groupRows(grid, group, "");
    }
    Group stand = found.stand();
    if (stand != null) {
      groupRows(grid, stand, ", weighted by area");
    }
    lines.addAll(grid.lines(false));
    Estimate ratio = found.ratios().mean();
    if (ratio == null) {
      wrap("  ", "No volume: " + found.ratios().whyNone() + ".");
    } else {
      wrap(
          "  ",
          "Volume "
              + found.ratios().bark()
              + " bark = mean basal area × mean volume-basal-area ratio "
              + units.ratio(ratio.mean())
              + " "
              + units.ratioUnit()
              + (ratio.error().isPresent()
                  ? " (std. error "
                      + units.ratio(ratio.error().getAsDouble())
                      + ", "
                      + EstimateRows.percent(ratio.errorPercent())
                      + " %, df "
                      + PrintUnits.freedom(ratio.degreesOfFreedom())
                      + "; both errors combined, df the smaller of the two)"
                  : "")
              + ", the same ratio in every stratum.");
    }
    wrap(
        "  ",
        "df of basal area and stems: points less one in a stratum; the effective number"
            + " (sampling/effective-degrees-of-freedom) in the stand.");
    totals(stand);
  }

  private void groupRows(Grid grid, Group group, String more) {
    String area = group.area().isPresent() ? ", " + units.land(group.area().getAsDouble()) : "";
    lines.add(
        "  "
            + group.name()
            + area
            + more
            + ": "
            + group.points()
            + " points"
            + (group.notTaken() > 0 ? ", " + group.notTaken() + " not taken" : "")
            + "; for a 95 % interval of basal area of ±10 %: "
            + PrintUnits.orDash(group.pointsNeeded(), n -> PrintUnits.fixed(n, 0))
            + " points");
    EstimateRows.row(
        grid,
        group.name(),
        "basal area " + units.basalAreaUnit(),
        group.basalArea(),
        units::basalArea);
    EstimateRows.row(grid, "", "stems " + units.stemsUnit(), group.stems(), units::stems);
    grid.row(
        "",
        "quadratic mean diameter " + units.diameterUnit(),
        PrintUnits.orDash(group.quadraticMean(), units::diameter));
    EstimateRows.row(grid, "", "volume " + units.densityUnit(), group.volume(), units::density);
  }

  private void totals(@Nullable Group stand) {
    Group whole =
        stand == null && found.strata().size() == 1 && found.groups().size() == 1
            ? found.groups().get(0)
            : stand;
    if (whole == null || whole.area().isEmpty()) {
      lines.add("  Total: none, see the cautions.");
      return;
    }
    double area = whole.area().getAsDouble();
    lines.add("  In total on " + units.land(area) + ", errors as above:");
    Grid grid = new Grid(2);
    Estimate stems = whole.stems();
    Estimate volume = whole.volume();
    EstimateRows.row(
        grid, "", "basal area " + units.areaUnit(), times(whole.basalArea(), area), units::area);
    if (stems != null) {
      EstimateRows.row(grid, "", "stems", times(stems, area), n -> PrintUnits.fixed(n, 0));
    }
    if (volume != null) {
      EstimateRows.row(grid, "", "volume " + units.volumeUnit(), times(volume, area), units::total);
    }
    lines.addAll(grid.lines(false));
  }

  private static Estimate times(Estimate estimate, double area) {
    return new Estimate(
        estimate.mean() * area,
        times(estimate.error(), area),
        estimate.degreesOfFreedom(),
        times(estimate.halfWidth(), area));
  }

  private static OptionalDouble times(OptionalDouble value, double area) {
    return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * area) : value;
  }

  private void points() {
    head("Points");
    Grid grid = new Grid(2);
    grid.row(
        "point",
        "stratum",
        "trees",
        "weighted",
        units.basalAreaUnit(),
        units.stemsUnit(),
        units.densityUnit(),
        "");
    for (PointSum point : found.points()) {
      if (!point.taken()) {
        grid.row(point.name(), point.stratum().name(), "-", "-", "-", "-", "-", "not taken");
        continue;
      }
      String remark =
          point.trees() > 0
              ? remark(point)
              : (point.outside() ? "beyond the edge, " : "") + "empty, counts as zero";
      grid.row(
          point.name(),
          point.stratum().name(),
          Long.toString(point.trees()),
          PrintUnits.fixed(point.count(), 1),
          units.basalArea(point.basalArea()),
          PrintUnits.orDash(point.stems(), units::stems),
          PrintUnits.orDash(found.ratios().volume(arithmetic, point.basalArea()), units::density),
          remark);
    }
    lines.addAll(grid.lines(true));
  }

  private static String remark(PointSum point) {
    if (point.outside()) {
      return "beyond the edge" + (point.measured() ? ", every tree measured" : "");
    }
    String sweep = point.sweep().factor() > 1 ? point.sweep().name() : point.edge() ? "edge" : "";
    String measured = point.measured() ? "every tree measured" : "";
    return sweep + (sweep.isEmpty() || measured.isEmpty() ? "" : ", ") + measured;
  }

  private void head(String title) {
    lines.add("");
    lines.add(title);
  }

  private void wrap(String indent, String text) {
    Wrapped.add(lines, indent, text);
  }
}
