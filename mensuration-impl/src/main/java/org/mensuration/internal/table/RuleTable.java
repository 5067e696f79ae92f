package org.mensuration.internal.table;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mensuration.formula.PrintedTable;

/**
 * A printed table that is the rule, entered with one or two keys. A key within a relative 1e-9 of a
 * printed value counts as on it. Cells that are not printed stay empty; nothing is filled in.
 * Immutable and thread-safe.
 */
public final class RuleTable implements PrintedTable {
  private final String name;
  private final List<TableAxis> axes;
  private final String unit;
  private final List<Optional<TableCell>> cells;

  /** Takes the cells row by row: the last key moves fastest. */
  RuleTable(String name, List<TableAxis> axes, String unit, List<Optional<TableCell>> cells) {
    this.name = name;
    this.axes = List.copyOf(axes);
    this.unit = unit;
    this.cells = List.copyOf(cells);
  }

  /**
   * Reads a table that ships with this package.
   *
   * @param file name of the file, such as {@code gost2708.csv}
   * @return the table
   * @throws IllegalStateException if the file is missing or is not a table
   */
  public static RuleTable read(String file) {
    return TableText.parse(file, TableText.resource(file));
  }

  @Override
  public String name() {
    return name;
  }

  /**
   * What the table is entered with.
   *
   * @return one axis a key
   */
  public List<TableAxis> axes() {
    return axes;
  }

  /**
   * The unit of the cells.
   *
   * @return for example {@code m3}
   */
  public String unit() {
    return unit;
  }

  @Override
  public Optional<BigDecimal> cell(double... keys) {
    return at(keys).map(TableCell::printed);
  }

  @Override
  public Optional<String> source(double... keys) {
    return at(keys).flatMap(TableCell::source);
  }

  /**
   * The cell of a table of one key, for a kernel.
   *
   * @param key the key
   * @return the figure; NaN if it is not printed, for the rule to refuse
   */
  public double value(double key) {
    return number(index(axes.get(0).find(key)));
  }

  /**
   * The cell of a table of two keys, for a kernel.
   *
   * @param first the first key
   * @param second the second key
   * @return the figure; NaN if it is not printed, for the rule to refuse
   */
  public double value(double first, double second) {
    return number(index(axes.get(0).find(first), axes.get(1).find(second)));
  }

  /**
   * Between the cells of a table of two keys: linear in each key, from the printed cells next to
   * them. On a printed cell it is that cell.
   *
   * @param first the first key
   * @param second the second key
   * @return the figure; NaN beyond the printed keys or where a neighbour is not printed
   */
  public double interpolated(double first, double second) {
    return RowPlace.of(axes.get(0), first)
        .between(
            row -> RowPlace.of(axes.get(1), second).between(column -> number(index(row, column))));
  }

  private static double number(Optional<TableCell> cell) {
    return cell.isPresent() ? cell.get().value() : Double.NaN;
  }

  private Optional<TableCell> at(double... keys) {
    int[] places = new int[keys.length];
    for (int i = 0; i < places.length; i++) {
      places[i] = axis(keys, i).find(keys[i]);
    }
    return index(places);
  }

  private TableAxis axis(double[] keys, int at) {
    if (keys.length != axes.size()) {
      throw new IllegalArgumentException(
          name + ": " + keys.length + " keys given, " + axes.size() + " needed");
    }
    return axes.get(at);
  }

  private Optional<TableCell> index(int... places) {
    int index = 0;
    for (int i = 0; i < places.length; i++) {
      if (places[i] < 0) {
        return Optional.empty();
      }
      index = index * axes.get(i).size() + places[i];
    }
    return cells.get(index);
  }

  @Override
  public Optional<Gap> gap(double... keys) {
    if (at(keys).isPresent()) {
      return Optional.empty();
    }
    for (int i = 0; i < keys.length; i++) {
      TableAxis axis = axes.get(i);
      if (axis.find(keys[i]) < 0) {
        return Optional.of(new Gap(i, printed(axis, axis.printed(), "")));
      }
    }
    int last = axes.size() - 1;
    TableAxis first = axes.get(0);
    int row = first.find(keys[0]);
    List<BigDecimal> found = new ArrayList<>();
    for (int column = 0; column < axes.get(last).size(); column++) {
      if (index(row, column).isPresent()) {
        found.add(axes.get(last).printed().get(column));
      }
    }
    String where = " at " + TableAxis.text(first.printed().get(row)) + " " + first.unit();
    return Optional.of(new Gap(last, printed(axes.get(last), found, where)));
  }

  private String printed(TableAxis axis, List<BigDecimal> values, String where) {
    return "as printed in " + name + where + ": " + TableAxis.words(values) + " " + axis.unit();
  }

  @Override
  public String toString() {
    return name;
  }
}
