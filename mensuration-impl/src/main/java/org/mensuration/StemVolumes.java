package org.mensuration;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.internal.catalogue.StemVolumeFormulas;
import org.mensuration.internal.catalogue.VolumeEquationFormulas;
import org.mensuration.internal.stem.HeightAccumulation;
import org.mensuration.stem.StemReading;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * Volume of a standing stem from few measurements. Stateless and thread-safe. Values outside a
 * formula's domain throw {@link org.mensuration.formula.OutOfDomainException}.
 *
 * <p>Equation, limits and sources of an id such as {@code stem/volume-from-form-factor}: {@link
 * Catalogues#standard}.
 */
public final class StemVolumes {
  private static final UnitReader<Volume> CUBIC_METRES = UnitReader.in(ForestUnits.CUBIC_METRE);
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Length> INCHES = UnitReader.in(ForestUnits.INCH);

  private StemVolumes() {}

  /**
   * From a form factor ({@code stem/volume-from-form-factor}).
   *
   * @param formFactor form factor on that diameter
   * @param dbh diameter at breast height
   * @param height height of the tree
   * @return volume of the whole stem from the ground, or of what the form factor stands for
   */
  public static Quantity<Volume> fromFormFactor(
      double formFactor, Quantity<Length> dbh, Quantity<Length> height) {
    return Measures.cubicMetres(
        StemVolumeFormulas.FROM_FORM_FACTOR.value(
            formFactor, CENTIMETRES.read(dbh), METRES.read(height)));
  }

  /**
   * Pressler, above a lower section ({@code stem/pressler}).
   *
   * @param lower diameter of the lower section
   * @param toHalf length from there to half that diameter
   * @return volume from the lower section to the tip
   */
  public static Quantity<Volume> pressler(Quantity<Length> lower, Quantity<Length> toHalf) {
    return Measures.cubicMetres(
        StemVolumeFormulas.PRESSLER.value(CENTIMETRES.read(lower), METRES.read(toHalf)));
  }

  /**
   * Pressler from breast height ({@code stem/pressler-breast-height}).
   *
   * @param dbh diameter at breast height
   * @param toHalf length from breast height to half that diameter
   * @param breastHeight breast height of the country
   * @return volume of the whole stem from the ground
   */
  public static Quantity<Volume> presslerFromBreastHeight(
      Quantity<Length> dbh, Quantity<Length> toHalf, Quantity<Length> breastHeight) {
    return Measures.cubicMetres(
        StemVolumeFormulas.PRESSLER_BREAST_HEIGHT.value(
            CENTIMETRES.read(dbh), METRES.read(toHalf), METRES.read(breastHeight)));
  }

  /**
   * Pressler with the guide point counted from the felling cut ({@code stem/pressler-from-cut}).
   *
   * @param diameter diameter at the measuring point
   * @param guideHeight height of half that diameter above the cut
   * @param pointHeight height of the measuring point above the cut
   * @return volume from the felling cut to the tip
   */
  public static Quantity<Volume> presslerFromCut(
      Quantity<Length> diameter, Quantity<Length> guideHeight, Quantity<Length> pointHeight) {
    return Measures.cubicMetres(
        StemVolumeFormulas.PRESSLER_FROM_CUT.value(
            CENTIMETRES.read(diameter), METRES.read(guideHeight), METRES.read(pointHeight)));
  }

  /**
   * Hossfeld for a stem with its tip ({@code stem/hossfeld}).
   *
   * @param third diameter a third of the way up
   * @param height length of the stem
   * @return volume of the whole stem with its tip
   */
  public static Quantity<Volume> hossfeld(Quantity<Length> third, Quantity<Length> height) {
    return Measures.cubicMetres(
        StemVolumeFormulas.HOSSFELD.value(CENTIMETRES.read(third), METRES.read(height)));
  }

  /**
   * Hohenadl's five sections ({@code stem/hohenadl}); tenths of the height are counted from the
   * ground.
   *
   * @param d01 diameter at 0.1 of the height
   * @param d03 diameter at 0.3 of the height
   * @param d05 diameter at half the height
   * @param d07 diameter at 0.7 of the height
   * @param d09 diameter at 0.9 of the height
   * @param height height of the tree
   * @return volume of the whole stem from the ground
   */
  public static Quantity<Volume> hohenadl(
      Quantity<Length> d01,
      Quantity<Length> d03,
      Quantity<Length> d05,
      Quantity<Length> d07,
      Quantity<Length> d09,
      Quantity<Length> height) {
    return Measures.cubicMetres(
        StemVolumeFormulas.HOHENADL.apply(
            CENTIMETRES.read(d01),
            CENTIMETRES.read(d03),
            CENTIMETRES.read(d05),
            CENTIMETRES.read(d07),
            CENTIMETRES.read(d09),
            METRES.read(height)));
  }

  /**
   * The solid of a power through two readings ({@code stem/two-point-power}).
   *
   * @param lower lower reading
   * @param upper upper reading
   * @param height height of the tip
   * @return volume from the lower reading to the tip
   */
  public static Quantity<Volume> twoPointPower(
      StemReading lower, StemReading upper, Quantity<Length> height) {
    return Measures.cubicMetres(
        StemVolumeFormulas.TWO_POINT_POWER.apply(
            CENTIMETRES.read(lower.diameter()),
            METRES.read(lower.height()),
            CENTIMETRES.read(upper.diameter()),
            METRES.read(upper.height()),
            METRES.read(height)));
  }

  /**
   * Height accumulation by frusta of cones ({@code stem/height-accumulation}).
   *
   * @param lengths lengths between diameters that differ by one step, the one at the tip first
   * @param step step of diameter
   * @return volume from the diameter of the last length up to the tip, in cubic feet
   */
  public static Quantity<Volume> heightAccumulation(
      List<Quantity<Length>> lengths, Quantity<Length> step) {
    double[] sums = HeightAccumulation.sums(lengths);
    return Measures.cubicFeet(
        StemVolumeFormulas.ACCUMULATION.value(sums[0], sums[2], INCHES.read(step), 1));
  }

  /**
   * Quick rule ({@code stem/quick-volume}), for a rough figure only.
   *
   * @param dbh diameter at breast height
   * @return rough volume of the tree
   */
  public static Quantity<Volume> quick(Quantity<Length> dbh) {
    return Measures.cubicMetres(VolumeEquationFormulas.QUICK.value(CENTIMETRES.read(dbh)));
  }

  /**
   * Height accumulation by Smalian's sections ({@code stem/height-accumulation-smalian}).
   *
   * @param lengths lengths between diameters that differ by one step, the one at the tip first
   * @param step step of diameter
   * @return volume from the diameter of the last length up to the tip, in cubic feet
   */
  public static Quantity<Volume> heightAccumulationBySmalian(
      List<Quantity<Length>> lengths, Quantity<Length> step) {
    double[] sums = HeightAccumulation.sums(lengths);
    double figure =
        StemVolumeFormulas.ACCUMULATION_SMALIAN.value(sums[0], sums[2], INCHES.read(step), 1);
    return Measures.cubicFeet(figure);
  }

  /**
   * Surface by height accumulation, girth times length along the axis ({@code
   * stem/height-accumulation-surface}).
   *
   * @param lengths lengths between diameters that differ by one step, the one at the tip first
   * @param step step of diameter
   * @return surface
   */
  public static Quantity<Area> surfaceByHeightAccumulation(
      List<Quantity<Length>> lengths, Quantity<Length> step) {
    double[] sums = HeightAccumulation.sums(lengths);
    double figure =
        StemVolumeFormulas.ACCUMULATION_SURFACE.value(sums[0], sums[1], INCHES.read(step), 1);
    return Measures.of(figure, ForestUnits.SQUARE_FOOT);
  }

  /**
   * Solid of a power of the distance from the tip ({@code stem/power-solid}).
   *
   * @param base diameter of the base
   * @param height height
   * @param exponent area grows with this power from the tip: 0 cylinder, 1 paraboloid, 2 cone, 3
   *     neiloid
   * @return volume from the base to the tip
   */
  public static Quantity<Volume> powerSolid(
      Quantity<Length> base, Quantity<Length> height, double exponent) {
    return Measures.cubicMetres(
        StemVolumeFormulas.POWER.value(CENTIMETRES.read(base), METRES.read(height), exponent));
  }

  /**
   * Pressler from the felling cut, with what swells at the butt ({@code stem/pressler-swollen}).
   *
   * @param diameter diameter at the measuring point
   * @param guideHeight height of half that diameter above the cut
   * @param pointHeight height of the measuring point above the cut
   * @param tenths how often a tenth of the diameter goes into the surplus of the diameter half way
   *     up to the point
   * @return volume from the felling cut to the tip
   */
  public static Quantity<Volume> presslerSwollen(
      Quantity<Length> diameter,
      Quantity<Length> guideHeight,
      Quantity<Length> pointHeight,
      double tenths) {
    return Measures.cubicMetres(
        StemVolumeFormulas.PRESSLER_SWOLLEN.value(
            CENTIMETRES.read(diameter),
            METRES.read(guideHeight),
            METRES.read(pointHeight),
            tenths));
  }

  /**
   * From the tip and the form factors with and without it ({@code stem/volume-from-tip}).
   *
   * @param tip volume of the tip
   * @param wholeFormFactor form factor of the whole stem
   * @param stemFormFactor form factor without the tip, the smaller one
   * @return volume of the whole stem with its tip
   */
  public static Quantity<Volume> fromTip(
      Quantity<Volume> tip, double wholeFormFactor, double stemFormFactor) {
    return Measures.cubicMetres(
        StemVolumeFormulas.FROM_TIP.value(CUBIC_METRES.read(tip), wholeFormFactor, stemFormFactor));
  }

  /**
   * Quick rule corrected by height, for a rough figure only ({@code stem/quick-volume-height}).
   *
   * @param dbh diameter at breast height
   * @param height height of the tree
   * @param normalHeight height for which the rule holds, by species
   * @param percentPerMetre correction for each metre in per cent, 3 to 5 by species
   * @return rough volume of the tree
   */
  public static Quantity<Volume> quick(
      Quantity<Length> dbh,
      Quantity<Length> height,
      Quantity<Length> normalHeight,
      double percentPerMetre) {
    return Measures.cubicMetres(
        VolumeEquationFormulas.QUICK_HEIGHT.value(
            CENTIMETRES.read(dbh),
            METRES.read(height),
            METRES.read(normalHeight),
            percentPerMetre));
  }

  /**
   * Volume equation with a restricted cubic spline of three knots ({@code stem/spline-volume}).
   *
   * @param x basal area in m², or basal area times height in m³
   * @param b0 constant in m³
   * @param b1 coefficient of x
   * @param b2 coefficient of the spline term
   * @param lowKnot lowest knot
   * @param middleKnot middle knot
   * @param highKnot highest knot
   * @return volume of what the equation was fitted to
   */
  public static Quantity<Volume> bySpline(
      double x,
      double b0,
      double b1,
      double b2,
      double lowKnot,
      double middleKnot,
      double highKnot) {
    return Measures.cubicMetres(
        VolumeEquationFormulas.SPLINE_VOLUME.apply(x, b0, b1, b2, lowKnot, middleKnot, highKnot));
  }

  /**
   * On the straight line between two heights of a volume table ({@code stem/volume-between-
   * entries}).
   *
   * @param lowerHeight height of the lower entry
   * @param lowerVolume its volume
   * @param upperHeight height of the upper entry
   * @param upperVolume its volume
   * @param height height wanted, between them
   * @return volume of what the table gives
   */
  public static Quantity<Volume> betweenEntries(
      Quantity<Length> lowerHeight,
      Quantity<Volume> lowerVolume,
      Quantity<Length> upperHeight,
      Quantity<Volume> upperVolume,
      Quantity<Length> height) {
    return Measures.cubicMetres(
        VolumeEquationFormulas.BETWEEN_ENTRIES.apply(
            METRES.read(lowerHeight),
            CUBIC_METRES.read(lowerVolume),
            METRES.read(upperHeight),
            CUBIC_METRES.read(upperVolume),
            METRES.read(height)));
  }
}
