package org.mensuration.internal.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.mensuration.Catalogues;

/**
 * The short form of {@link KernelAgainstEquationTest}, quick enough to run once a mutant. It is
 * what tells that a changed kernel no longer says what is printed.
 */
class KernelSampleTest {
  private static final int POINTS = 25;

  @TestFactory
  Stream<DynamicTest> everyKernel() {
    return Catalogues.standard().formulas().stream()
        .filter(formula -> !formula.solved())
        .map(
            formula ->
                DynamicTest.dynamicTest(
                    formula.id(),
                    () -> assertThat(new KernelCheck(formula, POINTS).broken()).isEmpty()));
  }
}
