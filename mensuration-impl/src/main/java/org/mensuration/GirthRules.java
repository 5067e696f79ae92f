package org.mensuration;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.formula.Formula;
import org.mensuration.internal.catalogue.GirthFormulas;
import org.mensuration.internal.catalogue.MiddleFormulas;
import org.mensuration.internal.catalogue.SectionFormulas;
import org.mensuration.internal.convention.Convention;
import org.mensuration.internal.convention.Conventions;
import org.mensuration.internal.convention.Duodecimals;
import org.mensuration.log.ConventionRule;
import org.mensuration.log.CubicConvention;
import org.mensuration.quantity.LogScale;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * Rules of the taped girth and of squared timber. Stateless and thread-safe; so are the rules. None
 * rounds its readings, and what a rule gives adds to scales of the same rule and bark basis only.
 *
 * <p>Equation, limits and sources of an id such as {@code log/hoppus}: {@link Catalogues#standard}.
 */
public final class GirthRules {
  private static final UnitReader<Length> INCHES = UnitReader.in(ForestUnits.INCH);
  private static final UnitReader<Length> FEET = UnitReader.in(ForestUnits.FOOT);
  private static final UnitReader<Volume> CUBIC_FEET = UnitReader.in(ForestUnits.CUBIC_FOOT);

  private static final Convention HOPPUS = Conventions.girth("Hoppus", GirthFormulas.HOPPUS);
  private static final Convention FIFTH_GIRTH =
      Conventions.girth("Fifth girth", GirthFormulas.FIFTH_GIRTH);
  private static final Convention TWO_THIRDS =
      Conventions.squaredTimber("Two-thirds rule", GirthFormulas.TWO_THIRDS);
  private static final Convention INSCRIBED_SQUARE =
      Conventions.squaredTimber("Inscribed square", GirthFormulas.INSCRIBED_SQUARE);
  private static final Convention QUARTER_METRIC =
      Conventions.metricGirth("Quarter girth without deduction", MiddleFormulas.QUARTER_METRIC);
  private static final Convention FIFTH_DEDUCTED =
      Conventions.metricGirth("Fifth deducted", MiddleFormulas.FIFTH_DEDUCTED);
  private static final Convention SIXTH_DEDUCTED =
      Conventions.metricGirth("Sixth deducted", MiddleFormulas.SIXTH_DEDUCTED);
  private static final Convention QUARTER_GIRTH_113 =
      Conventions.girth("Quarter girth with 113", GirthFormulas.QUARTER_GIRTH_113);
  private static final Convention CYLINDER_TABLE =
      Conventions.girth("Cylinder of a girth by table", GirthFormulas.CYLINDER_BY_TABLE);

  private GirthRules() {}

  /**
   * Hoppus: the square of a quarter of the middle girth, times length ({@code log/hoppus}), in
   * Hoppus feet of 4/π ft³. Not rounded.
   *
   * @return the rule; needs the middle girth, or the middle diameter of a round log
   */
  public static ConventionRule hoppus() {
    return HOPPUS;
  }

  /**
   * Fifth girth: twice the square of a fifth of the girth, times length ({@code log/fifth-girth}),
   * in ft³. Not rounded.
   *
   * @return the rule; needs the middle girth, or the middle diameter of a round log
   */
  public static ConventionRule fifthGirth() {
    return FIFTH_GIRTH;
  }

  /**
   * Quarter girth with the divisor 113, which brings it near the true volume ({@code
   * log/quarter-girth-113}), in ft³, from memory. Not rounded.
   *
   * @return the rule; needs the middle girth, or the middle diameter of a round log
   */
  public static ConventionRule quarterGirth113() {
    return QUARTER_GIRTH_113;
  }

  /**
   * Cylinder of the girth by the table of one foot, rounded to thousandths ({@code
   * log/girth-cylinder-table}), in ft³.
   *
   * @return the rule; needs the middle girth, or the middle diameter of a round log
   */
  public static ConventionRule cylinderTable() {
    return CYLINDER_TABLE;
  }

  /**
   * Two-thirds rule for squared timber ({@code log/two-thirds}), in ft³. Not rounded.
   *
   * @return the rule; needs the small-end diameter
   */
  public static ConventionRule twoThirds() {
    return TWO_THIRDS;
  }

  /**
   * Inscribed square ({@code log/inscribed-square}), in ft³ of squared timber. Not rounded.
   *
   * @return the rule; needs the small-end diameter
   */
  public static ConventionRule inscribedSquare() {
    return INSCRIBED_SQUARE;
  }

  /**
   * An amount in cubic feet in feet, inches, parts and seconds, each a twelfth of the one before,
   * as old tables print it; to the nearest second.
   *
   * @param scale a scale in {@code ft3} or {@code hoppus_ft3}
   * @return for example {@code 58 ft 0 in 10 pts 8''}
   * @throws IllegalArgumentException if the scale is in another unit
   */
  public static String feetInchesParts(LogScale scale) {
    if (!scale.unit().endsWith("ft3")) {
      throw new IllegalArgumentException(
          "feet, inches and parts of " + scale + ": wanted a scale in cubic feet");
    }
    return Duodecimals.text(scale.amount());
  }

  /**
   * Quarter girth without deduction in metres ({@code log/quarter-girth-metric}). Not rounded.
   *
   * @return the rule; needs the middle girth, or the middle diameter of a round log
   */
  public static CubicConvention quarterGirthMetric() {
    return QUARTER_METRIC;
  }

  /**
   * A fifth deducted: the square of a fifth of the girth, times length ({@code
   * log/fifth-deducted}). Not rounded.
   *
   * @return the rule; needs the middle girth, or the middle diameter of a round log
   */
  public static CubicConvention fifthDeducted() {
    return FIFTH_DEDUCTED;
  }

  /**
   * A sixth deducted ({@code log/sixth-deducted}), from memory. Not rounded.
   *
   * @return the rule; needs the middle girth, or the middle diameter of a round log
   */
  public static CubicConvention sixthDeducted() {
    return SIXTH_DEDUCTED;
  }

  /**
   * The solid volume that Hoppus feet of round logs stand for ({@code unit/hoppus-foot}).
   *
   * @param hoppusFeet Hoppus feet
   * @return volume, 4/π times as many cubic feet
   * @throws org.mensuration.formula.OutOfDomainException if the number is negative or none
   */
  public static Quantity<Volume> solidVolumeOfHoppus(double hoppusFeet) {
    return Measures.cubicFeet(GirthFormulas.CUBIC_FEET.value(hoppusFeet));
  }

  /**
   * Hoppus feet in a solid volume of round logs ({@code unit/hoppus-feet}).
   *
   * @param volume solid volume
   * @return Hoppus feet
   * @throws org.mensuration.formula.OutOfDomainException if the volume is negative
   */
  public static double hoppusFeet(Quantity<Volume> volume) {
    return GirthFormulas.HOPPUS_FEET.value(CUBIC_FEET.read(volume));
  }

  /**
   * Squared timber that tapers in width and depth, exactly ({@code log/prismoid}).
   *
   * @param largeWidth width of the large end
   * @param largeDepth depth of the large end
   * @param smallWidth width of the small end
   * @param smallDepth depth of the small end
   * @param length length
   * @return volume
   * @throws org.mensuration.formula.OutOfDomainException if a measure is negative
   */
  public static Quantity<Volume> squaredTimber(
      Quantity<Length> largeWidth,
      Quantity<Length> largeDepth,
      Quantity<Length> smallWidth,
      Quantity<Length> smallDepth,
      Quantity<Length> length) {
    return timber(SectionFormulas.PRISMOID, largeWidth, largeDepth, smallWidth, smallDepth, length);
  }

  /**
   * Squared timber by the section of its mean width and depth, the old rule, which is low for what
   * tapers ({@code log/prismoid-mean-section}).
   *
   * @param largeWidth width of the large end
   * @param largeDepth depth of the large end
   * @param smallWidth width of the small end
   * @param smallDepth depth of the small end
   * @param length length
   * @return volume
   * @throws org.mensuration.formula.OutOfDomainException if a measure is negative
   */
  public static Quantity<Volume> squaredTimberByMeanSection(
      Quantity<Length> largeWidth,
      Quantity<Length> largeDepth,
      Quantity<Length> smallWidth,
      Quantity<Length> smallDepth,
      Quantity<Length> length) {
    return timber(
        SectionFormulas.MEAN_SECTION, largeWidth, largeDepth, smallWidth, smallDepth, length);
  }

  private static Quantity<Volume> timber(
      Formula formula,
      Quantity<Length> largeWidth,
      Quantity<Length> largeDepth,
      Quantity<Length> smallWidth,
      Quantity<Length> smallDepth,
      Quantity<Length> length) {
    return Measures.cubicFeet(
        formula.apply(
            INCHES.read(largeWidth),
            INCHES.read(largeDepth),
            INCHES.read(smallWidth),
            INCHES.read(smallDepth),
            FEET.read(length)));
  }
}
