package org.mensuration.validation.worked;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.mensuration.formula.Domain;
import org.mensuration.kernel.Limits;

/**
 * Reads the points. Keeps sums a point, and of trees only the diameters of those whose stem was
 * measured. Not thread-safe.
 */
final class PointFile {
  static final String NAME = "points.csv";

  private static final String WEIGHT_WANTED = "a weight of 0, 0.5 or 1, or empty for 1";

  static final List<String> REQUIRED =
      List.of(
          "point",
          "stratum",
          "status",
          "tree",
          "dbh_cm",
          "weight",
          "edge_weight",
          "distance_m",
          "distance_to",
          "slope_deg");
  static final List<String> OPTIONAL = List.of("species", "condition", "height_m", "remark");

  private final Arithmetic arithmetic;
  private final Map<String, Stratum> strata;
  private final Set<TreeKey> measured;
  private final Cautions cautions;
  private final PrintUnits units;
  private final HeightNotes heights;
  private final Map<String, PointSum> points = new LinkedHashMap<>();
  private final Map<String, StratumTally> tallies = new LinkedHashMap<>();
  private final Map<TreeKey, OptionalDouble> diameters = new HashMap<>();
  private @Nullable PointSum open;
  private long checked;

  private PointFile(
      Arithmetic arithmetic,
      Map<String, Stratum> strata,
      Set<TreeKey> measured,
      Cautions cautions,
      PrintUnits units,
      HeightNotes heights) {
    this.arithmetic = arithmetic;
    this.strata = strata;
    this.heights = heights;
    strata.forEach((name, stratum) -> tallies.put(name, new StratumTally(stratum)));
    this.measured = measured;
    this.cautions = cautions;
    this.units = units;
  }

  static PointFile read(
      Notes notes,
      Arithmetic arithmetic,
      Map<String, Stratum> strata,
      Set<TreeKey> measured,
      PrintUnits units,
      Problems problems,
      Cautions cautions) {
    HeightNotes heights = HeightNotes.read(notes, strata);
    var file = new PointFile(arithmetic, strata, measured, cautions, units, heights);
    cautions.unusedColumns(
        NAME, NoteTable.read(notes, NAME, REQUIRED, OPTIONAL, problems, file::add));
    file.close();
    file.requireEdges(problems);
    if (file.points.isEmpty() && problems.none()) {
      throw new BadNotes(new Problem(NAME, 2, "", "no row", "a row a counted tree"));
    }
    return file;
  }

  List<PointSum> points() {
    return List.copyOf(points.values());
  }

  /** What was added up, by stratum. */
  Map<String, StratumTally> tallies() {
    return tallies;
  }

  /** The heights noted and the curves through them. */
  HeightNotes heights() {
    return heights;
  }

  /** The measured trees that were counted, and their diameter at breast height if it was noted. */
  Map<TreeKey, OptionalDouble> diameters() {
    return Map.copyOf(diameters);
  }

  /** Trees whose distance was compared with their limit. */
  long checked() {
    return checked;
  }

  private void add(Row row) {
    String tree = row.text("tree");
    // Read before the point is touched, so that a bad row leaves no trace.
    OptionalDouble dbh =
        row.number("dbh_cm", Domain.above(0), "centimetres above 0, or empty if not measured");
    double weight = row.number("weight", Domain.closed(0, 1), WEIGHT_WANTED).orElse(1);
    if (!(weight == 0 || weight == 0.5 || weight == 1)) {
      throw row.bad("weight", WEIGHT_WANTED);
    }
    double edge =
        row.number("edge_weight", Domain.atLeast(1), "a weight from 1, or empty for 1").orElse(1);
    OptionalDouble distance = row.number("distance_m", Domain.above(0), "metres above 0, or empty");
    String to = row.oneOf("distance_to", List.of("axis", "face", ""));
    OptionalDouble slope = row.number("slope_deg", StationFile.ANGLE, StationFile.ANGLE_WANTED);
    if (distance.isPresent() && to.isEmpty()) {
      throw row.bad("distance_to", "axis or face, to say where the distance ends");
    }
    if (distance.isPresent() && dbh.isEmpty()) {
      throw row.bad("dbh_cm", "the diameter, without which the distance decides nothing");
    }
    OptionalDouble height = row.number("height_m", Domain.above(0), "metres above 0, or empty");
    PointSum point = point(row, tree);
    if (tree.isEmpty()) {
      if (dbh.isPresent() || !row.text("weight").isEmpty() || distance.isPresent()) {
        throw row.bad("tree", "a name, since the row has figures of a tree");
      }
      point.sayEmpty();
      open(point);
      return;
    }
    if (height.isPresent() && !(height.getAsDouble() > point.stratum().breastHeight())) {
      throw row.bad("height_m", "a height above breast height");
    }
    var key = new TreeKey(point.name(), tree);
    boolean isMeasured = measured.contains(key);
    if (isMeasured && diameters.containsKey(key)) {
      throw row.bad("tree", "each tree of a point once");
    }
    open(point);
    point.meet();
    if (isMeasured) {
      diameters.put(key, dbh);
    }
    OptionalDouble minimum = point.stratum().minimumDbh();
    if (dbh.isPresent() && minimum.isPresent() && dbh.getAsDouble() < minimum.getAsDouble()) {
      cautions.add("Trees below the smallest diameter, left out of the count", key.toString());
      return;
    }
    boolean dead = row.text("condition").toLowerCase(Locale.ROOT).equals("dead");
    boolean counted = !dead || point.stratum().choices().dead();
    if (dead && weight > 0) {
      cautions.add(
          counted
              ? "Dead trees, in basal area and stems with the living"
              : "Dead trees, left out as the notes say",
          key.toString());
    }
    Uncommon.look(cautions, key, dbh, height);
    if (distance.isPresent()) {
      check(key, point.stratum(), dbh.getAsDouble(), distance.getAsDouble(), to, slope, weight);
    }
    StratumTally tally = tally(point);
    if (!row.text("edge_weight").isEmpty()) {
      tally.recordEdge();
    }
    String species = row.text("species");
    tally.tree(dbh, weight, edge, species, dead, heights.of(point.stratum(), species, dbh, height));
    if (counted) {
      point.add(weight, edge, dbh.isPresent());
    }
  }

