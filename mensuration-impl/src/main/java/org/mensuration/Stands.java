package org.mensuration;

import java.util.Iterator;
import java.util.List;
import java.util.stream.Collector;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.TreeSelection;
import org.mensuration.internal.stand.ExactStandTally;
import org.mensuration.internal.stand.StrataEstimate;
import org.mensuration.internal.stand.ThickestTrees;
import org.mensuration.stand.DominantHeight;
import org.mensuration.stand.DominantHeightRule;
import org.mensuration.stand.StandEstimate;
import org.mensuration.stand.StandTally;
import org.mensuration.stand.StratifiedEstimate;
import org.mensuration.stand.Stratum;
import org.mensuration.stand.TallyPlan;

/**
 * Figures of a stand from counts at sample points. Stateless and thread-safe.
 *
 * <p>Errors are sampling errors of points laid out at random; a grid or points chosen by judgement
 * need a caution beside the figure, which a {@link TallyPlan} that names the layout prints. The
 * same points give the same figures to the last bit, whatever their order and however many threads
 * count.
 */
public final class Stands {
  private Stands() {}

  /**
   * The estimate of a stand by the usual choices. Points without trees count as zero; nothing is
   * kept of a tree.
   *
   * @param selection the gauge or the plots used at every point
   * @param points the points
   * @return the estimate
   * @throws IllegalArgumentException if there is no point, or two have one name
   * @throws OutOfDomainException if a diameter is not above zero or not finite
   */
  public static StandEstimate estimate(
      TreeSelection selection, Iterable<? extends CountPoint> points) {
    return estimate(TallyPlan.of(selection), points.iterator());
  }

  /**
   * The estimate of a stand by the usual choices. Points without trees count as zero; nothing is
   * kept of a tree. The stream is read in its order by one thread and not closed; for several
   * threads collect a parallel stream by {@link #tallying(TreeSelection)}.
   *
   * @param selection the gauge or the plots used at every point
   * @param points the points
   * @return the estimate
   * @throws IllegalArgumentException if there is no point, or two have one name
   * @throws OutOfDomainException if a diameter is not above zero or not finite
   */
  public static StandEstimate estimate(
      TreeSelection selection, Stream<? extends CountPoint> points) {
    return estimate(TallyPlan.of(selection), points.iterator());
  }

  /**
   * The estimate of a stand by stated choices.
   *
   * @param plan what is counted and by which choices
   * @param points the points
   * @return the estimate
   * @throws IllegalArgumentException if there is no point, or two have one name
   * @throws OutOfDomainException if a diameter is not above zero or not finite
   */
  public static StandEstimate estimate(TallyPlan plan, Iterable<? extends CountPoint> points) {
    return estimate(plan, points.iterator());
  }

  private static StandEstimate estimate(TallyPlan plan, Iterator<? extends CountPoint> points) {
    StandTally tally = tally(plan);
    while (points.hasNext()) {
      tally.add(points.next());
    }
    return tally.estimate();
  }

  /**
   * A tally to be fed point by point or tree by tree.
   *
   * @param plan what is counted and by which choices
   * @return a new tally, for one thread
   */
  public static StandTally tally(TallyPlan plan) {
    return ExactStandTally.of(plan);
  }

  /**
   * Collects a stream of points, also a parallel one, by the usual choices: {@code
   * points.parallel().collect(Stands.tallying(gauge))}. Threads cost some of their own: where one
   * takes less than about a millisecond, it is the faster way.
   *
   * @param selection the gauge or the plots used at every point
   * @return a collector for points in any order
   */
  public static Collector<CountPoint, ?, StandEstimate> tallying(TreeSelection selection) {
    return tallying(TallyPlan.of(selection));
  }

  /**
   * Collects a stream of points, also a parallel one, by stated choices.
   *
   * @param plan what is counted and by which choices
   * @return a collector for points in any order
   */
  public static Collector<CountPoint, ?, StandEstimate> tallying(TallyPlan plan) {
    return Collector.of(
        () -> tally(plan),
        StandTally::add,
        (left, right) -> {
          left.merge(right);
          return left;
        },
        StandTally::estimate,
        Collector.Characteristics.UNORDERED);
  }

  /**
   * A stratum from its points.
   *
   * @param name name of the stratum
   * @param area its area; stated, never taken from a grid
   * @param plan what is counted and by which choices
   * @param points its points
   * @return the stratum
   * @throws IllegalArgumentException if it has no point, or two have one name; the message names
   *     the stratum
   * @throws OutOfDomainException if a diameter is not above zero or not finite
   */
  public static Stratum stratum(
      String name, Quantity<Area> area, TallyPlan plan, Iterable<? extends CountPoint> points) {
    return StrataEstimate.stratum(name, area, plan, points);
  }

  /**
   * Strata together, per area and in total. One stratum gives the totals of a whole stand.
   *
   * @param strata strata of known areas
   * @return the estimate
   * @throws IllegalArgumentException if there is no stratum, or two have one name
   */
  public static StratifiedEstimate stratified(List<Stratum> strata) {
    return StrataEstimate.of(strata);
  }

  /**
   * The dominant height by a named rule.
   *
   * @param plan what is counted and by which choices
   * @param points the points, every counted tree with diameter and height
   * @param rule which trees make it
   * @return the height with its rule
   * @throws IllegalArgumentException if a counted tree lacks diameter or height, or there are fewer
   *     stems than the rule asks for
   */
  public static DominantHeight dominantHeight(
      TallyPlan plan, Iterable<? extends CountPoint> points, DominantHeightRule rule) {
    return ThickestTrees.height(plan, points, rule);
  }
}
