package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.mensuration.Stands;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.quantity.StemsPerArea;
import org.mensuration.stand.Estimated;
import org.mensuration.stand.StandEstimate;
import org.mensuration.stand.StratifiedEstimate;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;

/** Turns tallies and ratios into estimates a hectare. Immutable and thread-safe. */
final class StandWork {
  private static final double ALLOWED_ERROR = 10;

  private final Arithmetic arithmetic;
  private final @Nullable Estimate ratio;
  private final Map<String, StratumTally> tallies;

  StandWork(Arithmetic arithmetic, @Nullable Estimate ratio, Map<String, StratumTally> tallies) {
    this.arithmetic = arithmetic;
    this.ratio = ratio;
    this.tallies = tallies;
  }

  /** The strata of which at least one point was taken. */
  List<Group> strata(Collection<Stratum> strata, List<PointSum> points) {
    List<Group> groups = new ArrayList<>();
    for (Stratum stratum : strata) {
      StratumTally tally = Objects.requireNonNull(tallies.get(stratum.name()));
      Optional<StandEstimate> estimate = tally.estimate();
      if (estimate.isPresent()) {
        List<PointSum> own =
            points.stream().filter(p -> p.stratum().name().equals(stratum.name())).toList();
        groups.add(group(stratum, tally, estimate.get(), own));
      }
    }
    return groups;
  }

  private Group group(
      Stratum stratum, StratumTally tally, StandEstimate estimate, List<PointSum> points) {
    boolean measured = points.stream().allMatch(p -> p.withoutDbh() == 0);
    int notTaken = (int) points.stream().filter(p -> !p.taken()).count();
    return group(
        stratum.name(),
        stratum.area(),
        estimate.points(),
        notTaken,
        estimate.basalArea(),
        measured ? estimate.stems() : null,
        measured
            ? OptionalDouble.of(
                estimate
                    .quadraticMeanDiameter()
                    .map(d -> Measures.in(d, ForestUnits.CENTIMETRE))
                    .orElse(0.0))
            : OptionalDouble.empty(),
        measured ? Optional.of(StandFigures.of(stratum, tally, estimate)) : Optional.empty());
  }

  /** The strata together, weighted by their areas; each must have one. */
  Group stand(String name, List<Stratum> strata, List<Group> groups) {
    List<org.mensuration.stand.Stratum> known = new ArrayList<>();
    for (Stratum stratum : strata) {
      StratumTally tally = Objects.requireNonNull(tallies.get(stratum.name()));
      known.add(
          new org.mensuration.stand.Stratum(
              stratum.name(),
              Measures.hectares(stratum.area().orElseThrow()),
              tally.estimate().orElseThrow()));
    }
    StratifiedEstimate estimate = Stands.stratified(known);
    boolean measured = groups.stream().allMatch(g -> g.stems() != null);
    return group(
        name,
        OptionalDouble.of(Measures.in(estimate.area(), ForestUnits.HECTARE)),
        groups.stream().mapToInt(Group::points).sum(),
        groups.stream().mapToInt(Group::notTaken).sum(),
        estimate.basalArea(),
        measured ? estimate.stems() : null,
        measured
            ? OptionalDouble.of(
                estimate
                    .quadraticMeanDiameter()
                    .map(d -> Measures.in(d, ForestUnits.CENTIMETRE))
                    .orElse(0.0))
            : OptionalDouble.empty(),
        Optional.empty());
  }

  private Group group(
      String name,
      OptionalDouble area,
      int points,
      int notTaken,
      Estimated<BasalAreaPerArea> basalArea,
      @Nullable Estimated<StemsPerArea> stems,
      OptionalDouble mean,
      Optional<Group.Figures> figures) {
    Estimate count = Estimate.of(arithmetic, basalArea, ForestUnits.SQUARE_METRE_PER_HECTARE);
    return new Group(
        name,
        area,
        points,
        notTaken,
        count,
        stems == null ? null : Estimate.of(arithmetic, stems, ForestUnits.PER_HECTARE),
        mean.isPresent() && mean.getAsDouble() > 0 ? mean : OptionalDouble.empty(),
        volume(count),
        needed(basalArea, count),
        figures);
  }

  private @Nullable Estimate volume(Estimate basalArea) {
    if (ratio == null) {
      return null;
    }
    double mean = arithmetic.volume(basalArea.mean(), ratio.mean());
    OptionalDouble ofCount = basalArea.errorPercent();
    OptionalDouble ofRatio = ratio.errorPercent();
    if (ofCount.isEmpty() || ofRatio.isEmpty()) {
      return Estimate.of(arithmetic, mean, OptionalDouble.empty(), 0);
    }
    double percent = arithmetic.combined(ofCount.getAsDouble(), ofRatio.getAsDouble());
    // The smaller number of degrees of freedom never makes the interval too short.
    double freedom = Math.min(basalArea.degreesOfFreedom(), ratio.degreesOfFreedom());
    return Estimate.of(arithmetic, mean, OptionalDouble.of(mean * percent / 100), freedom);
  }

  private static OptionalDouble needed(Estimated<BasalAreaPerArea> basalArea, Estimate count) {
    OptionalDouble percent = count.errorPercent();
    return percent.isPresent() && percent.getAsDouble() > 0
        ? OptionalDouble.of((double) basalArea.pointsNeeded(ALLOWED_ERROR))
        : OptionalDouble.empty();
  }
}
