package org.mensuration.validation.check;

import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.metres;

import java.util.List;
import java.util.Optional;
import org.mensuration.GirthRules;
import org.mensuration.LogConventions;
import org.mensuration.formula.Catalogue;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.Result;
import org.mensuration.kernel.ClassRounding;
import org.mensuration.log.Log;
import org.mensuration.log.LogReadings;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.quantity.LogScale;

/** Rounding rules of countries and the rules that chain them. Stateless and thread-safe. */
final class ConventionProcedures {
  private static final List<Parameter> CLASS =
      List.of(input("value", "1"), input("width", "1"), input("parts", "1"));
  private static final Result CLASS_RESULT = new Result("class", "c", "1");
  private static final List<Parameter> PAIR =
      List.of(input("first_diameter", "cm"), input("second_diameter", "cm"));
  static final List<Procedure> ALL =
      List.of(
          rounding("class-down", ClassRounding::down),
          rounding("class-middle", ClassRounding::middle),
          rounding("class-half-down", ClassRounding::halfDown),
          rounding("class-half-even", ClassRounding::halfEven),
          new Named(
              "round-marked-five",
              List.of(input("value", "1"), input("raised", "1")),
              new Result("rounded", "r", "1"),
              (catalogue, x) -> ClassRounding.halfMarked(x[0][0], x[1][0] > 0, 1, 100)),
          new Named(
              "korean-small-end",
              List.of(input("small_diameter", "cm"), input("length", "m")),
              new Result("volume", "V", "m3"),
              (catalogue, x) ->
                  LogConventions.koreanSmallEnd()
                      .scale(Log.of(centimetres(x[0][0]), metres(x[1][0])))
                      .amount()),
          new Named(
              "german-mid-diameter",
              List.of(PAIR.get(0), PAIR.get(1), input("length", "m")),
              new Result("volume", "V", "m3"),
              (catalogue, x) -> LogConventions.germanMid().scale(pair(x, x[2][0])).amount()),
          new Named(
              "german-mid-class", PAIR, new Result("class", "d", "cm"), (catalogue, x) -> mean(x)),
          new Named(
              "fifth-girth-seconds",
              List.of(input("middle_girth", "in"), input("length", "ft")),
              new Result("seconds", "s", "1"),
              (catalogue, x) ->
                  seconds(catalogue.formula("log/fifth-girth").apply(x[0][0], x[1][0]))),
          new Named(
              "fva-spruce-share",
              List.of(input("outside_diameter", "cm")),
              new Result("share", "s", "%"),
              (catalogue, x) ->
                  catalogue
                      .formula("bark/area-share")
                      .apply(catalogue.formula("bark/fva-spruce").apply(x[0][0]), x[0][0])));

  private ConventionProcedures() {}

  private static Parameter input(String name, String unit) {
    return new Parameter(name, name, unit, name, Domain.atLeast(0), Optional.empty(), false);
  }

  /** A rounding to classes of a width as a ratio. */
  private interface ToClass {
    double of(double value, int width, int parts);
  }

  private static Procedure rounding(String id, ToClass toClass) {
    return new Named(
        id,
        CLASS,
        CLASS_RESULT,
        (catalogue, x) -> toClass.of(x[0][0], (int) x[1][0], (int) x[2][0]));
  }

  private static LogReadings pair(double[][] x, double length) {
    return LogReadings.crossedMiddle(centimetres(x[0][0]), centimetres(x[1][0]), metres(length));
  }

  /** The last diameter that the German rule arrives at. */
  private static double mean(double[][] x) {
    return LogConventions.germanMid().steps(pair(x, 4)).stream()
        .filter(step -> step.what().equals("mean middle diameter"))
        .mapToDouble(step -> step.after())
        .sum();
  }

  /** The printed form read back as seconds of a cubic foot. */
  private static double seconds(double cubicFeet) {
    String text =
        GirthRules.feetInchesParts(
            new LogScale("Fifth girth", cubicFeet, "ft3", BarkBasis.UNKNOWN));
    double seconds = 0;
    for (String figure : text.split("[^0-9]+", -1)) {
      seconds = figure.isEmpty() ? seconds : seconds * 12 + Integer.parseInt(figure);
    }
    return seconds;
  }

  /** What a procedure computes. */
  private interface Body {
    double value(Catalogue catalogue, double[][] inputs);
  }

  /** A procedure with its body. Immutable and thread-safe. */
  private record Named(String id, List<Parameter> parameters, Result result, Body body)
      implements Procedure {
    @Override
    public double value(Catalogue catalogue, double[][] inputs) {
      return body.value(catalogue, inputs);
    }
  }
}
