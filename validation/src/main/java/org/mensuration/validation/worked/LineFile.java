package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.mensuration.formula.Domain;
import org.mensuration.validation.worked.NotedLine.LineTree;

/** Reads lines and the trees chosen from them, if there are any. Not thread-safe. */
final class LineFile {
  static final String NAME = "lines.csv";

  private static final List<String> REQUIRED =
      List.of("line", "stratum", "length_m", "tree", "dbh_cm");
  private static final List<String> OPTIONAL =
      List.of(
          "slope_deg",
          "factor_m2_per_ha",
          "top_angle_deg",
          "height_above_eye_m",
          "species",
          "condition",
          "volume_m3",
          "remark");

  private final Map<String, Stratum> strata;
  private final Arithmetic arithmetic;
  private final Cautions cautions;
  private final Map<String, NotedLine> lines = new LinkedHashMap<>();

  private LineFile(Map<String, Stratum> strata, Arithmetic arithmetic, Cautions cautions) {
    this.strata = strata;
    this.arithmetic = arithmetic;
    this.cautions = cautions;
  }

  /** The lines; none if there is no such file. */
  static List<NotedLine> read(
      Notes notes,
      Map<String, Stratum> strata,
      Arithmetic arithmetic,
      Problems problems,
      Cautions cautions) {
    var file = new LineFile(strata, arithmetic, cautions);
    if (notes.has(NAME)) {
      cautions.unusedColumns(
          NAME, NoteTable.read(notes, NAME, REQUIRED, OPTIONAL, problems, file::add));
    }
    return List.copyOf(file.lines.values());
  }

  private void add(Row row) {
    NotedLine line = line(row);
    LineTree tree = tree(row, line);
    boolean first = lines.putIfAbsent(line.name(), line) == null;
    if (!first && (tree.tree().isEmpty() || line.trees().get(0).tree().isEmpty())) {
      throw row.bad("tree", "one row without a tree where a line is empty, and else none");
    }
    if (line.trees().stream().anyMatch(t -> t.tree().equals(tree.tree()))) {
      throw row.bad("tree", "each tree of a line once");
    }
    line.trees().add(tree);
  }

  private LineTree tree(Row row, NotedLine line) {
    String tree = row.text("tree");
    OptionalDouble dbh = row.number("dbh_cm", Domain.above(0), "centimetres above 0, or empty");
    OptionalDouble height =
        row.number("height_above_eye_m", Domain.above(0), "metres above the eye, above 0");
    OptionalDouble volume =
        row.number("volume_m3", Domain.above(0), "cubic metres above 0, or empty");
    if (tree.isEmpty()) {
      if (dbh.isPresent() || height.isPresent() || volume.isPresent()) {
        throw row.bad("tree", "a name, since the row has figures of a tree");
      }
      return new LineTree("", dbh, height, volume, false);
    }
    if (dbh.isEmpty()) {
      throw row.bad("dbh_cm", "the diameter of each tree");
    }
    if (line.angle().isPresent() && height.isEmpty()) {
      throw row.bad(
          "height_above_eye_m", "the height of the top above the eye, by which this line chooses");
    }
    boolean out =
        DeadTrees.leftOut(row, line.stratum(), "line " + line.name() + " tree " + tree, cautions);
    return new LineTree(tree, dbh, height, volume, !out);
  }

  private NotedLine line(Row row) {
    String name = row.required("line", "a name of the line");
    Stratum stratum = strata.get(row.text("stratum"));
    if (stratum == null) {
      throw row.missed(
          "stratum", Problem.quote(row.text("stratum")), "a stratum of " + StandFile.NAME);
    }
    double taped = row.requiredNumber("length_m", Domain.above(0), "metres above 0");
    OptionalDouble slope = row.number("slope_deg", StationFile.ANGLE, StationFile.ANGLE_WANTED);
    double length = slope.isPresent() ? arithmetic.horizontal(taped, slope.getAsDouble()) : taped;
    OptionalDouble factor =
        row.number("factor_m2_per_ha", Domain.open(0, 10000), "a factor above 0 in m²/ha");
    OptionalDouble angle =
        row.number("top_angle_deg", Domain.open(0, 90), "degrees above 0 and below 90");
    if (factor.isPresent() == angle.isPresent()) {
      throw row.bad(
          "factor_m2_per_ha",
          "either the factor of the gauge or a top_angle_deg: how the line chooses trees");
    }
    NotedLine known = lines.get(name);
    var line = new NotedLine(name, stratum, length, factor, angle, new ArrayList<>());
    if (known == null) {
      checkGauge(row, line);
      return line;
    }
    if (!known.stratum().name().equals(stratum.name())) {
      throw row.bad("stratum", known.stratum().name() + ", as in the other rows of the line");
    }
    if (known.length() != length) {
      throw row.bad("length_m", "the same length and slope in all rows of a line");
    }
    if (!known.factor().equals(factor) || !known.angle().equals(angle)) {
      throw row.bad(
          factor.isPresent() ? "factor_m2_per_ha" : "top_angle_deg",
          "the same choice of trees in all rows of a line");
    }
    return known;
  }

  /** One gauge and one angle a stratum, as for points. */
  private void checkGauge(Row row, NotedLine line) {
    for (NotedLine other : lines.values()) {
      boolean beside =
          other.stratum().name().equals(line.stratum().name())
              && other.factor().isPresent() == line.factor().isPresent();
      if (beside && !(other.factor().equals(line.factor()) && other.angle().equals(line.angle()))) {
        throw row.bad(
            line.factor().isPresent() ? "factor_m2_per_ha" : "top_angle_deg",
            "the same as on line " + other.name() + ", in one stratum");
      }
    }
  }
}
