package org.mensuration.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.quantity.StemsPerArea;
import org.mensuration.quantity.VolumePerArea;
import tech.units.indriya.quantity.Quantities;

/**
 * Quantities from numbers and numbers from quantities. Stateless and thread-safe.
 *
 * <p>Meant for a static import: {@code metres(30)}, {@code in(volume, CUBIC_FOOT)}.
 */
public final class Measures {
  private Measures() {}

  /**
   * A quantity in metres.
   *
   * @param metres the number
   * @return the quantity
   * @throws IllegalArgumentException if the number is NaN or infinite
   */
  public static Quantity<Length> metres(double metres) {
    return of(metres, ForestUnits.METRE);
  }

  /**
   * A quantity in centimetres.
   *
   * @param centimetres the number
   * @return the quantity
   * @throws IllegalArgumentException if the number is NaN or infinite
   */
  public static Quantity<Length> centimetres(double centimetres) {
    return of(centimetres, ForestUnits.CENTIMETRE);
  }

  /**
   * A quantity in inches.
   *
   * @param inches the number
   * @return the quantity
   * @throws IllegalArgumentException if the number is NaN or infinite
   */
  public static Quantity<Length> inches(double inches) {
    return of(inches, ForestUnits.INCH);
  }

  /**
   * A quantity in feet.
   *
   * @param feet the number
   * @return the quantity
   * @throws IllegalArgumentException if the number is NaN or infinite
   */
  public static Quantity<Length> feet(double feet) {
    return of(feet, ForestUnits.FOOT);
  }

  /**
   * A quantity in square metres.
   *
   * @param squareMetres the number
   * @return the quantity
   * @throws IllegalArgumentException if the number is NaN or infinite
   */
  public static Quantity<Area> squareMetres(double squareMetres) {
    return of(squareMetres, ForestUnits.SQUARE_METRE);
  }

  /**
   * A quantity in hectares.
   *
   * @param hectares the number
   * @return the quantity
   * @throws IllegalArgumentException if the number is NaN or infinite
   */
  public static Quantity<Area> hectares(double hectares) {
    return of(hectares, ForestUnits.HECTARE);
  }

  /**
   * A quantity in acres.
   *
   * @param acres the number
   * @return the quantity
   * @throws IllegalArgumentException if the number is NaN or infinite
   */
  public static Quantity<Area> acres(double acres) {
    return of(acres, ForestUnits.ACRE);
  }

  /**
   * A quantity in cubic metres.
   *
   * @param cubicMetres the number
   * @return the quantity
   * @throws IllegalArgumentException if the number is NaN or infinite
   */
  public static Quantity<Volume> cubicMetres(double cubicMetres) {
    return of(cubicMetres, ForestUnits.CUBIC_METRE);
  }

  /**
   * A quantity in cubic feet.
   *
   * @param cubicFeet the number
   * @return the quantity
   * @throws IllegalArgumentException if the number is NaN or infinite
   */
  public static Quantity<Volume> cubicFeet(double cubicFeet) {
    return of(cubicFeet, ForestUnits.CUBIC_FOOT);
  }

  /**
   * A quantity in degrees.
   *
   * @param degrees the number
   * @return the quantity
   * @throws IllegalArgumentException if the number is NaN or infinite
   */
  public static Quantity<Angle> degrees(double degrees) {
    return of(degrees, ForestUnits.DEGREE);
  }

  /**
   * A quantity in square metres per hectare.
   *
   * @param squareMetresPerHectare the number
   * @return the quantity
   * @throws IllegalArgumentException if the number is NaN or infinite
   */
  public static Quantity<BasalAreaPerArea> squareMetresPerHectare(double squareMetresPerHectare) {
    return of(squareMetresPerHectare, ForestUnits.SQUARE_METRE_PER_HECTARE);
  }

  /**
   * A quantity in square feet per acre.
   *
   * @param squareFeetPerAcre the number
   * @return the quantity
   * @throws IllegalArgumentException if the number is NaN or infinite
   */
  public static Quantity<BasalAreaPerArea> squareFeetPerAcre(double squareFeetPerAcre) {
    return of(squareFeetPerAcre, ForestUnits.SQUARE_FOOT_PER_ACRE);
  }

  /**
   * A quantity in stems per hectare.
   *
   * @param stemsPerHectare the number
   * @return the quantity
   * @throws IllegalArgumentException if the number is NaN or infinite
   */
  public static Quantity<StemsPerArea> perHectare(double stemsPerHectare) {
    return of(stemsPerHectare, ForestUnits.PER_HECTARE);
  }

  /**
   * A quantity in cubic metres per hectare.
   *
   * @param cubicMetresPerHectare the number
   * @return the quantity
   * @throws IllegalArgumentException if the number is NaN or infinite
   */
  public static Quantity<VolumePerArea> cubicMetresPerHectare(double cubicMetresPerHectare) {
    return of(cubicMetresPerHectare, ForestUnits.CUBIC_METRE_PER_HECTARE);
  }

