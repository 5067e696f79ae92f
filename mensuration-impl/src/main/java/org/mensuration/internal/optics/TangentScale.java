package org.mensuration.internal.optics;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.internal.catalogue.OpticalRatioFormulas;
import org.mensuration.internal.catalogue.SightingPlanFormulas;
import org.mensuration.optics.DistanceRange;
import org.mensuration.optics.Graduation;
import org.mensuration.optics.RatioScale;
import org.mensuration.optics.Sighting;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * A scale of known ratio.
 *
 * @param ratio ratio of a division
 * @param compensated whether it compensates for slope
 * @param graduation how it is divided
 */
public record TangentScale(double ratio, boolean compensated, Optional<Graduation> graduation)
    implements RatioScale {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);

  /**
   * Checks the ratio.
   *
   * @param ratio ratio of a division
   * @param compensated whether it compensates for slope
   * @param graduation how it is divided
   * @throws IllegalArgumentException if the ratio is not a positive number
   */
  public TangentScale {
    if (!(ratio > 0 && ratio < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("division ratio: " + ratio + ", allowed (0, ∞)");
    }
  }

  @Override
  public Quantity<Length> diameter(double divisions, Sighting sighting) {
    return new SightedRatio(seen(divisions), compensated, sighting).exactDiameter();
  }

  @Override
  public Quantity<Length> proportionalDiameter(double divisions, Sighting sighting) {
    return new SightedRatio(seen(divisions), compensated, sighting).proportionalDiameter();
  }

  @Override
  public Quantity<Length> diameter(double divisions, Quantity<Length> axisDistance) {
    return new SightedRatio(seen(divisions), true, Sighting.toAxis(axisDistance)).exactDiameter();
  }

  @Override
  public Quantity<Length> divisionWidth(Quantity<Length> distance) {
    return width(1, distance);
  }

  @Override
  public Quantity<Length> resolution(Quantity<Length> distance) {
    return width(Graduations.stated(graduation).part(), distance);
  }

  @Override
  public Quantity<Length> largestDiameter(Sighting sighting) {
    return diameter(Graduations.stated(graduation).divisions(), sighting);
  }

  @Override
  public Quantity<Length> workingDistance(Quantity<Length> diameter, double divisions) {
    return Measures.metres(fills(diameter, Graduations.onScale(graduation, divisions)));
  }

  @Override
  public Quantity<Length> standardError(
      double divisions,
      double readingError,
      Quantity<Length> axisDistance,
      Quantity<Length> distanceError) {
    return Measures.metres(
        SightingPlanFormulas.STANDARD_ERROR.apply(
            Graduations.onScale(graduation, divisions),
            ratio,
            readingError,
            METRES.read(axisDistance),
            METRES.read(distanceError)));
  }

  @Override
  public DistanceRange distancesWithin(
      Quantity<Length> diameter,
      double readingError,
      Quantity<Length> distanceError,
      Quantity<Length> limit) {
    double wide = METRES.read(diameter);
    double away = METRES.read(distanceError);
    double allowed = METRES.read(limit);
    double least = SightingPlanFormulas.LEAST_ERROR.value(wide, ratio, readingError, away);
    if (allowed < least) {
      throw new IllegalArgumentException(
          "distances: no distance keeps the standard error within "
              + allowed
              + " m; the least is "
              + least
              + " m at "
              + SightingPlanFormulas.BEST_DISTANCE.value(wide, ratio, readingError, away)
              + " m");
    }
    double[] plan = {wide, ratio, readingError, away, allowed};
    double far = SightingPlanFormulas.LONGEST_DISTANCE.apply(plan);
    double near = SightingPlanFormulas.SHORTEST_DISTANCE.apply(plan);
    if (graduation.isPresent()) {
      near = Math.max(near, fills(diameter, graduation.get().divisions()));
    }
    if (!(near <= far)) {
      throw new IllegalArgumentException(
          "distances: the stem fits the scale from "
              + near
              + " m on, the limit of the standard error is kept up to "
              + far
              + " m");
    }
    return new DistanceRange(Measures.metres(near), Measures.metres(far));
  }

  private double fills(Quantity<Length> diameter, double divisions) {
    return SightingPlanFormulas.WORKING_DISTANCE.value(METRES.read(diameter), ratio, divisions);
  }

  private Quantity<Length> width(double divisions, Quantity<Length> distance) {
    return Measures.metres(
        SightingPlanFormulas.WIDTH.value(ratio, divisions, METRES.read(distance)));
  }

  private double seen(double divisions) {
    return OpticalRatioFormulas.OF_DIVISIONS.value(
        ratio, Graduations.onScale(graduation, divisions));
  }
}
