package org.mensuration.validation.worked;

import java.util.OptionalDouble;
import org.mensuration.gauge.CountedTree;
import org.mensuration.units.Measures;

/**
 * A row of a counted tree. Immutable and thread-safe.
 *
 * @param row the row, to point at
 * @param key point and tree
 * @param stratum stratum of the point
 * @param dbh centimetres, if measured
 * @param weight 0, 0.5 or 1
 * @param edgeWeight from 1
 * @param dead whether the tree is dead
 * @param volume cubic metres, if noted
 * @param stem whether its stem was measured
 */
record CountedRow(
    Row row,
    TreeKey key,
    Stratum stratum,
    OptionalDouble dbh,
    double weight,
    double edgeWeight,
    boolean dead,
    OptionalDouble volume,
    boolean stem) {

  boolean belowMinimum() {
    OptionalDouble minimum = stratum.minimumDbh();
    return dbh.isPresent() && minimum.isPresent() && dbh.getAsDouble() < minimum.getAsDouble();
  }

  /** Whether the tree is part of the count. */
  boolean counts() {
    return weight > 0 && !belowMinimum() && (!dead || stratum.choices().dead());
  }

  /** What the column says of the tree: nothing, a measure tree, or a tree of a measured point. */
  String measure() {
    return row.text(MeasureNotes.COLUMN);
  }

  /** The tree as the library takes it, with its diameter. */
  CountedTree counted() {
    CountedTree tree = CountedTree.of(Measures.centimetres(dbh.orElseThrow()));
    CountedTree weighed = weight < 1 ? tree.half() : tree;
    CountedTree edged = edgeWeight > 1 ? weighed.withEdgeWeight(edgeWeight) : weighed;
    return dead ? edged.dead() : edged;
  }
}
