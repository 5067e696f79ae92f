package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.degrees;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.Formula;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.units.ForestUnits;

class HeightsOtherWaysTest {
  /** A leaning stem by coordinates: base (R, z), tip (R + L sin l, z + L cos l), eye at 0. */
  @Property(tries = 200)
  void aLeaningStemOfKnownLengthIsFound(
      @ForAll @DoubleRange(min = 2, max = 60) double length,
      @ForAll @DoubleRange(min = 15, max = 60) double distance,
      @ForAll @DoubleRange(min = -8, max = 8) double baseAboveEye,
      @ForAll @DoubleRange(min = -12, max = 12) double lean) {
    double upward = length * StrictMath.cos(StrictMath.toRadians(lean));
    double tipAway = distance + length * StrictMath.sin(StrictMath.toRadians(lean));
    Quantity<Angle> top = sight(tipAway, baseAboveEye + upward);
    Quantity<Angle> base = sight(distance, baseAboveEye);
    Quantity<Length> toTip = metres(StrictMath.hypot(tipAway, baseAboveEye + upward));
    Quantity<Length> toBase = metres(StrictMath.hypot(distance, baseAboveEye));
    near(Heights.sine(toTip, top, toBase, base), upward);
    near(Heights.lengthOfLeaning(toBase, top, base, degrees(lean)), length);
    near(Heights.verticalFromLength(metres(length), degrees(lean)), upward);
    near(Heights.lengthFromVertical(metres(upward), degrees(lean)), length);
    near(Heights.aboveEye(metres(tipAway), top), baseAboveEye + upward);
    // What the base distance makes of it.
    double offset = distance - tipAway;
    double wrong = in(Heights.aboveEye(metres(distance), top), ForestUnits.METRE);
    assertThat(wrong / (baseAboveEye + upward) - 1)
        .isCloseTo(HeightAccuracy.leanError(metres(offset), metres(distance)), within(1e-9));
  }

  @Property(tries = 200)
  void anUprightStemOfKnownHeightIsFound(
      @ForAll @DoubleRange(min = 6, max = 60) double height,
      @ForAll @DoubleRange(min = 8, max = 60) double distance,
      @ForAll @DoubleRange(min = -6, max = 6) double baseAboveEye) {
    Quantity<Angle> top = sight(distance, baseAboveEye + height);
    Quantity<Angle> base = sight(distance, baseAboveEye);
    Quantity<Angle> staffTop = sight(distance, baseAboveEye + 4);
    near(Heights.staff(metres(4), top, staffTop, base), height);
    near(
        Heights.sineWithHiddenBase(
            metres(StrictMath.hypot(distance, baseAboveEye + height)),
            top,
            metres(StrictMath.hypot(distance, baseAboveEye + 4)),
            staffTop,
            base),
        height);
    near(
        Heights.topographic(
            metres(distance),
            66 * (baseAboveEye + height) / distance,
            66 * baseAboveEye / distance),
        height);
    near(
        Heights.onLevelGround(metres(distance), sight(distance, height - 1.6), metres(1.6)),
        height);
  }

  @Test
  void rulersAndShadows() {
    near(Heights.similarTriangles(metres(4), centimetres(8), centimetres(40)), 20);
    near(Heights.shadow(metres(40), metres(1.73), metres(10)), 6.92);
    assertThat(in(Heights.topographic(feet(66), 41, -9), ForestUnits.FOOT)).isEqualTo(50);
  }

  @Property(tries = 100)
  void theBestDistanceHasTheLeastError(
      @ForAll @DoubleRange(min = 5, max = 50) double above,
      @ForAll @DoubleRange(min = 0, max = 5) double below,
      @ForAll @DoubleRange(min = 0, max = 0.5) double distanceError) {
    Quantity<Length> best =
        HeightAccuracy.bestDistance(
            metres(above), metres(below), metres(distanceError), degrees(0.25));
    double distance = in(best, ForestUnits.METRE);
    double least = error(distance, above, below, distanceError);
    assertThat(least).isLessThan(error(distance * 1.1, above, below, distanceError));
    assertThat(least).isLessThan(error(distance / 1.1, above, below, distanceError));
  }

  private static double error(double distance, double above, double below, double distanceError) {
    return in(
        HeightAccuracy.tangentError(
            metres(distance),
            sight(distance, above),
            sight(distance, -below),
            metres(distanceError),
            degrees(0.25)),
        ForestUnits.METRE);
  }

  @Test
  void everyHeightSaysWhatItIs() {
    for (Formula formula : Catalogues.standard().formulas()) {
      if (formula.id().startsWith("height/")
          && (formula.result().name().equals("height")
              || formula.result().name().equals("length"))) {
        assertThat(formula.notes())
            .as(formula.id())
            .anyMatch(note -> note.contains("vertical height") || note.contains("above the eye"));
      }
    }
  }

  @Test
  void sightsWithoutMeaningAreRefused() {
    assertThatThrownBy(() -> Heights.staff(metres(0), degrees(40), degrees(5), degrees(0)))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("height/staff: L = 0 m, allowed (0, ∞) m");
    assertThatThrownBy(() -> Heights.staff(metres(4), degrees(40), degrees(5), degrees(5)))
        .hasMessageContaining("allowed b < s");
    assertThatThrownBy(() -> Heights.sine(metres(20), degrees(90), metres(20), degrees(0)))
        .hasMessageContaining("t = 90 deg, allowed (-90, 90) deg");
    assertThatThrownBy(() -> Heights.sine(metres(20), degrees(-5), metres(20), degrees(10)))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("the base below the tip");
    assertThatThrownBy(
            () ->
                Heights.sineWithHiddenBase(
                    metres(20), degrees(-5), metres(20), degrees(0), degrees(10)))
        .hasMessageContaining("height/sine-hidden-base: H = ");
    assertThatThrownBy(() -> HeightAccuracy.leanError(metres(20), metres(20)))
        .hasMessageContaining("allowed x < R");
    assertThatThrownBy(
            () -> Heights.lengthOfLeaning(metres(20), degrees(85), degrees(0), degrees(5)))
        .hasMessageContaining("allowed t + l < 90");
  }

  private static Quantity<Angle> sight(double away, double up) {
    return degrees(StrictMath.toDegrees(StrictMath.atan(up / away)));
  }

  private static void near(Quantity<Length> found, double metres) {
    assertThat(in(found, ForestUnits.METRE)).isCloseTo(metres, within(1e-9));
  }
}
