package org.mensuration.validation.check;

import static org.mensuration.units.Measures.cubicMetres;
import static org.mensuration.units.Measures.cubicMetresPerHectare;
import static org.mensuration.units.Measures.in;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.mensuration.formula.Catalogue;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.Result;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;

/** Conversions of units that somebody printed, by the units of the library. Immutable. */
final class UnitProcedures {
  /** No units of the library: wood is not sold by them, but somebody printed a factor. */
  private static final double LITRES = 1000;

  private static final double CUBIC_INCHES_IN_QUART = 231.0 / 4;
  private static final double CUBIC_INCHES_IN_CUBIC_FOOT = 12 * 12 * 12;

  static final List<Procedure> ALL =
      List.of(
          new Conversion(
              "cubic-feet-of-cubic-metres",
              parameter("volume", "m3"),
              new Result("cubic_feet", "F", "ft3"),
              value -> in(cubicMetres(value), ForestUnits.CUBIC_FOOT)),
          new Conversion(
              "cubic-feet-per-acre-of-cubic-metres-per-hectare",
              parameter("volume_per_area", "m3/ha"),
              new Result("cubic_feet_per_acre", "F", "ft3/ac"),
              value -> in(cubicMetresPerHectare(value), ForestUnits.CUBIC_FOOT_PER_ACRE)),
          new Conversion(
              "volume-of-lumber",
              parameter("lumber", "bf"),
              new Result("volume", "V", "m3"),
              value ->
                  in(Measures.of(value, ForestUnits.LUMBER_BOARD_FOOT), ForestUnits.CUBIC_METRE)),
          new Conversion(
              "lumber-in-volume",
              parameter("volume", "m3"),
              new Result("lumber", "B", "bf"),
              value -> in(cubicMetres(value), ForestUnits.LUMBER_BOARD_FOOT)),
          new Conversion(
              "quarts-of-litres",
              parameter("litres", "1"),
              new Result("quarts", "q", "1"),
              value ->
                  in(cubicMetres(value / LITRES), ForestUnits.CUBIC_FOOT)
                      * CUBIC_INCHES_IN_CUBIC_FOOT
                      / CUBIC_INCHES_IN_QUART));

  private UnitProcedures() {}

  private static Parameter parameter(String name, String unit) {
    return new Parameter(
        name, name, unit, "amount converted", Domain.atLeast(0), Optional.empty(), false);
  }

  /**
   * One conversion.
   *
   * @param id the name in a table's head
   * @param parameter what is converted
   * @param result what comes out
   * @param conversion the conversion
   */
  private record Conversion(
      String id, Parameter parameter, Result result, DoubleUnaryOperator conversion)
      implements Procedure {
    @Override
    public List<Parameter> parameters() {
      return List.of(parameter);
    }

    @Override
    public double value(Catalogue catalogue, double[][] inputs) {
      return conversion.applyAsDouble(inputs[0][0]);
    }
  }
}
