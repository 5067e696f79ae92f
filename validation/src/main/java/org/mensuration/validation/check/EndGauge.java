package org.mensuration.validation.check;

import static org.mensuration.validation.check.MapCase.list;
import static org.mensuration.validation.check.MapCase.number;

import java.util.ArrayList;
import java.util.List;
import org.mensuration.DrawnUncertainty;
import org.mensuration.StatedResults;
import org.mensuration.formula.Catalogue;
import org.mensuration.formula.Parameter;
import org.mensuration.uncertainty.DrawnResult;
import org.mensuration.uncertainty.InputDistribution;
import org.mensuration.uncertainty.InputDistribution.ArcSine;
import org.mensuration.uncertainty.InputDistribution.Normal;
import org.mensuration.uncertainty.InputDistribution.Rectangular;
import org.mensuration.uncertainty.StatedResult;

/**
 * The calibration of an end gauge by a standard of the same nominal length, as tables give it: the
 * length of the standard and the difference seen, less what the two grow apart by unlike expansion
 * and unlike temperature. Both of these are nought at their estimates. Stateless and thread-safe.
 */
final class EndGauge {
  private static final int STANDARD = 0;
  private static final int STANDARD_ERROR = 1;
  private static final int DIFFERENCE = 2;
  private static final int DIFFERENCE_ERRORS = 3;
  private static final int EXPANSION = 4;
  private static final int EXPANSION_HALF_WIDTH = 5;
  private static final int EXPANSION_DIFFERENCE = 6;
  private static final int TEMPERATURE = 7;
  private static final int TEMPERATURE_ERROR = 8;
  private static final int TEMPERATURE_SWING = 9;
  private static final int TEMPERATURE_DIFFERENCE = 10;

  static final List<Parameter> PARAMETERS =
      List.of(
          number("standard", "1", "length of the standard"),
          number("standard_error", "1", "its standard uncertainty"),
          number("difference", "1", "difference of the lengths as seen"),
          list("difference_error", "1", "its standard uncertainties, one a cause"),
          number("expansion", "1", "part by which the standard grows in a degree"),
          number("expansion_half_width", "1", "its half-width, rectangular"),
          number("expansion_difference", "1", "half-width of the difference of the expansions"),
          number("temperature", "1", "mean deviation from the reference temperature"),
          number("temperature_error", "1", "its standard uncertainty"),
          number("temperature_swing", "1", "how far the temperature swings to either side"),
          number("temperature_difference", "1", "half-width of the difference of temperatures"));

  private EndGauge() {}

  /** The length, for differences of expansion and temperature that need not be nought. */
  static double length(
      double standard,
      double difference,
      double expansion,
      double temperature,
      double expansionDifference,
      double temperatureDifference) {
    return standard
        + difference
        - standard * (expansionDifference * temperature + expansion * temperatureDifference);
  }

  /** The length by the estimates, and its standard uncertainty of first order. */
  static StatedResult stated(Catalogue catalogue, double[][] x, int digits) {
    double standard = x[STANDARD][0];
    double expansion = x[EXPANSION][0];
    double temperature = x[TEMPERATURE][0];
    double length = length(standard, x[DIFFERENCE][0], expansion, temperature, 0, 0);
    int causes = x[DIFFERENCE_ERRORS].length;
    double[] slopes = new double[causes + 3];
    double[] errors = new double[causes + 3];
    for (int i = 0; i < causes; i++) {
      slopes[i] = 1;
      errors[i] = x[DIFFERENCE_ERRORS][i];
    }
    slopes[causes] = 1;
    errors[causes] = x[STANDARD_ERROR][0];
    slopes[causes + 1] = -standard * temperature;
    errors[causes + 1] = rectangular(catalogue, x[EXPANSION_DIFFERENCE][0]);
    slopes[causes + 2] = -standard * expansion;
    errors[causes + 2] = rectangular(catalogue, x[TEMPERATURE_DIFFERENCE][0]);
    double error = catalogue.formula("error/combined").applyTo(slopes, errors);
    return StatedResults.nearest(length, error, digits);
  }

  /** The length with every input drawn, the differences of expansion and temperature too. */
  static DrawnResult drawn(double[][] x, int draws, long seed, double confidencePercent) {
    List<InputDistribution> inputs = new ArrayList<>();
    inputs.add(new Normal(x[STANDARD][0], x[STANDARD_ERROR][0]));
    inputs.add(new Rectangular(x[EXPANSION][0], x[EXPANSION_HALF_WIDTH][0]));
    inputs.add(new Normal(x[TEMPERATURE][0], x[TEMPERATURE_ERROR][0]));
    inputs.add(new ArcSine(0, x[TEMPERATURE_SWING][0]));
    inputs.add(new Rectangular(0, x[EXPANSION_DIFFERENCE][0]));
    inputs.add(new Rectangular(0, x[TEMPERATURE_DIFFERENCE][0]));
    int single = inputs.size();
    for (double error : x[DIFFERENCE_ERRORS]) {
      inputs.add(new Normal(0, error));
    }
    return DrawnUncertainty.through(
        y -> {
          double difference = x[DIFFERENCE][0];
          for (int i = single; i < y.length; i++) {
            difference += y[i];
          }
          return length(y[0], difference, y[1], y[2] + y[3], y[4], y[5]);
        },
        inputs,
        draws,
        seed,
        confidencePercent);
  }

  private static double rectangular(Catalogue catalogue, double halfWidth) {
    return catalogue.formula("error/rectangular").apply(halfWidth);
  }
}
