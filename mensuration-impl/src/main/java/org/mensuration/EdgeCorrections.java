package org.mensuration;

import java.util.List;
import java.util.Optional;
import org.mensuration.edge.Boundary;
import org.mensuration.edge.EdgeRule;
import org.mensuration.edge.MapTally;
import org.mensuration.edge.MapTree;
import org.mensuration.edge.Position;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.internal.catalogue.EdgeFormulas;
import org.mensuration.internal.edge.PlotTally;
import org.mensuration.internal.edge.PolygonBoundary;
import org.mensuration.internal.edge.RectangleBoundary;

/**
 * Trees counted near the edge of a tract. Stateless and thread-safe.
 *
 * <p>A crew that walks through each counted tree, or makes part sweeps on the edge, records a
 * weight and needs no map: {@link #walkthroughWeight(boolean)}, {@link #sweepWeight(double)} and
 * {@link org.mensuration.gauge.CountedTree#withEdgeWeight(double)}; {@link
 * org.mensuration.stand.TallyPlan#with(EdgeRule)} names the rule and refuses counts without such
 * weights. On an extended grid points stand beyond the edge too ({@link
 * org.mensuration.gauge.CountPoint#beyondEdge()}). With a map of the trees and the boundary of the
 * tract, a tally does the counting.
 *
 * <p>Equation, limits and sources of an id such as {@code edge/walkthrough-weight}: {@link
 * Catalogues#standard}.
 */
public final class EdgeCorrections {
  private EdgeCorrections() {}

  /**
   * Weight of a counted tree by walking through it ({@code edge/walkthrough-weight}): from the tree
   * on, on the line from the point, as far again.
   *
   * @param farSpotInside whether the spot reached lies inside the tract or on its edge
   * @return 1 inside, 2 outside
   */
  public static double walkthroughWeight(boolean farSpotInside) {
    return EdgeFormulas.WALKTHROUGH_WEIGHT.value(farSpotInside ? 1 : 0);
  }

  /**
   * Weight of every tree of a part sweep ({@code edge/sweep-weight}), such as 2 for half a turn on
   * a straight edge. The point must be moved onto the edge by a fixed rule.
   *
   * @param shareOfCircle part of the full turn that was swept
   * @return the weight
   * @throws org.mensuration.formula.OutOfDomainException if the share is not above 0 and up to 1
   */
  public static double sweepWeight(double shareOfCircle) {
    return EdgeFormulas.SWEEP_WEIGHT.value(shareOfCircle);
  }

  /**
   * Weight of a half sweep on a straight edge.
   *
   * @return 2
   */
  public static double halfSweepWeight() {
    return sweepWeight(0.5);
  }

  /**
   * Weight of a quarter sweep in a right-angled corner.
   *
   * @return 4
   */
  public static double quarterSweepWeight() {
    return sweepWeight(0.25);
  }

  /**
   * A rectangle along the axes.
   *
   * @param corner one corner
   * @param opposite the opposite corner
   * @return the boundary
   * @throws IllegalArgumentException if a side has no length or a coordinate is not finite
   */
  public static Boundary rectangle(Position corner, Position opposite) {
    return RectangleBoundary.between(corner, opposite);
  }

  /**
   * A polygon.
   *
   * @param corners at least three corners in order, either way round; the last joins the first
   * @return the boundary
   * @throws IllegalArgumentException if there are fewer than three corners, sides cross or touch,
   *     or a coordinate is not finite
   */
  public static Boundary polygon(List<Position> corners) {
    return PolygonBoundary.of(corners);
  }

  /**
   * A tally on a map without a boundary: every tree counts once.
   *
   * @param trees the trees
   * @param gauge the gauge
   * @return the tally
   * @throws IllegalArgumentException if two trees have one name or a diameter is not above zero
   */
  public static MapTally tally(List<MapTree> trees, AngleGauge gauge) {
    return PlotTally.of(trees, gauge, EdgeRule.NONE, Optional.empty());
  }

  /**
   * A tally on a map of a tract.
   *
   * @param trees the trees of the tract; those on its edge belong to it
   * @param gauge the gauge
   * @param boundary the boundary, made by this class
   * @param rule the rule for edges
   * @return the tally
   * @throws IllegalArgumentException if two trees have one name, a diameter is not above zero, a
   *     tree lies outside the tract, the rule does not take the boundary, or a circle is too wide
   *     for the rule; the message says which
   */
  public static MapTally tally(
      List<MapTree> trees, AngleGauge gauge, Boundary boundary, EdgeRule rule) {
    return PlotTally.of(trees, gauge, rule, Optional.of(boundary));
  }
}
