package org.mensuration;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.internal.catalogue.BarkBySpeciesFormulas;
import org.mensuration.internal.catalogue.MiddleFormulas;
import org.mensuration.internal.convention.ClassSteps;
import org.mensuration.internal.convention.ClassWidth;
import org.mensuration.internal.convention.Convention;
import org.mensuration.internal.convention.Conventions;
import org.mensuration.log.ConventionRule;
import org.mensuration.log.CubicConvention;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * Scale rules of countries, each with its own rounding of readings, length and result. Stateless
 * and thread-safe; so are the rules. Girth rules stand in {@link GirthRules}.
 *
 * <p>What a rule gives is its own scale. It adds to scales of the same rule and bark basis only;
 * rules in cubic metres offer {@link CubicConvention#takenAsVolume}. A reading within a relative
 * 1e-9 of a class limit counts as on it. Figures for trade or tax follow the local scaling law and
 * a licensed scaler. Where the text of a standard was not read, the formula of the rule says so.
 *
 * <p>Equation, limits and sources of an id such as {@code log/brereton}: {@link
 * Catalogues#standard}.
 */
public final class LogConventions {
  private static final Convention CZECH_SPRUCE =
      Conventions.czech("CSN 48 0009, spruce and fir", BarkBySpeciesFormulas.CSN_SPRUCE);
  private static final Convention CZECH_PINE =
      Conventions.czech("CSN 48 0009, pine butt logs and larch", BarkBySpeciesFormulas.CSN_PINE);
  private static final Convention CZECH_BEECH =
      Conventions.czech("CSN 48 0009, beech and others", BarkBySpeciesFormulas.CSN_BEECH);

  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Length> MILLIMETRES = UnitReader.in(ForestUnits.MILLIMETRE);
  private static final int MILLIMETRES_IN_CENTIMETRE = 10;

  private LogConventions() {}

  /**
   * Brereton: cylinder of the mean of the end diameters ({@code log/brereton}), under bark. Not
   * rounded.
   *
   * @return the rule; needs both end diameters
   */
  public static CubicConvention brereton() {
    return Conventions.BRERETON;
  }

  /**
   * Customs rule of 3 June 1961: length down to 20 cm, four crossed diameters down to 2 cm, their
   * mean down to whole cm, result to 3 decimals ({@code log/brereton-mean}).
   *
   * @return the rule; needs two crossed readings of each end
   */
  public static CubicConvention southSea() {
    return Conventions.SOUTH_SEA;
  }

  /**
   * Square of the small end, both branches ({@code log/jas}), under bark. The rounding is from
   * memory: diameters down to whole cm below 14 cm and to even cm from there, result to 3 decimals;
   * a second reading widens the class of an uneven end ({@code diameter/crossed-class}).
   *
   * @return the rule; needs the smallest diameter of the small end, perhaps the largest too
   */
  public static CubicConvention jas() {
    return Conventions.JAS;
  }

  /**
   * The branch of {@link #jas} for logs under 6 m ({@code log/jas-short}).
   *
   * @return the rule; refuses longer logs
   */
  public static CubicConvention jasShort() {
    return Conventions.JAS_SHORT;
  }

  /**
   * The branch of {@link #jas} for logs from 6 m ({@code log/jas-long}).
   *
   * @return the rule; refuses shorter logs
   */
  public static CubicConvention jasLong() {
    return Conventions.JAS_LONG;
  }

  /**
   * The unified rule of 1968 for US wood, logs from 6 m ({@code log/unified-1968}); rounding as
   * {@link #jas}.
   *
   * @return the rule; refuses shorter logs
   */
  public static CubicConvention unified1968() {
    return Conventions.UNIFIED_1968;
  }

  /**
   * Square of the mean of the smallest and the largest diameter ({@code log/hiragoku}). Not
   * rounded.
   *
   * @return the rule; needs the small end, crossed where it is not round
   */
  public static CubicConvention hiragoku() {
    return Conventions.HIRAGOKU;
  }

  /**
   * Korean small-end square: diameter down to whole cm, length down to 0.1 m, result to 3 decimals
   * ({@code log/jas}).
   *
   * @return the rule; needs the small-end diameter
   */
  public static CubicConvention koreanSmallEnd() {
    return Conventions.KOREAN_SMALL_END;
  }

  /**
   * GB 4814-84 for logs of 2 to 10 m ({@code log/gb4814}): 4 decimals below 8 cm, 3 from there. The
   * classing of readings was not read, so give classes.
   *
   * @return the rule; needs the small-end diameter, refuses it below 4 cm
   */
  public static CubicConvention gb4814() {
    return Conventions.GB4814;
  }

  /**
   * GB 4814-84 for short logs and others outside its table ({@code log/gb4814-outside}). That the
   * table ends at 120 cm is from memory.
   *
   * @return the rule; needs the small-end diameter, refuses it below 4 cm, and refuses logs of the
   *     table, 4 to 120 cm by 2 to 10 m
   */
  public static CubicConvention gb4814Outside() {
    return Conventions.GB4814_OUTSIDE;
  }

  /**
   * GOST 2708-75 as its printed table ({@code log/gost2708}). Classes only; what was not read is
   * refused, so logs of 9 to 13.5 m are. A log over 13.5 m is the sum of two nearly equal parts:
   * read it where it is parted, a quarter of a metre at most from the middle, and give that as its
   * middle.
   *
   * @return the rule; needs the small-end diameter
   */
  public static CubicConvention gost2708() {
    return Conventions.GOST2708;
  }

  /**
   * {@link #gost2708} from diameters as read. The classing is that of GOST 2292-88, from memory: to
   * the nearest whole cm below 14 cm and to the nearest even cm from there, halves up.
   *
   * @return the rule; needs the small-end diameter, the length in its class
   */
  public static CubicConvention gost2708Readings() {
    return Conventions.GOST2708_READINGS;
  }

  /**
   * GOST 2708-75 with linear interpolation between printed cells. The standard does not ask for it,
   * and its scales do not add to those of the table.
   *
   * @return the rule; refuses what has no printed neighbours on every side
   */
  public static CubicConvention gost2708Interpolated() {
    return Conventions.GOST2708_INTERPOLATED;
  }

  /**
   * German mid-diameter rule under bark: one reading below 20 cm, two crossed ones from 20 cm, each
   * down to whole cm and their mean down again, result to 2 decimals ({@code
   * log/conventional-mid}). Give the nominal length, without the {@link #germanAllowance}.
   *
   * @return the rule; needs the middle, refuses a single reading from 20 cm on
   */
  public static CubicConvention germanMid() {
    return Conventions.GERMAN_MID;
  }

  /**
   * {@link #germanMid} by the sources that ask for two readings above 20 cm only.
   *
   * @return the rule; needs the middle, refuses a single reading above 20 cm
   */
  public static CubicConvention germanMidTwoReadingsAbove20() {
    return Conventions.GERMAN_MID_ABOVE;
  }

  /**
   * The length that is cut but not counted for a nominal length in Germany: a hundredth, at least
   * 10 cm ({@code log/length-allowance}).
   *
   * @param nominal nominal length
   * @return the allowance
   * @throws org.mensuration.formula.OutOfDomainException if the length is negative
   */
  public static Quantity<Length> germanAllowance(Quantity<Length> nominal) {
    return Measures.metres(MiddleFormulas.LENGTH_ALLOWANCE.value(METRES.read(nominal)));
  }

  /**
   * The length to be cut for a nominal length in Germany ({@code log/length-with-allowance}).
   *
   * @param nominal nominal length
   * @return nominal length and {@link #germanAllowance}
   * @throws org.mensuration.formula.OutOfDomainException if the length is negative
   */
  public static Quantity<Length> germanLengthToCut(Quantity<Length> nominal) {
    return Measures.metres(MiddleFormulas.LENGTH_WITH_ALLOWANCE.value(METRES.read(nominal)));
  }

  /**
   * French real volume: middle diameter down to whole cm, length down to 0.1 m, result to 3
   * decimals ({@code log/conventional-mid}).
   *
   * @return the rule; needs the middle diameter
   */
  public static CubicConvention frenchMid() {
    return Conventions.FRENCH_MID;
  }

  /**
   * {@link #frenchMid} with the length down to half metres, by agreement.
   *
   * @return the rule; needs the middle diameter
   */
  public static CubicConvention frenchMidHalfMetres() {
    return Conventions.FRENCH_MID_HALF_METRES;
  }

  /**
   * French real volume by the tape: middle girth down to whole cm, length down to 0.1 m, result to
   * 3 decimals ({@code log/girth-cylinder}).
   *
   * @return the rule; needs the middle girth
   */
  public static CubicConvention frenchGirth() {
    return Conventions.FRENCH_GIRTH;
  }

  /**
   * British mid-diameter rule, from memory: diameter down to whole cm, length down to 0.1 m up to
   * 10 m and to whole metres above ({@code log/conventional-mid}). Logs over 15 m are refused:
   * measure them in sections.
   *
   * @return the rule; needs the middle diameter
   */
  public static CubicConvention britishMid() {
    return Conventions.BRITISH_MID;
  }

  /**
   * British rule for logs measured at the top, from memory: a taper of 1 in 120 to the middle;
   * diameter down to whole cm, length down to 0.1 m up to 10 m and to whole metres above ({@code
   * log/british-top}).
   *
   * @return the rule; needs the small-end diameter
   */
  public static CubicConvention britishTop() {
    return Conventions.BRITISH_TOP;
  }

  /**
   * New Zealand three-dimensional rule for conifers under bark, from memory and unverified ({@code
   * log/three-dimensional}). Not rounded.
   *
   * @return the rule; needs both end diameters, the large above the small
   */
  public static CubicConvention threeDimensional() {
    return Conventions.THREE_DIMENSIONAL;
  }

  /**
   * Cubic scale of the national forests of the United States, from memory: Smalian with 0.002727,
   * diameters to the nearest inch, result to a tenth of a cubic foot ({@code log/national-cubic});
   * two readings of an end as {@link Scaling#ofTwoReadings} takes them. Logs over 20 ft are
   * refused: scale them in segments and add.
   *
   * @return the rule in cubic feet; needs both end diameters under bark
   */
  public static ConventionRule nationalCubic() {
    return Conventions.NATIONAL_CUBIC;
  }

  /**
   * Metric scale by radius classes of whole centimetres, from memory ({@code log/radius-classes}).
   *
   * @return the rule; needs both end diameters
   */
  public static CubicConvention radiusClasses() {
    return Conventions.RADIUS_CLASSES;
  }

  /**
   * Swedish top measure: area 10 cm inside the top under bark, times length ({@code
   * log/top-measured}). Not rounded.
   *
   * @return the rule; needs the small-end diameter, read 10 cm inside the top
   */
  public static CubicConvention swedishTop() {
    return Conventions.SWEDISH_TOP;
  }

  /**
   * {@link #swedishTop} from the bottom of the diameter class, the custom before 1999.
   *
   * @param width width of the classes, whole millimetres from 1 to 100
   * @return the rule
   * @throws IllegalArgumentException if the width is another
   */
  public static CubicConvention swedishTopClassBottom(Quantity<Length> width) {
    int millimetres = ClassWidth.millimetres(MILLIMETRES.read(width));
    return Conventions.swedishTop(
        "Swedish top measure, bottom of classes of " + millimetres + " mm",
        ClassSteps.down(millimetres, MILLIMETRES_IN_CENTIMETRE));
  }

  /**
   * {@link #swedishTop} from the middle of the diameter class, the custom from 1999 on.
   *
   * @param width width of the classes, whole millimetres from 1 to 100
   * @return the rule
   * @throws IllegalArgumentException if the width is another
   */
  public static CubicConvention swedishTopClassMiddle(Quantity<Length> width) {
    int millimetres = ClassWidth.millimetres(MILLIMETRES.read(width));
    return Conventions.swedishTop(
        "Swedish top measure, middle of classes of " + millimetres + " mm",
        ClassSteps.middle(millimetres, MILLIMETRES_IN_CENTIMETRE));
  }

  /**
   * Swedish mid measure: cylinder of the middle diameter under bark ({@code log/conventional-mid}).
   * Not rounded.
   *
   * @return the rule; needs the middle diameter
   */
  public static CubicConvention swedishMid() {
    return Conventions.SWEDISH_MID;
  }

  /**
   * Czech rule for spruce and fir: middle diameter over bark less the double bark of {@code
   * bark/csn-spruce} ({@code log/csn480009}). Not rounded.
   *
   * @return the rule; needs the middle diameter over bark
   */
  public static CubicConvention czechSpruce() {
    return CZECH_SPRUCE;
  }

  /**
   * Czech rule for pine butt logs and larch ({@code bark/csn-pine}, {@code log/csn480009}).
   *
   * @return the rule; needs the middle diameter over bark
   */
  public static CubicConvention czechPine() {
    return CZECH_PINE;
  }

  /**
   * Czech rule for beech and others ({@code bark/csn-beech}, {@code log/csn480009}).
   *
   * @return the rule; needs the middle diameter over bark
   */
  public static CubicConvention czechBeech() {
    return CZECH_BEECH;
  }
}
