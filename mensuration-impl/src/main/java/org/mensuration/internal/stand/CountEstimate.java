package org.mensuration.internal.stand;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.internal.catalogue.StandFormulas;
import org.mensuration.internal.statistics.ExactMoments;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.quantity.StemsPerArea;
import org.mensuration.stand.Estimated;
import org.mensuration.stand.StandEstimate;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;

/**
 * The estimate of counts with one gauge. Immutable and thread-safe.
 *
 * @param gauge the gauge
 * @param basal basal area in m²/ha
 * @param number stems per hectare, of no use if a tree is without diameter
 * @param unmeasured the first counted tree without diameter
 */
public record CountEstimate(
    AngleGauge gauge,
    PointMean<BasalAreaPerArea> basal,
    PointMean<StemsPerArea> number,
    Optional<String> unmeasured)
    implements StandEstimate {

  static CountEstimate of(
      AngleGauge gauge, ExactMoments basalArea, ExactMoments stems, Optional<String> unmeasured) {
    return new CountEstimate(
        gauge,
        PointMean.of("basal area", basalArea, ForestUnits.SQUARE_METRE_PER_HECTARE),
        PointMean.of("stems", stems, ForestUnits.PER_HECTARE),
        unmeasured);
  }

  @Override
  public int points() {
    return basal.points();
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
  public Optional<Quantity<Length>> quadraticMeanDiameter() {
    double stems = measured().mean();
    return stems > 0
        ? Optional.of(
            Measures.centimetres(StandFormulas.QUADRATIC_MEAN_DIAMETER.value(basal.mean(), stems)))
        : Optional.empty();
  }

  private PointMean<StemsPerArea> measured() {
    if (unmeasured.isPresent()) {
      throw new IllegalStateException(
          unmeasured.get() + " has no diameter; stems and mean diameter need that of every tree");
    }
    return number;
  }
}
