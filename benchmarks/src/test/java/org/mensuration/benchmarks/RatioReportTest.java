package org.mensuration.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.mensuration.benchmarks.RatioReport.Cost;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

class RatioReportTest {
  @Test
  void everyAlternativeRunsOnce() throws RunnerException {
    // The lock is for timing; this only looks whether the benchmarks run.
    System.setProperty("jmh.ignoreLock", "true");
    var once =
        new OptionsBuilder()
            .forks(0)
            .warmupIterations(0)
            .measurementIterations(1)
            .measurementTime(TimeValue.milliseconds(5))
            .verbosity(VerboseMode.SILENT)
            .build();
    Map<String, Cost> costs = RatioReport.measure(once);
    assertThat(costs)
        .containsOnlyKeys(
            "kernel",
            "facadeNative",
            "facadeConverted",
            "facadeWithRecord",
            "naiveMetres",
            "naiveCentimetres",
            "naiveInches");
    assertThat(costs.values()).allSatisfy(cost -> assertThat(cost.nanoseconds()).isPositive());
  }

  @Test
  void ratiosAndVerdictsArePrinted() {
    Map<String, Cost> costs = new LinkedHashMap<>();
    costs.put("kernel", new Cost(0.5, 0));
    costs.put("facadeNative", new Cost(10, 48));
    costs.put("facadeConverted", new Cost(50, 48));
    costs.put("naiveMetres", new Cost(2_000, 7500));
    costs.put("naiveCentimetres", new Cost(10_000, 47_000));
    costs.put("naiveInches", new Cost(15_000, 85_000));
    assertThat(RatioReport.report(costs).lines().skip(1))
        .containsExactly(
            "call                      ns        B   x kernel  naive / it  metres / it  goal",
            "kernel                  0.50        0        1.0                     4000  0 B: met",
            "facadeNative           10.00       48       20.0        1000          200  25 ns, 48"
                + " B, 400 x cheaper than naive: met",
            "facadeConverted        50.00       48      100.0         300           40  40 ns, 48"
                + " B, 400 x cheaper than naive: missed",
            "naiveMetres          2000.00     7500     4000.0                        1",
            "naiveCentimetres    10000.00    47000    20000.0                        0",
            "naiveInches         15000.00    85000    30000.0                        0");
  }

  @Test
  void reportNeedsTheCheapestNaiveCall() {
    assertThatThrownBy(() -> RatioReport.report(Map.of("kernel", new Cost(1, 0))))
        .hasMessageContaining("naiveMetres");
  }
}
