package org.mensuration.stand;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.quantity.StemsPerArea;
import org.mensuration.quantity.VolumePerArea;

/**
 * A stand of one or more strata of known areas, per area and in total. Degrees of freedom of the
 * combined errors are the effective ones, which need not be whole. Points needed are those of
 * Neyman's allocation. Implementations are immutable and thread-safe.
 */
public interface StratifiedEstimate {

  /**
   * The strata.
   *
   * @return at least one
   */
  List<Stratum> strata();

  /**
   * Area of all strata.
   *
   * @return the area
   */
  Quantity<Area> area();

  /**
   * Basal area per area.
   *
   * @return mean weighted by area
   */
  Estimated<BasalAreaPerArea> basalArea();

  /**
   * Stems per area.
   *
   * @return mean weighted by area
   * @throws IllegalStateException if a counted tree has no diameter
   */
  Estimated<StemsPerArea> stems();

  /**
   * Volume per area.
   *
   * @return mean weighted by area
   * @throws IllegalStateException if a counted tree has no diameter or no volume
   */
  Estimated<VolumePerArea> volume();

  /**
   * Quadratic mean diameter.
   *
   * @return the diameter; empty if no tree was counted
   * @throws IllegalStateException if a counted tree has no diameter
   */
  Optional<Quantity<Length>> quadraticMeanDiameter();

  /**
   * Basal area of the whole stand.
   *
   * @return the total
   */
  Estimated<Area> totalBasalArea();

  /**
   * Stems of the whole stand.
   *
   * @return the total with its standard error
   * @throws IllegalStateException if a counted tree has no diameter
   */
  EstimatedNumber totalStems();

  /**
   * Volume of the whole stand.
   *
   * @return the total
   * @throws IllegalStateException if a counted tree has no diameter or no volume
   */
  Estimated<Volume> totalVolume();

  /**
   * What must be printed beside the figures.
   *
   * @return one line each, with the name of the stratum in front
   */
  List<String> remarks();
}
