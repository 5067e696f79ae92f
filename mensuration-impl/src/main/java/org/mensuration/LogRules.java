package org.mensuration;

import org.mensuration.internal.catalogue.LogFormulas;
import org.mensuration.internal.catalogue.SectionFormulas;
import org.mensuration.internal.log.BoardRules;
import org.mensuration.internal.log.CentroidRule;
import org.mensuration.internal.log.Comparisons;
import org.mensuration.internal.log.MeasuredRule;
import org.mensuration.internal.log.Place;
import org.mensuration.internal.log.SolidFrustumRule;
import org.mensuration.internal.log.Totals;
import org.mensuration.log.Log;
import org.mensuration.log.LogTotal;
import org.mensuration.log.MeasuredVolume;
import org.mensuration.log.RuleComparison;
import org.mensuration.log.ScaleRule;
import org.mensuration.log.SolidRule;
import org.mensuration.log.Tip;

/**
 * Rules for the volume of logs and stem sections. Stateless and thread-safe.
 *
 * <p>Name the rule with every figure: rules differ by country, and figures for trade or tax follow
 * local scaling law and a licensed scaler.
 *
 * <p>Equation, limits and sources of an id such as {@code log/huber}: {@link Catalogues#standard}.
 */
public final class LogRules {
  private static final SolidRule HUBER = MeasuredRule.of(LogFormulas.HUBER, Place.MIDDLE);
  private static final SolidRule SMALIAN =
      MeasuredRule.of(LogFormulas.SMALIAN, Place.LARGE, Place.SMALL);
  private static final SolidRule NEWTON =
      MeasuredRule.of(LogFormulas.NEWTON, Place.LARGE, Place.MIDDLE, Place.SMALL);
  private static final SolidRule CONE_FRUSTUM =
      MeasuredRule.of(LogFormulas.CONE_FRUSTUM, Place.LARGE, Place.SMALL);
  private static final SolidRule NEILOID_FRUSTUM =
      MeasuredRule.of(LogFormulas.NEILOID_FRUSTUM, Place.LARGE, Place.SMALL);
  private static final SolidRule MEAN_DIAMETER =
      MeasuredRule.of(LogFormulas.MEAN_DIAMETER, Place.LARGE, Place.SMALL);
  private static final SolidRule BRUCE_BUTT =
      MeasuredRule.of(LogFormulas.BRUCE_BUTT, Place.LARGE, Place.SMALL);
  private static final SolidRule HOSSFELD =
      MeasuredRule.of(LogFormulas.HOSSFELD, Place.THIRD, Place.SMALL);
  private static final SolidRule SIMONY =
      MeasuredRule.of(LogFormulas.SIMONY, Place.QUARTER, Place.MIDDLE, Place.THREE_QUARTERS);
  private static final SolidRule SMALL_END_CYLINDER =
      MeasuredRule.of(LogFormulas.SMALL_END_CYLINDER, Place.SMALL);
  private static final SolidRule SORENSON = MeasuredRule.of(LogFormulas.SORENSON, Place.SMALL);
  private static final SolidRule THREE_EIGHTHS =
      MeasuredRule.of(
          SectionFormulas.THREE_EIGHTHS, Place.LARGE, Place.THIRD, Place.TWO_THIRDS, Place.SMALL);

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
   * Frustum of a neiloid ({@code log/neiloid-frustum}).
   *
   * @return the rule; needs both end diameters
   */
  public static SolidRule neiloidFrustum() {
    return NEILOID_FRUSTUM;
  }

  /**
   * Cylinder of the mean of the end diameters ({@code log/mean-diameter}).
   *
   * @return the rule; needs both end diameters; low for every tapering log
   */
  public static SolidRule meanDiameter() {
    return MEAN_DIAMETER;
  }

  /**
   * Bruce butt-log rule: a quarter of the large area and three quarters of the small ({@code
   * log/bruce-butt}).
   *
   * @return the rule; needs both end diameters; for butt logs only
   */
  public static SolidRule bruceButt() {
    return BRUCE_BUTT;
  }

  /**
   * Hossfeld: three times the area a third from the large end and once the small end ({@code
   * log/hossfeld}).
   *
   * @return the rule; needs the diameter at a third and the small end
   */
  public static SolidRule hossfeld() {
    return HOSSFELD;
  }

