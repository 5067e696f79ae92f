package org.mensuration;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.internal.catalogue.OpticalRatioFormulas;
import org.mensuration.internal.catalogue.OpticsFormulas;
import org.mensuration.optics.OpticalScale;
import org.mensuration.optics.RatioScale;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * Optical scales. Stateless and thread-safe.
 *
 * <p>Look up only when standing still, never sight toward the sun, and keep well away from dead,
 * hung-up or wind-loaded trees.
 */
public final class OpticalScales {
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);

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
    return new Compensated(width(diameter, divisions));
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
    Uncompensated scale = new Uncompensated(width(diameter, divisions), DEGREES.read(elevation));
    // Reads the calibration back, so that an elevation without meaning is refused here.
    scale.diameter(divisions, elevation);
    return scale;
  }

  /**
   * A scale of a known ratio.
   *
   * @param ratio width over distance of one division, such as 0.02 for 1 in 50
   * @return the scale
   * @throws IllegalArgumentException if the ratio is not a positive number
   */
  public static RatioScale ofRatio(double ratio) {
    if (!(ratio > 0 && ratio < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("division ratio: " + ratio + ", allowed (0, ∞)");
    }
    return new Tangents(ratio);
  }

  private static double width(Quantity<Length> diameter, double divisions) {
    return OpticsFormulas.DIVISION_WIDTH.value(CENTIMETRES.read(diameter), divisions);
  }

  private record Compensated(double widthCm) implements OpticalScale {
    @Override
    public Quantity<Length> divisionWidth() {
      return Measures.centimetres(widthCm);
    }

    @Override
    public Quantity<Length> diameter(double divisions) {
      return Measures.centimetres(OpticsFormulas.DIAMETER_FROM_DIVISIONS.value(widthCm, divisions));
    }

    @Override
    public Quantity<Length> diameter(double divisions, Quantity<Angle> elevation) {
      return diameter(divisions);
    }
  }

  private record Uncompensated(double widthCm, double calibrationDeg) implements OpticalScale {
    @Override
    public Quantity<Length> divisionWidth() {
      return Measures.centimetres(widthCm);
    }

    @Override
    public Quantity<Length> diameter(double divisions) {
      throw new IllegalStateException(
          "this optical scale does not compensate for slope: give the elevation of the reading of "
              + divisions
              + " divisions");
    }

    @Override
    public Quantity<Length> diameter(double divisions, Quantity<Angle> elevation) {
      return Measures.centimetres(
          OpticsFormulas.DIAMETER_FROM_DIVISIONS_ELEVATED.value(
              widthCm, divisions, DEGREES.read(elevation), calibrationDeg));
    }
  }

  private record Tangents(double ratio) implements RatioScale {
    @Override
    public Quantity<Length> diameter(double divisions, Quantity<Length> axisDistance) {
      return Measures.metres(
          OpticsFormulas.DIAMETER_AXIS_DISTANCE.value(seen(divisions), METRES.read(axisDistance)));
    }

    @Override
    public Quantity<Length> diameter(
        double divisions, Quantity<Length> axisDistance, Quantity<Angle> elevation) {
      return Measures.metres(
          OpticsFormulas.DIAMETER_ELEVATED.value(
              seen(divisions), METRES.read(axisDistance), DEGREES.read(elevation)));
    }

    /** Divisions stand side by side, so their ratios add. */
    private double seen(double divisions) {
      return OpticalRatioFormulas.OF_DIVISIONS.value(ratio, divisions);
    }
  }
}
