package org.mensuration.formula;

/** How two numbers are compared in a relation or in the condition of a case. */
public enum Comparison {
  /** Smaller than. */
  LESS("<"),
  /** Smaller than or equal to. */
  AT_MOST("≤"),
  /** Greater than. */
  GREATER(">"),
  /** Greater than or equal to. */
  AT_LEAST("≥"),
  /** Equal to, as for a cell of a table. */
  EQUAL("=");

  private final String sign;

  Comparison(String sign) {
    this.sign = sign;
  }

  /**
   * The sign in an equation.
   *
   * @return for example {@code ≤}
   */
  public String sign() {
    return sign;
  }

  /**
   * Whether the comparison holds. It never holds for NaN.
   *
   * @param left left side
   * @param right right side
   * @return true if it holds
   */
  public boolean holds(double left, double right) {
    return switch (this) {
      case LESS -> left < right;
      case AT_MOST -> left <= right;
      case GREATER -> left > right;
      case AT_LEAST -> left >= right;
      case EQUAL -> left == right;
    };
  }

  /**
   * Whether the comparison holds, given the sign of left minus right.
   *
   * @param order negative, zero or positive
   * @return true if it holds
   */
  public boolean holds(int order) {
    return holds(order, 0.0);
  }

  /**
   * Whether equality satisfies it.
   *
   * @return true for {@link #AT_MOST} and {@link #AT_LEAST}
   */
  public boolean allowsEqual() {
    return this == AT_MOST || this == AT_LEAST || this == EQUAL;
  }
}
