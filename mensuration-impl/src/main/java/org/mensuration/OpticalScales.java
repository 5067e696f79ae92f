package org.mensuration;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.internal.catalogue.ImageFormulas;
import org.mensuration.internal.catalogue.OpticalRatioFormulas;
import org.mensuration.internal.catalogue.SightedDiameterFormulas;
import org.mensuration.internal.optics.PinholeCamera;
import org.mensuration.internal.optics.ScaleCalibration;
import org.mensuration.internal.optics.StationScale;
import org.mensuration.internal.optics.TangentScale;
import org.mensuration.optics.Calibration;
import org.mensuration.optics.CalibrationReading;
import org.mensuration.optics.CameraScale;
import org.mensuration.optics.Graduation;
import org.mensuration.optics.OpticalScale;
import org.mensuration.optics.RatioScale;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * Optical scales: at a station on a known diameter of the same stem, or of a known ratio. A scale
 * of known ratio that is not made {@link #compensating} wants the elevation of each reading.
 * Stateless and thread-safe.
 *
 * <p>Look up only when standing still, never sight toward the sun, and keep well away from dead,
 * hung-up or wind-loaded trees.
 *
 * <p>Equation, limits and sources of an id such as {@code optics/division-width}: {@link
 * Catalogues#standard}.
 */
public final class OpticalScales {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Length> MILLIMETRES = UnitReader.in(ForestUnits.MILLIMETRE);
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);
  private static final UnitReader<BasalAreaPerArea> FACTORS =
      UnitReader.in(ForestUnits.SQUARE_METRE_PER_HECTARE);

  private OpticalScales() {}

  /**
   * A scale that compensates for slope, or is used level, calibrated on a diameter of the stem
   * ({@code optics/division-width}).
   *
   * @param diameter diameter measured by hand
   * @param divisions divisions that it fills from this station
   * @return the scale
   * @throws org.mensuration.formula.OutOfDomainException if either is not positive
   */
  public static OpticalScale calibratedOnStem(Quantity<Length> diameter, double divisions) {
    return StationScale.of(diameter, divisions, Optional.empty(), Optional.empty());
  }

  /**
   * The same with a graduation, which tells the largest diameter and the resolution.
   *
   * @param diameter diameter measured by hand
   * @param divisions divisions that it fills from this station
   * @param graduation how the scale is divided
   * @return the scale
   * @throws org.mensuration.formula.OutOfDomainException if a number is not positive
   * @throws IllegalArgumentException if the scale has not so many divisions
   */
  public static OpticalScale calibratedOnStem(
      Quantity<Length> diameter, double divisions, Graduation graduation) {
    return StationScale.of(diameter, divisions, Optional.empty(), Optional.of(graduation));
  }

  /**
   * A scale that does not compensate for slope, calibrated on a diameter of the stem.
   *
   * @param diameter diameter measured by hand
   * @param divisions divisions that it fills from this station
   * @param elevation elevation of the calibration's sight, up positive
   * @return the scale; it refuses a reading without its elevation
   * @throws org.mensuration.formula.OutOfDomainException if the diameter or count is not positive,
   *     or the elevation not between -90 and 90 degrees
   */
  public static OpticalScale uncompensatedOnStem(
      Quantity<Length> diameter, double divisions, Quantity<Angle> elevation) {
    return StationScale.of(diameter, divisions, Optional.of(elevation), Optional.empty());
  }

  /**
   * The same with a graduation, which tells the largest diameter and the resolution.
   *
   * @param diameter diameter measured by hand
   * @param divisions divisions that it fills from this station
   * @param elevation elevation of the calibration's sight, up positive
   * @param graduation how the scale is divided
   * @return the scale; it refuses a reading without its elevation
   * @throws org.mensuration.formula.OutOfDomainException if the diameter or count is not positive,
   *     or the elevation not between -90 and 90 degrees
   */
  public static OpticalScale uncompensatedOnStem(
      Quantity<Length> diameter,
      double divisions,
      Quantity<Angle> elevation,
      Graduation graduation) {
    return StationScale.of(diameter, divisions, Optional.of(elevation), Optional.of(graduation));
  }

  /**
   * A scale of a known ratio, without compensation.
   *
   * @param ratio width over distance of one division, such as 0.02 for 1 in 50
   * @return the scale
   * @throws IllegalArgumentException if the ratio is not a positive number
   */
  public static RatioScale ofRatio(double ratio) {
    return new TangentScale(ratio, false, Optional.empty());
  }

  /**
   * A scale of the full angle of one division ({@code optics/ratio-from-angle}).
   *
   * @param angle full angle of a division, above 0° and below 180°
   * @return the scale, without compensation
   * @throws org.mensuration.formula.OutOfDomainException if the angle is outside
   */
  public static RatioScale ofAngle(Quantity<Angle> angle) {
    return ofRatio(OpticalRatioFormulas.FROM_ANGLE.value(DEGREES.read(angle)));
  }

  /**
   * A scale of which a number of divisions side by side counts trees with a basal-area factor
   * ({@code optics/ratio-from-factor}).
   *
   * @param factor the factor, above 0 and below 10 000 m²/ha
   * @param divisions divisions that make the gauge, often 1
   * @return the scale, without compensation
   * @throws org.mensuration.formula.OutOfDomainException if an input is outside
   */
  public static RatioScale ofFactor(Quantity<BasalAreaPerArea> factor, double divisions) {
    double gauge = OpticalRatioFormulas.FROM_FACTOR.value(FACTORS.read(factor));
    return ofRatio(OpticalRatioFormulas.FLAT_TARGET.value(gauge, 1, divisions));
  }

  /**
   * A scale of known division width held at a known distance from the eye ({@code
   * optics/division-ratio-held}).
   *
   * @param divisionWidth width of a division on the scale
   * @param eyeDistance distance from the eye to the scale
   * @return the scale, without compensation
   * @throws org.mensuration.formula.OutOfDomainException if either is not positive
   */
  public static RatioScale held(Quantity<Length> divisionWidth, Quantity<Length> eyeDistance) {
    return ofRatio(
        OpticalRatioFormulas.HELD.value(
            CENTIMETRES.read(divisionWidth), CENTIMETRES.read(eyeDistance)));
  }

  /**
   * Calibrates a scale without compensation on flat targets and round posts, by least squares
   * through the origin ({@code optics/division-ratio-calibration}).
   *
   * @param readings at least one; the known diameter of the stem itself, with the distance to its
   *     axis, is a round post
   * @return the scale with its errors and warnings
   * @throws org.mensuration.formula.OutOfDomainException if a width, distance or count is not
   *     positive, or a post not below twice its distance
   * @throws IllegalArgumentException if there is no reading
   */
  public static Calibration calibrate(List<CalibrationReading> readings) {
    return ScaleCalibration.fit(readings, false);
  }

  /**
   * Calibrates a scale that compensates for slope; see {@link #calibrate(List)}.
   *
   * @param readings at least one; elevations do not matter
   * @return the scale with its errors and warnings
   * @throws org.mensuration.formula.OutOfDomainException if a width, distance or count is not
   *     positive, or a post not below twice its distance
   * @throws IllegalArgumentException if there is no reading
   */
  public static Calibration calibrateCompensating(List<CalibrationReading> readings) {
    return ScaleCalibration.fit(readings, true);
  }

  /**
   * The same scale, said to compensate for slope: its divisions narrow with the cosine of the
   * elevation.
   *
   * @param scale a scale
   * @return a scale of its ratio and graduation
   */
  public static RatioScale compensating(RatioScale scale) {
    return new TangentScale(scale.ratio(), true, scale.graduation());
  }

  /**
   * The same scale with its graduation, which tells the largest diameter and the resolution, and
   * refuses readings beyond the end.
   *
   * @param scale a scale
   * @param graduation how it is divided
   * @return a scale of its ratio
   */
  public static RatioScale graduated(RatioScale scale, Graduation graduation) {
    return new TangentScale(scale.ratio(), scale.compensated(), Optional.of(graduation));
  }

  /**
   * A rectilinear, undistorted camera of a focal length in pixels.
   *
   * @param focalLengthPixels focal length in pixels
   * @return the camera
   * @throws org.mensuration.formula.OutOfDomainException if it is not positive
   */
  public static CameraScale camera(double focalLengthPixels) {
    return new PinholeCamera(focalLengthPixels);
  }

  /**
   * A rectilinear, undistorted camera ({@code optics/focal-length-pixels}).
   *
   * @param focalLength focal length
   * @param pixelPitch distance between the centres of two pixels on the sensor
   * @return the camera
   * @throws org.mensuration.formula.OutOfDomainException if either is not positive
   */
  public static CameraScale camera(Quantity<Length> focalLength, Quantity<Length> pixelPitch) {
    return camera(
        ImageFormulas.FOCAL_LENGTH.value(
            MILLIMETRES.read(focalLength), MILLIMETRES.read(pixelPitch)));
  }

  /**
   * Level distance to the axis of an upright stem, from the distance to its face and the diameter
   * at that level ({@code optics/axis-from-face}). Kept for all heights of the stem.
   *
   * @param faceDistance level distance to the near face
   * @param diameter diameter there
   * @return level distance to the axis
   * @throws org.mensuration.formula.OutOfDomainException if the distance is not positive, or the
   *     diameter negative
   */
  public static Quantity<Length> axisDistance(
      Quantity<Length> faceDistance, Quantity<Length> diameter) {
    return Measures.metres(
        SightedDiameterFormulas.AXIS_FROM_FACE.value(
            METRES.read(faceDistance), METRES.read(diameter)));
  }

  /**
   * Full angle of one division ({@code optics/angle-from-ratio}).
   *
   * @param scale a scale
   * @return the angle
   */
  public static Quantity<Angle> angle(RatioScale scale) {
    return Measures.degrees(OpticalRatioFormulas.TO_ANGLE.value(scale.ratio()));
  }

  /**
   * Basal-area factor with which divisions side by side count trees ({@code
   * optics/factor-from-ratio}).
   *
   * @param scale a scale
   * @param divisions divisions that make the gauge, above zero
   * @return the factor
   * @throws org.mensuration.formula.OutOfDomainException if the divisions are not above zero
   */
  public static Quantity<BasalAreaPerArea> factor(RatioScale scale, double divisions) {
    double gauge = OpticalRatioFormulas.OF_DIVISIONS.value(scale.ratio(), divisions);
    return Measures.squareMetresPerHectare(OpticalRatioFormulas.TO_FACTOR.value(gauge));
  }
}
