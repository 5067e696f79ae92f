package org.mensuration;

import java.util.Iterator;
import java.util.stream.Stream;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.CountPoint;
import org.mensuration.internal.gauge.FactorGauge;
import org.mensuration.internal.stand.PointSums;
import org.mensuration.stand.StandEstimate;

/**
 * Figures of a stand from counts at sample points. Stateless and thread-safe.
 *
 * <p>Errors are sampling errors of points laid out at random; a grid or points chosen by judgement
 * need a caution beside the figure.
 */
public final class Stands {
  private Stands() {}

  /**
   * Basal area, stems and mean diameter. Points without trees count as zero; nothing is kept of a
   * tree.
   *
   * @param gauge the gauge that counted at every point
   * @param points the points
   * @return the estimate
   * @throws IllegalArgumentException if there is no point, or two have one name
   * @throws OutOfDomainException if a diameter is not above zero or not finite
   */
  public static StandEstimate estimate(AngleGauge gauge, Iterable<? extends CountPoint> points) {
    return estimate(gauge, points.iterator());
  }

  /**
   * Basal area, stems and mean diameter. Points without trees count as zero; nothing is kept of a
   * tree. The stream is read in its order and not closed.
   *
   * @param gauge the gauge that counted at every point
   * @param points the points
   * @return the estimate
   * @throws IllegalArgumentException if there is no point, or two have one name
   * @throws OutOfDomainException if a diameter is not above zero or not finite
   */
  public static StandEstimate estimate(AngleGauge gauge, Stream<? extends CountPoint> points) {
    return estimate(gauge, points.iterator());
  }

  private static StandEstimate estimate(AngleGauge gauge, Iterator<? extends CountPoint> points) {
    PointSums sums = new PointSums(FactorGauge.of(gauge.factor()));
    while (points.hasNext()) {
      sums.add(points.next());
    }
    return sums.estimate();
  }
}
