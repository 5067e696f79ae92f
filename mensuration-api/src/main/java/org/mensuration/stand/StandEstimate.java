package org.mensuration.stand;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.gauge.TreeSelection;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.quantity.StemsPerArea;
import org.mensuration.quantity.VolumePerArea;

/**
 * What counts at sample points say about a stand. Implementations are immutable and thread-safe.
 */
public interface StandEstimate {

  /**
   * What was counted and by which choices.
   *
   * @return the plan
   */
  TallyPlan plan();

  /**
   * The gauge or the plots that counted.
   *
   * @return the gauge or the plots
   */
  default TreeSelection selection() {
    return plan().selection();
  }

  /**
   * The number of points, empty ones and those beyond the edge included.
   *
   * @return at least 1
   */
  int points();

  /**
   * The number of points beyond the edge. Figures per area are over the points inside; errors,
   * degrees of freedom and points needed are of all points.
   *
   * @return zero but on an extended grid
   */
  int pointsBeyondEdge();

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
   * Volume per area.
   *
   * @return mean over the points
   * @throws IllegalStateException if a counted tree has no diameter or no volume; the message names
   *     its point
   */
  Estimated<VolumePerArea> volume();

  /**
   * Quadratic mean diameter of the stand, from the means of basal area and stems.
   *
   * @return the diameter; empty if no tree was counted
   * @throws IllegalStateException if a counted tree has no diameter; the message names its point
   */
  Optional<Quantity<Length>> quadraticMeanDiameter();

  /**
   * Arithmetic mean diameter of the stand's stems.
   *
   * @return the diameter; empty if no tree was counted
   * @throws IllegalStateException if a counted tree has no diameter; the message names its point
   */
  Optional<Quantity<Length>> arithmeticMeanDiameter();

  /**
   * Lorey's height: the mean height weighted by basal area.
   *
   * @return the height; empty if no tree was counted
   * @throws IllegalStateException if a counted tree has no height; the message names its point
   */
  Optional<Quantity<Length>> loreyHeight();

  /**
   * Reineke's stand density index by the quadratic mean diameter.
   *
   * @return the index as stems per area at its reference diameter; zero if no tree was counted
   * @throws IllegalStateException if a counted tree has no diameter; the message names its point
   */
  DensityIndex densityIndex();

  /**
   * Reineke's stand density index added up tree by tree.
   *
   * @return the index as stems per area at its reference diameter
   * @throws IllegalStateException if the plan did not ask for it, or a counted tree has no diameter
   */
  DensityIndex densityIndexBySummation();

  /**
   * Curtis' relative density in its metric form.
   *
   * @return basal area in m²/ha over the root of the quadratic mean diameter in cm; empty if no
   *     tree was counted
   * @throws IllegalStateException if a counted tree has no diameter; the message names its point
   */
  Optional<Double> relativeDensityMetric();

  /**
   * The stand table.
   *
   * @return classes and species with their sums
   * @throws IllegalStateException if the plan has no classes, or a counted tree has no diameter
   */
  StandTable table();

  /**
   * Heights read from a height curve among those used.
   *
   * @return their number
   */
  long predictedHeights();

  /**
   * Stems on record that a choice or the smallest diameter left out.
   *
   * @return their number
   */
  long leftOut();

  /**
   * Counted trees whose measured distance puts them outside their limit. They are counted all the
   * same, since the field decides; look at each.
   *
   * @return their number
   */
  long beyondLimit();

  /**
   * What must be printed beside the figures: the choices, stems left out, trees beyond their limit
   * (the first hundred by name), corrected sweeps, what a single point or a grid cannot say.
   *
   * @return one line each
   */
  List<String> remarks();
}
