package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.mensuration.FixedAreaPlots;
import org.mensuration.Stands;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.gauge.FixedPlots;
import org.mensuration.gauge.PlotRadii;
import org.mensuration.stand.Estimated;
import org.mensuration.stand.StandEstimate;
import org.mensuration.stand.TallyPlan;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.validation.worked.NotedPlot.PlotTree;
import org.mensuration.validation.worked.PlotEstimate.PlotSum;
import org.mensuration.validation.worked.PlotNotes.NamedCircle;

/** Works plots of fixed size out, a stratum at a time. Not thread-safe. */
final class PlotWork {
  private final Arithmetic arithmetic;
  private final Cautions cautions;
  private final List<NamedCircle> circles;
  private final FixedPlots nested;

  private PlotWork(Arithmetic arithmetic, Cautions cautions, List<NamedCircle> circles) {
    this.arithmetic = arithmetic;
    this.cautions = cautions;
    this.circles =
        circles.stream()
            .sorted(Comparator.comparingDouble(NamedCircle::fromDbh))
            .collect(Collectors.toList());
    this.nested = PlotNotes.nested(circles);
  }

  static List<PlotEstimate> estimates(
      Arithmetic arithmetic, Collection<Stratum> strata, PlotNotes notes, Cautions cautions) {
    List<PlotEstimate> estimates = new ArrayList<>();
    for (Stratum stratum : strata) {
      List<NotedPlot> plots =
          notes.plots().stream().filter(p -> p.stratum().name().equals(stratum.name())).toList();
      if (!plots.isEmpty()) {
        estimates.add(new PlotWork(arithmetic, cautions, notes.circles()).estimate(stratum, plots));
      }
    }
    return estimates;
  }

  private PlotEstimate estimate(Stratum stratum, List<NotedPlot> plots) {
    TallyPlan plan = TallyPlan.of(nested).with(stratum.choices().layout());
    List<CountPoint> points = plots.stream().map(this::point).toList();
    boolean volumes = true;
    for (NotedPlot plot : plots) {
      for (PlotTree tree : plot.trees()) {
        if (tree.volume().isEmpty()) {
          volumes = false;
          cautions.add(
              "Trees on plots without a volume, so no volume from plots",
              "plot " + plot.name() + " tree " + tree.tree());
        }
      }
    }
    List<PlotSum> sums = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      StandEstimate alone = Stands.estimate(plan, List.of(points.get(i)));
      sums.add(sum(plots.get(i), points.get(i), alone, volumes));
    }
    StandEstimate all = Stands.estimate(plan, points);
    OptionalDouble population = population(stratum, plots.size());
    return new PlotEstimate(
        stratum,
        circles,
        circles.stream().map(c -> arithmetic.expansionFactor(c.area())).toList(),
        sums,
        finite(all.basalArea(), ForestUnits.SQUARE_METRE_PER_HECTARE, plots.size(), population),
        finite(all.stems(), ForestUnits.PER_HECTARE, plots.size(), population),
        volumes
            ? finite(all.volume(), ForestUnits.CUBIC_METRE_PER_HECTARE, plots.size(), population)
            : null,
        population);
  }

  private CountPoint point(NotedPlot plot) {
    List<CountedTree> trees = new ArrayList<>();
    for (PlotTree noted : plot.trees()) {
      CountedTree tree = CountedTree.of(Measures.centimetres(noted.dbh()));
      trees.add(
          noted.volume().isPresent()
              ? tree.withVolume(Measures.cubicMetres(noted.volume().getAsDouble()))
              : tree);
    }
    return new CountPoint(plot.name(), trees).correctedBy(radii(plot, circles.get(0)).correction());
  }

  private static PlotRadii radii(NotedPlot plot, NamedCircle circle) {
    return FixedAreaPlots.onSlope(
        Measures.squareMetres(circle.area()), Measures.degrees(plot.slope()), plot.layout());
  }

  private PlotSum sum(NotedPlot plot, CountPoint point, StandEstimate alone, boolean volumes) {
    return new PlotSum(
        plot,
        circles.stream().map(c -> radii(plot, c)).toList(),
        point.sweep().factor(),
        Measures.in(alone.basalArea().value(), ForestUnits.SQUARE_METRE_PER_HECTARE),
        Measures.in(alone.stems().value(), ForestUnits.PER_HECTARE),
        volumes
            ? OptionalDouble.of(
                Measures.in(alone.volume().value(), ForestUnits.CUBIC_METRE_PER_HECTARE))
            : OptionalDouble.empty());
  }

  /** By the smallest circle, since more plots make the correction less. */
  private OptionalDouble population(Stratum stratum, int plots) {
    if (stratum.area().isEmpty()) {
      return OptionalDouble.empty();
    }
    double smallest = circles.stream().mapToDouble(NamedCircle::area).min().orElseThrow();
    double population = arithmetic.expansionFactor(smallest) * stratum.area().getAsDouble();
    if (population < Math.max(2, plots)) {
      cautions.add(
          "Stratum smaller than its plots together, so their error has no finite correction",
          stratum.name());
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(population);
  }

  private <Q extends Quantity<Q>> Estimate finite(
      Estimated<Q> estimated, Unit<Q> unit, int plots, OptionalDouble population) {
    Estimate plain = Estimate.of(arithmetic, estimated, unit);
    if (population.isEmpty() || plain.error().isEmpty()) {
      return plain;
    }
    double deviation = plain.error().getAsDouble() * Math.sqrt(plots);
    double error = arithmetic.standardErrorFinite(deviation, plots, population.getAsDouble());
    return Estimate.of(
        arithmetic, plain.mean(), OptionalDouble.of(error), plain.degreesOfFreedom());
  }
}
