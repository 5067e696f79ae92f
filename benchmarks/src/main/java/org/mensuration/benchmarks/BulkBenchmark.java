package org.mensuration.benchmarks;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.mensuration.Catalogues;
import org.mensuration.formula.Formula;
import org.mensuration.kernel.BoardFeet;
import org.mensuration.kernel.BoardPolynomial;
import org.mensuration.kernel.LogVolume;
import org.mensuration.kernel.WeightedAreas;
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
 * Many logs by Newton's formula and by Doyle's rule: a loop over single calls beside the call for
 * arrays, both as bare kernels and as checked formulas. Times are for one log.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class BulkBenchmark {
  static final int LOGS = 4096;

  private final Formula newton = Catalogues.standard().formula("log/newton");
  private final Formula doyle = Catalogues.standard().formula("board/doyle");
  private final double[] large = new double[LOGS];
  private final double[] middle = new double[LOGS];
  private final double[] small = new double[LOGS];
  private final double[] length = new double[LOGS];
  private final double[] results = new double[LOGS];
  private final double[][] diameters = {large, middle, small};
  private final double[][] columns = {large, middle, small, length};
  private final double[][] boardColumns = {small, length};

  /** Created by the harness. */
  public BulkBenchmark() {}

  /** Creates the logs. */
  @Setup
  public void prepare() {
    Random random = new Random(4);
    for (int i = 0; i < LOGS; i++) {
      small[i] = 10 + 40 * random.nextDouble();
      middle[i] = small[i] * (1 + random.nextDouble() / 10);
      large[i] = middle[i] * (1 + random.nextDouble() / 5);
      length[i] = 2 + 6 * random.nextDouble();
    }
  }

  /**
   * Newton, the kernel called log by log.
   *
   * @return volumes in m³
   */
  @Benchmark
  @OperationsPerInvocation(LOGS)
  public double[] newtonKernelLoop() {
    for (int i = 0; i < LOGS; i++) {
      results[i] = LogVolume.newton(large[i], middle[i], small[i], length[i]);
    }
    return results;
  }

  /**
   * Newton, the kernel of the family for arrays.
   *
   * @return volumes in m³
   */
  @Benchmark
  @OperationsPerInvocation(LOGS)
  public double[] newtonKernelBulk() {
    WeightedAreas.NEWTON.volumes(diameters, length, results);
    return results;
  }

  /**
   * Newton, the checked formula called log by log.
   *
   * @return volumes in m³
   */
  @Benchmark
  @OperationsPerInvocation(LOGS)
  public double[] newtonFormulaLoop() {
    for (int i = 0; i < LOGS; i++) {
      results[i] = newton.apply(large[i], middle[i], small[i], length[i]);
    }
    return results;
  }

  /**
   * Newton, the checked formula's call for arrays.
   *
   * @return volumes in m³
   */
  @Benchmark
  @OperationsPerInvocation(LOGS)
  public double[] newtonFormulaBulk() {
    newton.applyAll(columns, results);
    return results;
  }

  /**
   * Doyle, the kernel called log by log.
   *
   * @return board feet
   */
  @Benchmark
  @OperationsPerInvocation(LOGS)
  public double[] doyleKernelLoop() {
    for (int i = 0; i < LOGS; i++) {
      results[i] = BoardFeet.doyle(small[i], length[i]);
    }
    return results;
  }

  /**
   * Doyle, the kernel of the family for arrays.
   *
   * @return board feet
   */
  @Benchmark
  @OperationsPerInvocation(LOGS)
  public double[] doyleKernelBulk() {
    BoardPolynomial.DOYLE.scales(small, length, results);
    return results;
  }

  /**
   * Doyle, the checked formula called log by log.
   *
   * @return board feet
   */
  @Benchmark
  @OperationsPerInvocation(LOGS)
  public double[] doyleFormulaLoop() {
    for (int i = 0; i < LOGS; i++) {
      results[i] = doyle.apply(small[i], length[i]);
    }
    return results;
  }

  /**
   * Doyle, the checked formula's call for arrays.
   *
   * @return board feet
   */
  @Benchmark
  @OperationsPerInvocation(LOGS)
  public double[] doyleFormulaBulk() {
    doyle.applyAll(boardColumns, results);
    return results;
  }
}
