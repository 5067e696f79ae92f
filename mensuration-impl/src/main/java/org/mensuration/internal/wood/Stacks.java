package org.mensuration.internal.wood;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.internal.catalogue.ConversionFormulas;
import org.mensuration.quantity.LogScale;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;
import org.mensuration.wood.WoodAmount;
import org.mensuration.wood.WoodMeasure;

/** Reads quantities for the formulas of stacks and ratios. Stateless and thread-safe. */
public final class Stacks {
  private static final String BOARD_FEET = "bf";
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Length> FEET = UnitReader.in(ForestUnits.FOOT);
  private static final UnitReader<Volume> CUBIC_FEET = UnitReader.in(ForestUnits.CUBIC_FOOT);
  private static final UnitReader<Volume> LUMBER = UnitReader.in(ForestUnits.LUMBER_BOARD_FOOT);

  private Stacks() {}

  /**
   * A stack in cubic metres.
   *
   * @param length length of the stack
   * @param height height of the stack
   * @param depth length of the pieces
   * @return the amount
   */
  public static WoodAmount cubicMetres(
      Quantity<Length> length, Quantity<Length> height, Quantity<Length> depth) {
    return as(length, height, depth, WoodMeasures.STACKED_METRE);
  }

  /**
   * A stack in cubic metres of a measure of its own.
   *
   * @param length length of the stack
   * @param height height of the stack
   * @param depth length of the pieces
   * @param measure the measure
   * @return the amount
   * @throws IllegalArgumentException if the measure is not one of stacked cubic metres
   */
  public static WoodAmount as(
      Quantity<Length> length,
      Quantity<Length> height,
      Quantity<Length> depth,
      WoodMeasure measure) {
    boolean metric = measure.unit().equals("m3") || measure.unit().equals("st");
    if (measure.kind() != WoodMeasure.Kind.STACKED || !metric) {
      throw new IllegalArgumentException(
          measure
              + " is "
              + measure.kind().words()
              + " in "
              + measure.unit()
              + "; wanted stacked volume in m3 or st");
    }
    double volume =
        ConversionFormulas.STACK.value(
            METRES.read(length), METRES.read(height), METRES.read(depth));
    return new WoodAmount(volume, measure);
  }

  /**
   * A stack in cords.
   *
   * @param length length of the stack
   * @param height height of the stack
   * @param depth length of the pieces
   * @return the amount
   */
  public static WoodAmount cords(
      Quantity<Length> length, Quantity<Length> height, Quantity<Length> depth) {
    double cords =
        ConversionFormulas.CORDS.value(FEET.read(length), FEET.read(height), FEET.read(depth));
    return new WoodAmount(cords, WoodMeasures.US_CORD);
  }

  /**
   * The volume of an amount that is solid.
   *
   * @param amount the amount
   * @return its volume
   * @throws IllegalArgumentException if it is not solid
   */
  public static Quantity<Volume> solidVolume(WoodAmount amount) {
    WoodMeasure measure = amount.measure();
    if (measure.kind() == WoodMeasure.Kind.SOLID) {
      if (measure.unit().equals("m3")) {
        return Measures.cubicMetres(amount.amount());
      }
      if (measure.unit().equals("ft3")) {
        return Measures.cubicFeet(amount.amount());
      }
    }
    throw new IllegalArgumentException(
        amount
            + " is "
            + measure.kind().words()
            + " in "
            + measure.unit()
            + ", no solid volume; convert it by a published factor first");
  }

  /**
   * Overrun.
   *
   * @param lumber lumber sawn
   * @param scale net scale
   * @return per cent
   */
  public static double overrunPercent(Quantity<Volume> lumber, LogScale scale) {
    return ConversionFormulas.OVERRUN.value(LUMBER.read(lumber), boardFeet(scale));
  }

  /**
   * Board feet in a cubic foot.
   *
   * @param scale the scale
   * @param solid the solid volume
   * @return the ratio
   */
  public static double boardFeetPerCubicFoot(LogScale scale, Quantity<Volume> solid) {
    return ConversionFormulas.BOARD_FOOT_RATIO.value(boardFeet(scale), CUBIC_FEET.read(solid));
  }

  private static double boardFeet(LogScale scale) {
    if (!scale.unit().equals(BOARD_FEET)) {
      throw new IllegalArgumentException(scale + " is not in board feet");
    }
    return scale.amount();
  }
}
