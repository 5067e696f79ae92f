package org.mensuration.validation.table;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** Decimals as the tables write them: a point, no grouping, digits kept. */
final class Decimals {
  private static final Pattern FORM = Pattern.compile("-?\\d+(\\.\\d+)?([eE]-?\\d{1,3})?");

  private Decimals() {}

  static Optional<BigDecimal> parse(String text) {
    return FORM.matcher(text).matches() ? Optional.of(new BigDecimal(text)) : Optional.empty();
  }

  static BigDecimal read(String file, long line, String column, String text) {
    return parse(text)
        .orElseThrow(
            () ->
                TableException.at(
                    file, line, column + " \"" + text + "\"", "a number such as 12.5"));
  }
}