  /**
   * Simony: twice the outer quarter areas less the middle ({@code log/simony}).
   *
   * @return the rule; needs the diameters at a quarter, at the middle and at three quarters
   */
  public static SolidRule simony() {
    return SIMONY;
  }

  /**
   * Cylinder of the small end ({@code log/small-end-cylinder}).
   *
   * @return the rule; needs the small-end diameter
   */
  public static SolidRule smallEndCylinder() {
    return SMALL_END_CYLINDER;
  }

  /**
   * Sorenson: small end and a taper of one inch in ten feet ({@code log/sorenson}).
   *
   * @return the rule; needs the small-end diameter; other units are converted, since the taper
   *     holds in inches and feet
   */
  public static SolidRule sorenson() {
    return SORENSON;
  }

  /**
   * Three-eighths rule: ends once and the thirds three times ({@code log/three-eighths}).
   *
   * @return the rule; needs both end diameters and those at a third and two thirds
   */
  public static SolidRule threeEighths() {
    return THREE_EIGHTHS;
  }

  /**
   * Centroid rule: a quadratic area through both ends and the half-volume point ({@code
   * log/centroid}).
   *
   * @return the rule; needs both end diameters and the one at {@link #centroidShare}
   */
  public static SolidRule centroid() {
    return CentroidRule.RULE;
  }

  /**
   * Where the centroid rule wants its reading ({@code log/centroid-position}).
   *
   * @param log a log with both ends and its length
   * @return distance from the large end as a share of the length, as {@link Log#withDiameterAt}
   *     takes it
   * @throws IllegalArgumentException if an end is missing or has no meaning for the rule
   */
  public static double centroidShare(Log log) {
    return CentroidRule.RULE.share(log);
  }

  /**
   * Exact frustum of a solid of revolution whose sectional area is in proportion to a power of the
   * distance from the tip ({@code log/solid-frustum}).
   *
   * @param exponent the power: 1 paraboloid, 2 cone, 3 neiloid, or any number between 0.1 and 4
   * @return the rule; needs both end diameters
   * @throws IllegalArgumentException if the exponent is outside
   */
  public static SolidRule solidFrustum(double exponent) {
    return SolidFrustumRule.of(exponent);
  }

  /**
   * The sum of measured volumes, the same whatever their order.
   *
   * @param volumes what is added, by one rule or several
   * @return the total with its parts; of none, zero with the bark not stated
   * @throws IllegalArgumentException if volumes over bark, under bark or of unstated basis are
   *     mixed; the message names both
   */
  public static LogTotal total(Iterable<MeasuredVolume> volumes) {
    return Totals.of(volumes);
  }

  /**
   * The sum of logs, or the sectional (composite) volume of a stem, by one rule.
   *
   * @param rule the rule
   * @param sections the logs or sections
   * @return the total with its parts; of none, zero with the bark not stated
   * @throws IllegalArgumentException if bark bases are mixed, or as the rule
   */
  public static LogTotal total(SolidRule rule, Iterable<Log> sections) {
    return Totals.of(rule, sections);
  }

  /**
   * The sectional (composite) volume of a stem by one rule with its tip.
   *
   * @param rule the rule
   * @param sections the sections, at least one
   * @param tip the tip, measured over the same bark basis
   * @return the total; the tip is its last part
   * @throws IllegalArgumentException if there is no section, if bark bases are mixed, or as the
   *     rule
   */
  public static LogTotal total(SolidRule rule, Iterable<Log> sections, Tip tip) {
    return Totals.of(rule, sections, tip);
  }

  /** {@return Doyle ({@code board/doyle}), unrounded; refuses a small end below 4 in} */
  public static ScaleRule doyle() {
    return BoardRules.DOYLE;
  }

  /**
   * {@return Scribner in its regression form ({@code board/scribner-formula}), unrounded; not the
   * table}
   */
  public static ScaleRule scribnerFormula() {
    return BoardRules.SCRIBNER_FORMULA;
  }

  /**
   * {@return Doyle up to 28 in and the Scribner formula above ({@code board/doyle-scribner}); whole
   * inches only}
   */
  public static ScaleRule doyleScribner() {
    return BoardRules.DOYLE_SCRIBNER;
  }

