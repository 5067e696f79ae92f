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
 * A stand table. Each figure is an exact sum rounded once, so the rows of a group, a class or the
 * stand close to the last digits of a double. Immutable and thread-safe.
 *
 * @param classes the diameter classes
 * @param group what is told apart besides them
 * @param cells one row for each group and class with trees, by name of the group and class
 * @param groups one row a group, over all classes
 * @param diameterClasses one row a class, over all groups
 * @param total the stand
 */
public record StandTable(
    DiameterClasses classes,
    TableGroup group,
    List<Row> cells,
    List<Row> groups,
    List<Row> diameterClasses,
    Row total) {

  /**
   * Copies the lists.
   *
   * @param classes the diameter classes
   * @param group what is told apart besides them
   * @param cells one row for each group and class
   * @param groups one row a group
   * @param diameterClasses one row a class
   * @param total the stand
   */
  public StandTable {
    Objects.requireNonNull(classes, "classes");
    Objects.requireNonNull(group, "group");
    cells = List.copyOf(cells);
    groups = List.copyOf(groups);
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
   * @param group name of the group, blank if it was not noted; empty for all
   * @param diameterClass the class; empty for all
   * @param count trees counted, halves, edges and sweeps included
   * @param stems stems per area
   * @param basalArea basal area per area
   * @param volume volume per area; empty if a tree of the stand has none
   */
  public record Row(
      Optional<String> group,
      Optional<DiameterClass> diameterClass,
      double count,
      Quantity<StemsPerArea> stems,
      Quantity<BasalAreaPerArea> basalArea,
      Optional<Quantity<VolumePerArea>> volume) {

    @Override
    public boolean equals(Object other) {
      return other instanceof Row row
          && group.equals(row.group)
          && diameterClass.equals(row.diameterClass)
          && Double.compare(count, row.count) == 0
          && Physical.same(stems, row.stems)
          && Physical.same(basalArea, row.basalArea)
          && Physical.same(volume, row.volume);
    }

    @Override
    public int hashCode() {
      return Objects.hash(
          group,
          diameterClass,
          count,
          Physical.hash(stems),
          Physical.hash(basalArea),
          Physical.hash(volume));
    }
  }
}
