package org.mensuration.internal.stand;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.internal.catalogue.StandDensityFormulas;
import org.mensuration.internal.catalogue.StandFormulas;
import org.mensuration.internal.statistics.ExactMoments;
import org.mensuration.internal.statistics.ExactSum;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.quantity.StemsPerArea;
import org.mensuration.quantity.VolumePerArea;
import org.mensuration.stand.DensityIndex;
import org.mensuration.stand.Estimated;
import org.mensuration.stand.StandEstimate;
import org.mensuration.stand.StandTable;
import org.mensuration.stand.TallyPlan;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;

/**
 * The estimate of a tally. Immutable and thread-safe.
 *
 * @param plan the plan
 * @param points number of points
 * @param pointsBeyondEdge those of them beyond the edge
 * @param basal basal area
 * @param number stems, of no use if a tree is without diameter
 * @param solid volume, of no use if a tree is without volume
 * @param arithmeticMeanCm arithmetic mean diameter in cm; 0 without trees
 * @param loreyM Lorey's height in m; 0 without trees
 * @param densitySum density index by summation
 * @param cells the stand table, if asked for
 * @param missing what trees lack
 * @param predictedHeights heights from a curve
 * @param leftOut stems left out
 * @param beyondLimit trees beyond their limit
 * @param remarks what must be printed
 */
record CountEstimate(
    TallyPlan plan,
    int points,
    int pointsBeyondEdge,
    PointMean<BasalAreaPerArea> basal,
    PointMean<StemsPerArea> number,
    PointMean<VolumePerArea> solid,
    double arithmeticMeanCm,
    double loreyM,
    double densitySum,
    Optional<StandTable> cells,
    Missing missing,
    long predictedHeights,
    long leftOut,
    long beyondLimit,
    List<String> remarks)
    implements StandEstimate {
  /** Reference diameter of Reineke's index: ten inches. */
  private static final double REFERENCE_CM = 25.4;

  /**
   * The first tree that lacks something.
   *
   * @param diameter without diameter
   * @param volume without volume
   * @param height without height
   */
  record Missing(Optional<String> diameter, Optional<String> volume, Optional<String> height) {}

  static CountEstimate of(TallyPlan plan, double basalAreaUnit, StandSums sums, GroupNames groups) {
    int points = sums.basalArea.points();
    int beyondEdge = sums.basalArea.pointsBeyondEdge();
    int inside = points - beyondEdge;
    Notices notices = sums.notices;
    Missing missing =
        new Missing(notices.noDiameter.text(), notices.noVolume.text(), notices.noHeight.text());
    Optional<StandTable> table = Optional.empty();
    if (sums.cells != null) {
      TableRows rows =
          new TableRows(sums.cells, groups, inside, basalAreaUnit, !missing.volume().isPresent());
      table = Optional.of(rows.table(plan.classes().get(), plan.group()));
    }
    PointMean<BasalAreaPerArea> basal =
        PointMean.of(
            "basal area",
            points,
            sums.basalArea.mean(basalAreaUnit),
            sums.basalArea.deviation() * basalAreaUnit,
            ForestUnits.SQUARE_METRE_PER_HECTARE);
    return new CountEstimate(
        plan,
        points,
        beyondEdge,
        basal,
        mean("stems", sums.stems, ForestUnits.PER_HECTARE),
        mean("volume", sums.volume, ForestUnits.CUBIC_METRE_PER_HECTARE),
        ratio(sums.diameters, sums.stems.total()),
        ratio(sums.heights, sums.basalArea.total()),
        ExactMoments.mean(sums.densities, 1, inside),
        table,
        missing,
        notices.predicted,
        notices.leftOut,
        notices.beyondLimit,
        notices.text(plan, points, beyondEdge, basal.reachesBelowZero()));
  }

  private static <Q extends Quantity<Q>> PointMean<Q> mean(
      String what, PointVariable sum, javax.measure.Unit<Q> unit) {
    return PointMean.of(what, sum.points(), sum.mean(1), sum.deviation(), unit);
  }

  private static double ratio(ExactSum above, ExactSum below) {
    return below.value() > 0 ? ExactMoments.ratio(above, below) : 0;
  }

  @Override
  public Estimated<BasalAreaPerArea> basalArea() {
    return basal;
  }

  @Override
  public Estimated<StemsPerArea> stems() {
    return measured();
  }

  @Override
  public Estimated<VolumePerArea> volume() {
    refuse(missing.volume(), "has no volume or no diameter; volume needs both of every tree");
    return solid;
  }

  @Override
  public Optional<Quantity<Length>> quadraticMeanDiameter() {
    return measured().mean() > 0
        ? Optional.of(Measures.centimetres(quadraticMeanCm()))
        : Optional.empty();
  }

  @Override
  public Optional<Quantity<Length>> arithmeticMeanDiameter() {
    return measured().mean() > 0
        ? Optional.of(Measures.centimetres(arithmeticMeanCm))
        : Optional.empty();
  }

  @Override
  public Optional<Quantity<Length>> loreyHeight() {
    refuse(missing.height(), "has no height; the mean height needs that of every tree");
    return basal.mean() > 0 ? Optional.of(Measures.metres(loreyM)) : Optional.empty();
  }

  @Override
  public DensityIndex densityIndex() {
    double stems = measured().mean();
    return index(
        stems > 0 ? StandDensityFormulas.DENSITY_INDEX.value(stems, quadraticMeanCm()) : 0);
  }

  @Override
  public DensityIndex densityIndexBySummation() {
    if (!plan.densityBySummation()) {
      throw new IllegalStateException("the plan did not ask for the density index by summation");
    }
    measured();
    return index(densitySum);
  }

  private static DensityIndex index(double stems) {
    return new DensityIndex(Measures.perHectare(stems), Measures.centimetres(REFERENCE_CM));
  }

  @Override
  public Optional<Double> relativeDensityMetric() {
    return measured().mean() > 0
        ? Optional.of(StandDensityFormulas.RELATIVE_DENSITY.value(basal.mean(), quadraticMeanCm()))
        : Optional.empty();
  }

  @Override
  public StandTable table() {
    measured();
    return cells.orElseThrow(
        () -> new IllegalStateException("the plan has no diameter classes for a stand table"));
  }

  private double quadraticMeanCm() {
    return StandFormulas.QUADRATIC_MEAN_DIAMETER.value(basal.mean(), number.mean());
  }

  private PointMean<StemsPerArea> measured() {
    refuse(missing.diameter(), "has no diameter; stems and mean diameter need that of every tree");
    return number;
  }

  private static void refuse(Optional<String> tree, String why) {
    if (tree.isPresent()) {
      throw new IllegalStateException(tree.get() + " " + why);
    }
  }
}
