package org.mensuration.validation.worked;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.mensuration.formula.OutOfDomainException;

/** Streams one file of notes row by row. Stateless and thread-safe. */
final class NoteTable {
  /** Longest header line that is looked at to find the separator. */
  private static final int HEADER_LIMIT = 1 << 16;

  private NoteTable() {}

  /**
   * Reads a file. A bad row goes to the problems and the next is read; a file that cannot be read
   * at all throws.
   *
   * @return the names of columns that are not known
   */
  static List<String> read(
      Notes notes,
      String file,
      List<String> required,
      List<String> optional,
      Problems problems,
      Consumer<Row> rows) {
    var decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    long line = 0;
    try (var stream = notes.open(file);
        var reader = new BufferedReader(new InputStreamReader(stream, decoder), HEADER_LIMIT)) {
      char separator = separator(reader, file);
      var builder = CsvReader.builder().fieldSeparator(separator).skipEmptyLines(true);
      // A wrong number of cells is told here, with its line.
      builder
          .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
          .missingFieldStrategy(FieldMismatchStrategy.IGNORE);
      try (CsvReader<CsvRecord> records = builder.ofCsvRecord(reader)) {
        var iterator = records.iterator();
        if (!iterator.hasNext()) {
          throw broken(file, "an empty file", "a header");
        }
        List<String> header = iterator.next().getFields();
        Map<String, Integer> columns = columns(file, header, required);
        var numbers = new NumberText(separator == ';');
        while (iterator.hasNext()) {
          CsvRecord csv = iterator.next();
          line = csv.getStartingLineNumber();
          var row = new Row(file, line, columns, csv.getFields(), numbers);
          try {
            rows.accept(checked(row, csv.getFieldCount(), header.size(), separator));
          } catch (BadNotes bad) {
            problems.add(bad);
          } catch (OutOfDomainException e) {
            problems.add(row.refused(e));
          }
        }
        return unknown(header, required, optional);
      }
    } catch (UncheckedIOException | IOException | CsvParseException e) {
      throw new BadNotes(unreadable(file, line, e));
    }
  }

  private static Problem unreadable(String file, long line, Exception e) {
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      if (cause instanceof CharacterCodingException) {
        return new Problem(
            file, line + 1, "", "bytes that are not UTF-8 here or soon after", "UTF-8");
      }
    }
    if (e instanceof CsvParseException) {
      return new Problem(file, line + 1, "", "text that is no row of cells", "closed quotes");
    }
    return new Problem(file, 0, "", "nothing that can be read", "this file in the folder of notes");
  }

  private static BadNotes broken(String file, String found, String wanted) {
    return new BadNotes(new Problem(file, 1, "", found, wanted));
  }

  /** Looks at the header line without taking it, and drops a byte order mark. */
  private static char separator(BufferedReader reader, String file) throws IOException {
    reader.mark(1);
    if (reader.read() != '\ufeff') {
      reader.reset();
    }
    reader.mark(HEADER_LIMIT);
    int commas = 0;
    int semicolons = 0;
    boolean quoted = false;
    for (int i = 0; i < HEADER_LIMIT - 1; i++) {
      int c = reader.read();
      if (c < 0 || (!quoted && (c == '\n' || c == '\r'))) {
        break;
      }
      quoted ^= c == '"';
      commas += !quoted && c == ',' ? 1 : 0;
      semicolons += !quoted && c == ';' ? 1 : 0;
    }
    reader.reset();
    if (commas == semicolons && commas > 0) {
      throw broken(file, "as many commas as semicolons", "a header separated by one of them");
    }
    return semicolons > commas ? ';' : ',';
  }

  private static Map<String, Integer> columns(
      String file, List<String> header, List<String> required) {
    Map<String, Integer> columns = new HashMap<>();
    for (int i = 0; i < header.size(); i++) {
      String name = header.get(i).strip();
      if (!name.isEmpty() && columns.put(name, i) != null) {
        throw broken(file, "two columns called " + name, "each column once");
      }
    }
    List<String> missing = new ArrayList<>(required);
    missing.removeAll(columns.keySet());
    if (!missing.isEmpty()) {
      throw broken(
          file,
          "a header without " + String.join(", ", missing),
          "columns by these names, separated by commas or semicolons");
    }
    return columns;
  }

  private static Row checked(Row row, int cells, int columns, char separator) {
    if (cells != columns) {
      String hint = separator == ',' && cells > columns ? " (is there a decimal comma?)" : "";
      throw row.bad("", cells + " cells", columns + " as in the header" + hint);
    }
    return row;
  }

  private static List<String> unknown(
      List<String> header, List<String> required, List<String> optional) {
    List<String> unknown = new ArrayList<>();
    for (String name : header) {
      String plain = name.strip();
      if (!plain.isEmpty() && !required.contains(plain) && !optional.contains(plain)) {
        unknown.add(plain);
      }
    }
    return unknown;
  }
}
