package org.mensuration;

import java.util.Iterator;
import java.util.stream.Collector;
import java.util.stream.Stream;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.TreeSelection;
import org.mensuration.internal.stand.ExactStandTally;
import org.mensuration.stand.StandEstimate;
import org.mensuration.stand.StandTally;
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
   * points.parallel().collect(Stands.tallying(gauge))}.
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
}
