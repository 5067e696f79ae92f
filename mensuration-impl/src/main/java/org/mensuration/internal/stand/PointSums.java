package org.mensuration.internal.stand;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.internal.catalogue.CountFormulas;
import org.mensuration.internal.gauge.FactorGauge;
import org.mensuration.internal.statistics.ExactMoments;

/** Adds up counts point by point; nothing is kept of a tree. Not thread-safe. */
public final class PointSums {
  private final FactorGauge gauge;
  private final Set<String> ids = new HashSet<>();
  private final ExactMoments basalArea = new ExactMoments();
  private final ExactMoments stems = new ExactMoments();
  private Optional<String> unmeasured = Optional.empty();

  /**
   * Starts without points.
   *
   * @param gauge the gauge that counts
   */
  public PointSums(FactorGauge gauge) {
    this.gauge = gauge;
  }

  /**
   * Adds a point.
   *
   * @param point the point
   * @throws IllegalArgumentException if a point of this name was added before
   */
  public void add(CountPoint point) {
    if (!ids.add(point.id())) {
      throw new IllegalArgumentException(
          "point " + point.id() + " is given twice; put its trees into one point");
    }
    double count = 0;
    double stemsHere = 0;
    List<CountedTree> trees = point.trees();
    for (int i = 0; i < trees.size(); i++) {
      CountedTree tree = trees.get(i);
      double weight = tree.weight() * tree.edgeWeight();
      if (weight > 0) {
        count += weight;
        stemsHere += weight * stemsOf(point, i);
      }
    }
    basalArea.add(CountFormulas.POINT_BASAL_AREA.value(gauge.metric(), count));
    stems.add(stemsHere);
  }

  private double stemsOf(CountPoint point, int tree) {
    CountedTree counted = point.trees().get(tree);
    if (counted.diameter().isPresent()) {
      return gauge.stemsPerHectare(counted.diameter().get());
    }
    if (!unmeasured.isPresent()) {
      unmeasured = Optional.of("point " + point.id() + ", tree " + (tree + 1));
    }
    return 0;
  }

  /**
   * The estimate.
   *
   * @return what the points say
   * @throws IllegalArgumentException if there is no point
   */
  public CountEstimate estimate() {
    if (ids.isEmpty()) {
      throw new IllegalArgumentException(
          "no points: a stand needs at least one point; a point without trees is a point too");
    }
    return CountEstimate.of(gauge, basalArea, stems, unmeasured);
  }
}
