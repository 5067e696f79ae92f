package org.mensuration.internal.stand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.mensuration.stand.TallyPlan;

/**
 * What was met while counting and must be said beside the figures. Of many alike a bounded number
 * is kept by name, always the first in order of name, so that the order of points does not show.
 * Not thread-safe.
 */
final class Notices {
  private static final int KEPT = 100;

  final First noDiameter = new First();
  final First noVolume = new First();
  final First noHeight = new First();
  long predicted;
  long leftOut;
  long beyondLimit;
  private final TreeSet<Beyond> beyond = new TreeSet<>(Beyond.ORDER);
  private final Map<String, Long> corrections = new TreeMap<>();

  /** The first tree in order of point name and place of which something was missing. */
  static final class First {
    private String point = "";
    private int tree = -1;

    /** The first tree of a point that lacks it; -1 if none does. */
    void found(String newPoint, int newTree) {
      if (newTree < 0) {
        return;
      }
      // A point is met once, so names do not tie.
      if (tree < 0 || newPoint.compareTo(point) < 0) {
        point = newPoint;
        tree = newTree;
      }
    }

    void merge(First other) {
      found(other.point, other.tree);
    }

    Optional<String> text() {
      return tree < 0 ? Optional.empty() : Optional.of(Notices.tree(point, tree));
    }
  }

  /** A counted tree beyond its limit. */
  private record Beyond(String point, int tree, double distanceM, double limitM) {
    static final Comparator<Beyond> ORDER =
        Comparator.comparing(Beyond::point).thenComparingInt(Beyond::tree);

    String text() {
      return String.format(
          Locale.ROOT,
          "%s: counted, but measured at %.3f m, beyond its limit of %.3f m",
          Notices.tree(point, tree),
          distanceM,
          limitM);
    }
  }

  static String tree(String point, int index) {
    return "point " + point + ", tree " + (index + 1);
  }

  void beyond(String point, int tree, double distanceM, double limitM) {
    beyondLimit++;
    keep(new Beyond(point, tree, distanceM, limitM));
  }

  private void keep(Beyond found) {
    beyond.add(found);
    if (beyond.size() > KEPT) {
      beyond.pollLast();
    }
  }

  void corrected(String name) {
    corrections.merge(name, 1L, Long::sum);
  }

  void merge(Notices other) {
    noDiameter.merge(other.noDiameter);
    noVolume.merge(other.noVolume);
    noHeight.merge(other.noHeight);
    predicted += other.predicted;
    leftOut += other.leftOut;
    beyondLimit += other.beyondLimit;
    for (Beyond found : other.beyond) {
      keep(found);
    }
    other.corrections.forEach((name, number) -> corrections.merge(name, number, Long::sum));
  }

  List<String> text(TallyPlan plan, int points, int beyondEdge, boolean belowZero) {
    List<String> lines = new ArrayList<>(plan.text());
    if (points < 2) {
      lines.add("one point: no standard error and no interval");
    }
    if (beyondEdge > 0) {
      lines.add(
          "points beyond the edge: "
              + beyondEdge
              + " of "
              + points
              + "; figures per area are over the "
              + (points - beyondEdge)
              + " inside, errors and points needed are of all");
    }
    if (belowZero) {
      lines.add(
          "the 95 % interval of basal area reaches below zero: too few points for so uneven counts");
    }
    if (leftOut > 0) {
      lines.add("stems left out by these choices: " + leftOut);
    }
    if (predicted > 0) {
      lines.add("heights from a height curve: " + predicted);
    }
    corrections.forEach((name, number) -> lines.add("sweeps corrected, " + name + ": " + number));
    if (beyondLimit > 0) {
      lines.add("trees counted beyond their limit: " + beyondLimit);
      for (Beyond found : beyond) {
        lines.add(found.text());
      }
    }
    return List.copyOf(lines);
  }
}
