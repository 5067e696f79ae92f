package org.mensuration.internal.statistics;

/**
 * An exact sum of a few doubles of like size, held as two doubles that stay apart. What the
 * rounding of an addition loses is itself a double (Knuth's two-sum) and goes into the second one;
 * where that one would be rounded too, the sum goes over to limbs. For the trees of a point this
 * costs a part of an {@link ExactSum}. Not thread-safe.
 */
public final class PairSum {
  private double main;
  private double rest;

  /** Holds everything once the pair was not enough. */
  private final ExactSum limbs = ExactSum.ofNumbers();

  private boolean spilled;

  /** Starts at zero. */
  public PairSum() {}

  /**
   * Adds a term.
   *
   * @param value the term
   * @throws ArithmeticException if it is not finite
   */
  public void add(double value) {
    if (spilled) {
      limbs.add(value);
      return;
    }
    double sum = main + value;
    double taken = sum - main;
    double lost = (main - (sum - taken)) + (value - taken);
    double small = rest + lost;
    double takenToo = small - rest;
    double lostToo = (rest - (small - takenToo)) + (lost - takenToo);
    if (lostToo == 0) {
      main = sum;
      rest = small;
    } else {
      spill(value);
    }
  }

  /** Also where the sum overflows or the term is no number: neither gives a zero above. */
  private void spill(double value) {
    limbs.add(value);
    limbs.add(main);
    limbs.add(rest);
    spilled = true;
  }

  /**
   * Adds this sum to another.
   *
   * @param total takes the terms of this one, none of them rounded
   */
  public void addTo(ExactSum total) {
    if (spilled) {
      total.add(limbs);
    } else {
      total.add(main);
      total.add(rest);
    }
  }

  /**
   * The sum, rounded once to the nearest double, halves to the even one.
   *
   * @return the sum; zero if there are no terms
   * @throws ArithmeticException if it is beyond the largest double
   */
  public double value() {
    return spilled ? limbs.value() : ExactSum.finite(main + rest);
  }

  /** Back to zero. */
  public void clear() {
    main = 0;
    rest = 0;
    if (spilled) {
      limbs.clear();
      spilled = false;
    }
  }
}
