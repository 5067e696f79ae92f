package org.mensuration.internal.optics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.mensuration.internal.catalogue.OpticalRatioFormulas;
import org.mensuration.internal.statistics.StudentT;
import org.mensuration.optics.Calibration;
import org.mensuration.optics.CalibrationReading;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.UnitReader;

/** Fits the ratio of a division to targets. Stateless and thread-safe. */
public final class ScaleCalibration {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);
  private static final double CONFIDENCE_PERCENT = 95;

  /** An intercept below this share of the mean ratio is the rounding of the fit. */
  private static final double ROUNDING = 1e-12;

  private ScaleCalibration() {}

  /**
   * Fits a scale.
   *
   * @param readings targets read
   * @param compensated whether the scale compensates for slope
   * @return the calibration
   * @throws IllegalArgumentException if there is no reading
   */
  public static Calibration fit(List<CalibrationReading> readings, boolean compensated) {
    if (readings.isEmpty()) {
      throw new IllegalArgumentException("calibration: no readings, at least one is needed");
    }
    double[] divisions = readings.stream().mapToDouble(CalibrationReading::divisions).toArray();
    double[] ratios = readings.stream().mapToDouble(r -> ratio(r, compensated)).toArray();
    double ratio = OpticalRatioFormulas.THROUGH_ORIGIN.applyTo(divisions, ratios);
    Optional<Calibration.Intercept> intercept = intercept(divisions, ratios);
    List<String> warnings = new ArrayList<>();
    if (intercept.isPresent() && intercept.get().significant()) {
      warnings.add(
          "the line through the readings misses zero by "
              + intercept.get().value()
              + " (standard error "
              + intercept.get().standardError()
              + "): check where the scale starts, the distances and the eye");
    }
    return new Calibration(
        new TangentScale(ratio, compensated, Optional.empty()),
        readings.size(),
        spread(divisions, ratios),
        intercept,
        warnings);
  }

  private static double ratio(CalibrationReading reading, boolean compensated) {
    double width = METRES.read(reading.width());
    double distance = METRES.read(reading.distance());
    // Through the formula of one reading, so that a bad target is refused by its name.
    double ofOne =
        reading.round()
            ? OpticalRatioFormulas.ROUND_TARGET.value(width, distance, reading.divisions())
            : OpticalRatioFormulas.FLAT_TARGET.value(width, distance, reading.divisions());
    double level = OpticalRatioFormulas.OF_DIVISIONS.value(ofOne, reading.divisions());
    return reading.elevation().isPresent() && !compensated
        ? OpticalRatioFormulas.UNCOMPENSATED.value(level, DEGREES.read(reading.elevation().get()))
        : level;
  }

  private static Optional<Calibration.Spread> spread(double[] divisions, double[] ratios) {
    if (ratios.length < 2) {
      return Optional.empty();
    }
    OLSMultipleLinearRegression line = line(divisions, ratios, true);
    return Optional.of(
        new Calibration.Spread(
            line.estimateRegressionParametersStandardErrors()[0],
            line.estimateRegressionStandardError()));
  }

  private static Optional<Calibration.Intercept> intercept(double[] divisions, double[] ratios) {
    int freedom = ratios.length - 2;
    if (freedom < 1 || allAlike(divisions)) {
      return Optional.empty();
    }
    OLSMultipleLinearRegression line = line(divisions, ratios, false);
    double value = line.estimateRegressionParameters()[0];
    double error = line.estimateRegressionParametersStandardErrors()[0];
    double t = StudentT.quantile(freedom, CONFIDENCE_PERCENT);
    boolean significant = Math.abs(value) > Math.max(t * error, ROUNDING * ratios[0]);
    return Optional.of(new Calibration.Intercept(value, error, significant));
  }

  private static OLSMultipleLinearRegression line(
      double[] divisions, double[] ratios, boolean throughOrigin) {
    double[][] columns = new double[divisions.length][];
    for (int i = 0; i < columns.length; i++) {
      columns[i] = new double[] {divisions[i]};
    }
    OLSMultipleLinearRegression line = new OLSMultipleLinearRegression();
    line.setNoIntercept(throughOrigin);
    line.newSampleData(ratios, columns);
    return line;
  }

  private static boolean allAlike(double[] values) {
    for (double value : values) {
      if (Double.compare(value, values[0]) != 0) {
        return false;
      }
    }
    return true;
  }
}
