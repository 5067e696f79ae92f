package org.mensuration.validation.table;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Comma-separated rows below a header line, read by column name. Immutable and thread-safe. */
final class CsvRows {
  private final String file;
  private final long headerLine;
  private final List<String> names;
  private final List<Line> lines;

  /** One row and where it stands. */
  record Line(long number, List<String> fields) {
    Line {
      fields = List.copyOf(fields);
    }
  }

  private CsvRows(String file, long headerLine, List<String> names, List<Line> lines) {
    this.file = file;
    this.headerLine = headerLine;
    this.names = names;
    this.lines = lines;
  }

  /** Reads rows; the first line of the text is line {@code before + 1} of the file. */
  static CsvRows read(String file, String text, long before) {
    List<Line> lines = new ArrayList<>();
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .ofCsvRecord(text)) {
      for (CsvRecord row : reader) {
        lines.add(new Line(before + row.getStartingLineNumber(), row.getFields()));
      }
    } catch (CsvParseException | IOException e) {
      throw TableException.of(file, String.valueOf(e.getMessage()));
    }
    if (lines.isEmpty()) {
      throw TableException.at(file, before + 1, "the end", "a header with the column names");
    }
    Line header = lines.remove(0);
    CsvRows rows = new CsvRows(file, header.number(), header.fields(), List.copyOf(lines));
    rows.check();
    return rows;
  }

  private void check() {
    Set<String> seen = new HashSet<>();
    for (String name : names) {
      if (!seen.add(name)) {
        throw TableException.at(file, headerLine, "column " + name + " twice", "each name once");
      }
    }
    for (Line line : lines) {
      if (line.fields().size() != names.size()) {
        throw TableException.at(
            file, line.number(), line.fields().size() + " cells", names.size() + " cells");
      }
    }
  }

  long headerLine() {
    return headerLine;
  }

  List<String> names() {
    return names;
  }

  List<Line> lines() {
    return lines;
  }

  /** Position of a column. */
  Optional<Integer> find(String name) {
    int position = names.indexOf(name);
    return position < 0 ? Optional.empty() : Optional.of(position);
  }

  /** Position of a column that must be there. */
  int position(String name) {
    return find(name)
        .orElseThrow(
            () ->
                TableException.at(
                    file, headerLine, "columns " + String.join(", ", names), "a column " + name));
  }
}
