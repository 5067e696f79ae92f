package org.mensuration.stand;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import org.mensuration.quantity.Physical;
import org.mensuration.quantity.VolumePerArea;

/**
 * Volume as a product of basal area from many counted trees and volume over basal area from a few
 * measured ones. Both are taken as independent. Immutable and thread-safe; compares by physical
 * value.
 *
 * @param volume mean basal area times mean ratio
 * @param countErrorPercent standard error of the basal area in per cent of it
 * @param ratioErrorPercent standard error of the ratio in per cent of it
 * @param firstOrderErrorPercent root of the sum of both squares
 * @param exactErrorPercent error of the product by the unbiased estimate of its variance, which
 *     takes the product of both variances away; 0 where that falls below zero
 * @param ratio mean volume over basal area in m³ per m²
 * @param remarks what must be printed beside the figures
 */
public record CombinedVolume(
    Quantity<VolumePerArea> volume,
    double countErrorPercent,
    double ratioErrorPercent,
    double firstOrderErrorPercent,
    double exactErrorPercent,
    EstimatedNumber ratio,
    List<String> remarks) {

  /**
   * Copies the remarks.
   *
   * @param volume volume per area
   * @param countErrorPercent error of the basal area in per cent
   * @param ratioErrorPercent error of the ratio in per cent
   * @param firstOrderErrorPercent combined error of first order in per cent
   * @param exactErrorPercent combined error by the exact product in per cent
   * @param ratio mean ratio in m³ per m²
   * @param remarks what must be printed
   */
  public CombinedVolume {
    Objects.requireNonNull(volume, "volume");
    Objects.requireNonNull(ratio, "ratio");
    remarks = List.copyOf(remarks);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CombinedVolume that
        && Physical.same(volume, that.volume)
        && Double.compare(countErrorPercent, that.countErrorPercent) == 0
        && Double.compare(ratioErrorPercent, that.ratioErrorPercent) == 0
        && Double.compare(firstOrderErrorPercent, that.firstOrderErrorPercent) == 0
        && Double.compare(exactErrorPercent, that.exactErrorPercent) == 0
        && ratio.equals(that.ratio)
        && remarks.equals(that.remarks);
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        Physical.hash(volume),
        countErrorPercent,
        ratioErrorPercent,
        firstOrderErrorPercent,
        exactErrorPercent,
        ratio,
        remarks);
  }
}
