package org.mensuration.validation.worked;

import java.util.List;
import org.mensuration.FixedAreaPlots;
import org.mensuration.gauge.FixedPlots;

/**
 * Plots of fixed size as noted. Immutable and thread-safe.
 *
 * @param circles the circles of every plot
 * @param plots the plots
 */
record PlotNotes(List<NamedCircle> circles, List<NotedPlot> plots) {

  /**
   * A circle by its name. Immutable and thread-safe.
   *
   * @param name name of the circle
   * @param area horizontal square metres
   * @param fromDbh centimetres from which it takes trees
   * @param circle the same for the library
   */
  record NamedCircle(String name, double area, double fromDbh, FixedPlots.Circle circle) {}

  /** The circles together; there is at least one. */
  static FixedPlots nested(List<NamedCircle> circles) {
    return FixedAreaPlots.nested(
        circles.stream().map(NamedCircle::circle).toArray(FixedPlots.Circle[]::new));
  }
}
