package org.mensuration.internal.stand;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.gauge.CountPoint;
import org.mensuration.internal.catalogue.EstimationFormulas;
import org.mensuration.internal.catalogue.SamplingFormulas;
import org.mensuration.internal.catalogue.StandFormulas;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.quantity.StemsPerArea;
import org.mensuration.quantity.VolumePerArea;
import org.mensuration.stand.Estimated;
import org.mensuration.stand.EstimatedNumber;
import org.mensuration.stand.StandEstimate;
import org.mensuration.stand.StratifiedEstimate;
import org.mensuration.stand.Stratum;
import org.mensuration.stand.TallyPlan;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;

/** Strata weighted by their areas. Immutable and thread-safe. */
public final class StrataEstimate implements StratifiedEstimate {
  private final List<Stratum> strata;
  private final double[] hectares;
  private final double area;

  private StrataEstimate(List<Stratum> strata) {
    this.strata = List.copyOf(strata);
    this.hectares =
        strata.stream().mapToDouble(s -> Measures.in(s.area(), ForestUnits.HECTARE)).toArray();
    List<Quantity<Area>> areas = new ArrayList<>();
    strata.forEach(stratum -> areas.add(stratum.area()));
    this.area = Measures.in(Measures.sum(areas, ForestUnits.HECTARE), ForestUnits.HECTARE);
  }

  /**
   * A stand of strata.
   *
   * @param strata at least one
   * @return the estimate
   * @throws IllegalArgumentException if there is none, or two have one name
   */
  public static StrataEstimate of(List<Stratum> strata) {
    if (strata.isEmpty()) {
      throw new IllegalArgumentException("no strata: a stand has at least one");
    }
    Set<String> names = new HashSet<>();
    for (Stratum stratum : strata) {
      if (!names.add(stratum.name())) {
        throw new IllegalArgumentException("stratum " + stratum.name() + " is given twice");
      }
    }
    return new StrataEstimate(strata);
  }

  /**
   * A stratum from its points.
   *
   * @param name name of the stratum
   * @param area its area
   * @param plan what is counted
   * @param points its points
   * @return the stratum
   * @throws IllegalArgumentException if it has no point, or a point is refused
   */
  public static Stratum stratum(
      String name, Quantity<Area> area, TallyPlan plan, Iterable<? extends CountPoint> points) {
    ExactStandTally tally = ExactStandTally.of(plan);
    for (CountPoint point : points) {
      tally.add(point);
    }
    if (tally.isEmpty()) {
      throw new IllegalArgumentException(
          "stratum " + name + " has no points; one without trees is a point too");
    }
    return new Stratum(name, area, tally.estimate());
  }

  @Override
  public List<Stratum> strata() {
    return strata;
  }

  @Override
  public Quantity<Area> area() {
    return Measures.hectares(area);
  }

  @Override
  public Estimated<BasalAreaPerArea> basalArea() {
    return combined("basal area", StandEstimate::basalArea, ForestUnits.SQUARE_METRE_PER_HECTARE);
  }

  @Override
  public Estimated<StemsPerArea> stems() {
    return combined("stems", StandEstimate::stems, ForestUnits.PER_HECTARE);
  }

  @Override
  public Estimated<VolumePerArea> volume() {
    return combined("volume", StandEstimate::volume, ForestUnits.CUBIC_METRE_PER_HECTARE);
  }

  @Override
  public Optional<Quantity<Length>> quadraticMeanDiameter() {
    double stems = Measures.in(stems().value(), ForestUnits.PER_HECTARE);
    if (!(stems > 0)) {
      return Optional.empty();
    }
    double basal = Measures.in(basalArea().value(), ForestUnits.SQUARE_METRE_PER_HECTARE);
    return Optional.of(
        Measures.centimetres(StandFormulas.QUADRATIC_MEAN_DIAMETER.value(basal, stems)));
  }

