package org.mensuration.internal.statistics;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.rng.UniformRandomProvider;
import org.mensuration.formula.Formula;
import org.mensuration.formula.Parameter;
import org.mensuration.kernel.CoverageRanks;
import org.mensuration.uncertainty.CoverageInterval;
import org.mensuration.uncertainty.DrawException;
import org.mensuration.uncertainty.DrawnResult;
import org.mensuration.uncertainty.InputDistribution;

/**
 * The distribution of a result drawn through its function, after JCGM 101. Stateless and
 * thread-safe.
 *
 * <p>The bits come from a generator whose recurrence is published and fixed by its name, the well
 * equidistributed one with 19937 bits of state; a generator whose documentation leaves the
 * algorithm to the runtime would not give the same bits in years to come. Inputs are drawn in their
 * order, draw by draw.
 */
public final class Drawing {
  private Drawing() {}

  /**
   * Through a formula of the catalogue.
   *
   * @param formula the formula, without lists
   * @param inputs one an input of the formula
   * @param draws how many values
   * @param seed where the generator starts
   * @param confidencePercent part that the intervals hold, in per cent
   * @return what was drawn
   * @throws IllegalArgumentException if the inputs do not fit the formula, or as {@link
   *     #through(ToDoubleFunction, List, int, long, double)}
   */
  public static DrawnResult through(
      Formula formula,
      List<InputDistribution> inputs,
      int draws,
      long seed,
      double confidencePercent) {
    List<Parameter> parameters = formula.parameters();
    if (inputs.size() != parameters.size()) {
      StringBuilder needed = new StringBuilder();
      for (Parameter parameter : parameters) {
        needed.append(needed.length() == 0 ? "" : ", ").append(parameter.name());
      }
      throw new IllegalArgumentException(
          formula.id()
              + ": "
              + inputs.size()
              + " distributions given, "
              + parameters.size()
              + " needed: "
              + needed);
    }
    for (Parameter parameter : parameters) {
      if (parameter.list()) {
        throw new IllegalArgumentException(
            formula.id()
                + ": "
                + parameter.name()
                + " is a list; draw through a function that calls applyTo");
      }
    }
    return through(formula::apply, inputs, draws, seed, confidencePercent);
  }

  /**
   * Through any function.
   *
   * @param function the function
   * @param inputs at least one
   * @param draws how many values
   * @param seed where the generator starts
   * @param confidencePercent part that the intervals hold, in per cent
   * @return what was drawn
   * @throws IllegalArgumentException if a number is outside, the inputs are none, or there are too
   *     few draws for the intervals
   * @throws DrawException if a draw gives no finite value, or the function refuses it
   * @throws ArithmeticException if mean or deviation is beyond the largest number
   */
  public static DrawnResult through(
      ToDoubleFunction<double[]> function,
      List<InputDistribution> inputs,
      int draws,
      long seed,
      double confidencePercent) {
    if (inputs.isEmpty()) {
      throw new IllegalArgumentException("drawing: no inputs, wanted at least one");
    }
    int reach = reach(draws, confidencePercent);
    double[] values = values(function, inputs, draws, seed);
    ExactMoments moments = new ExactMoments();
    for (double value : values) {
      moments.add(value);
    }
    Arrays.sort(values);
    return new DrawnResult(
        moments.mean(),
        moments.standardDeviation(),
        interval(values, CoverageRanks.symmetric(draws, reach), reach, confidencePercent),
        interval(values, CoverageRanks.shortest(values, reach), reach, confidencePercent),
        draws,
        seed);
  }

  private static int reach(int draws, double confidencePercent) {
    if (!(confidencePercent >= 50 && confidencePercent < 100)) {
      throw new IllegalArgumentException(
          "drawing: confidence " + confidencePercent + " %, allowed [50, 100) %, such as 95");
    }
    if (draws < 2) {
      throw new IllegalArgumentException("drawing: " + draws + " draws, wanted at least 2");
    }
    int reach = CoverageRanks.reach(draws, confidencePercent);
    if (reach >= draws) {
      throw new IllegalArgumentException(
          "drawing: "
              + draws
              + " draws leave none outside "
              + confidencePercent
              + " %, wanted more");
    }
    return reach;
  }

  private static double[] values(
      ToDoubleFunction<double[]> function, List<InputDistribution> inputs, int draws, long seed) {
    Well19937c generator = new Well19937c(seed);
    UniformRandomProvider source = generator::nextLong;
    DoubleSupplier[] samplers =
        inputs.stream().map(input -> InputSampler.of(input, source)).toArray(DoubleSupplier[]::new);
    double[] values = new double[draws];
    double[] drawn = new double[samplers.length];
    for (int draw = 0; draw < draws; draw++) {
      for (int i = 0; i < drawn.length; i++) {
        drawn[i] = samplers[i].getAsDouble();
      }
      values[draw] = value(function, draw + 1, drawn);
    }
    return values;
  }

  private static double value(ToDoubleFunction<double[]> function, int draw, double[] drawn) {
    double value;
    try {
      // A copy, so that a function that changes or keeps its inputs spoils nothing.
      value = function.applyAsDouble(drawn.clone());
    } catch (IllegalArgumentException | ArithmeticException e) {
      throw new DrawException(draw, drawn, e);
    }
    if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
      throw new DrawException(
          draw, drawn, "the function gives " + value + ", wanted a finite number");
    }
    return value;
  }

  private static CoverageInterval interval(
      double[] sorted, int lowerRank, int reach, double confidencePercent) {
    return new CoverageInterval(
        sorted[lowerRank - 1], sorted[lowerRank - 1 + reach], confidencePercent);
  }
}
