package org.mensuration.gauge;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * A sample point and the trees counted there. A point without trees counts as zero and must not be
 * left out. Immutable and thread-safe.
 *
 * @param id name of the point, one of its kind in the stand
 * @param trees the counted trees; may be empty
 * @param sweep what the whole sweep is multiplied by
 * @param outside true for a point beyond the edge of the stand, as an extended grid has them; only
 *     trees of the stand are counted there
 */
public record CountPoint(
    String id, List<CountedTree> trees, SweepCorrection sweep, boolean outside) {

  /**
   * Checks the name and copies the trees.
   *
   * @param id name of the point
   * @param trees the counted trees
   * @param sweep what the whole sweep is multiplied by
   * @param outside true for a point beyond the edge
   * @throws IllegalArgumentException if the name is blank
   */
  public CountPoint {
    Objects.requireNonNull(sweep, "sweep");
    if (Objects.requireNonNull(id, "id").trim().isEmpty()) {
      throw new IllegalArgumentException("a point needs a name; its id is blank");
    }
    trees = List.copyOf(trees);
  }

  /**
   * A point with a full sweep.
   *
   * @param id name of the point
   * @param trees the counted trees
   * @throws IllegalArgumentException if the name is blank
   */
  public CountPoint(String id, List<CountedTree> trees) {
    this(id, trees, SweepCorrection.NONE, false);
  }

  /**
   * A point with trees, none for an empty point.
   *
   * @param id name of the point
   * @param trees the counted trees
   * @return the point
   */
  public static CountPoint of(String id, CountedTree... trees) {
    return new CountPoint(id, List.of(trees));
  }

  /**
   * A point whose trees are all in and away from edges.
   *
   * @param id name of the point
   * @param diameters diameters at breast height
   * @return the point
   */
  @SafeVarargs
  public static CountPoint ofDiameters(String id, Quantity<Length>... diameters) {
    List<CountedTree> trees = new ArrayList<>();
    for (Quantity<Length> diameter : diameters) {
      trees.add(CountedTree.of(diameter));
    }
    return new CountPoint(id, trees);
  }

  /**
   * A point where trees were counted and none measured: good for basal area, not for stems.
   *
   * @param id name of the point
   * @param count how many trees are in
   * @return the point
   * @throws IllegalArgumentException if the count is negative
   */
  public static CountPoint ofCount(String id, int count) {
    if (!(count >= 0)) {
      throw new IllegalArgumentException("point " + id + ": count " + count + ", allowed from 0");
    }
    return new CountPoint(id, Collections.nCopies(count, CountedTree.unmeasured()));
  }

  /**
   * The same point, its whole sweep corrected once more.
   *
   * @param correction what the sweep is multiplied by
   * @return a new point
   */
  public CountPoint correctedBy(SweepCorrection correction) {
    return new CountPoint(id, trees, sweep.and(correction), outside);
  }

  /**
   * The same point, laid out beyond the edge of the stand; only a plan that names {@link
   * org.mensuration.edge.EdgeRule#EXTENDED_GRID} takes it.
   *
   * @return a new point
   */
  public CountPoint beyondEdge() {
    return new CountPoint(id, trees, sweep, true);
  }

  /**
   * The same point with more known of its trees, such as heights from a curve.
   *
   * @param newTrees the trees
   * @return a new point
   */
  public CountPoint withTrees(List<CountedTree> newTrees) {
    return new CountPoint(id, newTrees, sweep, outside);
  }
}
