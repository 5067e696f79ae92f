package org.mensuration.validation.table;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Columns of a file beside a table, each a list of readings and the same for every row, such as the
 * trees of a map. Immutable and thread-safe.
 *
 * @param columns the columns
 * @param readings the readings of each column
 */
record SharedLists(List<InputColumn> columns, List<List<BigDecimal>> readings) {

  static SharedLists read(String file, String text) {
    HeadParser parser = new HeadParser(file);
    HeadLines lines = HeadLines.feed(parser, text);
    List<InputColumn> columns = parser.listColumns(Math.max(1, lines.count()));
    CsvRows csv = CsvRows.read(file, lines.rest(), lines.count());
    if (csv.names().size() != columns.size() || csv.lines().isEmpty()) {
      throw TableException.at(
          file,
          csv.headerLine(),
          csv.names().size() + " columns and " + csv.lines().size() + " rows",
          "the columns that the head describes and at least one row");
    }
    List<List<BigDecimal>> readings = new ArrayList<>();
    for (InputColumn column : columns) {
      int position = csv.position(column.name());
      List<BigDecimal> list = new ArrayList<>();
      for (CsvRows.Line line : csv.lines()) {
        list.add(
            Decimals.read(file, line.number(), column.name(), line.fields().get(position).strip()));
      }
      readings.add(List.copyOf(list));
    }
    return new SharedLists(columns, List.copyOf(readings));
  }

  TableHead addTo(String table, TableHead head) {
    for (InputColumn column : columns) {
      if (head.inputs().stream().anyMatch(own -> own.name().equals(column.name()))) {
        throw TableException.of(
            table, "column " + column.name() + " stands in the table and in its lists");
      }
    }
    return head.withInputs(columns);
  }

  TableRow addTo(TableRow row) {
    List<List<BigDecimal>> inputs = new ArrayList<>(row.inputs());
    inputs.addAll(readings);
    return new TableRow(row.line(), row.key(), inputs, row.results(), row.note());
  }
}
