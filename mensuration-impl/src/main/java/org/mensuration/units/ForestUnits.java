package org.mensuration.units;

import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.quantity.StemsPerArea;
import org.mensuration.quantity.VolumePerArea;

/** The units of the trade. Immutable and thread-safe. */
public final class ForestUnits {
  /** Metre. */
  public static final Unit<Length> METRE = UnitTable.METRE.unit();

  /** Centimetre, 1/100 m. */
  public static final Unit<Length> CENTIMETRE = UnitTable.CENTIMETRE.unit();

  /** Millimetre, 1/1000 m. */
  public static final Unit<Length> MILLIMETRE = UnitTable.MILLIMETRE.unit();

  /** Inch, 1/12 of the foot: exactly 25.4 mm. */
  public static final Unit<Length> INCH = UnitTable.INCH.unit();

  /** International foot, exactly 0.3048 m. */
  public static final Unit<Length> FOOT = UnitTable.FOOT.unit();

  /** Square metre. */
  public static final Unit<Area> SQUARE_METRE = UnitTable.SQUARE_METRE.unit();

  /** Square centimetre, 1/10 000 m². */
  public static final Unit<Area> SQUARE_CENTIMETRE = UnitTable.SQUARE_CENTIMETRE.unit();

  /** Hectare, 10 000 m². */
  public static final Unit<Area> HECTARE = UnitTable.HECTARE.unit();

  /** Square foot. */
  public static final Unit<Area> SQUARE_FOOT = UnitTable.SQUARE_FOOT.unit();

  /** Acre of 43 560 square international feet. */
  public static final Unit<Area> ACRE = UnitTable.ACRE.unit();

  /** Cubic metre. */
  public static final Unit<Volume> CUBIC_METRE = UnitTable.CUBIC_METRE.unit();

  /** Cubic foot. */
  public static final Unit<Volume> CUBIC_FOOT = UnitTable.CUBIC_FOOT.unit();

  /** Board foot of sawn lumber, 1/12 ft³. A log scaled in board feet is no volume: see LogScale. */
  public static final Unit<Volume> LUMBER_BOARD_FOOT = UnitTable.LUMBER_BOARD_FOOT.unit();

  /** Radian. */
  public static final Unit<Angle> RADIAN = UnitTable.RADIAN.unit();

  /** Degree, π/180 rad. */
  public static final Unit<Angle> DEGREE = UnitTable.DEGREE.unit();

  /** Square metre per hectare. */
  public static final Unit<BasalAreaPerArea> SQUARE_METRE_PER_HECTARE =
      UnitTable.SQUARE_METRE_PER_HECTARE.unit();

  /** Square foot per acre. */
  public static final Unit<BasalAreaPerArea> SQUARE_FOOT_PER_ACRE =
      UnitTable.SQUARE_FOOT_PER_ACRE.unit();

  /** Stems per hectare. */
  public static final Unit<StemsPerArea> PER_HECTARE = UnitTable.PER_HECTARE.unit();

  /** Stems per acre. */
  public static final Unit<StemsPerArea> PER_ACRE = UnitTable.PER_ACRE.unit();

  /** Cubic metre per hectare. */
  public static final Unit<VolumePerArea> CUBIC_METRE_PER_HECTARE =
      UnitTable.CUBIC_METRE_PER_HECTARE.unit();

  /** Cubic foot per acre. */
  public static final Unit<VolumePerArea> CUBIC_FOOT_PER_ACRE =
      UnitTable.CUBIC_FOOT_PER_ACRE.unit();

  private ForestUnits() {}
}
