package org.mensuration.validation.table;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import java.util.function.Function;

/** Reads tables. Stateless and thread-safe. */
public final class TableReader {
  private static final String CASE = "case";
  private static final String NOTE = "note";

  private TableReader() {}

  /**
   * Reads a table.
   *
   * @param name name of the table
   * @param text the whole file
   * @param sources the bibliography by identifier
   * @param deviations known deviations; those of other tables are passed over
   * @return the table
   * @throws TableException if the text is not a table; the message names file, line, what was found
   *     and what was wanted
   */
  public static Table read(
      String name, String text, Map<String, SourceEntry> sources, List<Deviation> deviations) {
    return read(name, text, sources, deviations, file -> Optional.empty());
  }

  /**
   * Reads a table that may name a file of lists beside it.
   *
   * @param name name of the table
   * @param text the whole file
   * @param sources the bibliography by identifier
   * @param deviations known deviations; those of other tables are passed over
   * @param beside gives the text of a file in the folder of the table
   * @return the table
   * @throws TableException if the text or the file of lists cannot be read
   */
  static Table read(
      String name,
      String text,
      Map<String, SourceEntry> sources,
      List<Deviation> deviations,
      Function<String, Optional<String>> beside) {
    HeadParser parser = new HeadParser(name);
    HeadLines lines = HeadLines.feed(parser, text);
    TableHead head = parser.finish(Math.max(1, lines.count()));
    SourceEntry source = sources.get(head.source());
    if (source == null) {
      throw TableException.of(name, "source " + head.source() + " is not in sources.csv");
    }
    CsvRows csv = CsvRows.read(name, lines.rest(), lines.count());
    List<TableRow> rows = rows(name, head, csv);
    Optional<String> file = parser.lists();
    if (file.isPresent()) {
      SharedLists shared =
          SharedLists.read(
              name + ", " + file.get(),
              beside
                  .apply(file.get())
                  .orElseThrow(() -> TableException.of(name, file.get() + " is not beside it")));
      head = shared.addTo(name, head);
      rows = rows.stream().map(shared::addTo).toList();
    }
    List<Deviation> own = deviations.stream().filter(d -> d.table().equals(name)).toList();
    checkDeviations(name, head, rows, own);
    return new Table(name, source, head, rows, own);
  }

  private static List<TableRow> rows(String name, TableHead head, CsvRows csv) {
    List<Integer> inputs = head.inputs().stream().map(c -> csv.position(c.name())).toList();
    List<Integer> results = head.results().stream().map(c -> csv.position(c.name())).toList();
    Optional<Integer> caseAt = csv.find(CASE);
    Optional<Integer> noteAt = csv.find(NOTE);
    int known =
        inputs.size()
            + results.size()
            + (caseAt.isPresent() ? 1 : 0)
            + (noteAt.isPresent() ? 1 : 0);
    if (known != csv.names().size()) {
      throw TableException.at(
          name,
          csv.headerLine(),
          "columns " + String.join(", ", csv.names()),
          "only columns that the head describes, case and note");
    }
    if (csv.lines().isEmpty()) {
      throw TableException.at(name, csv.headerLine(), "no row", "at least one");
    }
    Set<String> keys = new HashSet<>();
    List<TableRow> rows = new ArrayList<>();
    for (CsvRows.Line line : csv.lines()) {
      TableRow row = row(name, head, line, inputs, results, caseAt, noteAt);
      if (!keys.add(row.key())) {
        throw TableException.at(name, line.number(), "row " + row.key() + " twice", "each once");
      }
      rows.add(row);
    }
    return rows;
  }

  private static TableRow row(
      String name,
      TableHead head,
      CsvRows.Line line,
      List<Integer> inputs,
      List<Integer> results,
      Optional<Integer> caseAt,
      Optional<Integer> noteAt) {
    List<List<BigDecimal>> readings = new ArrayList<>();
    StringJoiner key = new StringJoiner(" ");
    for (int i = 0; i < inputs.size(); i++) {
      String column = head.inputs().get(i).name();
      String cell = line.fields().get(inputs.get(i)).strip();
      List<BigDecimal> list = new ArrayList<>();
      for (String word : cell.split("\\s+", -1)) {
        list.add(Decimals.read(name, line.number(), column, word));
      }
      readings.add(list);
      key.add(column + "=" + cell);
    }
    List<Optional<BigDecimal>> figures = new ArrayList<>();
    for (int i = 0; i < results.size(); i++) {
      String cell = line.fields().get(results.get(i)).strip();
      String column = head.results().get(i).name();
      figures.add(
          cell.isEmpty()
              ? Optional.empty()
              : Optional.of(Decimals.read(name, line.number(), column, cell)));
    }
    if (figures.stream().allMatch(Optional::isEmpty)) {
      throw TableException.at(name, line.number(), "no result", "at least one");
    }
    String label = caseAt.map(line.fields()::get).orElse("").strip();
    String note = noteAt.map(line.fields()::get).orElse("").strip();
    return new TableRow(
        line.number(), label.isEmpty() ? key.toString() : label, readings, figures, note);
  }

  /** A deviation that points nowhere would never be asserted. */
  private static void checkDeviations(
      String name, TableHead head, List<TableRow> rows, List<Deviation> deviations) {
    Set<String> places = new HashSet<>();
    for (TableRow row : rows) {
      for (ResultColumn column : head.results()) {
        places.add(place(head, row, column));
      }
    }
    Set<String> used = new HashSet<>();
    for (Deviation deviation : deviations) {
      if (!places.contains(deviation.row()) || !used.add(deviation.row())) {
        throw TableException.of(
            name, "deviations.csv names row " + deviation.row() + ", which is not there once");
      }
    }
  }

  /**
   * The name under which a deviation lists a cell.
   *
   * @param head head of the table
   * @param row the row
   * @param column the result column
   * @return key of the row, with the column where there are several
   */
  public static String place(TableHead head, TableRow row, ResultColumn column) {
    return head.results().size() == 1 ? row.key() : row.key() + " > " + column.name();
  }
}
