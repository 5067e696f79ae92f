package org.mensuration.validation.table;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/** How the figures of a column were rounded before they were printed. */
public enum Rounding {
  /** To the nearest step; exact halves were printed either way. */
  NEAREST("nearest"),
  /** To the nearest step, halves away from zero. */
  HALF_UP("half-up"),
  /** To the nearest step, halves to the even multiple. */
  HALF_EVEN("half-even"),
  /** To the nearest step, halves toward zero. */
  HALF_DOWN("half-down"),
  /** Toward zero. */
  TRUNCATE("truncate"),
  /** Away from zero. */
  UP("up"),
  /** Not known: one step on either side is all that can be said. */
  UNKNOWN("unknown");

  private static final BigDecimal TWO = BigDecimal.valueOf(2);

  private final String word;

  Rounding(String word) {
    this.word = word;
  }

  /**
   * The word in a table's head.
   *
   * @return for example {@code half-up}
   */
  public String word() {
    return word;
  }

  static Optional<Rounding> of(String word) {
    for (Rounding rounding : values()) {
      if (rounding.word.equals(word)) {
        return Optional.of(rounding);
      }
    }
    return Optional.empty();
  }

  /**
   * The values that are printed as a given figure.
   *
   * @param printed the figure
   * @param step the printed step, above zero
   * @return all values that round to it; for {@link #UNKNOWN} one step on either side
   */
  public Range range(BigDecimal printed, BigDecimal step) {
    BigDecimal half = step.divide(TWO);
    return switch (this) {
      case NEAREST -> around(printed, half, true, true);
      case HALF_UP -> toward(printed, half, half, true, false);
      case HALF_DOWN -> toward(printed, half, half, false, true);
      case HALF_EVEN -> around(printed, half, even(printed, step), even(printed, step));
      case TRUNCATE -> toward(printed, BigDecimal.ZERO, step, true, false);
      case UP -> toward(printed, step, BigDecimal.ZERO, false, true);
      case UNKNOWN -> around(printed, step, true, true);
    };
  }

  /** A range given by its reach toward zero and away from it, mirrored for negative figures. */
  private static Range toward(
      BigDecimal printed, BigDecimal inward, BigDecimal outward, boolean inner, boolean outer) {
    if (printed.signum() > 0) {
      return new Range(printed.subtract(inward), inner, printed.add(outward), outer);
    }
    if (printed.signum() < 0) {
      return new Range(printed.subtract(outward), outer, printed.add(inward), inner);
    }
    return new Range(outward.negate(), outer, outward, outer);
  }

  private static Range around(BigDecimal printed, BigDecimal reach, boolean lower, boolean upper) {
    return new Range(printed.subtract(reach), lower, printed.add(reach), upper);
  }

  private static boolean even(BigDecimal printed, BigDecimal step) {
    BigDecimal multiple = printed.divide(step, MathContext.DECIMAL128);
    return multiple.remainder(TWO).signum() == 0;
  }
}