  /**
   * {@return International 1/4-inch by four-foot sections ({@code board/international-quarter}),
   * unrounded; refuses a small end below 3.23 in}
   */
  public static ScaleRule internationalQuarter() {
    return BoardRules.INTERNATIONAL_QUARTER;
  }

  /**
   * {@return International 1/4-inch as a polynomial of any length ({@code
   * board/international-quarter-continuous}), unrounded; refuses a small end below 3.49 in}
   */
  public static ScaleRule internationalQuarterContinuous() {
    return BoardRules.INTERNATIONAL_QUARTER_CONTINUOUS;
  }

  /**
   * {@return International 1/8-inch by four-foot sections ({@code board/international-eighth}),
   * unrounded; refuses a small end below 3.23 in}
   */
  public static ScaleRule internationalEighth() {
    return BoardRules.INTERNATIONAL_EIGHTH;
  }

  /**
   * {@return Vermont, half the square of the small end for twelve feet, without taper ({@code
   * board/vermont})}
   */
  public static ScaleRule vermont() {
    return BoardRules.VERMONT;
  }

  /**
   * {@return Vermont by sections of twelve feet from the small end ({@code
   * board/vermont-sections}); a log over 12 ft needs its large end, the cuts lie on a straight line
   * between the ends}
   */
  public static ScaleRule vermontSections() {
    return BoardRules.VERMONT_SECTIONS;
  }

  /**
   * {@return Blodgett in its own units of 16 in by 1 ft ({@code board/blodgett}); needs the middle}
   */
  public static ScaleRule blodgett() {
    return BoardRules.BLODGETT;
  }

  /**
   * {@return Blodgett in board feet, 115 units to the thousand ({@code board/blodgett-middle});
   * needs the middle}
   */
  public static ScaleRule blodgettMiddle() {
    return BoardRules.BLODGETT_MIDDLE;
  }

  /**
   * {@return Blodgett in board feet, 106 units to the thousand ({@code board/blodgett-small-end})}
   */
  public static ScaleRule blodgettSmallEnd() {
    return BoardRules.BLODGETT_SMALL_END;
  }

  /** {@return Roy ({@code board/roy}), from memory; refuses a small end below 1 in} */
  public static ScaleRule roy() {
    return BoardRules.ROY;
  }

  /** {@return Ontario ({@code board/ontario}), from memory; refuses a small end below 2.19 in} */
  public static ScaleRule ontario() {
    return BoardRules.ONTARIO;
  }

  /**
   * {@return British Columbia in board feet ({@code board/british-columbia}), from memory; refuses
   * a small end below 1.5 in}
   */
  public static ScaleRule britishColumbia() {
    return BoardRules.BRITISH_COLUMBIA;
  }

  /**
   * {@return Knouf, a rule of thumb for Scribner ({@code board/knouf}); refuses a small end below 3
   * in}
   */
  public static ScaleRule knouf() {
    return BoardRules.KNOUF;
  }

  /** {@return Ropp, a rule of thumb ({@code board/ropp}); refuses a small end below 7.75 in} */
  public static ScaleRule ropp() {
    return BoardRules.ROPP;
  }

  /**
   * {@return Scribner Decimal C as printed ({@code board/scribner-decimal-c}): whole inches from 6
   * to 20, whole feet from 6 to 16; a cell that is not held is refused}
   */
  public static ScaleRule scribnerDecimalC() {
    return BoardRules.SCRIBNER_DECIMAL_C;
  }

  /**
   * {@return International 1/4-inch as printed to the nearest five ({@code
   * board/international-quarter-table}): whole inches from 6 to 26, even feet from 6 to 16}
   */
  public static ScaleRule internationalQuarterTable() {
    return BoardRules.INTERNATIONAL_QUARTER_TABLE;
  }

  /**
   * A log by every rule of this class, of {@link LogConventions} and of {@link GirthRules}, one
   * line a rule: what it gives, or why it does not apply. The figures do not add; each is that of
   * its own rule.
   *
   * @param log the log as measured
   * @return the comparison
   */
  public static RuleComparison compare(Log log) {
    return Comparisons.of(log, ComparedRules.SOLIDS, ComparedRules.scales());
  }
}