  private StratumTally tally(PointSum point) {
    return Objects.requireNonNull(tallies.get(point.stratum().name()));
  }

  private void open(PointSum point) {
    if (point == open) {
      return;
    }
    close();
    open = point;
    points.put(point.name(), point);
    if (point.taken()) {
      tally(point).begin(point.name());
    }
  }

  private void close() {
    PointSum last = open;
    if (last != null && last.taken()) {
      last.close(tally(last).end(last.name()));
    }
    open = null;
  }

  /** A rule for edges needs weights; the notes have no map. */
  private void requireEdges(Problems problems) {
    for (Stratum stratum : strata.values()) {
      StratumTally tally = Objects.requireNonNull(tallies.get(stratum.name()));
      if (!stratum.choices().edgeRule().isEmpty() && !tally.edgeRecorded()) {
        problems.add(
            stratum
                .choices()
                .row()
                .missed(
                    "edge_rule",
                    Problem.quote(stratum.choices().edgeRule()),
                    "an edge_weight in at least one row of the stratum in "
                        + NAME
                        + ", also where it is 1"));
      }
    }
  }

  private PointSum point(Row row, String tree) {
    String name = row.required("point", "a name");
    boolean taken = row.oneOf("status", List.of("taken", "not taken")).equals("taken");
    Stratum stratum = strata.get(row.text("stratum"));
    if (stratum == null) {
      throw row.missed(
          "stratum", Problem.quote(row.text("stratum")), "a stratum of " + StandFile.NAME);
    }
    if (!taken && !tree.isEmpty()) {
      throw row.bad("tree", "an empty cell: the point was not taken");
    }
    PointSum point = points.get(name);
    if (point == null) {
      return new PointSum(name, stratum, taken);
    }
    if (point != open) {
      throw row.bad("point", "the rows of a point together, each point once");
    }
    if (point.taken() != taken) {
      throw row.bad("status", "the same status in all rows of a point");
    }
    if (!point.stratum().name().equals(stratum.name())) {
      throw row.bad("stratum", point.stratum().name() + ", as in the other rows of the point");
    }
    if (tree.isEmpty() || point.saidEmpty()) {
      throw row.bad("tree", "one row without a tree where a point is empty, and else none");
    }
    return point;
  }

  private void check(
      TreeKey key,
      Stratum stratum,
      double dbh,
      double distance,
      String to,
      OptionalDouble slope,
      double weight) {
    checked++;
    double level =
        slope.isPresent() ? arithmetic.horizontal(distance, slope.getAsDouble()) : distance;
    double centre = to.equals("face") ? level + dbh / 200 : level;
    double limit = arithmetic.limitingDistance(stratum.factor(), dbh);
    boolean tie = Limits.on(centre, limit);
    boolean in = tie ? stratum.tieIsIn() : centre < limit;
    if (in == weight > 0) {
      return;
    }
    String found =
        key + ", " + units.finely(centre) + " level to the axis, limit " + units.finely(limit);
    if (weight > 0) {
      cautions.add("Trees counted although their distance puts them outside", found);
    } else {
      cautions.add("Trees of weight 0 although their distance puts them inside", found);
    }
  }
}
