package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.degrees;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.optics.DistanceRange;
import org.mensuration.optics.Graduation;
import org.mensuration.optics.RatioScale;
import org.mensuration.optics.Sighting;
import org.mensuration.units.ForestUnits;

class RatioScalesTest {
  private static final double U = 0.005;
  private static final RatioScale PLAIN = OpticalScales.ofRatio(U);
  private static final RatioScale COMPENSATING = OpticalScales.compensating(PLAIN);

  /** What an upright stem shows, by coordinates: tangent planes are upright. */
  @Property(tries = 300)
  void everyWayOfSightingAnUprightStemGivesItsDiameter(
      @ForAll @DoubleRange(min = 0.05, max = 2) double diameter,
      @ForAll @DoubleRange(min = 4, max = 40) double away,
      @ForAll @DoubleRange(min = -50, max = 65) double elevation) {
    double half = StrictMath.tan(StrictMath.asin(diameter / 2 / away));
    double cosine = StrictMath.cos(StrictMath.toRadians(elevation));
    double level = 2 * half / U;
    double seen = level * cosine;
    Sighting axis = Sighting.toAxis(metres(away)).at(degrees(elevation));
    Sighting face = Sighting.toFace(metres(away - diameter / 2)).at(degrees(elevation));
    Sighting straight = Sighting.alongSight(metres(away / cosine)).at(degrees(elevation));
    for (Sighting sighting : new Sighting[] {axis, face, straight}) {
      near(PLAIN.diameter(seen, sighting), diameter);
      near(COMPENSATING.diameter(level, sighting), diameter);
    }
    near(PLAIN.diameter(seen, axis.leaningAway(degrees(0))), diameter);
    near(COMPENSATING.diameter(level, straight.leaningAway(degrees(0))), diameter);
    near(COMPENSATING.diameter(level, Sighting.toAxis(metres(away))), diameter);
    near(COMPENSATING.diameter(level, Sighting.toFace(metres(away - diameter / 2))), diameter);
    near(PLAIN.diameter(level, metres(away)), diameter);
    near(PLAIN.diameter(seen, metres(away), degrees(elevation)), diameter);
    // The rule of the field: high by b²/8 to the axis, the same by every way to the axis.
    double b = level * U;
    for (Sighting sighting : new Sighting[] {axis, straight}) {
      near(PLAIN.proportionalDiameter(seen, sighting), b * away);
      near(COMPENSATING.proportionalDiameter(level, sighting), b * away);
    }
    near(PLAIN.proportionalDiameter(seen, face), b * (away - diameter / 2));
    near(COMPENSATING.proportionalDiameter(level, Sighting.toAxis(metres(away))), b * away);
    double excess = in(PLAIN.proportionalDiameter(seen, axis), ForestUnits.METRE) / diameter - 1;
    assertThat(excess).isCloseTo(b * b / 8, within(b * b * b * b));
  }

  /** A slanted cylinder by its own axis: p is the distance from the eye to the axis line. */
  @Property(tries = 200)
  void aStemLeaningInThePlaneOfSight(
      @ForAll @DoubleRange(min = 0.05, max = 1) double diameter,
      @ForAll @DoubleRange(min = 6, max = 30) double away,
      @ForAll @DoubleRange(min = -20, max = 55) double elevation,
      @ForAll @DoubleRange(min = -20, max = 20) double lean) {
    double up = away * StrictMath.tan(StrictMath.toRadians(elevation));
    double slope = StrictMath.hypot(away, up);
    // Distance of the eye (0, 0) from the line through (away, up) in direction (sin, cos).
    double p =
        Math.abs(
            away * StrictMath.cos(StrictMath.toRadians(lean))
                - up * StrictMath.sin(StrictMath.toRadians(lean)));
    // Half width at the axis of the section square to the stem, seen from p, then from afar.
    double halfAtAxis = p * StrictMath.tan(StrictMath.asin(diameter / 2 / p));
    double seen = 2 * halfAtAxis / slope / U;
    Sighting straight =
        Sighting.alongSight(metres(slope)).at(degrees(elevation)).leaningAway(degrees(lean));
    Sighting level =
        Sighting.toAxis(metres(away)).at(degrees(elevation)).leaningAway(degrees(lean));
    near(PLAIN.diameter(seen, straight), diameter);
    near(PLAIN.diameter(seen, level), diameter);
    double compensated = seen / StrictMath.cos(StrictMath.toRadians(elevation));
    near(COMPENSATING.diameter(compensated, straight), diameter);
    near(PLAIN.proportionalDiameter(seen, straight), 2 * halfAtAxis);
  }

