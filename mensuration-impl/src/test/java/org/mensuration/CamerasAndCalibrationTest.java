package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.degrees;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.optics.Calibration;
import org.mensuration.optics.CalibrationReading;
import org.mensuration.optics.CameraScale;
import org.mensuration.optics.ImageReading;
import org.mensuration.optics.Sighting;
import org.mensuration.units.ForestUnits;

class CamerasAndCalibrationTest {
  private static final double F = 3000;
  private static final CameraScale CAMERA = OpticalScales.camera(F);

  /** Tangent points in space, turned into the camera and projected. */
  @Property(tries = 200)
  void aPitchedCameraReadsAnUprightStemAnywhereInTheImage(
      @ForAll @DoubleRange(min = 0.1, max = 1.5) double diameter,
      @ForAll @DoubleRange(min = 5, max = 30) double away,
      @ForAll @DoubleRange(min = -15, max = 15) double offset,
      @ForAll @DoubleRange(min = -20, max = 35) double pitch,
      @ForAll @DoubleRange(min = -0.3, max = 0.3) double row) {
    double half = StrictMath.toDegrees(StrictMath.asin(diameter / 2 / away));
    double v = row * F;
    double left = column(offset - half, v, pitch);
    double right = column(offset + half, v, pitch);
    ImageReading reading = ImageReading.edges(left, right).pitched(v, degrees(pitch));
    assertThat(in(CAMERA.azimuth(reading), ForestUnits.DEGREE)).isCloseTo(2 * half, within(1e-10));
    near(CAMERA.diameter(reading, Sighting.toAxis(metres(away))), diameter);
    near(CAMERA.diameter(reading, Sighting.toFace(metres(away - diameter / 2))), diameter);
    double elevation = pitch + StrictMath.toDegrees(StrictMath.atan(row));
    double straight = away / StrictMath.cos(StrictMath.toRadians(elevation));
    near(CAMERA.diameter(reading, Sighting.alongSight(metres(straight))), diameter);
    near(
        CAMERA.diameter(
            reading, Sighting.alongSight(metres(away / 0.8)).at(degrees(36.86989764584402))),
        diameter);
    near(
        CAMERA.diameter(reading, Sighting.toAxis(metres(away)).leaningAcross(degrees(60))),
        diameter / 2);
  }

  /** Column in which a direction of this azimuth crosses a row: the row is a plane in space. */
  private static double column(double azimuth, double v, double pitch) {
    double c = StrictMath.toRadians(pitch);
    double forward = F * StrictMath.cos(c) - v * StrictMath.sin(c);
    return forward * StrictMath.tan(StrictMath.toRadians(azimuth));
  }

  @Test
  void aLevelCameraIsACompensatingScale() {
    double width = CAMERA.width(metres(0.4), metres(10));
    assertThat(width).isCloseTo(F * 0.0400080024, within(1e-6));
    near(CAMERA.diameter(ImageReading.centred(width), Sighting.toAxis(metres(10))), 0.4);
    near(CAMERA.levelScale().diameter(width, Sighting.toAxis(metres(10))), 0.4);
    assertThat(OpticalScales.camera(centimetres(0.425), metres(0.00000136)).focalLengthPixels())
        .isCloseTo(3125, within(1e-9));
    assertThat(CAMERA.focalLengthPixels()).isEqualTo(F);
  }

