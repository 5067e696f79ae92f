package org.mensuration.validation.worked;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.NoSuchElementException;
import org.jspecify.annotations.Nullable;

/**
 * What the command was asked to do. Immutable and thread-safe.
 *
 * @param folder folder of the notes; null for the invented ones
 * @param units units of the print
 * @param rule rule of the sections
 * @param tip form of the tip
 * @param topDiameterCm over-bark diameter at which a stem is cut off for a product, cm
 * @param skipBadRows whether to compute without the bad rows
 * @param help whether only the help was asked for
 */
record Options(
    @Nullable Path folder,
    PrintUnits units,
    SectionRule rule,
    TipForm tip,
    double topDiameterCm,
    boolean skipBadRows,
    boolean help) {

  static final String HELP =
      """
      Works a stand out from field notes and prints it.

        --notes DIR      folder with stand.csv, stations.csv, stems.csv, points.csv,
                         and plots.csv and lines.csv if there are any
                         (without it: the invented notes that ship with the library)
        --units U        metric (default) or us
        --section RULE   smalian (default), huber or newton
        --tip FORM       cone (default) or paraboloid
        --top CM         stems also up to this diameter, in cm; 7 if not given
        --skip-bad-rows  compute without bad rows, and say which they were
        --help           this text

      Ends with 0 when the stand was printed, 1 when the notes are bad, 2 when an option is.
      """;

  /**
   * Reads the options.
   *
   * @throws IllegalArgumentException saying which option is not understood
   */
  static Options of(List<String> arguments) {
    Path folder = null;
    PrintUnits units = PrintUnits.METRIC;
    SectionRule rule = SectionRule.SMALIAN;
    TipForm tip = TipForm.CONE;
    double top = 7;
    boolean skip = false;
    boolean help = false;
    Iterator<String> rest = arguments.iterator();
    while (rest.hasNext()) {
      String option = rest.next();
      switch (option) {
        case "--notes" -> folder = path(value(option, rest));
        case "--units" -> units = one(option, value(option, rest), PrintUnits.class);
        case "--section" -> rule = one(option, value(option, rest), SectionRule.class);
        case "--tip" -> tip = one(option, value(option, rest), TipForm.class);
        case "--top" -> top = centimetres(option, value(option, rest));
        case "--skip-bad-rows" -> skip = true;
        case "--help" -> help = true;
        default -> throw new IllegalArgumentException("unknown option " + option);
      }
    }
    return new Options(folder, units, rule, tip, top, skip, help);
  }

  private static String value(String option, Iterator<String> rest) {
    try {
      return rest.next();
    } catch (NoSuchElementException e) {
      throw new IllegalArgumentException(option + " wants a value", e);
    }
  }

  private static Path path(String text) {
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw new IllegalArgumentException("--notes wants a folder, not " + text, e);
    }
  }

  private static double centimetres(String option, String text) {
    if (new NumberText(true).fault(text, 0).isEmpty()) {
      double value = NumberText.value(text);
      if (value > 0 && value < Double.POSITIVE_INFINITY) {
        return value;
      }
    }
    throw new IllegalArgumentException(option + " wants centimetres above 0, not " + text);
  }

  private static <E extends Enum<E>> E one(String option, String text, Class<E> values) {
    StringBuilder words = new StringBuilder();
    for (E value : values.getEnumConstants()) {
      String word = value.name().toLowerCase(Locale.ROOT);
      if (word.equals(text)) {
        return value;
      }
      words.append(words.length() == 0 ? "" : ", ").append(word);
    }
    throw new IllegalArgumentException(option + " wants one of " + words + ", not " + text);
  }
}
