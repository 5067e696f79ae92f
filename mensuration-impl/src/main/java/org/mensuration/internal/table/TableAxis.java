package org.mensuration.internal.table;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import org.mensuration.kernel.Limits;

/**
 * One way into a printed table: its name, its unit and the values that are printed. Immutable and
 * thread-safe.
 */
public final class TableAxis {
  private static final int NONE = -1;

  private final String name;
  private final String unit;
  private final List<BigDecimal> printed;
  private final double[] marks;

  TableAxis(String name, String unit, Collection<BigDecimal> values) {
    this.name = name;
    this.unit = unit;
    this.printed = List.copyOf(new TreeSet<>(values));
    this.marks = printed.stream().mapToDouble(BigDecimal::doubleValue).toArray();
  }

  /**
   * What the table is entered with.
   *
   * @return public name of the input
   */
  public String name() {
    return name;
  }

  /**
   * The unit of the print.
   *
   * @return for example {@code cm}
   */
  public String unit() {
    return unit;
  }

  /**
   * The printed values.
   *
   * @return ascending
   */
  public List<BigDecimal> printed() {
    return printed;
  }

  int size() {
    return marks.length;
  }

  double mark(int at) {
    return marks[at];
  }

  /** Position of a key, or -1 if it is not printed; NaN never is. */
  int find(double key) {
    int at = Arrays.binarySearch(marks, key);
    if (at >= 0) {
      return at;
    }
    int above = NONE - at;
    if (above < marks.length && near(key, marks[above])) {
      return above;
    }
    return above > 0 && near(key, marks[above - 1]) ? above - 1 : NONE;
  }

  /** Position of the mark below a key that lies between two marks, or -1. */
  int below(double key) {
    int above = NONE - Arrays.binarySearch(marks, key);
    return above > 0 && above < marks.length ? above - 1 : NONE;
  }

  private static boolean near(double key, double mark) {
    return Limits.on(key, mark);
  }

  /** The values of an axis in words: evenly spaced ones as first, last and step. */
  static String words(List<BigDecimal> values) {
    if (values.size() > 2) {
      BigDecimal step = values.get(1).subtract(values.get(0));
      boolean even = true;
      for (int i = 2; i < values.size(); i++) {
        even &= values.get(i).subtract(values.get(i - 1)).compareTo(step) == 0;
      }
      if (even) {
        return text(values.get(0))
            + " to "
            + text(values.get(values.size() - 1))
            + " by "
            + text(step);
      }
    }
    StringBuilder words = new StringBuilder();
    for (BigDecimal value : values) {
      words.append(words.length() == 0 ? "" : ", ").append(text(value));
    }
    return words.toString();
  }

  static String text(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}
