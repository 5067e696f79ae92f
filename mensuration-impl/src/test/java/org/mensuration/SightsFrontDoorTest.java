package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.DEGREE;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE_PER_HECTARE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.degrees;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.height.SlopeReading;
import org.mensuration.optics.RatioScale;
import org.mensuration.optics.Sighting;

/** What stems look like, distances, scales and ovals: each call agrees with its formula. */
class SightsFrontDoorTest {
  private static final Quantity<Length> D = centimetres(44);
  private static final Quantity<Length> R = metres(8.5);

  private static void agrees(String id, double figure, double... inputs) {
    assertThat(figure).as(id).isEqualTo(Catalogues.standard().formula(id).apply(inputs));
  }

  private static double m(Quantity<Length> length) {
    return in(length, METRE);
  }

  private static double deg(Quantity<Angle> angle) {
    return in(angle, DEGREE);
  }

  @Test
  void silhouettes() {
    agrees("optics/sighted-ratio", Silhouettes.ratio(D, R), 0.44, 8.5);
    agrees("optics/sighted-ratio-elevated", Silhouettes.ratio(D, R, degrees(30)), 0.44, 8.5, 30);
    agrees(
        "optics/sighted-ratio-leaning",
        Silhouettes.ratioOfLeaning(D, metres(11), degrees(30), degrees(4)),
        0.44,
        11,
        30,
        4);
    agrees(
        "optics/sighted-width-tapering",
        m(Silhouettes.widthOfTapering(D, R, metres(9), metres(22))),
        0.44,
        8.5,
        9,
        22);
    agrees("optics/apparent-width", m(Silhouettes.width(D, R)), 0.44, 8.5);
    agrees("optics/sighted-angle", deg(Silhouettes.angle(D, R)), 0.44, 8.5);
    agrees("optics/sighted-angle-elevated", deg(Silhouettes.angle(D, R, metres(6))), 0.44, 8.5, 6);
    agrees("optics/visible-share", Silhouettes.visibleShare(D, R), 0.44, 8.5);
    agrees("optics/tangent-chord", m(Silhouettes.chord(D, R)), 0.44, 8.5);
    agrees("optics/tangent-distance", m(Silhouettes.distanceToEdges(D, R)), 0.44, 8.5);
    agrees("optics/chord-distance", m(Silhouettes.distanceToChord(D, R)), 0.44, 8.5);
    agrees("optics/proportional-error-axis", Silhouettes.proportionalErrorToAxis(D, R), 0.44, 8.5);
    agrees("optics/proportional-error-face", Silhouettes.proportionalErrorToFace(D, R), 0.44, 8.5);
    assertThatThrownBy(() -> Silhouettes.ratio(metres(17), R))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("D < 2R");
  }

  /** A scale without compensation, read as if it did compensate, and the other way round. */
  @Property(tries = 100)
  void cosineErrorsAreThoseOfTheScale(@ForAll @DoubleRange(min = -70, max = 70) double elevation) {
    RatioScale plain = OpticalScales.ofRatio(0.01);
    RatioScale compensating = OpticalScales.compensating(plain);
    Sighting level = Sighting.toAxis(R).at(degrees(0));
    Sighting sight = Sighting.toAxis(R).at(degrees(elevation));
    double right = m(plain.proportionalDiameter(3, sight));
    double flat = m(plain.proportionalDiameter(3, level));
    assertThat(flat / right - 1)
        .isCloseTo(Silhouettes.errorWithoutCosine(degrees(elevation)), within(1e-12));
    double narrowed = m(compensating.proportionalDiameter(3, sight));
    assertThat(m(plain.proportionalDiameter(3, sight)) / narrowed - 1)
        .isCloseTo(Silhouettes.errorOfSecondCosine(degrees(elevation)), within(1e-12));
  }

