package org.mensuration.internal.table;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Reads the file of a table: comments after {@code #}, the first of them its name as {@code table:
 * NAME}; then a header of the keys, the figure and perhaps {@code source}, each with its unit in
 * brackets; then a cell a line. Stateless and thread-safe.
 */
final class TableText {
  private static final String NAME = "# table:";
  private static final String SOURCE = "source";
  private static final int BLOCK = 8192;

  private TableText() {}

  /** The text of a file that ships with this package. */
  static String resource(String file) {
    try (InputStream stream = TableText.class.getResourceAsStream(file)) {
      if (stream == null) {
        throw new IllegalStateException("table " + file + " is missing from the library");
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      byte[] block = new byte[BLOCK];
      for (int read = stream.read(block); read >= 0; read = stream.read(block)) {
        bytes.write(block, 0, read);
      }
      return new String(bytes.toByteArray(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static RuleTable parse(String file, String text) {
    String name = "";
    List<String> header = new ArrayList<>();
    List<Line> lines = new ArrayList<>();
    String[] rows = text.split("\n", -1);
    for (int i = 0; i < rows.length; i++) {
      String row = rows[i].trim();
      if (row.startsWith(NAME)) {
        name = row.substring(NAME.length()).trim();
      } else if (!row.isEmpty() && !row.startsWith("#")) {
        String[] fields = row.split(",", -1);
        if (header.isEmpty()) {
          Collections.addAll(header, fields);
        } else if (fields.length == header.size()) {
          lines.add(new Line(i + 1, List.of(fields)));
        } else {
          throw wrong(file, i + 1, fields.length + " fields", header.size() + " fields");
        }
      }
    }
    if (name.isEmpty() || lines.isEmpty()) {
      throw wrong(file, rows.length, "no name or no cells", NAME + " NAME, a header and cells");
    }
    return table(file, name, header, lines);
  }

  private static RuleTable table(String file, String name, List<String> header, List<Line> lines) {
    boolean sourced = SOURCE.equals(header.get(header.size() - 1));
    int keys = header.size() - (sourced ? 2 : 1);
    if (keys < 1 || keys > 2) {
      throw wrong(file, 1, keys + " keys", "one or two");
    }
    List<TableAxis> axes = new ArrayList<>();
    int size = 1;
    for (int i = 0; i < keys; i++) {
      List<BigDecimal> values = new ArrayList<>();
      for (Line line : lines) {
        values.add(line.number(file, i));
      }
      String unit = unit(file, header.get(i));
      axes.add(new TableAxis(label(header.get(i)), unit, values));
      size *= axes.get(i).size();
    }
    List<Optional<TableCell>> cells = new ArrayList<>(Collections.nCopies(size, Optional.empty()));
    for (Line line : lines) {
      int index = 0;
      for (int i = 0; i < keys; i++) {
        double key = line.number(file, i).doubleValue();
        index = index * axes.get(i).size() + axes.get(i).find(key);
      }
      Optional<String> source = sourced ? Optional.of(line.fields.get(keys + 1)) : Optional.empty();
      TableCell cell = TableCell.of(line.number(file, keys), source);
      if (cells.set(index, Optional.of(cell)).isPresent()) {
        throw wrong(file, line.number, "a cell printed twice", "each cell once");
      }
    }
    return new RuleTable(name, axes, unit(file, header.get(keys)), cells);
  }

  private static String label(String column) {
    return column.substring(0, column.indexOf('[')).trim();
  }

  private static String unit(String file, String column) {
    int open = column.indexOf('[');
    if (open < 0 || !column.endsWith("]")) {
      throw wrong(file, 1, "column " + column, "a name with its unit, as in length [m]");
    }
    return column.substring(open + 1, column.length() - 1);
  }

  private static IllegalStateException wrong(String file, int line, String found, String wanted) {
    return new IllegalStateException(
        "table " + file + ", line " + line + ": " + found + ", wanted " + wanted);
  }

  /** A row with its place in the file. */
  private record Line(int number, List<String> fields) {
    BigDecimal number(String file, int column) {
      try {
        return new BigDecimal(fields.get(column).trim());
      } catch (NumberFormatException e) {
        throw wrong(file, number, fields.get(column), "a number");
      }
    }
  }
}