  /**
   * A quantity in any unit.
   *
   * @param value the number
   * @param unit the unit
   * @param <Q> kind of quantity
   * @return the quantity
   * @throws IllegalArgumentException if the number is NaN or infinite
   */
  public static <Q extends Quantity<Q>> Quantity<Q> of(double value, Unit<Q> unit) {
    if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(value + " " + unit + " is no quantity; give a number");
    }
    return Quantities.getQuantity(value, unit);
  }

  /**
   * The number of a quantity in a unit. A value already in that unit passes untouched.
   *
   * @param quantity the quantity
   * @param unit the unit
   * @param <Q> kind of quantity
   * @return the number
   * @throws ArithmeticException if the number is not finite
   */
  public static <Q extends Quantity<Q>> double in(Quantity<Q> quantity, Unit<Q> unit) {
    double value = convert(quantity, unit);
    if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
      throw new ArithmeticException(quantity + " has no finite value in " + unit);
    }
    return value;
  }

  private static <Q extends Quantity<Q>> double convert(Quantity<Q> quantity, Unit<Q> unit) {
    double value = quantity.getValue().doubleValue();
    Unit<Q> given = quantity.getUnit();
    if (given == unit) {
      return value;
    }
    KnownUnit<?> from = UnitTable.find(given);
    KnownUnit<?> to = UnitTable.find(unit);
    if (from != null && to != null) {
      return from.to(to).apply(value);
    }
    return value * ForeignUnits.toSystemUnit(given) / ForeignUnits.toSystemUnit(unit);
  }

  /**
   * The sum of quantities, the same whatever their order: numbers in the unit are added exactly and
   * the sum is rounded once.
   *
   * @param quantities what is added
   * @param unit unit of the sum
   * @param <Q> kind of quantity
   * @return the sum; zero for none
   */
  public static <Q extends Quantity<Q>> Quantity<Q> sum(
      Iterable<? extends Quantity<Q>> quantities, Unit<Q> unit) {
    BigDecimal sum = BigDecimal.ZERO;
    for (Quantity<Q> quantity : quantities) {
      sum = sum.add(new BigDecimal(in(quantity, unit)));
    }
    return of(sum.doubleValue(), unit);
  }

  /**
   * A quantity as text, such as {@code 31.50 cm}: a decimal point, no grouping, no locale. Halves
   * are decided in decimal and go to the even digit.
   *
   * @param quantity the quantity
   * @param unit unit to print it in, one of {@link ForestUnits}
   * @param decimals digits after the point, 0 to 15
   * @param <Q> kind of quantity
   * @return number, blank, symbol
   */
  public static <Q extends Quantity<Q>> String text(
      Quantity<Q> quantity, Unit<Q> unit, int decimals) {
    BigDecimal value = new BigDecimal(Double.toString(in(quantity, unit)));
    return value.setScale(decimals, RoundingMode.HALF_EVEN).toPlainString() + " " + symbol(unit);
  }

  /**
   * The quantity that a text states, as {@link #text} prints it.
   *
   * @param text number, blank, symbol
   * @param unit unit of the result; the text may use any of {@link ForestUnits} of its kind
   * @param <Q> kind of quantity
   * @return the quantity in {@code unit}
   * @throws IllegalArgumentException if the text is not of that form
   */
  public static <Q extends Quantity<Q>> Quantity<Q> parse(String text, Unit<Q> unit) {
    KnownUnit<?> wanted = UnitTable.find(unit);
    String form = "; wanted a number, a blank and a unit such as 12.5 " + symbol(unit);
    int blank = text.trim().indexOf(' ');
    if (wanted == null || blank < 0) {
      throw new IllegalArgumentException("\"" + text + "\" is no quantity" + form);
    }
    String symbol = text.trim().substring(blank + 1).trim();
    for (KnownUnit<?> known : UnitTable.ALL) {
      if (known.symbol().equals(symbol) && known.kind() == wanted.kind()) {
        return of(known.to(wanted).apply(number(text.trim().substring(0, blank), form)), unit);
      }
    }
    throw new IllegalArgumentException("\"" + symbol + "\" is no such unit" + form);
  }

  private static double number(String digits, String form) {
    try {
      return new BigDecimal(digits).doubleValue();
    } catch (NumberFormatException notANumber) {
      throw new IllegalArgumentException("\"" + digits + "\" is no number" + form, notANumber);
    }
  }

  private static String symbol(Unit<?> unit) {
    KnownUnit<?> known = UnitTable.find(unit);
    if (known == null) {
      throw new IllegalArgumentException("unit " + unit + " is not one of ForestUnits");
    }
    return known.symbol();
  }
}
