package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.List;
import org.mensuration.quantity.VolumePerArea;
import org.mensuration.stand.CombinedVolume;
import org.mensuration.stand.Interval;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;

/** Prints volumes from what was measured beside the count. Not thread-safe. */
final class MeasurePages {
  private final PrintUnits units;
  private final List<String> lines = new ArrayList<>();

  private MeasurePages(PrintUnits units) {
    this.units = units;
  }

  static List<String> of(List<MeasuredVolume> volumes, PrintUnits units) {
    MeasurePages pages = new MeasurePages(units);
    for (MeasuredVolume volume : volumes) {
      if (volume.critical().isPresent()) {
        pages.critical(volume, volume.critical().get());
      } else {
        pages.product(volume, volume.product().orElseThrow());
      }
    }
    return pages.lines;
  }

  private void product(MeasuredVolume volume, CombinedVolume product) {
    boolean trees = volume.secondFactor().isPresent();
    head(volume, trees ? "trees measured by a second factor" : "count points and measured points");
    Grid grid = new Grid(2);
    grid.row(
        "Counted",
        count(volume) + ", each standing for " + units.factor(volume.stratum().factor()));
    grid.row(
        "Measured",
        trees
            ? volume.measuredTrees()
                + " trees, those in by the larger factor "
                + units.factor(volume.secondFactor().getAsDouble())
            : volume.measuredTrees()
                + " trees: every counted tree of "
                + volume.measuredPoints()
                + " measured points with trees");
    grid.row(
        "Basal area",
        units.basalArea(volume.basalArea())
            + " "
            + units.basalAreaUnit()
            + ", std. error "
            + percent(product.countErrorPercent())
            + ", df "
            + (volume.points() - 1));
    grid.row(
        "Ratio",
        units.ratio(product.ratio().value())
            + " "
            + units.ratioUnit()
            + ", std. error "
            + percent(product.ratioErrorPercent())
            + ", df "
            + PrintUnits.freedom(product.ratio().degreesOfFreedom())
            + (trees
                ? ": mean of volume over basal area, a tree"
                : ": sum of volumes over sum of basal areas, a point"));
    double mean = Measures.in(product.volume(), ForestUnits.CUBIC_METRE_PER_HECTARE);
    grid.row("Volume", units.density(mean) + " " + units.densityUnit() + ", bark as in the notes");
    grid.row(
        "Error",
        finely(product.firstOrderErrorPercent())
            + " combined to first order (sampling/combined-error),");
    grid.row(
        "",
        finely(product.exactErrorPercent())
            + " by the exact variance of a product (sampling/product-variance)");
    Interval<VolumePerArea> interval = product.interval(95);
    grid.row(
        "Interval",
        units.density(Measures.in(interval.lower(), ForestUnits.CUBIC_METRE_PER_HECTARE))
            + " to "
            + units.density(Measures.in(interval.upper(), ForestUnits.CUBIC_METRE_PER_HECTARE))
            + " "
            + units.densityUnit()
            + " with 95 %: first order, df "
            + PrintUnits.freedom(product.degreesOfFreedom())
            + " effective");
    lines.addAll(grid.lines(true));
    if (trees) {
      Wrapped.add(
          lines,
          "  ",
          "Each measured tree is taken as a sample by itself; where trees of one point are alike,"
              + " the error of the ratio is larger.");
    }
    volume.remarks().forEach(remark -> Wrapped.add(lines, "  ", remark));
  }

  private void critical(MeasuredVolume volume, Estimate estimate) {
    head(volume, "critical heights");
    Grid grid = EstimateRows.grid();
    EstimateRows.row(grid, "", "volume " + units.densityUnit(), estimate, units::density);
    lines.addAll(grid.lines(false));
    Wrapped.add(
        lines,
        "  ",
        count(volume)
            + "; of each the height at which its stem just fills the gauge. Volume at a point = "
            + units.factor(volume.stratum().factor())
            + " × sum of these heights (point/critical-height-volume); no volume of a tree is"
            + " needed. Near trees are hard to read.");
  }

  private void head(MeasuredVolume volume, String by) {
    lines.add("");
    lines.add(
        "Volume of "
            + volume.stratum().name()
            + " by "
            + by
            + ": another estimate, not to be added");
  }

  private static String count(MeasuredVolume volume) {
    return PrintUnits.fixed(volume.counted(), 1)
        + " trees, with their weights, at "
        + volume.points()
        + " points";
  }

  private static String percent(double percent) {
    return PrintUnits.fixed(percent, 1) + " %";
  }

  /** With the digits that keep both combined errors apart. */
  private static String finely(double percent) {
    return PrintUnits.fixed(percent, 2) + " %";
  }
}
