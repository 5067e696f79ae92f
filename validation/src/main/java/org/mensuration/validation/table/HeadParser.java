package org.mensuration.validation.table;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads the head of one table line by line. Not thread-safe; made for one table and dropped. */
final class HeadParser {
  private static final Pattern COLUMN =
      Pattern.compile("column (\\S+) \\[([^\\]]+)\\] (exact|rounded|result)( .*)?");
  private static final Set<String> ONCE =
      Set.of("source", "locator", "formula", "procedure", "standing", "lists");

  private final String file;
  private final Map<String, String> facts = new HashMap<>();
  private final List<InputColumn> inputs = new ArrayList<>();
  private final List<ResultColumn> results = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private final Set<String> columns = new HashSet<>();

  HeadParser(String file) {
    this.file = file;
  }

  /** Takes one line, its number sign removed. */
  void line(long number, String text) {
    if (text.isEmpty()) {
      return;
    }
    if (text.startsWith("column")) {
      column(number, text);
      return;
    }
    int colon = text.indexOf(':');
    String name = colon < 0 ? "" : text.substring(0, colon);
    String value = text.substring(colon + 1).strip();
    if (name.equals("note")) {
      notes.add(value);
    } else if (!ONCE.contains(name)) {
      throw wrong(
          number,
          text,
          "source:, locator:, formula:, procedure:, standing:, lists:, note: or column NAME"
              + " [UNIT]");
    } else if (value.isEmpty()) {
      throw wrong(number, text, "a value after " + name + ":");
    } else if (facts.putIfAbsent(name, value) != null) {
      throw wrong(number, "a second " + name + ":", "one");
    }
  }

  private void column(long number, String text) {
    Matcher matcher = COLUMN.matcher(text);
    if (!matcher.matches()) {
      throw wrong(
          number, text, "column NAME [UNIT] exact, rounded step=S or result step=S rounding=MODE");
    }
    String name = matcher.group(1);
    String unit = matcher.group(2);
    if (!columns.add(name)) {
      throw wrong(number, "column " + name + " twice", "each name once");
    }
    Map<String, String> settings = settings(number, matcher.group(4));
    switch (matcher.group(3)) {
      case "exact" -> inputs.add(new InputColumn(name, unit, Optional.empty()));
      case "rounded" -> {
        BigDecimal step = positive(number, "step", take(number, settings, "step"));
        inputs.add(new InputColumn(name, unit, Optional.of(step)));
      }
      default -> {
        Optional<String> formula = Optional.ofNullable(settings.remove("formula"));
        String procedure = settings.remove("procedure");
        if (procedure != null) {
          if (formula.isPresent() || facts.get("procedure") == null) {
            throw wrong(number, "procedure=" + procedure, "it only below a procedure: of the head");
          }
          formula = Optional.of(procedure);
        }
        results.add(new ResultColumn(name, unit, precision(number, settings), formula));
      }
    }
    if (!settings.isEmpty()) {
      throw wrong(number, "setting " + settings.keySet().iterator().next(), "none that is unknown");
    }
  }

  private Precision precision(long number, Map<String, String> settings) {
    String ulp = settings.remove("ulp");
    if (ulp != null) {
      BigDecimal count = positive(number, "ulp", ulp);
      if (count.scale() > 0 || count.precision() > 4) {
        throw wrong(number, "ulp=" + ulp, "a whole number");
      }
      return new Precision.Ulps(count.intValueExact());
    }
    String absolute = settings.remove("absolute");
    if (absolute != null) {
      return new Precision.Absolute(positive(number, "absolute", absolute));
    }
    String step = take(number, settings, "step");
    String mode = take(number, settings, "rounding");
    Rounding rounding =
        Rounding.of(mode)
            .orElseThrow(
                () ->
                    wrong(
                        number,
                        "rounding=" + mode,
                        "nearest, half-up, half-even, half-down, truncate, up or unknown"));
    Optional<BigDecimal> width =
        step.equals("cell") ? Optional.empty() : Optional.of(positive(number, "step", step));
    return new Precision.Printed(width, rounding);
  }

  private Map<String, String> settings(long number, @Nullable String text) {
    Map<String, String> found = new HashMap<>();
    for (String word : (text == null ? "" : text.strip()).split("\\s+", -1)) {
      int equals = word.indexOf('=');
      if (word.isEmpty()) {
        continue;
      }
      if (equals <= 0 || equals == word.length() - 1) {
        throw wrong(number, word, "a setting such as step=1");
      }
      String name = word.substring(0, equals).toLowerCase(Locale.ROOT);
      if (found.put(name, word.substring(equals + 1)) != null) {
        throw wrong(number, name + " twice", "each setting once");
      }
    }
    return found;
  }

  private String take(long number, Map<String, String> settings, String name) {
    String value = settings.remove(name);
    if (value == null) {
      throw wrong(number, "no " + name + "=", "one");
    }
    return value;
  }

  private BigDecimal positive(long number, String name, String text) {
    return Decimals.parse(text)
        .filter(value -> value.signum() > 0)
        .orElseThrow(() -> wrong(number, name + "=" + text, "a number above zero"));
  }

  /** The file beside the table whose columns are lists for every row. */
  Optional<String> lists() {
    return Optional.ofNullable(facts.get("lists"));
  }

  /** The columns of a file of lists, once all lines are in. */
  List<InputColumn> listColumns(long number) {
    if (!facts.isEmpty() || !results.isEmpty() || inputs.isEmpty()) {
      throw wrong(number, "a head of other lines", "only column NAME [UNIT] of inputs and note:");
    }
    return List.copyOf(inputs);
  }

  /** The head, once all lines are in. */
  TableHead finish(long number) {
    String standing = fact(number, "standing");
    Standing found =
        Standing.of(standing)
            .orElseThrow(
                () ->
                    wrong(
                        number,
                        "standing: " + standing,
                        "published-table, worked-example, common-practice, from-memory or"
                            + " computed"));
    TableHead head =
        new TableHead(
            fact(number, "source"),
            fact(number, "locator"),
            Optional.ofNullable(facts.get("formula")),
            Optional.ofNullable(facts.get("procedure")),
            found,
            inputs,
            results,
            notes);
    if (inputs.isEmpty() || results.isEmpty()) {
      throw wrong(number, "no column of " + (inputs.isEmpty() ? "inputs" : "results"), "one");
    }
    if (head.formula().isPresent() && head.procedure().isPresent()) {
      throw wrong(number, "formula: and procedure:", "one of them");
    }
    for (ResultColumn column : results) {
      if (head.procedure().or(column::formula).or(head::formula).isEmpty()) {
        throw wrong(number, "no formula for column " + column.name(), "formula: or formula=ID");
      }
    }
    return head;
  }

  private String fact(long number, String name) {
    String value = facts.get(name);
    if (value == null) {
      throw wrong(number, "no " + name + ": in the head", "one");
    }
    return value;
  }

  private TableException wrong(long number, String found, String wanted) {
    return TableException.at(file, number, found, wanted);
  }
}
