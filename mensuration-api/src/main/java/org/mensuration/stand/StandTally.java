package org.mensuration.stand;

import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.StemKind;
import org.mensuration.gauge.SweepCorrection;

/**
 * Adds up counted trees point by point, for stands too large to hold. Mutable and <b>not
 * thread-safe</b>: one thread a tally; tallies of several threads are merged. Sums are exact and
 * rounded last, so the estimate is the same to the last bit whatever the order of trees, points and
 * merges. Memory is kept for each point (its name), none for a tree.
 *
 * <p>Whole points are given by {@link #add}. The other calls take plain numbers and make no
 * objects:
 *
 * <pre>{@code
 * tally.begin("17");
 * tally.tree(31.5, 1, 1);
 * tally.height(24.3, false);
 * tally.volume(0.91);
 * tally.tree(28, 0.5, 1);
 * tally.end();
 * }</pre>
 *
 * {@link #height}, {@link #volume} and the other notes belong to the tree given last. A call that
 * throws leaves out what was wrong and keeps the rest; after an error inside a point give the point
 * up by {@link #abandon}.
 */
public interface StandTally {

  /**
   * What is counted and by which choices.
   *
   * @return the plan
   */
  TallyPlan plan();

  /**
   * Adds a point with all its trees. If a tree is refused, nothing of the point is added.
   *
   * @param point the point
   * @throws IllegalArgumentException if a point of this name was given before
   * @throws IllegalStateException if a point is open
   * @throws OutOfDomainException if a value is outside
   */
  void add(CountPoint point);

  /**
   * Opens a point with a full sweep.
   *
   * @param pointId name of the point
   * @throws IllegalArgumentException if the name is blank, or a point of this name was given
   *     before: its trees are scattered, or two points have one name
   * @throws IllegalStateException if a point is open
   */
  default void begin(String pointId) {
    begin(pointId, SweepCorrection.NONE);
  }

  /**
   * Opens a point.
   *
   * @param pointId name of the point
   * @param sweep what the whole sweep is multiplied by
   * @throws IllegalArgumentException if the name is blank, or a point of this name was given before
   * @throws IllegalStateException if a point is open
   */
  void begin(String pointId, SweepCorrection sweep);

  /**
   * Opens a point beyond the edge of the stand, where only trees of the stand are counted.
   *
   * @param pointId name of the point
   * @throws IllegalArgumentException if the name is blank, a point of this name was given before,
   *     or the plan does not name the extended grid
   * @throws IllegalStateException if a point is open
   */
  void beginBeyondEdge(String pointId);

  /**
   * A counted tree.
   *
   * @param diameterCm diameter at breast height in cm, above zero
   * @param weight 1 for in, 1/2 at the limit and not measurable, 0 for out
   * @param edgeWeight how often it counts because of an edge, from 1
   * @throws OutOfDomainException if the diameter is outside
   * @throws IllegalArgumentException if a weight is none of those
   * @throws IllegalStateException if no point is open
   */
  void tree(double diameterCm, double weight, double edgeWeight);

  /**
   * A counted tree without diameter: good for basal area, not for stems.
   *
   * @param weight 1 for in, 1/2 at the limit, 0 for out
   * @param edgeWeight how often it counts because of an edge, from 1
   * @throws IllegalArgumentException if a weight is none of those
   * @throws IllegalStateException if no point is open, or trees are counted on fixed plots
   */
  void unmeasured(double weight, double edgeWeight);

  /**
   * Height of the tree given last.
   *
   * @param heightM height in m, above zero
   * @param predicted true if it was read from a height curve
   * @throws IllegalArgumentException if the height is outside
   * @throws IllegalStateException if no tree was given
   */
  void height(double heightM, boolean predicted);

  /**
   * Volume of the tree given last.
   *
   * @param volumeM3 volume in m³, from zero
   * @throws IllegalArgumentException if the volume is outside
   * @throws IllegalStateException if no tree was given
   */
  void volume(double volumeM3);

  /**
   * Species of the tree given last.
   *
   * @param species a number from {@link #speciesNumber}
   * @throws IllegalArgumentException if there is no such number
   * @throws IllegalStateException if no tree was given
   */
  void species(int species);

  /**
   * Class or condition of the tree given last, by the crew's own key.
   *
   * @param treeClass a number from {@link #treeClassNumber}
   * @throws IllegalArgumentException if there is no such number
   * @throws IllegalStateException if no tree was given
   */
  void treeClass(int treeClass);

  /**
   * What the tree given last is; it counts if the plan's choices say so.
   *
   * @param kind what the stem is to its tree
   * @param dead true for a dead tree
   * @throws IllegalStateException if no tree was given
   */
  void stem(StemKind kind, boolean dead);

  /**
   * Horizontal distance of the tree given last; a counted tree beyond its limit is reported.
   *
   * @param distanceM distance to the centre of the stem in m, not negative
   * @throws IllegalArgumentException if the distance is outside
   * @throws IllegalStateException if no tree was given
   */
  void distance(double distanceM);

  /**
   * Slope of the sight to the tree given last, for a gauge that does not allow for slope.
   *
   * @param slopeDeg slope in degrees, between −90 and 90
   * @throws OutOfDomainException if the slope is outside
   * @throws IllegalStateException if no tree was given, or the gauge allows for slope
   */
  void sightSlope(double slopeDeg);

  /**
   * The number by which a species is given to {@link #species}.
   *
   * @param name name of the species
   * @return its number in this tally
   */
  int speciesNumber(String name);

  /**
   * The number by which a class of trees is given to {@link #treeClass}.
   *
   * @param name name of the class
   * @return its number in this tally
   */
  int treeClassNumber(String name);

  /**
   * Closes the point.
   *
   * @throws IllegalStateException if no point is open, or a tree lacks the slope of its sight
   * @throws ArithmeticException if a sum overflows
   */
  void end();

  /** Gives up the open point, if any: nothing of it is added. */
  void abandon();

  /**
   * Adds what another tally holds; the other is not changed.
   *
   * @param other a tally of the same plan from the same front door
   * @throws IllegalArgumentException if the plan differs, or both hold a point of the same name
   * @throws IllegalStateException if one of them has an open point
   */
  void merge(StandTally other);

  /**
   * The estimate of the points so far. The tally may go on.
   *
   * @return the estimate
   * @throws IllegalArgumentException if there is no point
   * @throws IllegalStateException if a point is open, or the plan asks for an edge correction and
   *     no tree carries a recorded edge weight or, on an extended grid, no point lies beyond the
   *     edge
   */
  StandEstimate estimate();
}
