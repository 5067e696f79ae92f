package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mensuration.units.Measures.in;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.mensuration.diameter.SectionFit;
import org.mensuration.units.ForestUnits;

/**
 * A thousand seeded slices: the true diameter lies within two standard errors in at least 90 %, and
 * the mean error stays below a quarter of a standard error. Writes the figures by arc to
 * target/section-accuracy.csv.
 */
@Tag("catalogue")
class SectionAccuracyTest {
  private static final int SLICES = 1000;
  private static final double[] ARCS = {90, 120, 180, 270, 360};

  /** By class of arc, then of all; what the Javadoc of {@link CrossSections} states. */
  private static final int[] STATED_PER_CENT = {95, 95, 97, 96, 96};

  private static final double[] STATED_ERROR_MM = {6.6, 2.9, 1.3, 0.8, 2.1};

  @Test
  void aThousandSlices() throws IOException {
    int bins = ARCS.length - 1;
    Figures[] figures = new Figures[bins + 1];
    for (int i = 0; i <= bins; i++) {
      figures[i] = new Figures();
    }
    Random random = new Random(20261125);
    for (int i = 0; i < SLICES; i++) {
      Slices.Slice slice = Slices.draw(random);
      int bin = 0;
      while (slice.arc() > ARCS[bin + 1]) {
        bin++;
      }
      try {
        SectionFit fit = CrossSections.circle(slice.points());
        figures[bin].add(slice, fit);
        figures[bins].add(slice, fit);
      } catch (ArithmeticException noFit) {
        figures[bin].failed++;
        figures[bins].failed++;
      }
    }
    StringBuilder table =
        new StringBuilder(
            "arc_deg,slices,within_two_errors,mean_error_mm,mean_standard_error_mm,"
                + "mean_over_standard_error,strays,strays_found,no_fit\n");
    for (int i = 0; i <= bins; i++) {
      String name = i < bins ? (int) ARCS[i] + "-" + (int) ARCS[i + 1] : "all";
      table.append(name).append(figures[i].line());
    }
    Files.write(
        Path.of("target", "section-accuracy.csv"),
        table.toString().getBytes(StandardCharsets.UTF_8));
    for (int i = 0; i <= bins; i++) {
      Figures each = figures[i];
      assertThat(Math.round(100.0 * each.within / each.count)).isEqualTo(STATED_PER_CENT[i]);
      assertThat(Math.round(10_000 * each.standardError / each.count) / 10.0)
          .isEqualTo(STATED_ERROR_MM[i]);
      assertThat(each.failed).as(table.toString()).isZero();
      assertThat((double) each.within / each.count)
          .as(table.toString())
          .isGreaterThanOrEqualTo(0.9);
      assertThat(Math.abs(each.error / each.standardError)).as(table.toString()).isLessThan(0.25);
      assertThat(Math.abs(each.share / each.count)).as(table.toString()).isLessThan(0.25);
    }
  }

  private static final class Figures {
    private int count;
    private int within;
    private int failed;
    private int strays;
    private long found;
    private double error;
    private double standardError;
    private double share;

    void add(Slices.Slice slice, SectionFit fit) {
      double miss = in(fit.diameter(), ForestUnits.METRE) - slice.diameter();
      double spread = in(fit.standardError(), ForestUnits.METRE);
      count++;
      within += Math.abs(miss) <= 2 * spread ? 1 : 0;
      error += miss;
      standardError += spread;
      share += miss / spread;
      strays += slice.strays();
      int first = slice.points().size() - slice.strays();
      found += fit.strays().stream().filter(index -> index >= first).count();
    }

    String line() {
      return String.format(
          Locale.ROOT,
          ",%d,%.3f,%.3f,%.3f,%.3f,%d,%d,%d%n",
          count,
          (double) within / count,
          1000 * error / count,
          1000 * standardError / count,
          share / count,
          strays,
          found,
          failed);
    }
  }
}
