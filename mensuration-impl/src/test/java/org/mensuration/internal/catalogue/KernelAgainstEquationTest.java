package org.mensuration.internal.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
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

/**
 * Holds every kernel to its own printed equation in 50 digits: the error is at most 8 ulp of the
 * exact value plus twice what one ulp of each input can do. Writes the table of largest errors to
 * target/kernel-errors.csv.
 */
@Tag("catalogue")
class KernelAgainstEquationTest {
  private static final int POINTS = 1000;

  /** Formulas without a tree value, and why. A formula that is solved and not here is a defect. */
  static final Map<String, String> SOLVED =
      Map.ofEntries(
          Map.entry("diameter/circle-geometric-radius", "a fit to points"),
          Map.entry("diameter/circle-geometric-squares", "a fit to points"),
          Map.entry("diameter/circle-geometric-x", "a fit to points"),
          Map.entry("diameter/circle-geometric-y", "a fit to points"),
          Map.entry("diameter/circle-linear-radius", "a fit to points"),
          Map.entry("diameter/circle-linear-x", "a fit to points"),
          Map.entry("diameter/circle-linear-y", "a fit to points"),
          Map.entry("diameter/circle-unit-norm-radius", "a fit to points"),
          Map.entry("diameter/circle-unit-norm-x", "a fit to points"),
          Map.entry("diameter/circle-unit-norm-y", "a fit to points"),
          Map.entry("diameter/ellipse-girth", "an elliptic integral"),
          Map.entry("diameter/ellipse-girth-excess", "an elliptic integral"),
          Map.entry("sampling/mean-interval", "holds a quantile of Student's t"),
          Map.entry("sampling/points-needed", "a search for the smallest whole number"),
          Map.entry("sampling/points-needed-finite", "a search for the smallest whole number"),
          Map.entry("sampling/points-needed-neyman", "a search for the smallest whole number"),
          Map.entry(
              "sampling/points-needed-proportional", "a search for the smallest whole number"),
          Map.entry("stem/taper-variable-exponent-volume", "an integral without a closed form"),
          Map.entry("stand/dominant-height", "a mean over the thickest trees, found by sorting"),
          Map.entry(
              "stand/dominant-height-counted", "a mean over the thickest trees, found by sorting"),
          Map.entry("stand/top-diameter", "a mean over the thickest trees, found by sorting"));

  private static final Map<String, KernelCheck> WORST = new TreeMap<>();

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
    KernelCheck check = new KernelCheck(formula, POINTS);
    WORST.put(formula.id(), check);
    assertThat(check.broken()).as(formula.id()).isEmpty();
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
