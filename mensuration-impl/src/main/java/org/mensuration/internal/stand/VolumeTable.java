package org.mensuration.internal.stand;

import java.util.List;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.kernel.Limits;
import org.mensuration.stand.TreeVolume;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;

/** Printed volume tables of the caller. Stateless and thread-safe. */
public final class VolumeTable {
  private VolumeTable() {}

  /**
   * A table by diameter.
   *
   * @param lower lower limits of the classes
   * @param end where the last class ends
   * @param volumes one volume a class
   * @return the rule
   */
  public static TreeVolume oneEntry(
      List<Quantity<Length>> lower, Quantity<Length> end, List<Quantity<Volume>> volumes) {
    Entries limits = new Entries("diameter", lower, end);
    List<Quantity<Volume>> cells = limits.row(volumes);
    return tree -> cells.get(limits.find(VolumeRules.diameter(tree)));
  }

  /**
   * A table by diameter and height.
   *
   * @param lowerDiameters lower limits of the diameter classes
   * @param endDiameter where the last of them ends
   * @param lowerHeights lower limits of the height classes
   * @param endHeight where the last of them ends
   * @param volumes for each diameter class the volumes of its height classes
   * @return the rule
   */
  public static TreeVolume twoEntries(
      List<Quantity<Length>> lowerDiameters,
      Quantity<Length> endDiameter,
      List<Quantity<Length>> lowerHeights,
      Quantity<Length> endHeight,
      List<List<Quantity<Volume>>> volumes) {
    Entries diameters = new Entries("diameter", lowerDiameters, endDiameter);
    Entries heights = new Entries("height", lowerHeights, endHeight);
    List<List<Quantity<Volume>>> cells =
        diameters.row(volumes).stream().map(heights::row).collect(Collectors.toList());
    return tree ->
        cells
            .get(diameters.find(VolumeRules.diameter(tree)))
            .get(heights.find(VolumeRules.height(tree)));
  }

  /** The limits of the classes of one entry; lower limits belong to their class. */
  private static final class Entries {
    private final String name;
    private final double[] metres;

    Entries(String name, List<Quantity<Length>> lower, Quantity<Length> end) {
      this.name = name;
      this.metres = new double[lower.size() + 1];
      for (int i = 0; i < metres.length; i++) {
        metres[i] = Measures.in(i < lower.size() ? lower.get(i) : end, ForestUnits.METRE);
        if (i > 0 && !(metres[i] > metres[i - 1])) {
          throw new IllegalArgumentException(
              "volume table: the " + name + " limits must rise; " + metres[i] + " m does not");
        }
      }
      if (metres.length < 2) {
        throw new IllegalArgumentException("volume table: no " + name + " class");
      }
    }

    <T> List<T> row(List<T> cells) {
      if (cells.size() != metres.length - 1) {
        throw new IllegalArgumentException(
            "volume table: "
                + cells.size()
                + " cells for "
                + (metres.length - 1)
                + " classes of "
                + name);
      }
      return List.copyOf(cells);
    }

    int find(Quantity<Length> value) {
      double searched = Measures.in(value, ForestUnits.METRE);
      int i = metres.length - 1;
      while (i >= 0 && !Limits.reaches(searched, metres[i])) {
        i--;
      }
      if (i < 0 || i == metres.length - 1) {
        throw new IllegalArgumentException(
            name
                + " "
                + value
                + " is outside the volume table, which goes from "
                + metres[0]
                + " m to below "
                + metres[metres.length - 1]
                + " m");
      }
      return i;
    }
  }
}
