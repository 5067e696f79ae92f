package org.mensuration.units;

import java.math.BigInteger;
import java.util.List;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.quantity.StemsPerArea;
import org.mensuration.quantity.VolumePerArea;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.unit.TransformedUnit;
import tech.units.indriya.unit.Units;

/**
 * Every conversion factor of the library. The foot is the international foot of exactly 0.3048 m;
 * the inch is its twelfth, the acre 43 560 of its squares. Immutable and thread-safe.
 */
final class UnitTable {
  static final KnownUnit<Length> METRE = base(Units.METRE, "m", Kind.LENGTH);
  static final KnownUnit<Length> CENTIMETRE =
      known(MetricPrefix.CENTI(Units.METRE), "cm", Kind.LENGTH, "1", "100");
  static final KnownUnit<Length> MILLIMETRE =
      known(MetricPrefix.MILLI(Units.METRE), "mm", Kind.LENGTH, "1", "1000");
  static final KnownUnit<Length> INCH = made("in", Units.METRE, Kind.LENGTH, "127", "5000");
  static final KnownUnit<Length> FOOT = made("ft", Units.METRE, Kind.LENGTH, "381", "1250");

  static final KnownUnit<Area> SQUARE_METRE = base(Units.SQUARE_METRE, "m2", Kind.AREA);
  static final KnownUnit<Area> SQUARE_CENTIMETRE =
      made("cm2", Units.SQUARE_METRE, Kind.AREA, "1", "10000");
  static final KnownUnit<Area> HECTARE = made("ha", Units.SQUARE_METRE, Kind.AREA, "10000", "1");
  static final KnownUnit<Area> SQUARE_FOOT =
      made("ft2", Units.SQUARE_METRE, Kind.AREA, "145161", "1562500");
  static final KnownUnit<Area> ACRE =
      made("ac", Units.SQUARE_METRE, Kind.AREA, "6323213160", "1562500");

  static final KnownUnit<Volume> CUBIC_METRE = base(Units.CUBIC_METRE, "m3", Kind.VOLUME);
  static final KnownUnit<Volume> CUBIC_FOOT =
      made("ft3", Units.CUBIC_METRE, Kind.VOLUME, "55306341", "1953125000");
  static final KnownUnit<Volume> LUMBER_BOARD_FOOT =
      made("lumber bf", Units.CUBIC_METRE, Kind.VOLUME, "55306341", "23437500000");

  static final KnownUnit<Angle> RADIAN = base(Units.RADIAN, "rad", Kind.ANGLE);
  static final KnownUnit<Angle> DEGREE =
      new KnownUnit<>(
          new TransformedUnit<>(
              "°",
              Units.RADIAN,
              MultiplyConverter.ofPiExponent(1).concatenate(MultiplyConverter.ofRational(1, 180))),
          "deg",
          Kind.ANGLE,
          BigInteger.ONE,
          BigInteger.valueOf(180),
          1);

  static final KnownUnit<BasalAreaPerArea> SQUARE_METRE_PER_HECTARE =
      made(
          "m²/ha",
          "m2/ha",
          AbstractUnit.ONE.asType(BasalAreaPerArea.class),
          Kind.BASAL_AREA_PER_AREA,
          "1",
          "10000");
  static final KnownUnit<BasalAreaPerArea> SQUARE_FOOT_PER_ACRE =
      made(
          "ft²/ac",
          "ft2/ac",
          AbstractUnit.ONE.asType(BasalAreaPerArea.class),
          Kind.BASAL_AREA_PER_AREA,
          "1",
          "43560");
  static final KnownUnit<StemsPerArea> PER_HECTARE =
      made(
          "1/ha",
          Units.SQUARE_METRE.inverse().asType(StemsPerArea.class),
          Kind.STEMS_PER_AREA,
          "1",
          "10000");
  static final KnownUnit<StemsPerArea> PER_ACRE =
      made(
          "1/ac",
          Units.SQUARE_METRE.inverse().asType(StemsPerArea.class),
          Kind.STEMS_PER_AREA,
          "1562500",
          "6323213160");
  static final KnownUnit<VolumePerArea> CUBIC_METRE_PER_HECTARE =
      made(
          "m³/ha",
          "m3/ha",
          Units.METRE.asType(VolumePerArea.class),
          Kind.VOLUME_PER_AREA,
          "1",
          "10000");
  static final KnownUnit<VolumePerArea> CUBIC_FOOT_PER_ACRE =
      made(
          "ft³/ac",
          "ft3/ac",
          Units.METRE.asType(VolumePerArea.class),
          Kind.VOLUME_PER_AREA,
          "381",
          "54450000");

  static final List<KnownUnit<?>> ALL =
      List.of(
          METRE,
          CENTIMETRE,
          MILLIMETRE,
          INCH,
          FOOT,
          SQUARE_METRE,
          SQUARE_CENTIMETRE,
          HECTARE,
          SQUARE_FOOT,
          ACRE,
          CUBIC_METRE,
          CUBIC_FOOT,
          LUMBER_BOARD_FOOT,
          RADIAN,
          DEGREE,
          SQUARE_METRE_PER_HECTARE,
          SQUARE_FOOT_PER_ACRE,
          PER_HECTARE,
          PER_ACRE,
          CUBIC_METRE_PER_HECTARE,
          CUBIC_FOOT_PER_ACRE);

  private UnitTable() {}

  /** The entry of a unit: by identity first, then by equality; null for a foreign unit. */
  static @Nullable KnownUnit<?> find(Unit<?> unit) {
    for (KnownUnit<?> known : ALL) {
      if (known.unit() == unit) {
        return known;
      }
    }
    for (KnownUnit<?> known : ALL) {
      if (known.unit().equals(unit)) {
        return known;
      }
    }
    return null;
  }

  private static <Q extends Quantity<Q>> KnownUnit<Q> base(Unit<Q> unit, String symbol, Kind kind) {
    return known(unit, symbol, kind, "1", "1");
  }

  private static <Q extends Quantity<Q>> KnownUnit<Q> known(
      Unit<Q> unit, String symbol, Kind kind, String numerator, String denominator) {
    return new KnownUnit<>(
        unit, symbol, kind, new BigInteger(numerator), new BigInteger(denominator), 0);
  }

  private static <Q extends Quantity<Q>> KnownUnit<Q> made(
      String symbol, Unit<Q> parent, Kind kind, String numerator, String denominator) {
    return made(symbol, symbol, parent, kind, numerator, denominator);
  }

  private static <Q extends Quantity<Q>> KnownUnit<Q> made(
      String label,
      String symbol,
      Unit<Q> parent,
      Kind kind,
      String numerator,
      String denominator) {
    Unit<Q> unit =
        new TransformedUnit<>(
            label,
            parent,
            MultiplyConverter.ofRational(new BigInteger(numerator), new BigInteger(denominator)));
    return known(unit, symbol, kind, numerator, denominator);
  }
}
