package org.mensuration.validation.worked;

import static org.mensuration.units.ForestUnits.ACRE;
import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.CUBIC_FOOT;
import static org.mensuration.units.ForestUnits.CUBIC_FOOT_PER_ACRE;
import static org.mensuration.units.ForestUnits.CUBIC_METRE;
import static org.mensuration.units.ForestUnits.CUBIC_METRE_PER_HECTARE;
import static org.mensuration.units.ForestUnits.FOOT;
import static org.mensuration.units.ForestUnits.HECTARE;
import static org.mensuration.units.ForestUnits.INCH;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.ForestUnits.PER_ACRE;
import static org.mensuration.units.ForestUnits.PER_HECTARE;
import static org.mensuration.units.ForestUnits.SQUARE_FOOT;
import static org.mensuration.units.ForestUnits.SQUARE_FOOT_PER_ACRE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE_PER_HECTARE;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.mensuration.units.Measures;

/** The units of the print. Everything is computed in metric units and turned here, at the end. */
enum PrintUnits {
  /** Square metres a hectare, cubic metres a hectare, centimetres, metres. */
  METRIC("m²/ha", "1/ha", "m³/ha", "m³", "m³/m²", "cm", "m", "ha"),
  /** Square feet an acre, cubic feet an acre, inches, feet. */
  US("ft²/ac", "1/ac", "ft³/ac", "ft³", "ft³/ft²", "in", "ft", "ac");

  private final String basalAreaUnit;
  private final String stemsUnit;
  private final String densityUnit;
  private final String volumeUnit;
  private final String ratioUnit;
  private final String diameterUnit;
  private final String lengthUnit;
  private final String landUnit;

  PrintUnits(
      String basalAreaUnit,
      String stemsUnit,
      String densityUnit,
      String volumeUnit,
      String ratioUnit,
      String diameterUnit,
      String lengthUnit,
      String landUnit) {
    this.basalAreaUnit = basalAreaUnit;
    this.stemsUnit = stemsUnit;
    this.densityUnit = densityUnit;
    this.volumeUnit = volumeUnit;
    this.ratioUnit = ratioUnit;
    this.diameterUnit = diameterUnit;
    this.lengthUnit = lengthUnit;
    this.landUnit = landUnit;
  }

  String basalAreaUnit() {
    return basalAreaUnit;
  }

  String stemsUnit() {
    return stemsUnit;
  }

  String densityUnit() {
    return densityUnit;
  }

  String volumeUnit() {
    return volumeUnit;
  }

  String ratioUnit() {
    return ratioUnit;
  }

  String diameterUnit() {
    return diameterUnit;
  }

  String lengthUnit() {
    return lengthUnit;
  }

  /** Basal area a land unit, to 0.1. */
  String basalArea(double squareMetresPerHectare) {
    return fixed(turned(squareMetresPerHectare, SQUARE_METRE_PER_HECTARE, SQUARE_FOOT_PER_ACRE), 1);
  }

  /** The factor of a gauge with its unit, and with the digits that keep factors apart. */
  String factor(double squareMetresPerHectare) {
    double factor = turned(squareMetresPerHectare, SQUARE_METRE_PER_HECTARE, SQUARE_FOOT_PER_ACRE);
    return fixed(factor, 3) + " " + basalAreaUnit;
  }

  /** Stems a land unit, whole. */
  String stems(double perHectare) {
    return fixed(turned(perHectare, PER_HECTARE, PER_ACRE), 0);
  }

  /** Volume a land unit, whole. */
  String density(double cubicMetresPerHectare) {
    return fixed(turned(cubicMetresPerHectare, CUBIC_METRE_PER_HECTARE, CUBIC_FOOT_PER_ACRE), 0);
  }

  /** Volume of a stem, to a litre or a tenth of a cubic foot. */
  String volume(double cubicMetres) {
    return fixed(turned(cubicMetres, CUBIC_METRE, CUBIC_FOOT), this == METRIC ? 3 : 1);
  }

  /** Volume of a stand, whole. */
  String total(double cubicMetres) {
    return fixed(turned(cubicMetres, CUBIC_METRE, CUBIC_FOOT), 0);
  }

  /** Basal area of a stand, whole, without its unit. */
  String area(double squareMetres) {
    return fixed(turned(squareMetres, SQUARE_METRE, SQUARE_FOOT), 0);
  }

  /** Trees that a tree on a plot stands for, to 0.1. */
  String expansion(double perHectare) {
    return fixed(turned(perHectare, PER_HECTARE, PER_ACRE), 1);
  }

  /** A radius, to a centimetre or a hundredth of a foot, without its unit. */
  String radius(double metres) {
    return fixed(turned(metres, METRE, FOOT), 2);
  }

  String areaUnit() {
    return this == METRIC ? "m²" : "ft²";
  }

  /** A volume-basal-area ratio, which is a length. */
  String ratio(double metres) {
    return fixed(turned(metres, METRE, FOOT), 2);
  }

  /** A diameter, to 0.1. */
  String diameter(double centimetres) {
    return fixed(turned(centimetres, CENTIMETRE, INCH), 1);
  }

  /** The width of a division, to 0.001. */
  String width(double centimetres) {
    return fixed(turned(centimetres, CENTIMETRE, INCH), 3);
  }

  /** A height, to 0.1. */
  String height(double metres) {
    return fixed(turned(metres, METRE, FOOT), 1);
  }

  /** A distance that decides something, with its unit. */
  String finely(double metres) {
    return fixed(turned(metres, METRE, FOOT), 2) + " " + lengthUnit;
  }

  /** An area of land with its unit. */
  String land(double hectares) {
    return fixed(turned(hectares, HECTARE, ACRE), 1) + " " + landUnit;
  }

  private <Q extends Quantity<Q>> double turned(double value, Unit<Q> metric, Unit<Q> us) {
    return this == METRIC ? value : Measures.in(Measures.of(value, metric), us);
  }

  /** Degrees of freedom, with a decimal where they are not whole. */
  static String freedom(double degrees) {
    return fixed(degrees, degrees == Math.rint(degrees) ? 0 : 1);
  }

  /** A number that may not have been measured. */
  static String orDash(OptionalDouble value, DoubleFunction<String> print) {
    return value.isPresent() ? print.apply(value.getAsDouble()) : "-";
  }

  /** Decimals without locale, and no sign before a zero. */
  static String fixed(double value, int decimals) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    boolean zero = text.chars().allMatch(c -> c == '-' || c == '.' || c == '0');
    return zero && text.startsWith("-") ? text.substring(1) : text;
  }
}