  @Test
  void leanAcrossIsTakenOffALevelReading() {
    Sighting sighting = Sighting.toAxis(metres(10)).leaningAcross(degrees(10));
    Quantity<Length> upright = COMPENSATING.diameter(8, Sighting.toAxis(metres(10)));
    double cosine = StrictMath.cos(StrictMath.toRadians(10));
    near(COMPENSATING.diameter(8, sighting), in(upright, ForestUnits.METRE) * cosine);
    near(COMPENSATING.proportionalDiameter(8, sighting), 0.4 * cosine);
  }

  @Test
  void taperIsTakenIntoAccountWhenAsked() {
    // C36 of the notes on the geometry: r = 0.2 m, R = 10 m, h = 15 m, apex 25 m.
    double seen = 2 * 0.2002504697 / StrictMath.hypot(10, 15) / U;
    double elevation = StrictMath.toDegrees(StrictMath.atan(1.5));
    Sighting plain = Sighting.toAxis(metres(10)).at(degrees(elevation));
    Sighting straight = Sighting.alongSight(metres(StrictMath.hypot(10, 15)));
    assertThat(in(PLAIN.diameter(seen, plain.tapering(metres(25))), ForestUnits.METRE))
        .isCloseTo(0.4, within(1e-9));
    assertThat(
            in(
                PLAIN.diameter(seen, straight.at(degrees(elevation)).tapering(metres(25))),
                ForestUnits.METRE))
        .isCloseTo(0.4, within(1e-9));
    assertThat(
            in(
                COMPENSATING.diameter(
                    seen * StrictMath.hypot(10, 15) / 10, plain.tapering(metres(25))),
                ForestUnits.METRE))
        .isCloseTo(0.4, within(1e-9));
    assertThat(in(PLAIN.diameter(seen, plain), ForestUnits.METRE)).isGreaterThan(0.4002);
    assertThatThrownBy(() -> PLAIN.diameter(seen, plain.tapering(metres(14))))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("allowed h < A");
  }

  @Test
  void aReadingWithoutItsElevationIsRefused() {
    Sighting axis = Sighting.toAxis(metres(10));
    assertThatThrownBy(() -> PLAIN.diameter(8, axis))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage(
            "sighting: this reading needs the elevation of the sight, because the optical scale"
                + " does not compensate for slope; give it, 0 degrees if it was level");
    assertThatThrownBy(() -> PLAIN.proportionalDiameter(8, axis))
        .isInstanceOf(IllegalStateException.class);
    assertThatThrownBy(() -> COMPENSATING.diameter(8, Sighting.alongSight(metres(10))))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("the distance is straight, or the stem leans or tapers");
    assertThatThrownBy(() -> PLAIN.diameter(8, axis.at(degrees(90))))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("e = 90 deg, allowed (-90, 90) deg");
    assertThatThrownBy(() -> PLAIN.diameter(8, axis.at(degrees(60)).leaningAway(degrees(30))))
        .hasMessageContaining("allowed e + l < 90");
  }

  @Test
  void partsThatDoNotGoTogetherAreRefused() {
    assertThatThrownBy(() -> Sighting.toFace(metres(9)).leaningAway(degrees(5)))
        .hasMessageContaining("need the distance to the axis");
    assertThatThrownBy(() -> Sighting.toFace(metres(9)).tapering(metres(20)))
        .hasMessageContaining("need the distance to the axis");
    assertThatThrownBy(
            () -> Sighting.toAxis(metres(9)).tapering(metres(20)).leaningAway(degrees(5)))
        .hasMessageContaining("together are not covered");
  }

