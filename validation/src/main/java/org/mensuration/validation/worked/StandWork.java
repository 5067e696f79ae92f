package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Turns points and ratios into estimates a hectare. Immutable and thread-safe. */
final class StandWork {
  private static final double ALLOWED_ERROR = 10;

  private final Arithmetic arithmetic;
  private final @Nullable Estimate ratio;

  StandWork(Arithmetic arithmetic, @Nullable Estimate ratio) {
    this.arithmetic = arithmetic;
    this.ratio = ratio;
  }

  /** The strata of which at least one point was taken. */
  List<Group> strata(Collection<Stratum> strata, List<PointSum> points) {
    List<Group> groups = new ArrayList<>();
    for (Stratum stratum : strata) {
      List<PointSum> own =
          points.stream().filter(p -> p.stratum().name().equals(stratum.name())).toList();
      List<PointSum> taken = own.stream().filter(PointSum::taken).toList();
      if (!taken.isEmpty()) {
        groups.add(group(stratum, taken, own.size() - taken.size()));
      }
    }
    return groups;
  }

  private Group group(Stratum stratum, List<PointSum> taken, int notTaken) {
    double[] basalAreas = new double[taken.size()];
    double[] stems = new double[taken.size()];
    long withoutDbh = 0;
    for (int i = 0; i < taken.size(); i++) {
      PointSum point = taken.get(i);
      basalAreas[i] = arithmetic.pointBasalArea(stratum.factor(), point.count());
      stems[i] = point.stems();
      withoutDbh += point.withoutDbh();
    }
    return finish(
        stratum.name(),
        stratum.area(),
        taken.size(),
        notTaken,
        Estimate.ofSample(arithmetic, basalAreas),
        withoutDbh == 0 ? Estimate.ofSample(arithmetic, stems) : null);
  }

  /** The strata together, weighted by their areas; each must have one. */
  Group stand(String name, List<Group> strata) {
    double area = 0;
    int points = 0;
    int notTaken = 0;
    boolean stems = true;
    for (Group group : strata) {
      area += group.area().orElseThrow();
      points += group.points();
      notTaken += group.notTaken();
      stems &= group.stems() != null;
    }
    int freedom = points - strata.size();
    return finish(
        name,
        OptionalDouble.of(area),
        points,
        notTaken,
        weighted(strata, strata.stream().map(Group::basalArea).toList(), freedom),
        stems ? weighted(strata, stemsOf(strata), freedom) : null);
  }

  private static List<Estimate> stemsOf(List<Group> strata) {
    List<Estimate> estimates = new ArrayList<>();
    for (Group group : strata) {
      Estimate stems = group.stems();
      if (stems != null) {
        estimates.add(stems);
      }
    }
    return estimates;
  }

  private Estimate weighted(List<Group> strata, List<Estimate> estimates, int freedom) {
    double[] areas = strata.stream().mapToDouble(g -> g.area().orElseThrow()).toArray();
    double[] means = estimates.stream().mapToDouble(Estimate::mean).toArray();
    double mean = arithmetic.stratifiedMean(areas, means);
    boolean known = estimates.stream().allMatch(e -> e.error().isPresent());
    double[] errors = estimates.stream().mapToDouble(e -> e.error().orElse(0)).toArray();
    return Estimate.of(
        arithmetic,
        mean,
        known
            ? OptionalDouble.of(arithmetic.stratifiedError(areas, errors))
            : OptionalDouble.empty(),
        freedom);
  }

  private Group finish(
      String name,
      OptionalDouble area,
      int points,
      int notTaken,
      Estimate basalArea,
      @Nullable Estimate stems) {
    OptionalDouble mean =
        stems != null && stems.mean() > 0 && basalArea.mean() > 0
            ? OptionalDouble.of(arithmetic.quadraticMean(basalArea.mean(), stems.mean()))
            : OptionalDouble.empty();
    return new Group(
        name,
        area,
        points,
        notTaken,
        basalArea,
        stems,
        mean,
        volume(basalArea),
        needed(basalArea, points));
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
    int freedom = Math.min(basalArea.degreesOfFreedom(), ratio.degreesOfFreedom());
    return Estimate.of(arithmetic, mean, OptionalDouble.of(mean * percent / 100), freedom);
  }

  /** Takes the error back to the spread between single points, strata in their present shares. */
  private OptionalDouble needed(Estimate basalArea, int points) {
    OptionalDouble percent = basalArea.errorPercent();
    if (percent.isEmpty() || !(percent.getAsDouble() > 0)) {
      return OptionalDouble.empty();
    }
    double variation = percent.getAsDouble() / arithmetic.standardError(1, points);
    return OptionalDouble.of(arithmetic.pointsNeeded(variation, ALLOWED_ERROR));
  }
}
