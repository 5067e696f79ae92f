package org.mensuration.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.Measures.in;

import org.junit.jupiter.api.Test;
import org.mensuration.stand.StandEstimate;
import org.mensuration.units.ForestUnits;

/** What is timed against each other must give the same answer: exact ones to the last bit. */
class SameStandTest {
  @Test
  void sumsAgree() {
    ExactSumBenchmark benchmark = new ExactSumBenchmark();
    benchmark.prepare();
    double exact = benchmark.limbs();
    assertThat(benchmark.decimals()).isEqualTo(exact);
    assertThat(benchmark.compensated()).isCloseTo(exact, within(Math.ulp(exact)));
    assertThat(benchmark.plain()).isCloseTo(exact, within(1e-12 * exact));
    assertThat(benchmark.limbsOfSquares()).isEqualTo(benchmark.decimalsOfSquares());
  }

  @Test
  void standsAgree() {
    StandTallyBenchmark benchmark = new StandTallyBenchmark();
    benchmark.prepare();
    StandEstimate numbers = benchmark.numbers();
    for (StandEstimate other :
        new StandEstimate[] {benchmark.recordsOneThread(), benchmark.recordsParallel()}) {
      assertThat(other.stems()).isEqualTo(numbers.stems());
      assertThat(other.basalArea()).isEqualTo(numbers.basalArea());
      assertThat(other.arithmeticMeanDiameter()).isEqualTo(numbers.arithmeticMeanDiameter());
      assertThat(other.remarks()).isEqualTo(numbers.remarks());
    }
    double stems = in(numbers.stems().value(), ForestUnits.PER_HECTARE);
    assertThat(benchmark.plainLoop()).isCloseTo(stems, within(1e-11 * stems));
    assertThat(benchmark.readOneThread()).isCloseTo(stems, within(1e-11 * stems));
    assertThat(benchmark.readParallel()).isCloseTo(stems, within(1e-11 * stems));
  }
}
