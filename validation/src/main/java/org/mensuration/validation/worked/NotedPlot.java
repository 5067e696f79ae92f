package org.mensuration.validation.worked;

import java.util.List;
import java.util.OptionalDouble;
import org.mensuration.gauge.SlopeLayout;

/**
 * A plot with its trees; the list grows while the file is read. Not thread-safe.
 *
 * @param name name of the plot
 * @param stratum its stratum
 * @param slope degrees
 * @param layout how it was staked
 * @param trees the trees on it
 */
record NotedPlot(
    String name, Stratum stratum, double slope, SlopeLayout layout, List<PlotTree> trees) {

  /**
   * A tree on a plot. Immutable and thread-safe.
   *
   * @param tree name of the tree
   * @param dbh centimetres
   * @param volume cubic metres, if noted
   */
  record PlotTree(String tree, double dbh, OptionalDouble volume) {}
}