  @Test
  void scalesFromAnglesFactorsAndHeldScales() {
    assertThat(OpticalScales.ofAngle(degrees(1)).ratio())
        .isCloseTo(2 * StrictMath.tan(StrictMath.toRadians(0.5)), within(1e-16));
    assertThat(OpticalScales.held(centimetres(1.2), centimetres(60)).ratio())
        .isCloseTo(0.02, within(1e-17));
    // 1 m²/ha: the exact gauge is 1 in 49.997; four divisions make it.
    RatioScale four = OpticalScales.ofFactor(squareMetresPerHectare(1), 4);
    assertThat(1 / (4 * four.ratio())).isCloseTo(49.997, within(0.0005));
    assertThat(four.compensated()).isFalse();
    assertThat(COMPENSATING.compensated()).isTrue();
    assertThatThrownBy(() -> OpticalScales.ofAngle(degrees(180)))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> OpticalScales.ofFactor(squareMetresPerHectare(1), 0))
        .isInstanceOf(OutOfDomainException.class);
  }

  @Test
  void aGraduatedScaleTellsWhatItCanRead() {
    RatioScale scale = OpticalScales.graduated(COMPENSATING, Graduation.of(8).readToQuarters());
    near(scale.divisionWidth(metres(15)), 0.075);
    near(scale.resolution(metres(15)), 0.01875);
    near(
        scale.largestDiameter(Sighting.toAxis(metres(15))),
        2 * 15 * StrictMath.sin(StrictMath.atan(0.02)));
    near(scale.workingDistance(metres(0.6), 8), 0.3 / StrictMath.sin(StrictMath.atan(0.02)));
    assertThatThrownBy(() -> scale.diameter(8.25, metres(15)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("optical scale: a reading of 8.25 divisions, the scale has 8.0");
    assertThatThrownBy(() -> scale.diameter(Double.NaN, metres(15)))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> PLAIN.resolution(metres(15)))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("state its graduation");
    assertThatThrownBy(() -> Graduation.of(0)).hasMessageContaining("allowed (0, ∞)");
    assertThatThrownBy(() -> new Graduation(8, 1.5)).hasMessageContaining("allowed (0, 1]");
    assertThat(Graduation.of(8).readToHalves()).isEqualTo(new Graduation(8, 0.5));
    assertThat(scale.graduation()).contains(new Graduation(8, 0.25));
  }

  @Property(tries = 200)
  void theRangeOfDistancesEndsWhereTheErrorReachesTheLimit(
      @ForAll @DoubleRange(min = 0.15, max = 1) double diameter,
      @ForAll @DoubleRange(min = 0.05, max = 0.3) double readingError,
      @ForAll @DoubleRange(min = 0.01, max = 0.2) double distanceError) {
    double limit = 0.05;
    DistanceRange range =
        PLAIN.distancesWithin(metres(diameter), readingError, metres(distanceError), metres(limit));
    for (Quantity<Length> end : List.of(range.nearest(), range.farthest())) {
      double away = in(end, ForestUnits.METRE);
      double reading = U * readingError * away;
      double distance = diameter * distanceError / away;
      assertThat(StrictMath.hypot(reading, distance)).isCloseTo(limit, within(1e-12));
    }
    // The exact error at the far end, where the stem is narrow, is the same to second order.
    double far = in(range.farthest(), ForestUnits.METRE);
    double divisions = 2 * StrictMath.tan(StrictMath.asin(diameter / 2 / far)) / U;
    assertThat(
            in(
                PLAIN.standardError(divisions, readingError, metres(far), metres(distanceError)),
                ForestUnits.METRE))
        .isCloseTo(limit, within(0.01 * limit));
  }

  @Test
  void aLimitThatCannotBeKeptIsRefused() {
    assertThatThrownBy(() -> PLAIN.distancesWithin(metres(0.5), 0.5, metres(0.5), metres(0.01)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no distance keeps the standard error within 0.01 m; the least is");
    RatioScale narrow = OpticalScales.graduated(PLAIN, Graduation.of(2));
    assertThatThrownBy(() -> narrow.distancesWithin(metres(1), 0.25, metres(0.01), metres(0.05)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("the stem fits the scale from 100.00");
    RatioScale wide = OpticalScales.graduated(PLAIN, Graduation.of(8));
    DistanceRange range = wide.distancesWithin(metres(0.4), 0.125, metres(0.02), metres(0.02));
    near(range.nearest(), in(wide.workingDistance(metres(0.4), 8), ForestUnits.METRE));
    assertThat(new DistanceRange(metres(5), metres(10)))
        .isEqualTo(new DistanceRange(centimetres(500), metres(10)))
        .hasSameHashCodeAs(new DistanceRange(centimetres(500), metres(10)))
        .isNotEqualTo(new DistanceRange(centimetres(500), metres(11)));
  }

  private static void near(Quantity<Length> found, double metres) {
    assertThat(in(found, ForestUnits.METRE)).isCloseTo(metres, within(1e-12));
  }
}
