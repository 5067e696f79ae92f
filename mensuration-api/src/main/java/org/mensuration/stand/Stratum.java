package org.mensuration.stand;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import org.mensuration.quantity.Physical;

/**
 * A part of a stand that was sampled by itself, with its known area. The area is stated, never
 * taken from a grid of points. Immutable and thread-safe.
 *
 * @param name name of the stratum
 * @param area its area, above zero
 * @param estimate what its points say
 */
public record Stratum(String name, Quantity<Area> area, StandEstimate estimate) {

  /**
   * Checks the name and the area.
   *
   * @param name name of the stratum
   * @param area its area
   * @param estimate what its points say
   * @throws IllegalArgumentException if the name is blank or the area not above zero
   */
  public Stratum {
    Objects.requireNonNull(estimate, "estimate");
    if (Objects.requireNonNull(name, "name").trim().isEmpty()) {
      throw new IllegalArgumentException("a stratum needs a name; it is blank");
    }
    double size = area.toSystemUnit().getValue().doubleValue();
    if (!(size > 0 && size < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "stratum " + name + ": area " + area + ", allowed above 0");
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Stratum stratum
        && name.equals(stratum.name)
        && Physical.same(area, stratum.area)
        && estimate.equals(stratum.estimate);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, Physical.hash(area), estimate);
  }
}
