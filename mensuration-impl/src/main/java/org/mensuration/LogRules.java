package org.mensuration;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.formula.Formula;
import org.mensuration.internal.catalogue.BoardFormulas;
import org.mensuration.internal.catalogue.LogFormulas;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.log.Log;
import org.mensuration.log.ScaleRule;
import org.mensuration.log.SolidRule;
import org.mensuration.quantity.LogScale;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * Rules for the volume of logs and stem sections. Stateless and thread-safe.
 *
 * <p>Name the rule with every figure: rules differ by country, and figures for trade or tax follow
 * local scaling law and a licensed scaler.
 */
public final class LogRules {
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);

  private static final UnitReader<Length> INCHES = UnitReader.in(ForestUnits.INCH);
  private static final UnitReader<Length> FEET = UnitReader.in(ForestUnits.FOOT);

  private static final SolidRule HUBER = new Huber();
  private static final SolidRule SMALIAN = new Ends(LogFormulas.SMALIAN);
  private static final SolidRule NEWTON = new Newton();
  private static final SolidRule CONE_FRUSTUM = new Ends(LogFormulas.CONE_FRUSTUM);

  private static final ScaleRule DOYLE = new BoardRule(BoardFormulas.DOYLE);
  private static final ScaleRule INTERNATIONAL_QUARTER =
      new BoardRule(BoardFormulas.INTERNATIONAL_QUARTER);

  private LogRules() {}

  /**
   * Huber: area of the middle times length ({@code log/huber}).
   *
   * @return the rule; needs the middle diameter
   */
  public static SolidRule huber() {
    return HUBER;
  }

  /**
   * Smalian: mean of the two end areas times length ({@code log/smalian}).
   *
   * @return the rule; needs both end diameters
   */
  public static SolidRule smalian() {
    return SMALIAN;
  }

  /**
   * Newton: ends once and middle four times, a sixth of it, times length ({@code log/newton}).
   *
   * @return the rule; needs both end diameters and the middle
   */
  public static SolidRule newton() {
    return NEWTON;
  }

  /**
   * Frustum of a cone ({@code log/cone-frustum}).
   *
   * @return the rule; needs both end diameters
   */
  public static SolidRule coneFrustum() {
    return CONE_FRUSTUM;
  }

  /**
   * Doyle ({@code board/doyle}), unrounded.
   *
   * @return the rule; needs the small-end diameter, refuses it below 4 in
   */
  public static ScaleRule doyle() {
    return DOYLE;
  }

  /**
   * International 1/4-inch by four-foot sections ({@code board/international-quarter}), unrounded.
   *
   * @return the rule; needs the small-end diameter, refuses it below 3.23 in
   */
  public static ScaleRule internationalQuarter() {
    return INTERNATIONAL_QUARTER;
  }

  private static double centimetres(
      Formula formula, String what, Optional<Quantity<Length>> diameter) {
    return CENTIMETRES.read(needed(formula, what, diameter));
  }

  private static Quantity<Length> needed(
      Formula formula, String what, Optional<Quantity<Length>> diameter) {
    if (!diameter.isPresent()) {
      throw new IllegalArgumentException(
          formula.title() + " (" + formula.id() + ") needs the diameter of the " + what);
    }
    return diameter.get();
  }

  private static Quantity<Volume> cubicMetres(double volume) {
    return Measures.cubicMetres(volume);
  }

  /** A rule of both ends. */
  private record Ends(BoundFormula formula) implements SolidRule {
    @Override
    public Quantity<Volume> volume(Log log) {
      return cubicMetres(
          formula.value(
              centimetres(formula, "large end", log.large()),
              centimetres(formula, "small end", log.small()),
              METRES.read(log.length())));
    }
  }

  /** The rule of the middle. */
  private record Huber() implements SolidRule {
    @Override
    public Formula formula() {
      return LogFormulas.HUBER;
    }

    @Override
    public Quantity<Volume> volume(Log log) {
      return cubicMetres(
          LogFormulas.HUBER.value(
              centimetres(LogFormulas.HUBER, "middle", log.middle()), METRES.read(log.length())));
    }
  }

  /** The rule of ends and middle. */
  private record Newton() implements SolidRule {
    @Override
    public Formula formula() {
      return LogFormulas.NEWTON;
    }

    @Override
    public Quantity<Volume> volume(Log log) {
      return cubicMetres(
          LogFormulas.NEWTON.value(
              centimetres(LogFormulas.NEWTON, "large end", log.large()),
              centimetres(LogFormulas.NEWTON, "middle", log.middle()),
              centimetres(LogFormulas.NEWTON, "small end", log.small()),
              METRES.read(log.length())));
    }
  }

  /** A board-foot rule of the small end. */
  private record BoardRule(BoundFormula formula) implements ScaleRule {
    @Override
    public LogScale scale(Log log) {
      double boardFeet =
          formula.value(
              INCHES.read(needed(formula, "small end", log.small())), FEET.read(log.length()));
      return new LogScale(formula.title(), boardFeet, formula.result().unit(), log.bark());
    }
  }
}
