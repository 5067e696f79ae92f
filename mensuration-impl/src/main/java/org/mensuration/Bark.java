package org.mensuration;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.internal.catalogue.BarkBySpeciesFormulas;
import org.mensuration.internal.catalogue.BarkFormulas;
import org.mensuration.internal.convention.FormulaBark;
import org.mensuration.log.BarkRule;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * Bark: diameters and volumes inside it, its share, its thickness by species. A rule by species
 * takes the bark off a diameter or, by {@link BarkRule#inside(org.mensuration.log.Log)}, off a
 * whole log. Stateless and thread-safe; so are the rules.
 *
 * <p>Equation, limits and sources of an id such as {@code bark/inside-from-factor}: {@link
 * Catalogues#standard}.
 */
public final class Bark {
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Length> MILLIMETRES = UnitReader.in(ForestUnits.MILLIMETRE);
  private static final UnitReader<Length> INCHES = UnitReader.in(ForestUnits.INCH);
  private static final UnitReader<Volume> CUBIC_METRES = UnitReader.in(ForestUnits.CUBIC_METRE);

  private static final BarkRule CSN_SPRUCE = new FormulaBark(BarkBySpeciesFormulas.CSN_SPRUCE);
  private static final BarkRule CSN_PINE = new FormulaBark(BarkBySpeciesFormulas.CSN_PINE);
  private static final BarkRule CSN_BEECH = new FormulaBark(BarkBySpeciesFormulas.CSN_BEECH);
  private static final BarkRule FVA_SPRUCE = new FormulaBark(BarkBySpeciesFormulas.FVA_SPRUCE);
  private static final BarkRule FVA_FIR = new FormulaBark(BarkBySpeciesFormulas.FVA_FIR);
  private static final BarkRule FVA_PINE = new FormulaBark(BarkBySpeciesFormulas.FVA_PINE);
  private static final BarkRule CUSTOMARY_SPRUCE =
      new FormulaBark(BarkBySpeciesFormulas.CUSTOMARY_SPRUCE);
  private static final BarkRule CUSTOMARY_PINE =
      new FormulaBark(BarkBySpeciesFormulas.CUSTOMARY_PINE);
  private static final BarkRule CUSTOMARY_OAK =
      new FormulaBark(BarkBySpeciesFormulas.CUSTOMARY_OAK);
  private static final BarkRule CUSTOMARY_BEECH =
      new FormulaBark(BarkBySpeciesFormulas.CUSTOMARY_BEECH);

  private Bark() {}

  /**
   * The diameter inside bark from a bark factor ({@code bark/inside-from-factor}).
   *
   * @param outside diameter over bark
   * @param factor diameter inside over diameter outside, in (0, 1]
   * @return diameter inside bark
   * @throws org.mensuration.formula.OutOfDomainException if a value is outside its domain
   */
  public static Quantity<Length> inside(Quantity<Length> outside, double factor) {
    return Measures.centimetres(
        BarkFormulas.INSIDE_FROM_FACTOR.value(CENTIMETRES.read(outside), factor));
  }

  /**
   * The diameter inside bark from the thickness on one side ({@code bark/inside-from-thickness}).
   *
   * @param outside diameter over bark
   * @param thickness thickness on one side
   * @return diameter inside bark
   * @throws org.mensuration.formula.OutOfDomainException if a value is outside its domain, or twice
   *     the thickness exceeds the diameter
   */
  public static Quantity<Length> inside(Quantity<Length> outside, Quantity<Length> thickness) {
    return Measures.centimetres(
        BarkFormulas.INSIDE_FROM_THICKNESS.value(
            CENTIMETRES.read(outside), CENTIMETRES.read(thickness)));
  }

  /**
   * The girth inside bark from the thickness on one side ({@code bark/girth-inside}).
   *
   * @param outside girth over bark
   * @param thickness thickness on one side
   * @return girth inside bark
   * @throws org.mensuration.formula.OutOfDomainException if a value is outside its domain
   */
  public static Quantity<Length> girthInside(Quantity<Length> outside, Quantity<Length> thickness) {
    return Measures.centimetres(
        BarkFormulas.GIRTH_INSIDE.value(CENTIMETRES.read(outside), CENTIMETRES.read(thickness)));
  }

  /**
   * The volume inside bark at a constant factor ({@code bark/volume-inside}).
   *
   * @param outside volume over bark
   * @param factor diameter inside over diameter outside, in (0, 1]
   * @return volume inside bark
   * @throws org.mensuration.formula.OutOfDomainException if a value is outside its domain
   */
  public static Quantity<Volume> volumeInside(Quantity<Volume> outside, double factor) {
    return Measures.cubicMetres(
        BarkFormulas.VOLUME_INSIDE.value(CUBIC_METRES.read(outside), factor));
  }

  /**
   * The share of bark in the volume at a constant factor ({@code bark/volume-share}).
   *
   * @param factor diameter inside over diameter outside, in (0, 1]
   * @return share, 0 to 1
   * @throws org.mensuration.formula.OutOfDomainException if the factor is outside its domain
   */
  public static double volumeShare(double factor) {
    return BarkFormulas.VOLUME_SHARE.value(factor);
  }

  /**
   * The share of bark in the area of a section ({@code bark/area-share}).
   *
   * @param outside diameter over bark
   * @param doubleBark thickness of both sides together
   * @return share in per cent
   * @throws org.mensuration.formula.OutOfDomainException if a value is outside its domain
   */
  public static double areaSharePercent(Quantity<Length> outside, Quantity<Length> doubleBark) {
    return BarkFormulas.AREA_SHARE.value(MILLIMETRES.read(doubleBark), CENTIMETRES.read(outside));
  }

  /**
   * Old British allowance of an inch and a half in a foot of quarter girth ({@code
   * bark/inch-and-half-in-foot}).
   *
   * @param quarterGirth quarter girth over bark
   * @return what is taken off it
   * @throws org.mensuration.formula.OutOfDomainException if the quarter girth is negative
   */
  public static Quantity<Length> inchAndHalfInFoot(Quantity<Length> quarterGirth) {
    return Measures.inches(BarkFormulas.INCH_AND_HALF.value(INCHES.read(quarterGirth)));
  }

  /**
   * Old British allowance of a twelfth of the quarter girth ({@code
   * bark/twelfth-of-quarter-girth}).
   *
   * @param quarterGirth quarter girth over bark
   * @return what is taken off it
   * @throws org.mensuration.formula.OutOfDomainException if the quarter girth is negative
   */
  public static Quantity<Length> twelfthOfQuarterGirth(Quantity<Length> quarterGirth) {
    return Measures.inches(BarkFormulas.TWELFTH.value(INCHES.read(quarterGirth)));
  }

  /**
   * Double bark of spruce and fir by CSN 48 0009 ({@code bark/csn-spruce}).
   *
   * @return the rule
   */
  public static BarkRule csnSpruce() {
    return CSN_SPRUCE;
  }

  /**
   * Double bark of pine butt logs and larch by CSN 48 0009 ({@code bark/csn-pine}).
   *
   * @return the rule
   */
  public static BarkRule csnPine() {
    return CSN_PINE;
  }

  /**
   * Double bark of beech and others by CSN 48 0009 ({@code bark/csn-beech}).
   *
   * @return the rule
   */
  public static BarkRule csnBeech() {
    return CSN_BEECH;
  }

  /**
   * Double bark of spruce by the German parabola ({@code bark/fva-spruce}).
   *
   * @return the rule
   */
  public static BarkRule fvaSpruce() {
    return FVA_SPRUCE;
  }

  /**
   * Double bark of fir by the German parabola ({@code bark/fva-fir}).
   *
   * @return the rule
   */
  public static BarkRule fvaFir() {
    return FVA_FIR;
  }

  /**
   * Double bark of Scots pine by the German parabola ({@code bark/fva-pine}).
   *
   * @return the rule
   */
  public static BarkRule fvaPine() {
    return FVA_PINE;
  }

  /**
   * Customary German deduction for spruce and fir ({@code bark/customary-spruce}).
   *
   * @return the rule
   */
  public static BarkRule customarySpruce() {
    return CUSTOMARY_SPRUCE;
  }

  /**
   * Customary German deduction for pine, larch and Douglas fir ({@code bark/customary-pine}).
   *
   * @return the rule
   */
  public static BarkRule customaryPine() {
    return CUSTOMARY_PINE;
  }

  /**
   * Customary German deduction for oak ({@code bark/customary-oak}).
   *
   * @return the rule
   */
  public static BarkRule customaryOak() {
    return CUSTOMARY_OAK;
  }

  /**
   * Customary German deduction for beech ({@code bark/customary-beech}).
   *
   * @return the rule
   */
  public static BarkRule customaryBeech() {
    return CUSTOMARY_BEECH;
  }
}
