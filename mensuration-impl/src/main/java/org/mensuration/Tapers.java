package org.mensuration;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.internal.stem.TaperFamily;
import org.mensuration.internal.stem.TaperReadings;
import org.mensuration.stem.StemReading;
import org.mensuration.stem.TaperCurve;
import org.mensuration.stem.TaperFit;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.UnitReader;

/**
 * Taper curves from coefficients, and fitted to readings. Stateless and thread-safe.
 *
 * <p>Coefficients belong to a species, a region and a bark basis; state where they come from. A
 * curve that has no diameter somewhere between ground and tip is refused. Fits need one height more
 * than they have coefficients; one that does not converge throws an {@link ArithmeticException} and
 * gives no number.
 *
 * <p>Equation, limits and sources of an id such as {@code stem/taper-power}: {@link
 * Catalogues#standard}.
 */
public final class Tapers {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);

  private Tapers() {}

  /**
   * A power of the distance from the tip ({@code stem/taper-power}).
   *
   * @param reference diameter at the reference height
   * @param referenceHeight such as breast height
   * @param height height of the tip
   * @param exponent exponent of the diameter: 1/2 paraboloid, 1 cone, 3/2 neiloid
   * @return the curve
   */
  public static TaperCurve power(
      Quantity<Length> reference,
      Quantity<Length> referenceHeight,
      Quantity<Length> height,
      double exponent) {
    return TaperFamily.power(
        CENTIMETRES.read(reference), METRES.read(referenceHeight), METRES.read(height), exponent);
  }

  /**
   * A parabola of the squared relative diameter ({@code stem/taper-quadratic}).
   *
   * @param dbh diameter at breast height
   * @param height height of the tip
   * @param b0 constant
   * @param b1 coefficient of the relative height
   * @param b2 coefficient of its square
   * @return the curve
   */
  public static TaperCurve quadratic(
      Quantity<Length> dbh, Quantity<Length> height, double b0, double b1, double b2) {
    return TaperFamily.quadratic(CENTIMETRES.read(dbh), METRES.read(height), b0, b1, b2);
  }

  /**
   * A cubic of the relative diameter ({@code stem/taper-cubic}).
   *
   * @param dbh diameter at breast height
   * @param height height of the tip
   * @param b0 constant
   * @param b1 coefficient of the relative height
   * @param b2 coefficient of its square
   * @param b3 coefficient of its cube
   * @return the curve
   */
  public static TaperCurve cubic(
      Quantity<Length> dbh, Quantity<Length> height, double b0, double b1, double b2, double b3) {
    return TaperFamily.cubic(CENTIMETRES.read(dbh), METRES.read(height), b0, b1, b2, b3);
  }

  /**
   * Three parabolas joined smoothly ({@code stem/taper-segmented}).
   *
   * @param dbh diameter at breast height
   * @param height height of the tip
   * @param b1 coefficient of z - 1
   * @param b2 coefficient of z² - 1
   * @param b3 coefficient of the upper joint
   * @param b4 coefficient of the lower joint
   * @param a1 upper joint, relative height
   * @param a2 lower joint, relative height
   * @return the curve
   */
  public static TaperCurve segmented(
      Quantity<Length> dbh,
      Quantity<Length> height,
      double b1,
      double b2,
      double b3,
      double b4,
      double a1,
      double a2) {
    return TaperFamily.segmented(
        CENTIMETRES.read(dbh), METRES.read(height), b1, b2, b3, b4, a1, a2);
  }

  /**
   * A curve whose exponent changes along the stem ({@code stem/taper-variable-exponent}). Its
   * volume and the heights of a diameter are found by iteration.
   *
   * @param dbh diameter at breast height
   * @param height height of the tip
   * @param inflection relative height of the inflection
   * @param a0 factor of the diameter at the inflection
   * @param a1 exponent of the diameter at breast height
   * @param a2 base raised to the diameter at breast height
   * @param b five coefficients of the exponent: of z², ln(z + 0.001), √z, the exponential of z, and
   *     diameter over height
   * @return the curve
   * @throws IllegalArgumentException if there are not five coefficients
   */
  public static TaperCurve variableExponent(
      Quantity<Length> dbh,
      Quantity<Length> height,
      double inflection,
      double a0,
      double a1,
      double a2,
      double... b) {
    return TaperFamily.variableExponent(
        CENTIMETRES.read(dbh), METRES.read(height), inflection, a0, a1, a2, b);
  }

  /**
   * Fits the exponent of a power curve to relative diameters, by iteration.
   *
   * @param readings at least at two heights
   * @param reference diameter at the reference height, which the curve passes through
   * @param referenceHeight such as breast height
   * @param height height of the tip
   * @return the fit
   */
  public static TaperFit fitPower(
      List<StemReading> readings,
      Quantity<Length> reference,
      Quantity<Length> referenceHeight,
      Quantity<Length> height) {
    return readings(readings, reference, height).power(METRES.read(referenceHeight));
  }

  /**
   * Fits a quadratic curve that ends in the tip to squared relative diameters.
   *
   * @param readings at least at three heights
   * @param dbh diameter at breast height
   * @param height height of the tip
   * @return the fit of b1 and b2; b0 is the negative of their sum
   */
  public static TaperFit fitQuadratic(
      List<StemReading> readings, Quantity<Length> dbh, Quantity<Length> height) {
    return readings(readings, dbh, height).quadratic();
  }

  /**
   * Fits a cubic curve that ends in the tip to relative diameters.
   *
   * @param readings at least at four heights
   * @param dbh diameter at breast height
   * @param height height of the tip
   * @return the fit of b1, b2 and b3; b0 is the negative of their sum
   */
  public static TaperFit fitCubic(
      List<StemReading> readings, Quantity<Length> dbh, Quantity<Length> height) {
    return readings(readings, dbh, height).cubic();
  }

  /**
   * Fits a segmented curve with known joints to squared relative diameters.
   *
   * @param readings at least at five heights, in every segment
   * @param dbh diameter at breast height
   * @param height height of the tip
   * @param a1 upper joint, relative height
   * @param a2 lower joint, relative height
   * @return the fit of b1 to b4
   */
  public static TaperFit fitSegmented(
      List<StemReading> readings,
      Quantity<Length> dbh,
      Quantity<Length> height,
      double a1,
      double a2) {
    return readings(readings, dbh, height).segmented(a1, a2);
  }

  /**
   * Fits a segmented curve and its joints to squared relative diameters, by iteration.
   *
   * @param readings at least at seven heights, in every segment
   * @param dbh diameter at breast height
   * @param height height of the tip
   * @param a1 upper joint to start from, relative height
   * @param a2 lower joint to start from, relative height
   * @return the fit of b1 to b4, a1 and a2
   */
  public static TaperFit fitSegmentedWithJoints(
      List<StemReading> readings,
      Quantity<Length> dbh,
      Quantity<Length> height,
      double a1,
      double a2) {
    return readings(readings, dbh, height).segmentedWithJoints(a1, a2);
  }

  /**
   * Fits a variable-exponent curve to the logarithms of the diameters of one stem. One stem does
   * not tell a0, a1 and a2 apart, nor b5 from the others, so the curve found has a1 = 0, a2 = 1 and
   * b5 = 0, and a0 is the diameter at the inflection in cm.
   *
   * @param readings at least at six heights, all with a diameter above zero
   * @param dbh diameter at breast height
   * @param height height of the tip
   * @param inflection relative height of the inflection
   * @return the fit of ln a0 and b1 to b4
   */
  public static TaperFit fitVariableExponent(
      List<StemReading> readings,
      Quantity<Length> dbh,
      Quantity<Length> height,
      double inflection) {
    return readings(readings, dbh, height).variableExponent(inflection);
  }

  private static TaperReadings readings(
      List<StemReading> readings, Quantity<Length> diameter, Quantity<Length> height) {
    return new TaperReadings(readings, CENTIMETRES.read(diameter), METRES.read(height));
  }
}