  @Test
  void imagesWithoutMeaningAreRefused() {
    assertThatThrownBy(() -> OpticalScales.camera(0)).isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> CAMERA.azimuth(ImageReading.edges(10, 5)))
        .hasMessageContaining("allowed x_1 ≤ x_2");
    // A camera pitched up by 80 degrees, a row 20 degrees above its middle: beyond the zenith.
    ImageReading beyond = ImageReading.edges(-5, 5).pitched(1100, degrees(80));
    assertThatThrownBy(() -> CAMERA.azimuth(beyond))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("allowed a finite result");
    assertThatThrownBy(() -> CAMERA.width(metres(20), metres(10)))
        .hasMessageContaining("allowed D < 2R");
    for (Sighting sighting :
        List.of(
            Sighting.toAxis(metres(10)).leaningAway(degrees(5)),
            Sighting.toAxis(metres(10)).tapering(metres(20)))) {
      assertThatThrownBy(() -> CAMERA.diameter(ImageReading.centred(100), sighting))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("use the level scale");
    }
  }

  @Test
  void aCalibrationFindsItsRatioAndItsErrors() {
    // Flat targets at 10 m, read with errors that sum to zero against n: worked by hand.
    List<CalibrationReading> readings =
        List.of(
            CalibrationReading.flat(metres(0.41), metres(10), 2),
            CalibrationReading.flat(metres(0.79), metres(10), 4),
            CalibrationReading.flat(metres(1.23), metres(10), 6));
    Calibration calibration = OpticalScales.calibrate(readings);
    double u = (2 * 0.041 + 4 * 0.079 + 6 * 0.123) / 56;
    assertThat(calibration.scale().ratio()).isCloseTo(u, within(1e-16));
    double sum = 0;
    sum += (0.041 - 2 * u) * (0.041 - 2 * u);
    sum += (0.079 - 4 * u) * (0.079 - 4 * u);
    sum += (0.123 - 6 * u) * (0.123 - 6 * u);
    Calibration.Spread spread = calibration.spread().orElseThrow();
    assertThat(spread.residual()).isCloseTo(Math.sqrt(sum / 2), within(1e-15));
    assertThat(spread.standardError()).isCloseTo(Math.sqrt(sum / 2 / 56), within(1e-15));
    Calibration.Intercept intercept = calibration.intercept().orElseThrow();
    // Slope 0.0205, mean ratio 0.081: the line starts at -0.001.
    assertThat(intercept.value()).isCloseTo(-0.001, within(1e-15));
    assertThat(intercept.significant()).isFalse();
    assertThat(calibration.warnings()).isEmpty();
    assertThat(calibration.readings()).isEqualTo(3);
    assertThat(calibration.scale().compensated()).isFalse();
    assertThat(OpticalScales.calibrateCompensating(readings).scale().compensated()).isTrue();
  }

  @Test
  void twoReadingsTellTheirSpread() {
    // u = 0.398/20; off by 0.0012 and -0.0006, so 1.8e-6 with one degree of freedom.
    Calibration.Spread spread =
        OpticalScales.calibrate(
                List.of(
                    CalibrationReading.flat(metres(0.41), metres(10), 2),
                    CalibrationReading.flat(metres(0.79), metres(10), 4)))
            .spread()
            .orElseThrow();
    assertThat(spread.residual()).isCloseTo(Math.sqrt(1.8e-6), within(1e-15));
    assertThat(spread.standardError()).isCloseTo(3e-4, within(1e-15));
  }

  @Test
  void threeReadingsLeaveOneDegreeOfFreedomForTheIntercept() {
    // The line 0.0187 + 0.02 n, off by 0.001, -0.002 and 0.001: the intercept is five times its
    // standard error, √(6 · 56/24) thousandths, but t with one degree of freedom is 12.7.
    Calibration calibration =
        OpticalScales.calibrate(
            List.of(
                CalibrationReading.flat(metres(0.597), metres(10), 2),
                CalibrationReading.flat(metres(0.967), metres(10), 4),
                CalibrationReading.flat(metres(1.397), metres(10), 6)));
    Calibration.Intercept intercept = calibration.intercept().orElseThrow();
    assertThat(intercept.value()).isCloseTo(0.0187, within(1e-15));
    assertThat(intercept.standardError()).isCloseTo(0.001 * Math.sqrt(14), within(1e-15));
    assertThat(intercept.significant()).isFalse();
    assertThat(calibration.warnings()).isEmpty();
  }

  @Test
  void anInterceptThatMattersIsWarnedOf() {
    List<CalibrationReading> shifted =
        List.of(
            CalibrationReading.flat(metres(0.25), metres(10), 2),
            CalibrationReading.flat(metres(0.4501), metres(10), 4),
            CalibrationReading.flat(metres(0.6499), metres(10), 6),
            CalibrationReading.flat(metres(0.85), metres(10), 8));
    Calibration calibration = OpticalScales.calibrate(shifted);
    Calibration.Intercept intercept = calibration.intercept().orElseThrow();
    assertThat(intercept.value()).isCloseTo(0.005, within(1e-5));
    assertThat(intercept.standardError()).isBetween(1e-6, 2e-5);
    assertThat(intercept.significant()).isTrue();
    assertThat(calibration.warnings()).hasSize(1);
    assertThat(calibration.warnings().get(0)).contains("misses zero by 0.005");
  }

  @Test
  void exactReadingsAreNotWarnedOfForTheirRounding() {
    Calibration exact =
        OpticalScales.calibrate(
            List.of(
                CalibrationReading.flat(metres(0.3), metres(10), 1.5),
                CalibrationReading.flat(metres(0.7), metres(10), 3.5),
                CalibrationReading.flat(metres(1.3), metres(10), 6.5)));
    assertThat(exact.warnings()).isEmpty();
    assertThat(exact.scale().ratio()).isCloseTo(0.02, within(1e-16));
  }

  @Test
  void postsElevationsAndSingleReadings() {
    double seen = 2 * StrictMath.tan(StrictMath.asin(0.02));
    Calibration one =
        OpticalScales.calibrate(List.of(CalibrationReading.round(metres(0.4), metres(10), 2)));
    assertThat(one.scale().ratio()).isCloseTo(seen / 2, within(1e-16));
    assertThat(one.spread()).isEmpty();
    assertThat(one.intercept()).isEmpty();
    CalibrationReading up = CalibrationReading.round(metres(0.4), metres(10), 2).at(degrees(60));
    assertThat(OpticalScales.calibrate(List.of(up)).scale().ratio())
        .isCloseTo(seen / 4, within(1e-16));
    assertThat(OpticalScales.calibrateCompensating(List.of(up)).scale().ratio())
        .isCloseTo(seen / 2, within(1e-16));
    Calibration alike = OpticalScales.calibrate(List.of(up, up, up));
    assertThat(alike.intercept()).isEmpty();
    assertThat(alike.spread()).isPresent();
    assertThat(OpticalScales.calibrate(List.of(up, up)).intercept()).isEmpty();
    assertThat(up)
        .isEqualTo(CalibrationReading.round(centimetres(40), metres(10), 2).at(degrees(60)))
        .hasSameHashCodeAs(CalibrationReading.round(centimetres(40), metres(10), 2).at(degrees(60)))
        .isNotEqualTo(CalibrationReading.round(centimetres(40), metres(10), 2));
  }

  @Test
  void calibrationsWithoutMeaningAreRefused() {
    assertThatThrownBy(() -> OpticalScales.calibrate(List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("at least one is needed");
    assertThatThrownBy(
            () ->
                OpticalScales.calibrate(
                    List.of(CalibrationReading.round(metres(0.4), metres(0.2), 2))))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("optics/division-ratio-round-target: D = 0.4 m, allowed D < 2R");
    assertThatThrownBy(
            () ->
                OpticalScales.calibrate(
                    List.of(CalibrationReading.flat(metres(0.4), metres(10), 0))))
        .hasMessageContaining("optics/division-ratio-flat-target: n = 0");
  }

  @Test
  void theAxisLiesHalfADiameterBehindTheFace() {
    near(OpticalScales.axisDistance(metres(9.8), centimetres(40)), 10);
  }

  private static void near(Quantity<Length> found, double metres) {
    assertThat(in(found, ForestUnits.METRE)).isCloseTo(metres, within(1e-11));
  }
}
