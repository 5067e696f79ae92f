package org.mensuration.internal.stand;

import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.edge.EdgeRule;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.gauge.StemKind;
import org.mensuration.gauge.SweepCorrection;
import org.mensuration.gauge.TreeDetail;
import org.mensuration.internal.catalogue.GaugeDeviceFormulas;
import org.mensuration.internal.catalogue.GaugeDistanceFormulas;
import org.mensuration.stand.StandEstimate;
import org.mensuration.stand.StandTally;
import org.mensuration.stand.TableGroup;
import org.mensuration.stand.TallyPlan;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.UnitReader;

/** The tally of a stand on exact sums. Not thread-safe. */
public final class ExactStandTally implements StandTally {
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Volume> CUBIC_METRES = UnitReader.in(ForestUnits.CUBIC_METRE);
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);

  private static final String LIVING = "living";
  private static final String DEAD = "dead";

  private final TallyPlan plan;
  private final TreeWeights weights;
  private final PointTrees trees = new PointTrees();
  private final StandSums sums;
  private final TableGroup group;
  private final GroupNames groups;
  private PointNames ids = new PointNames();
  private String openId = "";
  private SweepCorrection openSweep = SweepCorrection.NONE;
  private boolean openOutside;
  private boolean open;

  /** Whether a counted tree carried a recorded edge weight, and whether one came without. */
  private boolean edgeRecorded;

  private boolean edgeUnrecorded;

  private ExactStandTally(TallyPlan plan) {
    this.plan = plan;
    this.group = plan.group();
    this.groups = new GroupNames(group == TableGroup.CONDITION ? LIVING : "");
    this.weights = TreeWeights.of(plan.selection());
    this.sums = new StandSums(plan, weights);
  }

  /**
   * A tally without points.
   *
   * @param plan what is counted and by which choices
   * @return the tally
   */
  public static ExactStandTally of(TallyPlan plan) {
    return new ExactStandTally(plan);
  }

  @Override
  public TallyPlan plan() {
    return plan;
  }

  @Override
  public void add(CountPoint point) {
    open(point.id(), point.sweep(), point.outside());
    boolean recorded = false;
    boolean unrecorded = false;
    boolean done = false;
    try {
      List<CountedTree> counted = point.trees();
      for (int i = 0; i < counted.size(); i++) {
        CountedTree one = counted.get(i);
        tree(one);
        boolean edge = one.recordedEdgeWeight().isPresent();
        recorded |= edge;
        unrecorded |= !edge && one.weight() > 0;
      }
      end();
      edgeRecorded |= recorded;
      edgeUnrecorded |= unrecorded;
      done = true;
    } finally {
      if (!done) {
        abandon();
      }
    }
  }

  private void tree(CountedTree tree) {
    if (tree.diameter().isPresent()) {
      tree(CENTIMETRES.read(tree.diameter().get()), tree.weight(), tree.edgeWeight());
    } else {
      unmeasured(tree.weight(), tree.edgeWeight());
    }
    TreeDetail detail = tree.detail();
    detail.height().ifPresent(h -> height(METRES.read(h), detail.heightPredicted()));
    detail.volume().ifPresent(v -> volume(CUBIC_METRES.read(v)));
    detail.distanceToCentre().ifPresent(d -> distance(METRES.read(d)));
    if (weights.needsSlope()) {
      detail.sightSlope().ifPresent(s -> sightSlope(DEGREES.read(s)));
    }
    stem(detail.kind(), detail.dead());
    if (group != TableGroup.CONDITION) {
      group(
          groups.number(group == TableGroup.SPECIES ? detail.species() : detail.treeClass()),
          group);
    }
  }

  @Override
  public void begin(String pointId, SweepCorrection sweep) {
    open(pointId, sweep, false);
    edgeRecorded = true; // here every tree comes with its edge weight
  }

  @Override
  public void beginBeyondEdge(String pointId) {
    open(pointId, SweepCorrection.NONE, true);
  }

  private void open(String pointId, SweepCorrection sweep, boolean outside) {
    if (open) {
      throw new IllegalStateException("point " + openId + " is still open; end it first");
    }
    if (pointId.trim().isEmpty()) {
      throw new IllegalArgumentException("a point needs a name; its id is blank");
    }
    if (ids.contains(pointId)) {
      throw twice(pointId);
    }
    openId = pointId;
    BeyondEdge.require(plan, pointId, outside);
    openSweep = sweep;
    openOutside = outside;
    open = true;
  }

  @Override
  public void tree(double diameterCm, double weight, double edgeWeight) {
    if (!(diameterCm > 0 && diameterCm < Double.POSITIVE_INFINITY)) {
      throw new OutOfDomainException(
          GaugeDistanceFormulas.TREE_FACTOR, "diameter", diameterCm, "cm", "(0, ∞)");
    }
    row(diameterCm, weight, edgeWeight);
  }

  @Override
  public void unmeasured(double weight, double edgeWeight) {
    if (!weights.countsUnmeasured()) {
      throw new IllegalStateException(
          "point " + openId + ": a tree without diameter says nothing on fixed plots");
    }
    row(PointTrees.MISSING, weight, edgeWeight);
  }

  private void row(double diameterCm, double weight, double edgeWeight) {
    if (!open) {
      throw new IllegalStateException("no point is open; begin one first");
    }
    if (!(weight == 1 || weight == 0.5 || weight == 0)) {
      throw new IllegalArgumentException(
          "point " + openId + ": weight " + weight + "; allowed 0, 0.5 and 1");
    }
    if (!(edgeWeight >= 1 && edgeWeight < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "point " + openId + ": edge weight " + edgeWeight + "; allowed from 1");
    }
    if (edgeWeight > 1 && plan.edges() == EdgeRule.EXTENDED_GRID) {
      throw new IllegalArgumentException(
          "point "
              + openId
              + ": edge weight "
              + edgeWeight
              + "; on an extended grid a tree counts once from each point that sees it");
    }
    trees.add(diameterCm, weight, edgeWeight);
  }

  @Override
  public void height(double heightM, boolean predicted) {
    require(heightM > 0 && heightM < Double.POSITIVE_INFINITY, "height", heightM, "m, above 0");
    int last = trees.last();
    trees.height[last] = heightM;
    trees.predicted[last] = predicted;
  }

  @Override
  public void volume(double volumeM3) {
    require(volumeM3 >= 0 && volumeM3 < Double.POSITIVE_INFINITY, "volume", volumeM3, "m³, from 0");
    trees.volume[trees.last()] = volumeM3;
  }

  @Override
  public void species(int number) {
    group(number, TableGroup.SPECIES);
  }

  @Override
  public void treeClass(int number) {
    group(number, TableGroup.TREE_CLASS);
  }

  private void group(int number, TableGroup noted) {
    if (!(number >= 0 && number < groups.size())) {
      throw new IllegalArgumentException(
          "point "
              + openId
              + ": "
              + noted.text()
              + " number "
              + number
              + "; allowed: a number that this tally gave, below "
              + groups.size());
    }
    int last = trees.last();
    if (noted == group) {
      trees.group[last] = number;
    }
  }

  @Override
  public void stem(StemKind kind, boolean dead) {
    int last = trees.last();
    trees.kind[last] = kind;
    trees.dead[last] = dead;
    if (group == TableGroup.CONDITION) {
      trees.group[last] = groups.number(dead ? DEAD : LIVING);
    }
  }

  @Override
  public void distance(double distanceM) {
    require(
        distanceM >= 0 && distanceM < Double.POSITIVE_INFINITY, "distance", distanceM, "m, from 0");
    trees.distance[trees.last()] = distanceM;
  }

  @Override
  public void sightSlope(double slopeDeg) {
    if (!weights.needsSlope()) {
      throw new IllegalStateException("the gauge allows for slope; a sight needs no correction");
    }
    if (!(slopeDeg > -90 && slopeDeg < 90)) {
      throw new OutOfDomainException(
          GaugeDeviceFormulas.FACTOR_ALONG_SIGHT, "slope", slopeDeg, "deg", "(-90, 90)");
    }
    trees.slope[trees.last()] = slopeDeg;
  }

  private static IllegalArgumentException twice(String pointId) {
    return new IllegalArgumentException(
        "point "
            + pointId
            + " is given twice, or its trees are scattered; put its trees into one point");
  }

  private void require(boolean allowed, String what, double value, String wanted) {
    if (!allowed) {
      throw new IllegalArgumentException(
          "point " + openId + ": " + what + " " + value + "; allowed: " + wanted);
    }
  }

  @Override
  public int speciesNumber(String name) {
    return groups.number(name);
  }

  @Override
  public int treeClassNumber(String name) {
    return groups.number(name);
  }

  @Override
  public void end() {
    if (!open) {
      throw new IllegalStateException("no point is open; begin one first");
    }
    sums.addPoint(openId, openSweep, openOutside, trees);
    ids.add(openId);
    abandon();
  }

  @Override
  public void abandon() {
    trees.clear();
    open = false;
  }

  @Override
  public void merge(StandTally other) {
    if (!(other instanceof ExactStandTally that) || !plan.equals(that.plan)) {
      throw new IllegalArgumentException("only tallies of the same plan can be merged");
    }
    if (this == that || open || that.open) {
      throw new IllegalStateException(
          "a tally with an open point cannot be merged, nor with itself");
    }
    // The smaller set goes into the larger one: merging costs little.
    boolean larger = ids.size() >= that.ids.size();
    PointNames into = larger ? ids : that.ids.copy();
    Optional<String> twice = into.addAll(larger ? that.ids : ids);
    if (twice.isPresent()) {
      throw twice(twice.get());
    }
    ids = into;
    edgeRecorded |= that.edgeRecorded;
    edgeUnrecorded |= that.edgeUnrecorded;
    sums.merge(that.sums, groups.numbersOf(that.groups));
  }

  /**
   * Whether no point was added yet.
   *
   * @return true without points
   */
  boolean isEmpty() {
    return ids.size() == 0;
  }

  @Override
  public StandEstimate estimate() {
    if (open) {
      throw new IllegalStateException("point " + openId + " is still open; end it first");
    }
    if (ids.size() == 0) {
      throw new IllegalArgumentException(
          "no points: a stand needs at least one point; a point without trees is a point too");
    }
    if (plan.edges() == EdgeRule.EXTENDED_GRID) {
      sums.requireExtended();
    } else if (plan.edges() != EdgeRule.NONE && edgeUnrecorded && !edgeRecorded) {
      throw new IllegalStateException(
          plan.edges().words()
              + " is asked for, but no tree carries a recorded edge weight and there is no"
              + " boundary; record weights (1 away from edges), or count on a map with the"
              + " boundary");
    }
    return figures();
  }

  /** The estimate of points of which only the whole stand can say whether edges were seen to. */
  StandEstimate figures() {
    return sums.estimate(groups);
  }
}
