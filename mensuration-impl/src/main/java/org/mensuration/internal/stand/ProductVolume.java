package org.mensuration.internal.stand;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import org.mensuration.quantity.Physical;
import org.mensuration.quantity.VolumePerArea;
import org.mensuration.stand.CombinedVolume;
import org.mensuration.stand.EstimatedNumber;
import org.mensuration.stand.Interval;

/**
 * A product of count and ratio. Immutable and thread-safe.
 *
 * @param mean the volume with its error of first order and the degrees of freedom of that
 * @param countErrorPercent error of the basal area in per cent
 * @param ratioErrorPercent error of the ratio in per cent
 * @param firstOrderErrorPercent combined error of first order in per cent
 * @param exactErrorPercent combined error by the exact product in per cent
 * @param ratio mean ratio in m³ per m²
 * @param remarks what must be printed
 */
record ProductVolume(
    PointMean<VolumePerArea> mean,
    double countErrorPercent,
    double ratioErrorPercent,
    double firstOrderErrorPercent,
    double exactErrorPercent,
    EstimatedNumber ratio,
    List<String> remarks)
    implements CombinedVolume {

  ProductVolume {
    remarks = List.copyOf(remarks);
  }

  @Override
  public Quantity<VolumePerArea> volume() {
    return mean.value();
  }

  @Override
  public double degreesOfFreedom() {
    return mean.degreesOfFreedom();
  }

  @Override
  public Interval<VolumePerArea> interval(double confidencePercent) {
    return mean.interval(confidencePercent);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ProductVolume that
        && Physical.same(volume(), that.volume())
        && Double.compare(countErrorPercent, that.countErrorPercent()) == 0
        && Double.compare(ratioErrorPercent, that.ratioErrorPercent()) == 0
        && Double.compare(firstOrderErrorPercent, that.firstOrderErrorPercent()) == 0
        && Double.compare(exactErrorPercent, that.exactErrorPercent()) == 0
        && Double.compare(degreesOfFreedom(), that.degreesOfFreedom()) == 0
        && ratio.equals(that.ratio())
        && remarks.equals(that.remarks());
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        Physical.hash(volume()),
        countErrorPercent,
        ratioErrorPercent,
        firstOrderErrorPercent,
        exactErrorPercent,
        degreesOfFreedom(),
        ratio,
        remarks);
  }
}
