package org.mensuration.stand;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.quantity.Physical;
import org.mensuration.quantity.StemsPerArea;
import org.mensuration.quantity.VolumePerArea;

/**
 * A stand table. Each figure is an exact sum rounded once, so the rows of a species, a class or the
 * stand close to the last digits of a double. Immutable and thread-safe.
 *
 * @param classes the classes
 * @param cells one row for each species and class with trees, by species name and class
 * @param species one row a species, over all classes
 * @param diameterClasses one row a class, over all species
 * @param total the stand
 */
public record StandTable(
    DiameterClasses classes,
    List<Row> cells,
    List<Row> species,
    List<Row> diameterClasses,
    Row total) {

  /**
   * Copies the lists.
   *
   * @param classes the classes
   * @param cells one row for each species and class
   * @param species one row a species
   * @param diameterClasses one row a class
   * @param total the stand
   */
  public StandTable {
    Objects.requireNonNull(classes, "classes");
    cells = List.copyOf(cells);
    species = List.copyOf(species);
    diameterClasses = List.copyOf(diameterClasses);
    Objects.requireNonNull(total, "total");
  }

  /**
   * A class: its limits and its centre.
   *
   * @param lower lower limit
   * @param centre centre
   * @param upper upper limit
   */
  public record DiameterClass(
      Quantity<Length> lower, Quantity<Length> centre, Quantity<Length> upper) {

    @Override
    public boolean equals(Object other) {
      return other instanceof DiameterClass that
          && Physical.same(lower, that.lower)
          && Physical.same(centre, that.centre)
          && Physical.same(upper, that.upper);
    }

    @Override
    public int hashCode() {
      return Objects.hash(Physical.hash(lower), Physical.hash(centre), Physical.hash(upper));
    }
  }

  /**
   * A row.
   *
   * @param species the species; empty for all
   * @param diameterClass the class; empty for all
   * @param count trees counted, halves, edges and sweeps included
   * @param stems stems per area
   * @param basalArea basal area per area
   * @param volume volume per area; empty if a tree of the stand has none
   */
  public record Row(
      Optional<String> species,
      Optional<DiameterClass> diameterClass,
      double count,
      Quantity<StemsPerArea> stems,
      Quantity<BasalAreaPerArea> basalArea,
      Optional<Quantity<VolumePerArea>> volume) {

    @Override
    public boolean equals(Object other) {
      return other instanceof Row row
          && species.equals(row.species)
          && diameterClass.equals(row.diameterClass)
          && Double.compare(count, row.count) == 0
          && Physical.same(stems, row.stems)
          && Physical.same(basalArea, row.basalArea)
          && Physical.same(volume, row.volume);
    }

    @Override
    public int hashCode() {
      return Objects.hash(
          species,
          diameterClass,
          count,
          Physical.hash(stems),
          Physical.hash(basalArea),
          Physical.hash(volume));
    }
  }
}
