package org.mensuration.height;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;

/**
 * A tree for a height curve: species, diameter, and the height where it was measured. Immutable and
 * thread-safe; two are equal when species and sizes are physically the same.
 *
 * @param species name of the species; may be blank where there is one only
 * @param diameter diameter at breast height
 * @param height measured height; empty if not measured, never zero
 */
public record HeightSample(
    String species, Quantity<Length> diameter, Optional<Quantity<Length>> height) {

  /**
   * Checks that every part is there; the numbers are checked where they are used.
   *
   * @param species name of the species
   * @param diameter diameter at breast height
   * @param height measured height
   */
  public HeightSample {
    Objects.requireNonNull(species, "species");
    Objects.requireNonNull(diameter, "diameter");
    Objects.requireNonNull(height, "height");
  }

  /**
   * A tree whose height was measured.
   *
   * @param species name of the species
   * @param diameter diameter at breast height
   * @param height measured height
   * @return the tree
   */
  public static HeightSample of(
      String species, Quantity<Length> diameter, Quantity<Length> height) {
    return new HeightSample(species, diameter, Optional.of(height));
  }

  /**
   * A tree whose height was not measured.
   *
   * @param species name of the species
   * @param diameter diameter at breast height
   * @return the tree
   */
  public static HeightSample withoutHeight(String species, Quantity<Length> diameter) {
    return new HeightSample(species, diameter, Optional.empty());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof HeightSample tree
        && species.equals(tree.species)
        && Physical.same(diameter, tree.diameter)
        && Physical.same(height, tree.height);
  }

  @Override
  public int hashCode() {
    return Objects.hash(species, Physical.hash(diameter), Physical.hash(height));
  }
}
