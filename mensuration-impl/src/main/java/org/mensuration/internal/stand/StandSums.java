package org.mensuration.internal.stand;

import org.jspecify.annotations.Nullable;
import org.mensuration.gauge.StemKind;
import org.mensuration.gauge.SweepCorrection;
import org.mensuration.internal.statistics.ExactSum;
import org.mensuration.internal.statistics.PairSum;
import org.mensuration.kernel.ClassRounding;
import org.mensuration.kernel.Limits;
import org.mensuration.kernel.StandFigures;
import org.mensuration.stand.DiameterUse;
import org.mensuration.stand.TallyPlan;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;

/** The sums of a stand, fed point by point. Not thread-safe. */
final class StandSums {
  private final TallyPlan plan;
  private final TreeWeights weights;
  private final double smallestCm;
  private final boolean midCentimetre;
  final PointVariable basalArea = new PointVariable();
  final PointVariable stems = new PointVariable();
  final PointVariable volume = new PointVariable();

  /** Plain sums over all trees; the open point's part is added when it closes. */
  final ExactSum diameters = ExactSum.ofNumbers();

  final ExactSum heights = ExactSum.ofNumbers();
  final ExactSum densities = ExactSum.ofNumbers();
  private final PairSum diametersHere = new PairSum();
  private final PairSum heightsHere = new PairSum();
  private final PairSum densitiesHere = new PairSum();
  final @Nullable TableCells cells;
  final Notices notices = new Notices();

  /** Per tree of the open point: its weight (0 if it does not count), diameter and tree factor. */
  private double[] weight = new double[0];

  private double[] diameter = new double[0];
  private double[] factor = new double[0];
  private int[] diameterClass = new int[0];

  /** The first tree of the open point that lacks something, or -1. */
  private int noDiameter;

  private int noVolume;
  private int noHeight;

  StandSums(TallyPlan plan, TreeWeights weights) {
    this.plan = plan;
    this.weights = weights;
    this.smallestCm =
        plan.smallestDiameter().isPresent()
            ? Measures.in(plan.smallestDiameter().get(), ForestUnits.CENTIMETRE)
            : 0;
    this.midCentimetre = plan.diameters() == DiameterUse.MID_CENTIMETRE;
    this.cells = plan.classes().isPresent() ? new TableCells(plan.classes().get()) : null;
  }

  /** Adds a point, or throws and adds nothing. */
  void addPoint(String id, SweepCorrection sweep, boolean outside, PointTrees trees) {
    if (weight.length < trees.diameter.length) {
      weight = new double[trees.diameter.length];
      diameter = new double[trees.diameter.length];
      factor = new double[trees.diameter.length];
      diameterClass = new int[trees.diameter.length];
    }
    try {
      for (int i = 0; i < trees.size; i++) {
        weight[i] = weightOf(id, sweep, trees, i);
        if (weight[i] > 0) {
          addTree(trees, i);
        }
      }
      close(outside, basalArea.here(), stems.here(), volume.here());
    } finally {
      basalArea.clear();
      stems.clear();
      volume.clear();
      diametersHere.clear();
      heightsHere.clear();
      densitiesHere.clear();
    }
    noDiameter = -1;
    noVolume = -1;
    noHeight = -1;
    for (int i = trees.size - 1; i >= 0; i--) {
      if (weight[i] > 0) {
        note(id, trees, i);
      } else if (trees.weight[i] > 0) {
        notices.leftOut++;
      }
    }
    notices.noDiameter.found(id, noDiameter);
    notices.noVolume.found(id, noVolume);
    notices.noHeight.found(id, noHeight);
    if (sweep.factor() > 1) {
      notices.corrected(sweep.name());
    }
  }

  private void close(boolean outside, double basalHere, double stemsHere, double volumeHere) {
    diametersHere.addTo(diameters);
    heightsHere.addTo(heights);
    densitiesHere.addTo(densities);
    basalArea.close(basalHere, outside);
    stems.close(stemsHere, outside);
    volume.close(volumeHere, outside);
  }

