package org.mensuration.edge;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;

/**
 * A tree whose place is known. Immutable and thread-safe; two trees are equal when name, place and
 * diameter are physically the same.
 *
 * @param id name of the tree, one of its kind on the map
 * @param position centre of the stem at breast height
 * @param diameter diameter at breast height
 */
public record MapTree(String id, Position position, Quantity<Length> diameter) {

  /**
   * Checks the name; place and diameter are checked where they are used.
   *
   * @param id name of the tree
   * @param position centre of the stem
   * @param diameter diameter at breast height
   * @throws IllegalArgumentException if the name is blank
   */
  public MapTree {
    Objects.requireNonNull(position, "position");
    Objects.requireNonNull(diameter, "diameter");
    if (Objects.requireNonNull(id, "id").trim().isEmpty()) {
      throw new IllegalArgumentException("a tree on a map needs a name; its id is blank");
    }
  }

  /**
   * A tree.
   *
   * @param id name of the tree
   * @param position centre of the stem
   * @param diameter diameter at breast height
   * @return the tree
   */
  public static MapTree of(String id, Position position, Quantity<Length> diameter) {
    return new MapTree(id, position, diameter);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof MapTree tree
        && id.equals(tree.id)
        && position.equals(tree.position)
        && Physical.same(diameter, tree.diameter);
  }

  @Override
  public int hashCode() {
    return Objects.hash(id, position, Physical.hash(diameter));
  }
}
