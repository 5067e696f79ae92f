package org.mensuration.gauge;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;

/**
 * How a circular plot is staked on a slope. Immutable and thread-safe; compares by physical value.
 *
 * @param layout the way of laying it out
 * @param across radius across the slope
 * @param along radius along the slope, measured on the ground
 * @param correction what the results of the plot are multiplied by
 */
public record PlotRadii(
    SlopeLayout layout,
    Quantity<Length> across,
    Quantity<Length> along,
    SweepCorrection correction) {

  @Override
  public boolean equals(Object other) {
    return other instanceof PlotRadii radii
        && layout == radii.layout
        && Physical.same(across, radii.across)
        && Physical.same(along, radii.along)
        && correction.equals(radii.correction);
  }

  @Override
  public int hashCode() {
    return Objects.hash(layout, Physical.hash(across), Physical.hash(along), correction);
  }
}