  @Override
  public Estimated<Area> totalBasalArea() {
    return total(
        combined("basal area", StandEstimate::basalArea, ForestUnits.SQUARE_METRE_PER_HECTARE),
        ForestUnits.SQUARE_METRE);
  }

  @Override
  public EstimatedNumber totalStems() {
    PointMean<StemsPerArea> mean =
        combined("stems", StandEstimate::stems, ForestUnits.PER_HECTARE).mean();
    return new EstimatedNumber(mean.mean() * area, mean.error() * area, mean.degreesOfFreedom());
  }

  @Override
  public Estimated<Volume> totalVolume() {
    return total(
        combined("volume", StandEstimate::volume, ForestUnits.CUBIC_METRE_PER_HECTARE),
        ForestUnits.CUBIC_METRE);
  }

  private <Q extends Quantity<Q>, T extends Quantity<T>> StrataMean<T> total(
      StrataMean<Q> perArea, Unit<T> unit) {
    PointMean<Q> mean = perArea.mean();
    return new StrataMean<>(
        new PointMean<>(
            "total " + mean.what(),
            mean.mean() * area,
            mean.error() * area,
            mean.deviation() * area,
            mean.degreesOfFreedom(),
            unit),
        perArea.hectares(),
        perArea.deviations().stream().map(d -> d * area).collect(Collectors.toList()));
  }

  private <Q extends Quantity<Q>> StrataMean<Q> combined(
      String what, Function<StandEstimate, Estimated<Q>> figure, Unit<Q> unit) {
    int n = strata.size();
    double[] means = new double[n];
    double[] errors = new double[n];
    double[] deviations = new double[n];
    double[] counts = new double[n];
    boolean spread = true;
    for (int i = 0; i < n; i++) {
      Stratum stratum = strata.get(i);
      Estimated<Q> estimated = figureOf(stratum, figure);
      means[i] = Measures.in(estimated.value(), unit);
      counts[i] = stratum.estimate().points();
      spread &= counts[i] > 1;
      if (spread) {
        errors[i] = Measures.in(estimated.standardError(), unit);
        deviations[i] = errors[i] * Math.sqrt(counts[i]);
      }
    }
    double mean = SamplingFormulas.STRATIFIED_MEAN.applyTo(hectares, means);
    if (!spread) {
      return strataMean(
          new PointMean<>(what + " (a stratum has one point)", mean, 0, 0, 0, unit), deviations);
    }
    double error = SamplingFormulas.STRATIFIED_STANDARD_ERROR.applyTo(hectares, errors);
    double deviation = EstimationFormulas.WEIGHTED_VARIATION.applyTo(hectares, deviations);
    return strataMean(
        new PointMean<>(what, mean, error, deviation, freedom(errors, counts, error), unit),
        deviations);
  }

  private <Q extends Quantity<Q>> StrataMean<Q> strataMean(PointMean<Q> mean, double[] deviations) {
    return new StrataMean<>(
        mean,
        Arrays.stream(hectares).boxed().collect(Collectors.toList()),
        Arrays.stream(deviations).boxed().collect(Collectors.toList()));
  }

  private double freedom(double[] errors, double[] counts, double error) {
    if (error > 0) {
      return EstimationFormulas.EFFECTIVE_FREEDOM.applyTo(hectares, errors, counts);
    }
    double freedom = 0;
    for (double count : counts) {
      freedom += count - 1;
    }
    return freedom;
  }

  private static <Q extends Quantity<Q>> Estimated<Q> figureOf(
      Stratum stratum, Function<StandEstimate, Estimated<Q>> figure) {
    try {
      return figure.apply(stratum.estimate());
    } catch (IllegalStateException missing) {
      throw new IllegalStateException(
          "stratum " + stratum.name() + ": " + missing.getMessage(), missing);
    }
  }

  @Override
  public List<String> remarks() {
    List<String> lines = new ArrayList<>();
    for (Stratum stratum : strata) {
      for (String line : stratum.estimate().remarks()) {
        lines.add(stratum.name() + ": " + line);
      }
    }
    return List.copyOf(lines);
  }
}
