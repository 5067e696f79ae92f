package org.mensuration;

import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.internal.catalogue.StemFormFormulas;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * Form factors and form quotients. Stateless and thread-safe. Values outside a formula's domain
 * throw {@link org.mensuration.formula.OutOfDomainException}.
 *
 * <p>Breast height differs by country: state it beside every figure.
 *
 * <p>Equation, limits and sources of an id such as {@code stem/form-factor}: {@link
 * Catalogues#standard}.
 */
public final class StemForms {
  private static final UnitReader<Length> FEET = UnitReader.in(ForestUnits.FOOT);
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Length> INCHES = UnitReader.in(ForestUnits.INCH);
  private static final UnitReader<Volume> CUBIC_METRES = UnitReader.in(ForestUnits.CUBIC_METRE);

  private StemForms() {}

  /**
   * Breast-height form factor ({@code stem/form-factor}).
   *
   * @param volume volume of the stem
   * @param dbh diameter at breast height
   * @param height height of the tree
   * @return form factor
   */
  public static double formFactor(
      Quantity<Volume> volume, Quantity<Length> dbh, Quantity<Length> height) {
    return StemFormFormulas.FORM_FACTOR.value(
        CUBIC_METRES.read(volume), CENTIMETRES.read(dbh), METRES.read(height));
  }

  /**
   * Hohenadl's form factor ({@code stem/form-factor-hohenadl}).
   *
   * @param volume volume of the stem
   * @param d01 diameter at one tenth of the height from the ground
   * @param height height of the tree
   * @return form factor
   */
  public static double formFactorHohenadl(
      Quantity<Volume> volume, Quantity<Length> d01, Quantity<Length> height) {
    return StemFormFormulas.HOHENADL.value(
        CUBIC_METRES.read(volume), CENTIMETRES.read(d01), METRES.read(height));
  }

  /**
   * Absolute form factor on the base ({@code stem/form-factor-absolute}).
   *
   * @param volume volume of the stem
   * @param base diameter of the base
   * @param height height of the tree
   * @return form factor
   */
  public static double formFactorOnBase(
      Quantity<Volume> volume, Quantity<Length> base, Quantity<Length> height) {
    return StemFormFormulas.ABSOLUTE.value(
        CUBIC_METRES.read(volume), CENTIMETRES.read(base), METRES.read(height));
  }

  /**
   * Absolute form factor above breast height ({@code stem/form-factor-absolute-above}).
   *
   * @param volumeAbove volume above breast height
   * @param dbh diameter at breast height
   * @param height height of the tree
   * @param breastHeight breast height of the country
   * @return form factor
   */
  public static double formFactorAboveBreastHeight(
      Quantity<Volume> volumeAbove,
      Quantity<Length> dbh,
      Quantity<Length> height,
      Quantity<Length> breastHeight) {
    return StemFormFormulas.ABSOLUTE_ABOVE.value(
        CUBIC_METRES.read(volumeAbove),
        CENTIMETRES.read(dbh),
        METRES.read(height),
        METRES.read(breastHeight));
  }

  /**
   * Form quotient ({@code stem/form-quotient}).
   *
   * @param upper diameter at half the height, or half way between breast height and tip
   * @param dbh diameter at breast height
   * @return quotient
   */
  public static double formQuotient(Quantity<Length> upper, Quantity<Length> dbh) {
    return StemFormFormulas.FORM_QUOTIENT.value(CENTIMETRES.read(upper), CENTIMETRES.read(dbh));
  }

  /**
   * Hohenadl's form quotient ({@code stem/form-quotient-hohenadl}).
   *
   * @param d05 diameter at half the height
   * @param d01 diameter at one tenth of the height from the ground
   * @return quotient
   */
  public static double formQuotientHohenadl(Quantity<Length> d05, Quantity<Length> d01) {
    return StemFormFormulas.QUOTIENT_HOHENADL.value(CENTIMETRES.read(d05), CENTIMETRES.read(d01));
  }

  /**
   * Where the absolute form quotient is read ({@code stem/absolute-quotient-height}).
   *
   * @param height height of the tree
   * @param breastHeight breast height of the country
   * @return height half way between breast height and tip
   */
  public static Quantity<Length> absoluteQuotientHeight(
      Quantity<Length> height, Quantity<Length> breastHeight) {
    return Measures.metres(
        StemFormFormulas.QUOTIENT_HEIGHT.value(METRES.read(height), METRES.read(breastHeight)));
  }

  /**
   * Girard form class ({@code stem/girard-form-class}).
   *
   * @param insideBark diameter inside bark at the top of the first log, 17.3 feet up
   * @param dbh diameter outside bark at breast height
   * @return form class in per cent
   */
  public static double girardFormClass(Quantity<Length> insideBark, Quantity<Length> dbh) {
    return StemFormFormulas.GIRARD.value(INCHES.read(insideBark), INCHES.read(dbh));
  }

  /**
   * Form factor on the base of a solid of a power ({@code stem/form-factor-of-power}).
   *
   * @param exponent area grows with this power from the tip: 0 cylinder, 1 paraboloid, 2 cone, 3
   *     neiloid
   * @return form factor
   */
  public static double formFactorOfPower(double exponent) {
    return StemFormFormulas.OF_POWER.value(exponent);
  }

  /**
   * Part of the height at which a solid has half its base diameter ({@code stem/guide-point}).
   *
   * @param exponent area grows with this power from the tip, above zero
   * @return part of the height
   */
  public static double guidePoint(double exponent) {
    return StemFormFormulas.GUIDE_POINT.value(exponent);
  }

  /**
   * Height of the diameter of a form class ({@code stem/form-class-height}).
   *
   * @param stump height of the stump
   * @param log length of the first log
   * @param trim trim of the log
   * @return height above the ground
   */
  public static Quantity<Length> formClassHeight(
      Quantity<Length> stump, Quantity<Length> log, Quantity<Length> trim) {
    return Measures.feet(
        StemFormFormulas.FORM_CLASS_HEIGHT.value(
            FEET.read(stump), FEET.read(log), FEET.read(trim)));
  }

  /**
   * Section at breast height from the tip and the form factors with and without it ({@code
   * stem/section-from-tip}).
   *
   * @param tip volume of the tip
   * @param wholeFormFactor form factor of the whole stem
   * @param stemFormFactor form factor without the tip, the smaller one
   * @param height height of the tree
   * @return area at breast height
   */
  public static Quantity<Area> sectionFromTip(
      Quantity<Volume> tip,
      double wholeFormFactor,
      double stemFormFactor,
      Quantity<Length> height) {
    return Measures.squareMetres(
        StemFormFormulas.SECTION_FROM_TIP.value(
            CUBIC_METRES.read(tip), wholeFormFactor, stemFormFactor, METRES.read(height)));
  }
}
