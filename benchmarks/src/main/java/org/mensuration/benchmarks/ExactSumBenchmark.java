package org.mensuration.benchmarks;

import java.math.BigDecimal;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.mensuration.internal.statistics.ExactSum;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A sum of a million positive values over fifteen binary exponents: plain, with the errors carried
 * along, exact in limbs, exact in decimals. Times are per value.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@OperationsPerInvocation(ExactSumBenchmark.VALUES)
public class ExactSumBenchmark {
  static final int VALUES = 1_000_000;

  private final double[] values = new double[VALUES];

  /** Created by the harness. */
  public ExactSumBenchmark() {}

  /** Draws the values. */
  @Setup
  public void prepare() {
    Random random = new Random(6);
    for (int i = 0; i < VALUES; i++) {
      values[i] = Math.scalb(1 + random.nextDouble(), random.nextInt(15));
    }
  }

  /**
   * The plain loop.
   *
   * @return the sum, not exact
   */
  @Benchmark
  public double plain() {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }

  /**
   * The loop that carries its errors along (Neumaier).
   *
   * @return the sum, as a rule exact to the last digit
   */
  @Benchmark
  public double compensated() {
    double sum = 0;
    double lost = 0;
    for (double value : values) {
      double next = sum + value;
      lost += Math.abs(sum) >= Math.abs(value) ? (sum - next) + value : (value - next) + sum;
      sum = next;
    }
    return sum + lost;
  }

  /**
   * The exact sum in limbs.
   *
   * @return the exact sum, rounded once
   */
  @Benchmark
  public double limbs() {
    ExactSum sum = ExactSum.ofNumbers();
    for (double value : values) {
      sum.add(value);
    }
    return sum.value();
  }

  /**
   * The exact sum of squares in limbs.
   *
   * @return the exact sum of squares, rounded once
   */
  @Benchmark
  public double limbsOfSquares() {
    ExactSum sum = ExactSum.ofProducts();
    for (double value : values) {
      sum.addProduct(value, value);
    }
    return sum.value();
  }

  /**
   * The exact sum in decimals.
   *
   * @return the exact sum, rounded once
   */
  @Benchmark
  public double decimals() {
    BigDecimal sum = BigDecimal.ZERO;
    for (double value : values) {
      sum = sum.add(new BigDecimal(value));
    }
    return sum.doubleValue();
  }

  /**
   * The exact sum of squares in decimals.
   *
   * @return the exact sum of squares, rounded once
   */
  double decimalsOfSquares() {
    BigDecimal sum = BigDecimal.ZERO;
    for (double value : values) {
      sum = sum.add(new BigDecimal(value).pow(2));
    }
    return sum.doubleValue();
  }
}
