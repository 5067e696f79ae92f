package org.mensuration.internal.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import org.mensuration.Catalogues;
import org.mensuration.formula.Formula;
import org.mensuration.formula.Gradient;
import org.mensuration.internal.tree.Tree;

/**
 * Holds every kernel to its own printed equation in 50 digits: the error is at most 8 ulp of the
 * exact value plus twice what one ulp of each input can do. Writes the table of largest errors to
 * target/kernel-errors.csv.
 */
@Tag("catalogue")
class KernelAgainstEquationTest {
  private static final int POINTS = 1000;
  private static final int DIGITS = 50;

  /** Formulas without a tree value, and why. A formula that is solved and not here is a defect. */
  static final Map<String, String> SOLVED =
      Map.of(
          "sampling/mean-interval", "holds a quantile of Student's t",
          "sampling/points-needed", "a search for the smallest whole number");

  private static final Map<String, Worst> WORST = new TreeMap<>();

  private record Worst(double ulps, double shareOfBound, String at) {}

  @TestFactory
  Stream<DynamicTest> everyKernelKeepsToItsEquation() {
    return Catalogues.standard().formulas().stream()
        .filter(formula -> !formula.solved())
        .map(formula -> DynamicTest.dynamicTest(formula.id(), () -> hold(formula)));
  }

  @TestFactory
  Stream<DynamicTest> solvedFormulasAreTheListedOnes() {
    return Catalogues.standard().formulas().stream()
        .map(
            formula ->
                DynamicTest.dynamicTest(
                    formula.id(),
                    () ->
                        assertThat(SOLVED.containsKey(formula.id())).isEqualTo(formula.solved())));
  }

  private static void hold(Formula formula) {
    Worst worst = new Worst(0, 0, "");
    List<String> broken = new ArrayList<>();
    for (double[][] point : new PointsOfDomain(formula).draw(POINTS)) {
      BigDecimal exact = formula.exact(DIGITS, point);
      double kernel = formula.applyTo(point);
      double nearest = exact.doubleValue();
      double error =
          new BigDecimal(kernel).subtract(exact, MathContext.DECIMAL128).abs().doubleValue();
      double bound = 8 * Math.ulp(nearest) + inputPart(formula, point);
      String at = Arrays.deepToString(point);
      if (!(error <= bound)) {
        broken.add(at + ": kernel " + kernel + ", equation " + exact + ", bound " + bound);
      }
      if (error / bound > worst.shareOfBound()) {
        worst = new Worst(error / Math.ulp(nearest), error / bound, at);
      }
    }
    WORST.put(formula.id(), worst);
    assertThat(broken.stream().limit(5)).as(formula.id()).isEmpty();
  }

  private static double inputPart(Formula formula, double[][] point) {
    Gradient gradient = Tree.gradient(formula.equation(), formula.parameters(), point);
    double part = 0;
    int next = 0;
    for (double[] readings : point) {
      for (double value : readings) {
        part += 2 * Math.abs(gradient.partial(next++)) * Math.ulp(value);
      }
    }
    return part < Double.POSITIVE_INFINITY ? part : 0;
  }

  @AfterAll
  static void writeTable() throws IOException {
    StringBuilder table = new StringBuilder("formula,largest_error_ulp,share_of_bound,at\n");
    WORST.forEach(
        (id, worst) ->
            table.append(
                String.format(
                    Locale.ROOT,
                    "%s,%.2f,%.3f,\"%s\"%n",
                    id,
                    worst.ulps(),
                    worst.shareOfBound(),
                    worst.at())));
    Files.write(
        Path.of("target", "kernel-errors.csv"), table.toString().getBytes(StandardCharsets.UTF_8));
  }
}
