package org.mensuration;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.internal.wood.Stacks;
import org.mensuration.internal.wood.WoodFactors;
import org.mensuration.quantity.LogScale;
import org.mensuration.wood.ConversionFactor;
import org.mensuration.wood.FactorAddition;
import org.mensuration.wood.WoodAmount;
import org.mensuration.wood.WoodMeasure;

/**
 * Stacked and loose wood, cords, overrun and board-foot ratios. Stateless and thread-safe.
 *
 * <p>Published factors are averages, each with its source, its direction and the wood it holds for.
 * None is turned round: the factor back, where it is published, is not the inverse. Amounts of one
 * measure add among themselves and with nothing else, so stacked wood never slips into a sum of
 * solid volume.
 *
 * <p>Equation, limits and sources of an id such as {@code stack/volume}: {@link
 * Catalogues#standard}.
 */
public final class WoodConversions {
  private WoodConversions() {}

  /**
   * Every published factor.
   *
   * @return source by source
   */
  public static List<ConversionFactor> factors() {
    return WoodFactors.ALL;
  }

  /**
   * What sources add to their factors for other wood, such as debarked pieces.
   *
   * @return source by source, for {@link ConversionFactor#plus}
   */
  public static List<FactorAddition> additions() {
    return WoodFactors.ADDITIONS;
  }

  /**
   * The measures that published factors lead from or to.
   *
   * @return each once
   */
  public static List<WoodMeasure> measures() {
    return WoodFactors.measures();
  }

  /**
   * A measure by its code.
   *
   * @param code for example {@code se:m3sk}
   * @return the measure
   * @throws IllegalArgumentException if there is none; the message lists them
   */
  public static WoodMeasure measure(String code) {
    return WoodFactors.measure(code);
  }

  /**
   * The factors from one measure to another, of which a user chooses by the wood.
   *
   * @param from code of the measure converted
   * @param to code of the measure that comes out
   * @return those published for that direction; empty if there are none
   * @throws IllegalArgumentException if a measure is not known
   */
  public static List<ConversionFactor> factors(String from, String to) {
    return WoodFactors.between(measure(from), measure(to));
  }

  /**
   * The only factor from one measure to another.
   *
   * @param from code of the measure converted
   * @param to code of the measure that comes out
   * @return the factor
   * @throws IllegalArgumentException if none is published for that direction, or several are, for
   *     different wood; the message says which
   */
  public static ConversionFactor factor(String from, String to) {
    return WoodFactors.only(measure(from), measure(to));
  }

  /**
   * An amount of wood.
   *
   * @param amount the amount in the unit of the measure
   * @param measure code of the measure
   * @return the amount
   * @throws IllegalArgumentException if the measure is not known or the amount negative, infinite
   *     or NaN
   */
  public static WoodAmount amount(double amount, String measure) {
    return new WoodAmount(amount, measure(measure));
  }

  /**
   * A stack by its outer measures ({@code stack/volume}).
   *
   * @param length length of the stack
   * @param height height of the stack
   * @param depth length of the pieces
   * @return stacked cubic metres, measure {@code stacked-m3}
   * @throws IllegalArgumentException if a measure is negative or no number
   */
  public static WoodAmount stack(
      Quantity<Length> length, Quantity<Length> height, Quantity<Length> depth) {
    return Stacks.cubicMetres(length, height, depth);
  }

  /**
   * A stack by its outer measures in cords of 128 cubic feet ({@code stack/cords}).
   *
   * @param length length of the stack
   * @param height height of the stack
   * @param depth length of the pieces
   * @return cords, measure {@code us:cord}
   * @throws IllegalArgumentException if a measure is negative or no number
   */
  public static WoodAmount cords(
      Quantity<Length> length, Quantity<Length> height, Quantity<Length> depth) {
    return Stacks.cords(length, height, depth);
  }

  /**
   * A stack of which a factor says that it is by its own measure, such as a stere: the outer volume
   * is the same, what it stands for is the user's statement.
   *
   * @param length length of the stack
   * @param height height of the stack
   * @param depth length of the pieces
   * @param measure code of a stacked measure in cubic metres or steres
   * @return the amount by that measure
   * @throws IllegalArgumentException if the measure is not known, is not stacked or counts in
   *     another unit, or as {@link #stack}
   */
  public static WoodAmount stackAs(
      Quantity<Length> length, Quantity<Length> height, Quantity<Length> depth, String measure) {
    return Stacks.as(length, height, depth, measure(measure));
  }

  /**
   * The solid volume of an amount that is solid.
   *
   * @param amount an amount of a solid measure in cubic metres or cubic feet
   * @return its volume
   * @throws IllegalArgumentException if the amount is stacked, loose, lumber, mass or by a custom;
   *     the message names the measure
   */
  public static Quantity<Volume> solidVolume(WoodAmount amount) {
    return Stacks.solidVolume(amount);
  }

  /**
   * Overrun of lumber over log scale ({@code unit/overrun}).
   *
   * @param lumber lumber sawn from the logs
   * @param scale net scale of the logs in board feet by one rule
   * @return per cent of the scale; below zero an underrun
   * @throws IllegalArgumentException if the scale is zero or not in board feet
   */
  public static double overrunPercent(Quantity<Volume> lumber, LogScale scale) {
    return Stacks.overrunPercent(lumber, scale);
  }

  /**
   * Board feet by a rule in a cubic foot of log ({@code unit/board-foot-ratio}).
   *
   * @param scale scale of the logs in board feet by one rule
   * @param solid solid volume of the same logs
   * @return board feet in a cubic foot
   * @throws IllegalArgumentException if the volume is zero or the scale not in board feet
   */
  public static double boardFeetPerCubicFoot(LogScale scale, Quantity<Volume> solid) {
    return Stacks.boardFeetPerCubicFoot(scale, solid);
  }
}
