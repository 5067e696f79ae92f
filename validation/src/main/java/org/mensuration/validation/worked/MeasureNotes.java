package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.mensuration.gauge.CountedTree;
import org.mensuration.gauge.SweepCorrection;

/**
 * The trees that were measured beside the count: picked by the second factor, or all trees of a
 * measured point. Only these are kept. Not thread-safe.
 */
final class MeasureNotes {
  static final String COLUMN = "measure";
  static final List<String> WORDS = List.of("", "tree", "point");

  private final Cautions cautions;
  private SweepCorrection sweep = SweepCorrection.NONE;
  private final Map<String, List<Noted>> trees = new LinkedHashMap<>();
  private final Map<String, List<NotedPoint>> points = new LinkedHashMap<>();

  MeasureNotes(Cautions cautions) {
    this.cautions = cautions;
  }

  /**
   * A measured tree. Immutable and thread-safe.
   *
   * @param key point and tree
   * @param tree diameter and weights
   * @param volume cubic metres as noted; empty if the stem gives it
   */
  record Noted(TreeKey key, CountedTree tree, OptionalDouble volume) {}

  /**
   * A point of which every counted tree was measured. Its list grows while the point is read.
   *
   * @param name name of the point
   * @param sweep what its sweep is multiplied by
   * @param trees the counted trees
   */
  record NotedPoint(String name, SweepCorrection sweep, List<Noted> trees) {}

  /** Refuses a row that cannot be; called before anything of the row is kept. */
  void check(CountedRow tree) {
    String measure = tree.measure();
    Row row = tree.row();
    if (tree.volume().isPresent() && tree.stem()) {
      throw row.bad("volume_m3", "an empty cell: " + StemFile.NAME + " has the stem of this tree");
    }
    if (measure.isEmpty()) {
      return;
    }
    OptionalDouble second = tree.stratum().choices().measureFactor();
    if (measure.equals("tree")) {
      if (second.isEmpty()) {
        throw row.bad(COLUMN, "a measure_factor_m2_per_ha of the stratum in " + StandFile.NAME);
      }
      if (tree.weight() < 1) {
        throw row.bad(
            COLUMN,
            "an empty cell: a tree in by the larger factor is well within the smaller one, and"
                + " this one has the weight "
                + row.text("weight"));
      }
      if (!tree.counts()) {
        throw row.bad(COLUMN, "an empty cell: this tree is left out of the count");
      }
    } else if (second.isPresent()) {
      throw row.bad(COLUMN, "tree or an empty cell: the stratum has a second factor");
    }
    if (tree.counts()) {
      if (tree.dbh().isEmpty()) {
        throw row.bad("dbh_cm", "the diameter of a measured tree");
      }
      if (tree.volume().isEmpty() && !tree.stem()) {
        throw row.bad(
            "volume_m3", "the volume of a measured tree, or its stem in " + StemFile.NAME);
      }
    }
  }

  /** A measured point, be it empty. */
  void open(PointSum point) {
    sweep = point.sweep();
    if (point.measured() && point.taken()) {
      points
          .computeIfAbsent(point.stratum().name(), s -> new ArrayList<>())
          .add(new NotedPoint(point.name(), point.sweep(), new ArrayList<>()));
    }
  }

  /** Keeps a checked tree of the open point. */
  void add(CountedRow tree) {
    String stratum = tree.stratum().name();
    if (tree.measure().isEmpty()) {
      if (tree.volume().isPresent()) {
        cautions.add(
            "Volumes of trees that are not marked as measured, not used", tree.key().toString());
      }
      return;
    }
    if (!tree.counts()) {
      return;
    }
    var noted = new Noted(tree.key(), tree.counted(), tree.volume());
    if (tree.measure().equals("tree")) {
      if (sweep.factor() > 1) {
        // Picked by itself, the tree takes the weight of its sweep along.
        CountedTree swept = tree.counted().withEdgeWeight(sweep.factor());
        noted = new Noted(tree.key(), swept, tree.volume());
      }
      trees.computeIfAbsent(stratum, s -> new ArrayList<>()).add(noted);
    } else {
      List<NotedPoint> open = points.getOrDefault(stratum, List.of());
      open.get(open.size() - 1).trees().add(noted);
    }
  }

  /** The measure trees of a stratum. */
  List<Noted> trees(Stratum stratum) {
    return List.copyOf(trees.getOrDefault(stratum.name(), List.of()));
  }

  /** The measured points of a stratum. */
  List<NotedPoint> points(Stratum stratum) {
    return List.copyOf(points.getOrDefault(stratum.name(), List.of()));
  }
}
