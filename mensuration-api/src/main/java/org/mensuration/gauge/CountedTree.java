package org.mensuration.gauge;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.quantity.Physical;

/**
 * A tree counted at a sample point. Immutable and thread-safe; two trees are equal when their
 * diameters are physically equal, whatever their units, and their weights are the same.
 *
 * @param diameter diameter at breast height; empty if not measured, never zero
 * @param weight 1 for in, 0 for out, 1/2 for a tree at the limit that could not be measured
 * @param recordedEdgeWeight how often the tree counts because of an edge, as recorded; empty if
 *     nothing was recorded, which counts as 1
 * @param detail what else is noted of the tree
 */
public record CountedTree(
    Optional<Quantity<Length>> diameter,
    double weight,
    OptionalDouble recordedEdgeWeight,
    TreeDetail detail) {

  /**
   * Checks the weights; the diameter is checked where it is used.
   *
   * @param diameter diameter at breast height
   * @param weight 0, 1/2 or 1
   * @param recordedEdgeWeight at least 1, or empty
   * @param detail what else is noted
   * @throws IllegalArgumentException if the weight is none of these, or the edge weight is below 1
   *     or not finite
   */
  public CountedTree {
    Objects.requireNonNull(diameter, "diameter");
    Objects.requireNonNull(detail, "detail");
    double edgeWeight = recordedEdgeWeight.orElse(1);
    if (!(weight == 0 || weight == 0.5 || weight == 1)) {
      throw new IllegalArgumentException("weight " + weight + "; allowed 0, 0.5 and 1");
    }
    if (!(edgeWeight >= 1 && edgeWeight < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("edge weight " + edgeWeight + "; allowed from 1");
    }
  }

  /**
   * A tree with a recorded edge weight of which nothing else is noted.
   *
   * @param diameter diameter at breast height
   * @param weight 0, 1/2 or 1
   * @param edgeWeight at least 1
   * @throws IllegalArgumentException if the weight is none of these, or the edge weight is below 1
   *     or not finite
   */
  public CountedTree(Optional<Quantity<Length>> diameter, double weight, double edgeWeight) {
    this(diameter, weight, OptionalDouble.of(edgeWeight), TreeDetail.NONE);
  }

  /**
   * How often the tree counts because of an edge.
   *
   * @return the recorded weight; 1 if none was recorded
   */
  public double edgeWeight() {
    return recordedEdgeWeight.orElse(1);
  }

  /**
   * A tree that is in.
   *
   * @param diameter diameter at breast height
   * @return the tree
   */
  public static CountedTree of(Quantity<Length> diameter) {
    return new CountedTree(Optional.of(diameter), 1, OptionalDouble.empty(), TreeDetail.NONE);
  }

  /**
   * A tree that is in and whose diameter was not measured.
   *
   * @return the tree
   */
  public static CountedTree unmeasured() {
    return new CountedTree(Optional.empty(), 1, OptionalDouble.empty(), TreeDetail.NONE);
  }

  /**
   * The same tree at the limit, where it could not be measured: it counts one half.
   *
   * @return a new tree
   */
  public CountedTree half() {
    return new CountedTree(diameter, 0.5, recordedEdgeWeight, detail);
  }

  /**
   * The same tree found out by measuring: it is on record and does not count.
   *
   * @return a new tree
   */
  public CountedTree out() {
    return new CountedTree(diameter, 0, recordedEdgeWeight, detail);
  }

  /**
   * The same tree with an edge weight.
   *
   * @param newEdgeWeight at least 1, such as 2 for a tree of which the far side lies outside; 1
   *     says that the crew looked
   * @return a new tree
   * @throws IllegalArgumentException if the weight is below 1 or not finite
   */
  public CountedTree withEdgeWeight(double newEdgeWeight) {
    return new CountedTree(diameter, weight, OptionalDouble.of(newEdgeWeight), detail);
  }

  /**
   * The same tree with its measured height.
   *
   * @param height height of the tree, from the ground
   * @return a new tree
   */
  public CountedTree withHeight(Quantity<Length> height) {
    return with(detail.withHeight(height, false));
  }

  /**
   * The same tree with a height read from a height curve, marked as such.
   *
   * @param height height of the tree, from the ground
   * @return a new tree
   */
  public CountedTree withPredictedHeight(Quantity<Length> height) {
    return with(detail.withHeight(height, true));
  }

  /**
   * The same tree with its volume.
   *
   * @param volume volume of the stem
   * @return a new tree
   */
  public CountedTree withVolume(Quantity<Volume> volume) {
    return with(detail.withVolume(volume));
  }

  /**
   * The same tree with its species.
   *
   * @param species name of the species
   * @return a new tree
   */
  public CountedTree ofSpecies(String species) {
    return with(detail.withNames(species, detail.treeClass()));
  }

  /**
   * The same tree with its class or condition by the crew's own key.
   *
   * @param treeClass name of the class
   * @return a new tree
   */
  public CountedTree ofClass(String treeClass) {
    return with(detail.withNames(detail.species(), treeClass));
  }

  /**
   * The same tree as a further stem of a fork or a stool.
   *
   * @param kind what the stem is to its tree
   * @return a new tree
   */
  public CountedTree ofKind(StemKind kind) {
    return with(detail.withState(kind, detail.dead()));
  }

  /**
   * The same tree, dead.
   *
   * @return a new tree
   */
  public CountedTree dead() {
    return with(detail.withState(detail.kind(), true));
  }

  /**
   * The same tree with its distance from the sample point.
   *
   * @param distanceToCentre horizontal distance to the centre of the stem at breast height
   * @return a new tree
   */
  public CountedTree at(Quantity<Length> distanceToCentre) {
    return with(detail.withDistance(distanceToCentre));
  }

  /**
   * The same tree with the slope of its sight, for a gauge that does not allow for slope.
   *
   * @param slope slope of the sight from the eye to the stem
   * @return a new tree
   */
  public CountedTree withSightSlope(Quantity<Angle> slope) {
    return with(detail.withSightSlope(slope));
  }

  private CountedTree with(TreeDetail newDetail) {
    return new CountedTree(diameter, weight, recordedEdgeWeight, newDetail);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CountedTree tree
        && Physical.same(diameter, tree.diameter)
        && weight == tree.weight
        && recordedEdgeWeight.equals(tree.recordedEdgeWeight)
        && detail.equals(tree.detail);
  }

  @Override
  public int hashCode() {
    return Objects.hash(Physical.hash(diameter), weight + 0.0, recordedEdgeWeight, detail);
  }
}
