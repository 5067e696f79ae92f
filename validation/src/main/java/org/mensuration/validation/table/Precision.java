package org.mensuration.validation.table;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/** What the digits of a result column promise. All kinds are immutable and thread-safe. */
public sealed interface Precision {

  /**
   * The values that agree with a figure of the column.
   *
   * @param printed the figure
   * @return the range
   */
  Range range(BigDecimal printed);

  /**
   * The amount in which differences from a figure are counted.
   *
   * @param printed the figure
   * @return above zero
   */
  BigDecimal measure(BigDecimal printed);

  /**
   * What the measure is called.
   *
   * @return for example {@code step}
   */
  String measureName();

  /**
   * A printed column.
   *
   * @param step the printed step; empty for one unit of the last digit of each cell
   * @param rounding how it was rounded
   */
  record Printed(Optional<BigDecimal> step, Rounding rounding) implements Precision {
    /**
     * Checks the step.
     *
     * @param step the printed step; empty for one unit of the last digit of each cell
     * @param rounding how it was rounded
     * @throws IllegalArgumentException if the step is not above zero
     */
    public Printed {
      Objects.requireNonNull(rounding, "rounding");
      if (step.isPresent() && step.get().signum() <= 0) {
        throw new IllegalArgumentException("step " + step.get() + " is not above zero");
      }
    }

    @Override
    public Range range(BigDecimal printed) {
      return rounding.range(printed, measure(printed));
    }

    @Override
    public BigDecimal measure(BigDecimal printed) {
      return step.orElseGet(printed::ulp);
    }

    @Override
    public String measureName() {
      return "step";
    }
  }

  /**
   * A column of many digits, compared in units of the last place of a double.
   *
   * @param count how many units may be lost
   */
  record Ulps(int count) implements Precision {
    /**
     * Checks the count.
     *
     * @param count how many units may be lost
     * @throws IllegalArgumentException if the count is not above zero
     */
    public Ulps {
      if (count <= 0) {
        throw new IllegalArgumentException("ulp " + count + " is not above zero");
      }
    }

    @Override
    public Range range(BigDecimal printed) {
      BigDecimal reach = measure(printed).multiply(BigDecimal.valueOf(count));
      return new Range(printed.subtract(reach), true, printed.add(reach), true);
    }

    @Override
    public BigDecimal measure(BigDecimal printed) {
      return new BigDecimal(Math.ulp(printed.doubleValue()));
    }

    @Override
    public String measureName() {
      return "ulp";
    }
  }

  /**
   * A column compared with a fixed bound.
   *
   * @param bound largest difference
   */
  record Absolute(BigDecimal bound) implements Precision {
    /**
     * Checks the bound.
     *
     * @param bound largest difference
     * @throws IllegalArgumentException if the bound is not above zero
     */
    public Absolute {
      if (bound.signum() <= 0) {
        throw new IllegalArgumentException("absolute " + bound + " is not above zero");
      }
    }

    @Override
    public Range range(BigDecimal printed) {
      return new Range(printed.subtract(bound), true, printed.add(bound), true);
    }

    @Override
    public BigDecimal measure(BigDecimal printed) {
      return bound;
    }

    @Override
    public String measureName() {
      return "bound";
    }
  }
}
