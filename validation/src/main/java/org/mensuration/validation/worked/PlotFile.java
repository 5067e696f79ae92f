package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.mensuration.FixedAreaPlots;
import org.mensuration.formula.Domain;
import org.mensuration.gauge.FixedPlots;
import org.mensuration.gauge.SlopeLayout;
import org.mensuration.kernel.Limits;
import org.mensuration.units.Measures;
import org.mensuration.validation.worked.NotedPlot.PlotTree;
import org.mensuration.validation.worked.PlotNotes.NamedCircle;

/**
 * Reads plots of fixed size, if there are any: circles first, then plots, then their trees. Not
 * thread-safe.
 */
final class PlotFile {
  static final String NAME = "plots.csv";

  private static final List<String> REQUIRED =
      List.of(
          "kind",
          "plot",
          "stratum",
          "slope_deg",
          "layout",
          "circle",
          "area_m2",
          "from_dbh_cm",
          "tree",
          "dbh_cm");
  private static final List<String> OPTIONAL =
      List.of("species", "condition", "volume_m3", "remark");
  private static final String SLOPE_WANTED =
      "degrees from 0 and below 90, or empty on level ground";

  private final Map<String, Stratum> strata;
  private final Cautions cautions;
  private final Map<String, NamedCircle> circles = new LinkedHashMap<>();
  private final Map<String, NotedPlot> plots = new LinkedHashMap<>();

  private PlotFile(Map<String, Stratum> strata, Cautions cautions) {
    this.strata = strata;
    this.cautions = cautions;
  }

  /** The plots; none if there is no such file. */
  static PlotNotes read(
      Notes notes, Map<String, Stratum> strata, Problems problems, Cautions cautions) {
    var file = new PlotFile(strata, cautions);
    if (notes.has(NAME)) {
      cautions.unusedColumns(
          NAME, NoteTable.read(notes, NAME, REQUIRED, OPTIONAL, problems, file::add));
    }
    return new PlotNotes(List.copyOf(file.circles.values()), List.copyOf(file.plots.values()));
  }

  private void add(Row row) {
    switch (row.oneOf("kind", List.of("circle", "plot", "tree"))) {
      case "circle" -> addCircle(row);
      case "plot" -> addPlot(row);
      default -> addTree(row);
    }
  }

  private void addCircle(Row row) {
    String name = row.required("circle", "a name of the circle");
    double area =
        row.requiredNumber("area_m2", Domain.above(0), "horizontal square metres above 0");
    double from =
        row.requiredNumber(
            "from_dbh_cm",
            Domain.atLeast(0),
            "centimetres from which the circle takes trees, or 0");
    if (!plots.isEmpty()) {
      throw row.bad("kind", "the circles above the plots");
    }
    if (circles.containsKey(name)) {
      throw row.bad("circle", "each circle once");
    }
    for (NamedCircle other : circles.values()) {
      if (Limits.on(from, other.fromDbh())) {
        throw row.bad("from_dbh_cm", "another diameter than circle " + other.name());
      }
    }
    circles.put(
        name,
        new NamedCircle(
            name,
            area,
            from,
            FixedAreaPlots.circle(Measures.squareMetres(area), Measures.centimetres(from))));
  }

  private void addPlot(Row row) {
    String name = row.required("plot", "a name of the plot");
    Stratum stratum = strata.get(row.text("stratum"));
    if (stratum == null) {
      throw row.missed(
          "stratum", Problem.quote(row.text("stratum")), "a stratum of " + StandFile.NAME);
    }
    double slope = row.number("slope_deg", Domain.fromBelow(0, 90), SLOPE_WANTED).orElse(0);
    String words =
        row.oneOf("layout", List.of("", "level", "ellipse", "circle on slope", "uncorrected"));
    if (words.isEmpty() && slope > 0) {
      throw row.bad(
          "layout",
          "how the plot was staked on its slope: level or ellipse or circle on"
              + " slope or uncorrected");
    }
    if (circles.isEmpty()) {
      throw row.missed("kind", "no circle above this plot", "a circle row with its area");
    }
    var plot = new NotedPlot(name, stratum, slope, layout(words), new ArrayList<>());
    if (plots.putIfAbsent(name, plot) != null) {
      throw row.bad("plot", "each plot once");
    }
  }

  private static SlopeLayout layout(String words) {
    return switch (words) {
      case "ellipse" -> SlopeLayout.ELLIPSE;
      case "circle on slope" -> SlopeLayout.CIRCLE_ON_SLOPE;
      case "uncorrected" -> SlopeLayout.UNCORRECTED;
      default -> SlopeLayout.HORIZONTAL;
    };
  }

  private void addTree(Row row) {
    NotedPlot plot = plots.get(row.text("plot"));
    if (plot == null) {
      throw row.missed("plot", Problem.quote(row.text("plot")), "a plot row above its trees");
    }
    String tree = row.required("tree", "a name of the tree");
    double dbh = row.requiredNumber("dbh_cm", Domain.above(0), "centimetres above 0");
    var volume = row.number("volume_m3", Domain.above(0), "cubic metres above 0, or empty");
    checkCircle(row, dbh);
    if (plot.trees().stream().anyMatch(t -> t.tree().equals(tree))) {
      throw row.bad("tree", "each tree of a plot once");
    }
    String key = "plot " + plot.name() + " tree " + tree;
    if (!DeadTrees.leftOut(row, plot.stratum(), key, cautions)) {
      plot.trees().add(new PlotTree(tree, dbh, volume));
    }
  }

  private void checkCircle(Row row, double dbh) {
    String name = row.text("circle");
    NamedCircle noted = circles.get(name);
    if (!name.isEmpty() && noted == null) {
      throw row.missed("circle", Problem.quote(name), "a circle of this file, or empty");
    }
    NamedCircle least =
        noted == null
            ? circles.values().stream()
                .min((a, b) -> Double.compare(a.fromDbh(), b.fromDbh()))
                .orElseThrow()
            : noted;
    if (!Limits.reaches(dbh, least.fromDbh())) {
      throw row.bad(
          "dbh_cm",
          least.fromDbh() + " cm or more: the circle " + least.name() + " takes no thinner tree");
    }
    FixedPlots.Circle own =
        PlotNotes.nested(List.copyOf(circles.values())).circleFor(Measures.centimetres(dbh));
    if (noted != null && !noted.circle().equals(own)) {
      String right =
          circles.values().stream()
              .filter(c -> c.circle().equals(own))
              .map(NamedCircle::name)
              .findFirst()
              .orElseThrow();
      throw row.bad("circle", right + ", on which a tree of this diameter is counted, or empty");
    }
  }
}
