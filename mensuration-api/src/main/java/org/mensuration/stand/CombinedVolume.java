package org.mensuration.stand;

import java.util.List;
import javax.measure.Quantity;
import org.mensuration.quantity.VolumePerArea;

/**
 * Volume as a product of basal area from many counted trees and volume over basal area from a few
 * measured ones. Both are taken as independent. Implementations are immutable and thread-safe, and
 * compare by physical value.
 */
public interface CombinedVolume {

  /**
   * Volume per area.
   *
   * @return mean basal area times mean ratio
   */
  Quantity<VolumePerArea> volume();

  /**
   * The error of the count.
   *
   * @return standard error of the basal area in per cent of it
   */
  double countErrorPercent();

  /**
   * The error of the ratio.
   *
   * @return standard error of the ratio in per cent of it
   */
  double ratioErrorPercent();

  /**
   * The combined error of first order.
   *
   * @return root of the sum of both squares, in per cent of the volume
   */
  double firstOrderErrorPercent();

  /**
   * The combined error by the unbiased estimate of the variance of a product, which takes the
   * product of both variances away.
   *
   * @return in per cent of the volume; 0 where the variance falls below zero
   */
  double exactErrorPercent();

  /**
   * Mean volume over basal area of what was measured.
   *
   * @return in m³ per m², with its own error and degrees of freedom
   */
  EstimatedNumber ratio();

  /**
   * Degrees of freedom of the combined error of first order: the effective number of both parts, as
   * for any sum of independent variances ({@code sampling/effective-degrees-of-freedom} with the
   * two errors in per cent and equal areas).
   *
   * @return from the smaller number of the two up to their sum; need not be whole
   */
  double degreesOfFreedom();

  /**
   * The interval by Student's t, from the error of first order, which is never the smaller of the
   * two, and {@link #degreesOfFreedom}. Approximate: it takes the count and the ratio as
   * independent and each measured tree or point as a sample by itself. It covers the sampling error
   * only.
   *
   * @param confidencePercent the chance that it holds the volume in per cent, from 50 and below
   *     100, such as 95
   * @return the interval; its lower end may fall below zero
   * @throws IllegalArgumentException if the chance is outside
   */
  Interval<VolumePerArea> interval(double confidencePercent);

  /**
   * What must be printed beside the figures.
   *
   * @return one line each
   */
  List<String> remarks();
}
