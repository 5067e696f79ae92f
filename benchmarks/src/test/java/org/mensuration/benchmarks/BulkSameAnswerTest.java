package org.mensuration.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is timed against each other must give the same answer, here to the last bit. */
class BulkSameAnswerTest {
  private final BulkBenchmark benchmark = new BulkBenchmark();

  @BeforeEach
  void prepare() {
    benchmark.prepare();
  }

  @Test
  void newtonIsTheSameEveryWay() {
    double[] expected = benchmark.newtonKernelLoop().clone();
    assertThat(expected).hasSize(BulkBenchmark.LOGS).doesNotContain(0.0);
    assertThat(benchmark.newtonKernelBulk().clone()).isEqualTo(expected);
    assertThat(benchmark.newtonFormulaLoop().clone()).isEqualTo(expected);
    assertThat(benchmark.newtonFormulaBulk().clone()).isEqualTo(expected);
  }

  @Test
  void doyleIsTheSameEveryWay() {
    double[] expected = benchmark.doyleKernelLoop().clone();
    assertThat(expected).hasSize(BulkBenchmark.LOGS).doesNotContain(0.0);
    assertThat(benchmark.doyleKernelBulk().clone()).isEqualTo(expected);
    assertThat(benchmark.doyleFormulaLoop().clone()).isEqualTo(expected);
    assertThat(benchmark.doyleFormulaBulk().clone()).isEqualTo(expected);
  }
}
