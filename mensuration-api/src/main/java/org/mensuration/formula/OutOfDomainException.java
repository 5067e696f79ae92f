package org.mensuration.formula;

import java.util.Objects;

/** A value for which a formula has no meaning. Immutable and thread-safe. */
public final class OutOfDomainException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** Identifier of the formula that refused. */
  private final String formulaId;

  /** Symbol of the input that was refused. */
  private final String symbol;

  /** The value refused, in {@code unit}. */
  private final double value;

  /** Unit of the value. */
  private final String unit;

  /** Allowed interval or relation. */
  private final String allowed;

  /**
   * States the value and what was allowed.
   *
   * @param formula the formula that was asked
   * @param symbol symbol of the input
   * @param value value of the input in {@code unit}
   * @param unit unit of the value
   * @param allowed allowed interval or relation
   */
  public OutOfDomainException(
      Formula formula, String symbol, double value, String unit, String allowed) {
    this(formula, "", symbol, value, unit, allowed);
  }

  /**
   * States the value, where it stood and what was allowed.
   *
   * @param formula the formula that was asked
   * @param where place among several, such as {@code row 17}; empty for a single call
   * @param symbol symbol of the input
   * @param value value of the input in {@code unit}
   * @param unit unit of the value
   * @param allowed allowed interval or relation
   */
  public OutOfDomainException(
      Formula formula, String where, String symbol, double value, String unit, String allowed) {
    super(message(formula, where, symbol, value, unit, allowed));
    this.formulaId = formula.id();
    this.symbol = Objects.requireNonNull(symbol, "symbol");
    this.value = value;
    this.unit = Objects.requireNonNull(unit, "unit");
    this.allowed = Objects.requireNonNull(allowed, "allowed");
  }

  private static String message(
      Formula formula, String where, String symbol, double value, String unit, String allowed) {
    String shownUnit = "1".equals(unit) ? "" : " " + unit;
    return formula.id()
        + ": "
        + (where.isEmpty() ? "" : where + ", ")
        + symbol
        + " = "
        + Numbers.plain(value)
        + shownUnit
        + ", allowed "
        + allowed
        + (allowed.endsWith(")") || allowed.endsWith("]") ? shownUnit : "")
        + " ("
        + formula.title()
        + "; "
        + formula.citations().get(0)
        + ")";
  }

  /**
   * Identifier of the formula that refused.
   *
   * @return for example {@code log/smalian}
   */
  public String formulaId() {
    return formulaId;
  }

  /**
   * Symbol of the input that was refused.
   *
   * @return for example {@code D}
   */
  public String symbol() {
    return symbol;
  }

  /**
   * The value refused.
   *
   * @return in {@link #unit()}
   */
  public double value() {
    return value;
  }

  /**
   * Unit of the value.
   *
   * @return for example {@code cm}
   */
  public String unit() {
    return unit;
  }

  /**
   * What would have been allowed.
   *
   * @return an interval or a relation
   */
  public String allowed() {
    return allowed;
  }
}
