package org.mensuration.formula;

import java.util.Objects;
import java.util.Optional;

/**
 * One input of a formula. Immutable and thread-safe.
 *
 * @param name public name in the catalogue, such as {@code small_diameter}
 * @param symbol symbol in the equation, such as {@code d}
 * @param unit unit the formula is printed in: {@code cm}, {@code ft}, {@code m2/ha}; {@code 1} for
 *     plain numbers, {@code %} where the equation has a 100 for it
 * @param meaning what is measured, in a few words
 * @param domain values with a meaning; others are refused
 * @param published range of the data behind the formula, where the source states one; a value
 *     outside still gets an answer
 * @param list whether the input is a list of readings
 */
public record Parameter(
    String name,
    String symbol,
    String unit,
    String meaning,
    Domain domain,
    Optional<Domain> published,
    boolean list) {

  /**
   * Checks that every part is there.
   *
   * @param name public name in the catalogue, such as {@code small_diameter}
   * @param symbol symbol in the equation, such as {@code d}
   * @param unit unit the formula is printed in
   * @param meaning what is measured, in a few words
   * @param domain values with a meaning
   * @param published range of the data behind the formula, where the source states one
   * @param list whether the input is a list of readings
   * @throws IllegalArgumentException if a text is blank
   */
  public Parameter {
    requireText(name, "name");
    requireText(symbol, "symbol");
    requireText(unit, "unit");
    requireText(meaning, "meaning");
    Objects.requireNonNull(domain, "domain");
    Objects.requireNonNull(published, "published");
  }

  static void requireText(String text, String part) {
    if (Objects.requireNonNull(text, part).trim().isEmpty()) {
      throw new IllegalArgumentException(part + " is blank");
    }
  }

  @Override
  public String toString() {
    String range = "1".equals(unit) ? domain.toString() : domain + " " + unit;
    return symbol + ", " + meaning + ", " + range + (list ? ", a list" : "");
  }
}
