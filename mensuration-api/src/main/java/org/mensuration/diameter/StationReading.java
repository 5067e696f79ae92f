package org.mensuration.diameter;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;

/**
 * A diameter read at a height of a stem from a station, or on a side. Immutable and thread-safe;
 * two readings are equal when they are physically equal, whatever their units.
 *
 * @param station name of the station or side
 * @param height height above the ground point
 * @param diameter diameter
 */
public record StationReading(String station, Quantity<Length> height, Quantity<Length> diameter) {

  /**
   * Checks that nothing is null.
   *
   * @param station name of the station or side
   * @param height height above the ground point
   * @param diameter diameter
   */
  public StationReading {
    Objects.requireNonNull(station, "station");
    Objects.requireNonNull(height, "height");
    Objects.requireNonNull(diameter, "diameter");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof StationReading that
        && station.equals(that.station)
        && Physical.same(height, that.height)
        && Physical.same(diameter, that.diameter);
  }

  @Override
  public int hashCode() {
    return Objects.hash(station, Physical.hash(height), Physical.hash(diameter));
  }
}