  private double weightOf(String id, SweepCorrection sweep, PointTrees trees, int i) {
    if (!(trees.weight[i] > 0) || !counts(trees, i)) {
      return 0;
    }
    double known = trees.weight[i] * trees.edgeWeight[i] * sweep.factor();
    if (!weights.needsSlope()) {
      return known;
    }
    if (trees.slope[i] < PointTrees.NO_SLOPE) {
      return known * weights.ofSlope(trees.slope[i]);
    }
    if (sweep.factor() > 1) {
      return known;
    }
    throw new IllegalStateException(
        Notices.tree(id, i)
            + ": the gauge does not allow for slope; give the slope of the sight (0 if level) or"
            + " correct the whole sweep");
  }

  private boolean counts(PointTrees trees, int i) {
    boolean plain = trees.kind[i] == StemKind.SINGLE && !trees.dead[i];
    if (!plain && !plan.choices().counts(trees.kind[i], trees.dead[i])) {
      return false;
    }
    double noted = trees.diameter[i];
    if (!(noted > 0)) {
      return true;
    }
    if (!Limits.reaches(noted, smallestCm)) {
      return false;
    }
    diameter[i] = midCentimetre ? ClassRounding.middle(noted, 1, 1) : noted;
    factor[i] = weights.stemsPerHectare(diameter[i]);
    diameterClass[i] = cells == null ? 0 : cells.classOf(diameter[i]);
    return factor[i] > 0;
  }

  private void addTree(PointTrees trees, int i) {
    double w = weight[i];
    boolean measured = trees.diameter[i] > 0;
    double share = measured ? weights.basalArea(diameter[i], factor[i]) : 1;
    basalArea.add(w * share);
    if (trees.height[i] > 0) {
      heightsHere.add(w * share * trees.height[i]);
    }
    if (!measured) {
      return;
    }
    double expansion = w * factor[i];
    stems.add(expansion);
    diametersHere.add(expansion * diameter[i]);
    if (trees.volume[i] > 0) {
      volume.add(expansion * trees.volume[i]);
    }
    if (plan.densityBySummation()) {
      densitiesHere.add(StandFigures.densityIndex(expansion, diameter[i]));
    }
  }

  /** What is said of a counted tree once its point is in. */
  private void note(String id, PointTrees trees, int i) {
    boolean measured = trees.diameter[i] > 0;
    if (!measured) {
      noDiameter = i;
    }
    if (!(measured && trees.volume[i] >= 0)) {
      noVolume = i;
    }
    if (!(trees.height[i] > 0)) {
      noHeight = i;
    } else if (trees.predicted[i]) {
      notices.predicted++;
    }
    if (measured && trees.distance[i] >= 0) {
      double limit = weights.limit(diameter[i]);
      if (!Limits.keepsTo(trees.distance[i], limit)) {
        notices.beyond(id, i, trees.distance[i], limit);
      }
    }
    if (cells != null && measured) {
      TableCells.Cell cell = cells.cell(trees.group[i], diameterClass[i]);
      double expansion = weight[i] * factor[i];
      cell.count.add(weight[i]);
      cell.basalArea.add(weight[i] * weights.basalArea(diameter[i], factor[i]));
      cell.stems.add(expansion);
      if (trees.volume[i] > 0) {
        cell.volume.add(expansion * trees.volume[i]);
      }
    }
  }

  void merge(StandSums other, int[] groupHere) {
    basalArea.merge(other.basalArea);
    stems.merge(other.stems);
    volume.merge(other.volume);
    diameters.add(other.diameters);
    heights.add(other.heights);
    densities.add(other.densities);
    if (cells != null && other.cells != null) {
      cells.merge(other.cells, groupHere);
    }
    notices.merge(other.notices);
  }

  /** Refuses points of an extended grid all of which lie on one side of the edge. */
  void requireExtended() {
    int beyond = basalArea.pointsBeyondEdge();
    if (beyond == 0) {
      throw new IllegalStateException(
          "extended grid is asked for, but no point lies beyond the edge; give the points there too,"
              + " also those from which no tree is in");
    }
    if (beyond == basalArea.points()) {
      throw new IllegalStateException(
          "all points lie beyond the edge; an extended grid needs points inside");
    }
  }

  CountEstimate estimate(GroupNames groups) {
    return CountEstimate.of(plan, weights.basalAreaUnit(), this, groups);
  }
}
