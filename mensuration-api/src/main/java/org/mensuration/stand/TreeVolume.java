package org.mensuration.stand;

import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.mensuration.gauge.CountedTree;

/**
 * Gives the volume of a counted tree: from its profile, a volume function or table, a form factor,
 * or a ratio. Implementations are immutable and thread-safe.
 */
@FunctionalInterface
public interface TreeVolume {

  /**
   * The volume.
   *
   * @param tree the tree, with what was measured of it
   * @return its volume
   * @throws IllegalArgumentException if something is missing that the rule needs, or the tree lies
   *     outside a table
   */
  Quantity<Volume> of(CountedTree tree);
}
