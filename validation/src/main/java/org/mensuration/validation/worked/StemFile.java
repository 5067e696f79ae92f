package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.mensuration.formula.Domain;

/** Reads the stems. Stateless and thread-safe. */
final class StemFile {
  static final String NAME = "stems.csv";

  private static final List<String> REQUIRED =
      List.of(
          "stem",
          "point",
          "tree",
          "chosen",
          "station",
          "kind",
          "height_m",
          "sight_angle_deg",
          "divisions",
          "diameter_cm",
          "bark");

  private StemFile() {}

  static List<Stem> read(
      Notes notes,
      Map<String, Station> stations,
      Arithmetic arithmetic,
      Problems problems,
      Cautions cautions) {
    Map<String, List<StemRow>> byStem = new LinkedHashMap<>();
    var unknown =
        NoteTable.read(
            notes,
            NAME,
            REQUIRED,
            List.of("length_m", "remark"),
            problems,
            row -> {
              StemRow read = row(row, stations);
              List<StemRow> rows = byStem.getOrDefault(read.stem(), new ArrayList<>());
              if (!rows.isEmpty()) {
                requireSame(read, rows.get(0));
              }
              rows.add(read);
              byStem.put(read.stem(), rows);
            });
    cautions.unusedColumns(NAME, unknown);
    List<Stem> stems = new ArrayList<>();
    for (List<StemRow> rows : byStem.values()) {
      try {
        stems.add(new StemAssembly(arithmetic, problems, cautions).assemble(rows));
      } catch (BadNotes bad) {
        problems.add(bad);
      }
    }
    return stems;
  }

  private static StemRow row(Row row, Map<String, Station> stations) {
    String stem = row.required("stem", "a name");
    Station station = station(row, stations);
    var read =
        new StemRow(
            row,
            stem,
            tree(row),
            row.oneOf("chosen", List.of("gauge", "random", "judgement", "")),
            station,
            row.oneOf("kind", List.of("base", "reading", "break", "tip")),
            row.number("height_m", Domain.atLeast(0), "metres from 0, or empty"),
            row.number("sight_angle_deg", StationFile.ANGLE, StationFile.ANGLE_WANTED),
            row.number("divisions", Domain.above(0), "divisions above 0, or empty"),
            row.number("diameter_cm", Domain.above(0), "centimetres above 0, or empty"),
            row.oneOf("bark", List.of("over", "under", "")),
            row.number("length_m", Domain.above(0), "metres above 0, or empty"));
    check(read);
    return read;
  }

  private static @Nullable Station station(Row row, Map<String, Station> stations) {
    String name = row.text("station");
    if (name.isEmpty()) {
      return null;
    }
    Station station = stations.get(name);
    if (station == null) {
      throw row.missed("station", Problem.quote(name), "a station of " + StationFile.NAME);
    }
    String tree = row.text("tree");
    if (!tree.isEmpty() && !station.tree().isEmpty() && !tree.equals(station.tree())) {
      throw row.bad("tree", "tree " + station.tree() + ", on which station " + name + " stands");
    }
    return station;
  }

  private static @Nullable TreeKey tree(Row row) {
    String point = row.text("point");
    String tree = row.text("tree");
    if (point.isEmpty() != tree.isEmpty()) {
      throw row.bad(
          point.isEmpty() ? "point" : "tree", "both the point and its counted tree, or neither");
    }
    return point.isEmpty() ? null : new TreeKey(point, tree);
  }

  private static void check(StemRow read) {
    Row row = read.row();
    if (read.divisions().isPresent() && read.diameter().isPresent()) {
      throw row.bad("diameter_cm", "either divisions or a diameter by hand, not both");
    }
    if (read.is("tip") && read.hasDiameter()) {
      throw row.bad("kind", "break or reading where there is a diameter: a tip has none");
    }
    if (read.hasDiameter() && read.bark().isEmpty()) {
      throw row.bad("bark", "over or under");
    }
    Station station = read.station();
    if (station == null) {
      if (read.divisions().isPresent() || read.angle().isPresent()) {
        throw row.bad("station", "the station of this sight");
      }
      return;
    }
    if (read.divisions().isEmpty()) {
      return;
    }
    if (station.divisionWidth().isEmpty()) {
      throw row.bad("divisions", "a diameter, or a station whose scale was calibrated");
    }
    if (!station.compensated() && read.angle().isEmpty()) {
      throw row.bad(
          "sight_angle_deg",
          "the sight angle: station "
              + station.name()
              + " has a scale without slope compensation, which reads too low at an elevation");
    }
  }

  private static void requireSame(StemRow read, StemRow first) {
    TreeKey tree = first.tree();
    TreeKey own = read.tree();
    if (tree == null ? own != null : !tree.equals(own)) {
      throw read.row().bad("tree", "the same point and tree in all rows of a stem");
    }
    if (!first.chosen().equals(read.chosen())) {
      throw read.row().bad("chosen", "the same in all rows of a stem");
    }
  }
}