  @Test
  void distances() {
    agrees(
        "optics/distance-from-target",
        m(SightedDistances.fromBar(metres(2), degrees(1.5))),
        2,
        1.5);
    agrees(
        "optics/distance-from-thousandths",
        m(SightedDistances.fromThousandths(metres(2), 40)),
        2,
        40);
    agrees(
        "optics/distance-from-rod",
        m(SightedDistances.fromRod(100, metres(0.2), degrees(12))),
        100,
        0.2,
        12);
    agrees(
        "optics/distance-from-own-base",
        m(SightedDistances.fromOwnBase(metres(0.25), degrees(0.75))),
        0.25,
        0.75);
    agrees(
        "optics/own-base-error",
        m(SightedDistances.ownBaseError(metres(0.25), metres(20), degrees(0.01))),
        0.25,
        20,
        0.01);
    agrees(
        "optics/width-of-angle",
        m(SightedDistances.widthOfAngle(degrees(0.5), metres(20))),
        0.5,
        20);
    agrees(
        "height/horizontal-distance",
        m(SightedDistances.horizontal(metres(20), degrees(-14))),
        20,
        -14);
    agrees(
        "height/slope-distance-from-percent",
        m(SightedDistances.alongSlope(metres(20), SlopeReading.ofPercent(25))),
        20,
        25);
    agrees("optics/line-of-sight", m(SightedDistances.alongSight(metres(20), degrees(30))), 20, 30);
    assertThatThrownBy(() -> SightedDistances.fromOwnBase(metres(0.25), degrees(0)))
        .isInstanceOf(OutOfDomainException.class);
  }

  /** By coordinates: the tip stands `above` over the eye, `away` from the near station. */
  @Property(tries = 200)
  void twoStationsFindTheTreeAndTheirErrorIsThatOfSmallChanges(
      @ForAll @DoubleRange(min = 5, max = 40) double above,
      @ForAll @DoubleRange(min = 8, max = 40) double away,
      @ForAll @DoubleRange(min = 6, max = 30) double baseline) {
    double near = StrictMath.toDegrees(StrictMath.atan2(above, away));
    double far = StrictMath.toDegrees(StrictMath.atan2(above, away + baseline));
    assertThat(m(SightedDistances.fromTwoStations(metres(baseline), degrees(far), degrees(near))))
        .isCloseTo(away, within(1e-9));
    double step = 1e-5;
    double byFar =
        slope(step, height(baseline, far - step, near), height(baseline, far + step, near));
    double byNear =
        slope(step, height(baseline, far, near - step), height(baseline, far, near + step));
    double expected =
        StrictMath.hypot(0.05 * above / baseline, StrictMath.hypot(0.2 * byFar, 0.2 * byNear));
    assertThat(
            m(
                HeightAccuracy.twoStationsError(
                    metres(baseline), degrees(far), degrees(near), metres(0.05), degrees(0.2))))
        .isCloseTo(expected, within(1e-4 * expected));
  }

  private static double height(double baseline, double far, double near) {
    return m(Heights.twoStations(metres(baseline), degrees(far), degrees(near)));
  }

  private static double slope(double step, double low, double high) {
    return (high - low) / (2 * step);
  }

  @Test
  void heightScales() {
    agrees("height/angle-from-percent", deg(HeightScales.angle(SlopeReading.ofPercent(35))), 35);
    agrees("height/percent-from-angle", HeightScales.percent(degrees(20)).percent(), 20);
    agrees("height/topographic-from-angle", HeightScales.topographic(degrees(20)), 20);
    agrees(
        "height/at-other-distance",
        m(HeightScales.atOtherDistance(metres(14), metres(24), metres(20))),
        14,
        24,
        20);
    assertThat(in(HeightScales.rulerMark(centimetres(40), metres(4), metres(19.31)), CENTIMETRE))
        .isCloseTo(8.2859, within(0.00005));
  }

  @Test
  void heightsAndTheirErrors() {
    agrees(
        "height/above-eye-straight",
        m(Heights.aboveEyeStraight(metres(35), degrees(-20))),
        35,
        -20);
    agrees(
        "height/above-eye-from-base",
        m(Heights.aboveEyeFromBase(metres(35), degrees(-20), degrees(43))),
        35,
        -20,
        43);
    agrees(
        "height/fraction",
        m(Heights.fraction(metres(2), centimetres(30), centimetres(3))),
        2,
        30,
        3);
    agrees("height/rod", m(Heights.rod(100, metres(0.2), degrees(12))), 100, 0.2, 12);
    agrees(
        "height/measured-of-leaning",
        m(HeightAccuracy.measuredOfLeaning(metres(20), metres(2), metres(25))),
        20,
        2,
        25);
    agrees("height/slope-as-horizontal", HeightAccuracy.slopeAsHorizontalPercent(degrees(20)), 20);
  }

