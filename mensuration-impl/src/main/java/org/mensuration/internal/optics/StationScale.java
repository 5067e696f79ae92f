package org.mensuration.internal.optics;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.internal.catalogue.OpticsFormulas;
import org.mensuration.optics.Graduation;
import org.mensuration.optics.OpticalScale;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * A scale calibrated on a diameter of the stem.
 *
 * @param widthCm width of a division in cm
 * @param calibrationElevation elevation of the calibration; empty for a scale that compensates
 * @param graduation how the scale is divided
 */
public record StationScale(
    double widthCm, Optional<Quantity<Angle>> calibrationElevation, Optional<Graduation> graduation)
    implements OpticalScale {
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);

  /**
   * Calibrates a scale.
   *
   * @param diameter diameter measured by hand
   * @param divisions divisions that it fills
   * @param elevation elevation of the calibration; empty for a scale that compensates
   * @param graduation how the scale is divided
   * @return the scale
   */
  public static StationScale of(
      Quantity<Length> diameter,
      double divisions,
      Optional<Quantity<Angle>> elevation,
      Optional<Graduation> graduation) {
    double read = Graduations.onScale(graduation, divisions);
    double width = OpticsFormulas.DIVISION_WIDTH.value(CENTIMETRES.read(diameter), read);
    // The calibration read back, so that an elevation without meaning is refused here.
    elevation.ifPresent(angle -> elevated(width, read, angle, angle));
    return new StationScale(width, elevation, graduation);
  }

  @Override
  public Quantity<Length> divisionWidth() {
    return Measures.centimetres(widthCm);
  }

  @Override
  public Quantity<Length> diameter(double divisions) {
    if (calibrationElevation.isPresent()) {
      throw new IllegalStateException(
          "this optical scale does not compensate for slope: give the elevation of the reading of "
              + divisions
              + " divisions");
    }
    return proportional(divisions);
  }

  @Override
  public Quantity<Length> diameter(double divisions, Quantity<Angle> elevation) {
    if (!calibrationElevation.isPresent()) {
      return proportional(divisions);
    }
    double read = Graduations.onScale(graduation, divisions);
    return Measures.centimetres(elevated(widthCm, read, elevation, calibrationElevation.get()));
  }

  @Override
  public Quantity<Length> largestDiameter() {
    return proportional(Graduations.stated(graduation).divisions());
  }

  @Override
  public Quantity<Length> resolution() {
    return proportional(Graduations.stated(graduation).part());
  }

  private Quantity<Length> proportional(double divisions) {
    return Measures.centimetres(
        OpticsFormulas.DIAMETER_FROM_DIVISIONS.value(
            widthCm, Graduations.onScale(graduation, divisions)));
  }

  private static double elevated(
      double widthCm, double divisions, Quantity<Angle> elevation, Quantity<Angle> calibration) {
    return OpticsFormulas.DIAMETER_FROM_DIVISIONS_ELEVATED.value(
        widthCm, divisions, DEGREES.read(elevation), DEGREES.read(calibration));
  }
}
