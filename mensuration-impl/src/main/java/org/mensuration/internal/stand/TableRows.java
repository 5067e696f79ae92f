package org.mensuration.internal.stand;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.measure.Quantity;
import org.mensuration.internal.statistics.ExactMoments;
import org.mensuration.quantity.VolumePerArea;
import org.mensuration.stand.DiameterClasses;
import org.mensuration.stand.StandTable;
import org.mensuration.stand.StandTable.DiameterClass;
import org.mensuration.stand.StandTable.Row;
import org.mensuration.stand.TableGroup;
import org.mensuration.units.Measures;

/** Makes the stand table: sums of cells are exact, each row is rounded once. */
final class TableRows {
  private final TableCells cells;
  private final GroupNames names;
  private final int points;
  private final double basalAreaUnit;
  private final boolean withVolume;

  TableRows(
      TableCells cells, GroupNames names, int points, double basalAreaUnit, boolean withVolume) {
    this.cells = cells;
    this.names = names;
    this.points = points;
    this.basalAreaUnit = basalAreaUnit;
    this.withVolume = withVolume;
  }

  StandTable table(DiameterClasses classes, TableGroup group) {
    Map<String, Map<Integer, TableCells.Cell>> byName = new TreeMap<>();
    Map<Integer, TableCells.Cell> byClass = new TreeMap<>();
    TableCells.Cell total = new TableCells.Cell();
    cells
        .sorted()
        .forEach(
            (key, cell) -> {
              int diameterClass = TableCells.diameterClass(key);
              byName
                  .computeIfAbsent(names.name(TableCells.group(key)), unused -> new TreeMap<>())
                  .put(diameterClass, cell);
              byClass.computeIfAbsent(diameterClass, unused -> new TableCells.Cell()).add(cell);
              total.add(cell);
            });
    List<Row> cellRows = new ArrayList<>();
    List<Row> groupRows = new ArrayList<>();
    byName.forEach(
        (name, ofName) -> {
          TableCells.Cell sum = new TableCells.Cell();
          ofName.forEach(
              (diameterClass, cell) -> {
                cellRows.add(row(Optional.of(name), Optional.of(limits(diameterClass)), cell));
                sum.add(cell);
              });
          groupRows.add(row(Optional.of(name), Optional.empty(), sum));
        });
    List<Row> classRows = new ArrayList<>();
    byClass.forEach(
        (diameterClass, cell) ->
            classRows.add(row(Optional.empty(), Optional.of(limits(diameterClass)), cell)));
    return new StandTable(
        classes,
        group,
        cellRows,
        groupRows,
        classRows,
        row(Optional.empty(), Optional.empty(), total));
  }

  private DiameterClass limits(int diameterClass) {
    return new DiameterClass(
        Measures.centimetres(cells.lowerCm(diameterClass)),
        Measures.centimetres(cells.lowerCm(diameterClass) + cells.widthCm() / 2),
        Measures.centimetres(cells.lowerCm(diameterClass + 1)));
  }

  private Row row(
      Optional<String> name, Optional<DiameterClass> diameterClass, TableCells.Cell cell) {
    Optional<Quantity<VolumePerArea>> volume =
        withVolume
            ? Optional.of(Measures.cubicMetresPerHectare(ExactMoments.mean(cell.volume, 1, points)))
            : Optional.empty();
    return new Row(
        name,
        diameterClass,
        cell.count.value(),
        Measures.perHectare(ExactMoments.mean(cell.stems, 1, points)),
        Measures.squareMetresPerHectare(ExactMoments.mean(cell.basalArea, basalAreaUnit, points)),
        volume);
  }
}