  @Test
  void ovals() {
    Quantity<Length> a = centimetres(50);
    Quantity<Length> b = centimetres(45);
    assertThat(in(OvalSections.area(a, b), SQUARE_METRE))
        .isEqualTo(Catalogues.standard().formula("diameter/ellipse-area").apply(50, 45));
    agrees("diameter/ellipse-girth", in(OvalSections.girth(a, b), CENTIMETRE), 50, 45);
    agrees(
        "diameter/ellipse-caliper",
        in(OvalSections.caliper(a, b, degrees(30)), CENTIMETRE),
        50,
        45,
        30);
    agrees("diameter/ellipse-girth-excess", OvalSections.errorOfGirth(0.9), 0.9);
    agrees("diameter/ellipse-mean-excess", OvalSections.errorOfArithmeticMean(0.9), 0.9);
    agrees("diameter/ellipse-quadratic-excess", OvalSections.errorOfQuadraticMean(0.9), 0.9);
    agrees(
        "diameter/ellipse-caliper-excess",
        OvalSections.errorOfOneDiameter(0.9, degrees(30)),
        0.9,
        30);
    agrees("diameter/ellipse-view-deviation", OvalSections.deviationOfOneView(0.9), 0.9);
    assertThatThrownBy(() -> OvalSections.area(b, a)).isInstanceOf(OutOfDomainException.class);
  }

  @Test
  void forksMeansAndScales() {
    agrees(
        "diameter/v-fork-axis",
        in(Diameters.vForkToAxis(centimetres(40), degrees(25)), CENTIMETRE),
        40,
        25);
    assertThat(in(Diameters.quadraticMean(List.of(centimetres(30), centimetres(40))), CENTIMETRE))
        .isCloseTo(Math.sqrt(1250), within(1e-12));
    assertThatThrownBy(() -> Diameters.quadraticMean(List.of()))
        .isInstanceOf(IllegalArgumentException.class);
    RatioScale scale = OpticalScales.ofRatio(0.02);
    agrees("optics/angle-from-ratio", deg(OpticalScales.angle(scale)), 0.02);
    assertThat(in(OpticalScales.factor(scale, 2), SQUARE_METRE_PER_HECTARE))
        .isEqualTo(Catalogues.standard().formula("optics/factor-from-ratio").apply(0.04));
    double back =
        in(
            OpticalScales.factor(
                OpticalScales.ofFactor(org.mensuration.units.Measures.squareMetresPerHectare(4), 2),
                2),
            SQUARE_METRE_PER_HECTARE);
    assertThat(back).isCloseTo(4, within(1e-12));
  }

  @Test
  void errorsOfMeasurements() {
    agrees("error/rectangular", MeasurementErrors.rectangular(0.25), 0.25);
    agrees("error/triangular", MeasurementErrors.triangular(0.25), 0.25);
    agrees("error/arc-sine", MeasurementErrors.arcSine(0.25), 0.25);
    agrees("error/product", MeasurementErrors.ofProduct(3, 0.1, 4, 0.2), 3, 0.1, 4, 0.2);
    agrees(
        "error/volume-from-form-factor",
        MeasurementErrors.ofVolumePercent(3, 1.5, 2.9),
        3,
        1.5,
        2.9);
    agrees("error/without-reference", MeasurementErrors.withoutReference(20, 7), 20, 7);
    assertThat(MeasurementErrors.combined(new double[] {2, -3}, new double[] {0.2, 0.1}))
        .isCloseTo(0.5, within(1e-15));
    agrees("error/correlated", MeasurementErrors.correlated(3, -4, 0.25), 3, -4, 0.25);
    assertThat(MeasurementErrors.correlated(3, 4, 1)).isCloseTo(7, within(1e-14));
    assertThat(MeasurementErrors.correlated(-3, 4, 1)).isCloseTo(1, within(1e-15));
    assertThat(MeasurementErrors.correlated(3, 4, -1)).isCloseTo(1, within(1e-15));
    assertThat(MeasurementErrors.correlated(3, -3, 1)).isZero();
    assertThat(MeasurementErrors.correlated(3, 4, 0)).isCloseTo(5, within(1e-15));
    assertThatThrownBy(() -> MeasurementErrors.correlated(3, 4, 1.1))
        .hasMessageContaining("[-1, 1]");
    assertThatThrownBy(() -> MeasurementErrors.withoutReference(6, 7))
        .isInstanceOf(OutOfDomainException.class);
  }
}
