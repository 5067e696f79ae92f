package org.mensuration.formula;

/**
 * What a formula gives. Immutable and thread-safe.
 *
 * @param name public name, such as {@code volume}
 * @param symbol symbol left of the equals sign
 * @param unit unit the formula is printed in
 */
public record Result(String name, String symbol, String unit) {

  /**
   * Checks that every part is there.
   *
   * @param name public name, such as {@code volume}
   * @param symbol symbol left of the equals sign
   * @param unit unit the formula is printed in
   * @throws IllegalArgumentException if a text is blank
   */
  public Result {
    Parameter.requireText(name, "name");
    Parameter.requireText(symbol, "symbol");
    Parameter.requireText(unit, "unit");
  }
}
