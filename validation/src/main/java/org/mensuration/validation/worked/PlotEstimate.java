package org.mensuration.validation.worked;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.mensuration.gauge.PlotRadii;

/**
 * What plots of fixed size say of a stratum. Immutable and thread-safe.
 *
 * @param stratum the stratum
 * @param circles the circles of each plot
 * @param factors trees a hectare of a tree on each circle
 * @param plots the plots
 * @param basalArea m²/ha
 * @param stems 1/ha
 * @param volume m³/ha, if every tree has its volume
 * @param population plots of the smallest circle that the stratum holds; empty without an area
 */
record PlotEstimate(
    Stratum stratum,
    List<PlotNotes.NamedCircle> circles,
    List<Double> factors,
    List<PlotSum> plots,
    Estimate basalArea,
    Estimate stems,
    @Nullable Estimate volume,
    OptionalDouble population) {

  /**
   * A plot by itself. Immutable and thread-safe.
   *
   * @param plot the plot as noted
   * @param radii radii to stake, a circle
   * @param factor what its figures are multiplied by
   * @param basalArea m²/ha
   * @param stems 1/ha
   * @param volume m³/ha, if every tree has its volume
   */
  record PlotSum(
      NotedPlot plot,
      List<PlotRadii> radii,
      double factor,
      double basalArea,
      double stems,
      OptionalDouble volume) {}
}
