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
import org.mensuration.gauge.SweepCorrection;

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
  static final List<String> OPTIONAL =
      List.of(
          "species",
          "condition",
          "height_m",
          "critical_height_m",
          "volume_m3",
          MeasureNotes.COLUMN,
          SweepNotes.COLUMN,
          "remark");

  private final Map<String, Stratum> strata;
  private final Set<TreeKey> measured;
  private final Cautions cautions;
  private final LimitCheck limits;
  private final MeasureNotes measures;
  private final CriticalHeights critical;
  private final HeightNotes heights;
  private final Map<String, PointSum> points = new LinkedHashMap<>();
  private final Map<String, StratumTally> tallies = new LinkedHashMap<>();
  private final Map<TreeKey, OptionalDouble> diameters = new HashMap<>();
  private @Nullable PointSum open;

  private PointFile(
      Arithmetic arithmetic,
      Map<String, Stratum> strata,
      Set<TreeKey> measured,
      Cautions cautions,
      PrintUnits units,
      HeightNotes heights) {
    this.strata = strata;
    this.heights = heights;
    strata.forEach((name, stratum) -> tallies.put(name, new StratumTally(stratum)));
    this.measured = measured;
    this.cautions = cautions;
    this.limits = new LimitCheck(arithmetic, cautions, units);
    this.measures = new MeasureNotes(cautions);
    this.critical = new CriticalHeights(arithmetic);
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
    EdgeNotes.require(strata.values(), file.tallies, problems);
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
    return limits.checked();
  }

  /** Trees and points that were measured beside the count. */
  MeasureNotes measures() {
    return measures;
  }

  /** Volumes from critical heights. */
  CriticalHeights critical() {
    return critical;
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
    OptionalDouble centre = limits.centre(row, dbh);
    OptionalDouble height = row.number("height_m", Domain.above(0), "metres above 0, or empty");
    OptionalDouble filling =
        row.number("critical_height_m", Domain.atLeast(0), "metres from 0, or empty");
    OptionalDouble volume =
        row.number("volume_m3", Domain.above(0), "cubic metres above 0, or empty");
    PointSum point = point(row, tree);
    if (tree.isEmpty()) {
      if (dbh.isPresent()
          || !row.text("weight").isEmpty()
          || centre.isPresent()
          || volume.isPresent()
          || filling.isPresent()
          || row.text(MeasureNotes.COLUMN).equals("tree")) {
        throw row.bad("tree", "a name, since the row has figures of a tree");
      }
      point.sayEmpty();
      open(point);
      return;
    }
    if (height.isPresent() && !(height.getAsDouble() > point.stratum().breastHeight())) {
      throw row.bad("height_m", "a height above breast height");
    }
    if (height.isPresent() && filling.orElse(0) > height.getAsDouble()) {
      throw row.bad(
          "critical_height_m", "a height on the stem, which ends at " + height.getAsDouble());
    }
    SweepNotes.check(row, point.sweep(), edge);
    EdgeNotes.check(row, point.stratum(), edge, filling);
    var key = new TreeKey(point.name(), tree);
    boolean isMeasured = measured.contains(key);
    if (isMeasured && diameters.containsKey(key)) {
      throw row.bad("tree", "each tree of a point once");
    }
    boolean dead = row.text("condition").toLowerCase(Locale.ROOT).equals("dead");
    var counted =
        new CountedRow(row, key, point.stratum(), dbh, weight, edge, dead, volume, isMeasured);
    measures.check(counted);
    limits.refuse(counted, centre);
    open(point);
    point.meet();
    if (isMeasured) {
      diameters.put(key, dbh);
    }
    if (counted.belowMinimum()) {
      cautions.add("Trees below the smallest diameter, left out of the count", key.toString());
      return;
    }
    if (dead && weight > 0) {
      cautions.add(
          counted.counts()
              ? "Dead trees, in basal area and stems with the living"
              : "Dead trees, left out as the notes say",
          key.toString());
    }
    Uncommon.look(cautions, key, dbh, height);
    limits.look(counted, centre);
    measures.add(counted);
    critical.add(counted, filling, point.sweep().factor());
    StratumTally tally = tally(point);
    if (!row.text("edge_weight").isEmpty()) {
      tally.recordEdge();
    }
    String species = row.text("species");
    tally.tree(dbh, weight, edge, species, dead, heights.of(point.stratum(), species, dbh, height));
    if (!dead || point.stratum().choices().dead()) {
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
    measures.open(point);
    if (point.taken()) {
      tally(point).begin(point);
      if (point.sweep().factor() > 1) {
        tally(point).recordEdge();
      }
    }
  }

  private void close() {
    PointSum last = open;
    if (last != null && last.taken()) {
      last.close(tally(last).end(last));
      critical.close(last.stratum());
    }
    open = null;
  }

  private PointSum point(Row row, String tree) {
    String name = row.required("point", "a name");
    String status = row.oneOf("status", List.of("taken", "not taken", EdgeNotes.OUTSIDE));
    boolean outside = status.equals(EdgeNotes.OUTSIDE);
    boolean taken = outside || status.equals("taken");
    Stratum stratum = strata.get(row.text("stratum"));
    if (stratum == null) {
      throw row.missed(
          "stratum", Problem.quote(row.text("stratum")), "a stratum of " + StandFile.NAME);
    }
    if (!taken && !tree.isEmpty()) {
      throw row.bad("tree", "an empty cell: the point was not taken");
    }
    SweepCorrection sweep = SweepNotes.of(row);
    EdgeNotes.checkPlace(row, stratum, outside, sweep);
    boolean whole = row.oneOf(MeasureNotes.COLUMN, MeasureNotes.WORDS).equals("point");
    PointSum point = points.get(name);
    if (point == null) {
      return new PointSum(name, stratum, taken, outside, sweep, whole);
    }
    if (point != open) {
      throw row.bad("point", "the rows of a point together, each point once");
    }
    if (point.taken() != taken || point.outside() != outside) {
      throw row.bad("status", "the same status in all rows of a point");
    }
    if (!point.stratum().name().equals(stratum.name())) {
      throw row.bad("stratum", point.stratum().name() + ", as in the other rows of the point");
    }
    if (!point.sweep().equals(sweep)) {
      throw row.bad(SweepNotes.COLUMN, "the same sweep in all rows of a point");
    }
    if (point.measured() != whole) {
      throw row.bad(MeasureNotes.COLUMN, "point in all rows of a measured point, and else in none");
    }
    if (tree.isEmpty() || point.saidEmpty()) {
      throw row.bad("tree", "one row without a tree where a point is empty, and else none");
    }
    return point;
  }
}
