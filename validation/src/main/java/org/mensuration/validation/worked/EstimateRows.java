package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/** Rows of a mean with its error and interval. Stateless and thread-safe. */
final class EstimateRows {
  private EstimateRows() {}

  /** A grid of two columns of words with the head of these rows. */
  static Grid grid() {
    Grid grid = new Grid(2);
    grid.row("", "", "mean", "std. error", "%", "from", "to", "df");
    return grid;
  }

  /** A sample by itself: what it says of basal area, stems and, where noted, volume. */
  static List<String> of(
      PrintUnits units, Estimate basalArea, Estimate stems, @Nullable Estimate volume) {
    Grid grid = grid();
    row(grid, "", "basal area " + units.basalAreaUnit(), basalArea, units::basalArea);
    row(grid, "", "stems " + units.stemsUnit(), stems, units::stems);
    row(grid, "", "volume " + units.densityUnit(), volume, units::density);
    List<String> lines = new ArrayList<>();
    lines.add("  95 % intervals: Student's t, sampling error only");
    lines.addAll(grid.lines(false));
    return lines;
  }

  static void row(
      Grid grid,
      String name,
      String what,
      @Nullable Estimate estimate,
      DoubleFunction<String> show) {
    if (estimate == null) {
      grid.row(name, what, "-");
      return;
    }
    double mean = estimate.mean();
    OptionalDouble half = estimate.halfWidth();
    grid.row(
        name,
        what,
        show.apply(mean),
        PrintUnits.orDash(estimate.error(), show),
        percent(estimate.errorPercent()),
        PrintUnits.orDash(half, h -> show.apply(mean - h)),
        PrintUnits.orDash(half, h -> show.apply(mean + h)),
        half.isPresent() ? PrintUnits.freedom(estimate.degreesOfFreedom()) : "-");
  }

  static String percent(OptionalDouble value) {
    return PrintUnits.orDash(value, p -> PrintUnits.fixed(p, 1));
  }
}
