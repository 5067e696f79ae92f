package org.mensuration.internal.optics;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.internal.catalogue.HeightErrorFormulas;
import org.mensuration.internal.catalogue.HeightSightFormulas;
import org.mensuration.internal.catalogue.OpticalRatioFormulas;
import org.mensuration.internal.catalogue.OpticsFormulas;
import org.mensuration.internal.catalogue.SightedDiameterFormulas;
import org.mensuration.internal.catalogue.SightingPlanFormulas;
import org.mensuration.optics.Sighting;
import org.mensuration.optics.Sighting.DistanceTo;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * A ratio as the scale showed it, and how it was sighted. Picks the formula that fits. Immutable
 * and thread-safe.
 *
 * @param seen the ratio of all divisions
 * @param compensated whether the scale compensates for slope
 * @param sighting from where and how
 */
record SightedRatio(double seen, boolean compensated, Sighting sighting) {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);

  Quantity<Length> exactDiameter() {
    return Measures.metres(leaningAcross(sighting, exact()));
  }

  Quantity<Length> proportionalDiameter() {
    double distance = METRES.read(sighting.distance());
    boolean straight = sighting.to() == DistanceTo.AXIS_ALONG_SIGHT;
    if (compensated && straight) {
      distance = HeightErrorFormulas.HORIZONTAL.value(distance, elevation());
    } else if (!compensated && !straight) {
      distance = SightingPlanFormulas.ALONG_SIGHT.value(distance, elevation());
    }
    return Measures.metres(
        leaningAcross(sighting, SightedDiameterFormulas.SLOPE_DISTANCE.value(seen, distance)));
  }

  /** A level reading of a stem that leans to the side, put square to the stem. */
  static double leaningAcross(Sighting sighting, double diameter) {
    return sighting.leanAcross().isPresent()
        ? SightedDiameterFormulas.LEAN_ACROSS.value(
            diameter, DEGREES.read(sighting.leanAcross().get()))
        : diameter;
  }

  private double exact() {
    double distance = METRES.read(sighting.distance());
    boolean straight = sighting.to() == DistanceTo.AXIS_ALONG_SIGHT;
    if (sighting.apexAboveEye().isPresent()) {
      double level =
          straight ? HeightErrorFormulas.HORIZONTAL.value(distance, elevation()) : distance;
      return SightedDiameterFormulas.TAPERING.value(
          squareToSight(),
          level,
          HeightSightFormulas.ABOVE_EYE.value(level, elevation()),
          METRES.read(sighting.apexAboveEye().get()));
    }
    if (straight || sighting.leanAway().isPresent()) {
      double slope =
          straight ? distance : SightingPlanFormulas.ALONG_SIGHT.value(distance, elevation());
      double lean = sighting.leanAway().isPresent() ? DEGREES.read(sighting.leanAway().get()) : 0;
      return SightedDiameterFormulas.LEANING.value(squareToSight(), slope, elevation(), lean);
    }
    if (sighting.to() == DistanceTo.FACE) {
      return compensated
          ? SightedDiameterFormulas.FACE_DISTANCE.value(seen, distance)
          : SightedDiameterFormulas.FACE_ELEVATED.value(seen, distance, elevation());
    }
    return compensated
        ? OpticsFormulas.DIAMETER_AXIS_DISTANCE.value(seen, distance)
        : OpticsFormulas.DIAMETER_ELEVATED.value(seen, distance, elevation());
  }

  /** What a scale without compensation would have shown. */
  private double squareToSight() {
    return compensated ? OpticalRatioFormulas.UNCOMPENSATED.value(seen, elevation()) : seen;
  }

  private double elevation() {
    return DEGREES.read(
        sighting
            .elevation()
            .orElseThrow(
                () ->
                    new IllegalStateException(
                        "sighting: this reading needs the elevation of the sight, because "
                            + reason()
                            + "; give it, 0 degrees if it was level")));
  }

  private String reason() {
    return compensated
        ? "the distance is straight, or the stem leans or tapers"
        : "the optical scale does not compensate for slope";
  }
}
