package org.mensuration.stand;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.quantity.StemsPerArea;

/**
 * What counts at sample points say about a stand. Implementations are immutable and thread-safe.
 */
public interface StandEstimate {

  /**
   * The gauge that counted.
   *
   * @return the gauge
   */
  AngleGauge gauge();

  /**
   * The number of points, empty ones included.
   *
   * @return at least 1
   */
  int points();

  /**
   * Basal area per area.
   *
   * @return mean over the points
   */
  Estimated<BasalAreaPerArea> basalArea();

  /**
   * Stems per area.
   *
   * @return mean over the points
   * @throws IllegalStateException if a counted tree has no diameter; the message names its point
   */
  Estimated<StemsPerArea> stems();

  /**
   * Quadratic mean diameter of the stand, from the means of basal area and stems.
   *
   * @return the diameter; empty if no tree was counted
   * @throws IllegalStateException if a counted tree has no diameter; the message names its point
   */
  Optional<Quantity<Length>> quadraticMeanDiameter();
}
