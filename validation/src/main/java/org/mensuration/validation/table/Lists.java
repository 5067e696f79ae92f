package org.mensuration.validation.table;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the two lists beside the tables: bibliography and known deviations. */
final class Lists {
  private static final String DEVIATIONS = "deviations.csv";

  private Lists() {}

  static Map<String, SourceEntry> sources(String file, String text) {
    CsvRows csv = CsvRows.read(file, text, 0);
    int id = csv.position("source_id");
    int author = csv.position("author");
    int year = csv.position("year");
    int title = csv.position("title");
    int publisher = csv.position("publisher");
    int address = csv.position("address");
    int read = csv.position("read");
    Map<String, SourceEntry> found = new LinkedHashMap<>();
    for (CsvRows.Line line : csv.lines()) {
      List<String> cells = line.fields();
      SourceEntry entry =
          new SourceEntry(
              cells.get(id),
              cells.get(author),
              cells.get(year),
              cells.get(title),
              cells.get(publisher),
              cells.get(address),
              cells.get(read));
      if (found.put(entry.id(), entry) != null) {
        throw TableException.at(file, line.number(), "source " + entry.id() + " twice", "once");
      }
    }
    return found;
  }

  static List<Deviation> deviations(String text) {
    CsvRows csv = CsvRows.read(DEVIATIONS, text, 0);
    int table = csv.position("table");
    int row = csv.position("row");
    int amount = csv.position("amount");
    int reason = csv.position("reason");
    int second = csv.position("second_source");
    List<Deviation> found = new ArrayList<>();
    for (CsvRows.Line line : csv.lines()) {
      List<String> cells = line.fields();
      if (cells.get(reason).isBlank()) {
        throw TableException.at(DEVIATIONS, line.number(), "no reason", "why the figure deviates");
      }
      BigDecimal value = Decimals.read(DEVIATIONS, line.number(), "amount", cells.get(amount));
      found.add(
          new Deviation(
              cells.get(table), cells.get(row), value, cells.get(reason), cells.get(second)));
    }
    return found;
  }
}
