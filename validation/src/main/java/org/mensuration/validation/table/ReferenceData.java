package org.mensuration.validation.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Tables with their bibliography and their known deviations. Immutable and thread-safe. */
public final class ReferenceData {
  private static final String ROOT = "/org/mensuration/validation/reference-data/";
  private static final String INDEX = "index.txt";
  private static final String SOURCES = "sources.csv";
  private static final String DEVIATIONS = "deviations.csv";
  private static final String ENDING = ".csv";

  private final Map<String, SourceEntry> sources;
  private final List<Table> tables;
  private final List<String> problems;

  private ReferenceData(
      Map<String, SourceEntry> sources, List<Table> tables, List<String> problems) {
    this.sources = sources;
    this.tables = List.copyOf(tables);
    this.problems = List.copyOf(problems);
  }

  /**
   * The tables that ship with this module.
   *
   * @return all of them
   */
  public static ReferenceData shipped() {
    List<String> names = resource(INDEX).orElse("").lines().filter(n -> !n.isBlank()).toList();
    return read(names, ReferenceData::resource, Map.of());
  }

  /**
   * Further tables in a folder and the folders below it.
   *
   * @param folder holds tables, and may hold a bibliography and deviations
   * @param known works that its heads may name beside its own bibliography
   * @return all tables found
   * @throws IOException if the folder cannot be read
   */
  public static ReferenceData of(Path folder, ReferenceData known) throws IOException {
    List<String> names;
    try (Stream<Path> files = Files.walk(folder)) {
      names =
          files
              .filter(Files::isRegularFile)
              .map(file -> folder.relativize(file).toString().replace('\\', '/'))
              .filter(name -> name.endsWith(ENDING))
              .filter(name -> !name.equals(SOURCES) && !name.equals(DEVIATIONS))
              .sorted()
              .toList();
    }
    return read(names, name -> file(folder.resolve(name)), known.sources);
  }

  private static ReferenceData read(
      List<String> names, TextSource files, Map<String, SourceEntry> known) {
    List<String> problems = new ArrayList<>();
    Map<String, SourceEntry> sources = new LinkedHashMap<>(known);
    List<Deviation> deviations = new ArrayList<>();
    List<Table> tables = new ArrayList<>();
    try {
      files.text(SOURCES).ifPresent(text -> sources.putAll(Lists.sources(SOURCES, text)));
      files.text(DEVIATIONS).ifPresent(text -> deviations.addAll(Lists.deviations(text)));
    } catch (TableException e) {
      problems.add(String.valueOf(e.getMessage()));
    }
    for (String name : names) {
      String table = name.substring(0, name.length() - ENDING.length());
      try {
        String text =
            files.text(name).orElseThrow(() -> TableException.of(table, "listed but missing"));
        String folder = name.substring(0, name.lastIndexOf('/') + 1);
        tables.add(
            TableReader.read(
                table, text, sources, deviations, beside -> files.text(folder + beside)));
      } catch (TableException e) {
        problems.add(String.valueOf(e.getMessage()));
      }
    }
    for (Deviation deviation : deviations) {
      if (!names.contains(deviation.table() + ENDING)) {
        problems.add(DEVIATIONS + ": table " + deviation.table() + " is not there");
      }
    }
    return new ReferenceData(Map.copyOf(sources), tables, problems);
  }

  /** Where files come from; two places have them, the jar and a folder. */
  private interface TextSource {
    Optional<String> text(String name);
  }

  private static Optional<String> resource(String name) {
    try (InputStream stream = ReferenceData.class.getResourceAsStream(ROOT + name)) {
      return stream == null
          ? Optional.empty()
          : Optional.of(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Optional<String> file(Path path) {
    if (!Files.exists(path)) {
      return Optional.empty();
    }
    try {
      return Optional.of(Files.readString(path));
    } catch (IOException e) {
      throw TableException.of(path.toString(), "cannot be read as UTF-8: " + e.getMessage());
    }
  }

  /**
   * The works by identifier.
   *
   * @return the bibliography
   */
  public Map<String, SourceEntry> sources() {
    return sources;
  }

  /**
   * The tables that could be read.
   *
   * @return in the order of the index or of their names
   */
  public List<Table> tables() {
    return tables;
  }

  /**
   * What could not be read.
   *
   * @return one message a table or list; empty if all is well
   */
  public List<String> problems() {
    return problems;
  }
}
