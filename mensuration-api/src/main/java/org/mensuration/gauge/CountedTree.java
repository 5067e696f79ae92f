package org.mensuration.gauge;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;

/**
 * A tree counted at a sample point. Immutable and thread-safe; two trees are equal when their
 * diameters are physically equal, whatever their units, and their weights are the same.
 *
 * @param diameter diameter at breast height; empty if not measured, never zero
 * @param weight 1 for in, 0 for out, 1/2 for a tree at the limit that could not be measured
 * @param edgeWeight how often the tree counts because of an edge; 1 away from edges
 */
public record CountedTree(Optional<Quantity<Length>> diameter, double weight, double edgeWeight) {

  /**
   * Checks the weights; the diameter is checked where it is used.
   *
   * @param diameter diameter at breast height
   * @param weight 0, 1/2 or 1
   * @param edgeWeight at least 1
   * @throws IllegalArgumentException if the weight is none of these, or the edge weight is below 1
   *     or not finite
   */
  public CountedTree {
    Objects.requireNonNull(diameter, "diameter");
    if (!(weight == 0 || weight == 0.5 || weight == 1)) {
      throw new IllegalArgumentException("weight " + weight + "; allowed 0, 0.5 and 1");
    }
    if (!(edgeWeight >= 1 && edgeWeight < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("edge weight " + edgeWeight + "; allowed from 1");
    }
  }

  /**
   * A tree that is in.
   *
   * @param diameter diameter at breast height
   * @return the tree
   */
  public static CountedTree of(Quantity<Length> diameter) {
    return new CountedTree(Optional.of(diameter), 1, 1);
  }

  /**
   * A tree that is in and whose diameter was not measured.
   *
   * @return the tree
   */
  public static CountedTree unmeasured() {
    return new CountedTree(Optional.empty(), 1, 1);
  }

  /**
   * The same tree at the limit, where it could not be measured: it counts one half.
   *
   * @return a new tree
   */
  public CountedTree half() {
    return new CountedTree(diameter, 0.5, edgeWeight);
  }

  /**
   * The same tree found out by measuring: it is on record and does not count.
   *
   * @return a new tree
   */
  public CountedTree out() {
    return new CountedTree(diameter, 0, edgeWeight);
  }

  /**
   * The same tree with an edge weight.
   *
   * @param newEdgeWeight at least 1, such as 2 for a tree of which the far side lies outside
   * @return a new tree
   * @throws IllegalArgumentException if the weight is below 1 or not finite
   */
  public CountedTree withEdgeWeight(double newEdgeWeight) {
    return new CountedTree(diameter, weight, newEdgeWeight);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CountedTree tree
        && Physical.same(diameter, tree.diameter)
        && weight == tree.weight
        && edgeWeight == tree.edgeWeight;
  }

  @Override
  public int hashCode() {
    return Objects.hash(Physical.hash(diameter), weight + 0.0, edgeWeight);
  }
}
