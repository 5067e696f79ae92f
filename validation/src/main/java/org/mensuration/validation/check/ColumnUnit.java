package org.mensuration.validation.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Units of table columns as exact ratios. The tables keep their own few ratios, so that a wrong
 * factor in the library cannot hide in its own checks. Immutable and thread-safe.
 */
final class ColumnUnit {
  private static final MathContext DIGITS = new MathContext(60);
  private static final Pattern PART = Pattern.compile("(m|dm|cm|mm|ft|in|ha|ac)([23]?)");
  private static final Map<String, BigDecimal> LENGTHS =
      Map.of(
          "m", BigDecimal.ONE,
          "dm", new BigDecimal("0.1"),
          "cm", new BigDecimal("0.01"),
          "mm", new BigDecimal("0.001"),
          "ft", new BigDecimal("0.3048"),
          "in", new BigDecimal("0.0254"));
  private static final Map<String, BigDecimal> AREAS =
      Map.of("ha", new BigDecimal("10000"), "ac", new BigDecimal("4046.8564224"));

  private final String kind;
  private final BigDecimal numerator;
  private final BigDecimal denominator;

  private ColumnUnit(String kind, BigDecimal numerator, BigDecimal denominator) {
    this.kind = kind;
    this.numerator = numerator;
    this.denominator = denominator;
  }

  /** A ratio between two units. */
  record Ratio(BigDecimal numerator, BigDecimal denominator) {
    BigDecimal times(BigDecimal value) {
      return numerator.compareTo(denominator) == 0
          ? value
          : value.multiply(numerator).divide(denominator, DIGITS);
    }
  }

  /** The ratio by which values in one unit become values in another; empty if they do not fit. */
  static Optional<Ratio> ratio(String from, String to) {
    if (from.equals(to)) {
      return Optional.of(new Ratio(BigDecimal.ONE, BigDecimal.ONE));
    }
    return parse(from)
        .flatMap(
            left ->
                parse(to)
                    .filter(right -> right.kind.equals(left.kind))
                    .map(
                        right ->
                            new Ratio(
                                left.numerator.multiply(right.denominator),
                                left.denominator.multiply(right.numerator))));
  }

  /** A product over a product is its own kind: m2/ha never becomes ft/in. */
  private static Optional<ColumnUnit> parse(String text) {
    int stroke = text.indexOf('/');
    String above = stroke < 0 ? text : text.substring(0, stroke);
    String below = stroke < 0 ? "1" : text.substring(stroke + 1);
    if (above.equals("1") && below.equals("1")) {
      return Optional.empty();
    }
    return part(above)
        .flatMap(
            top ->
                part(below)
                    .map(
                        bottom ->
                            new ColumnUnit(
                                top.kind + "/" + bottom.kind, top.numerator, bottom.numerator)));
  }

  private static Optional<ColumnUnit> part(String text) {
    if (text.equals("1")) {
      return Optional.of(new ColumnUnit("0", BigDecimal.ONE, BigDecimal.ONE));
    }
    Matcher matcher = PART.matcher(text);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String name = matcher.group(1);
    int power = matcher.group(2).isEmpty() ? 1 : matcher.group(2).charAt(0) - '0';
    BigDecimal area = AREAS.get(name);
    if (area != null) {
      return power > 1 ? Optional.empty() : Optional.of(new ColumnUnit("2", area, BigDecimal.ONE));
    }
    BigDecimal length = LENGTHS.getOrDefault(name, BigDecimal.ONE);
    return Optional.of(new ColumnUnit(Integer.toString(power), length.pow(power), BigDecimal.ONE));
  }
}
