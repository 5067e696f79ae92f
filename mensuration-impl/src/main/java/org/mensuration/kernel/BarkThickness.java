package org.mensuration.kernel;

/**
 * Bark: diameters inside it, its thickness from the diameter, its share. Unchecked: NaN in, NaN
 * out. Stateless and thread-safe.
 */
public final class BarkThickness {
  private BarkThickness() {}

  /**
   * Diameter inside bark from a bark factor.
   *
   * @param outsideCm diameter over bark in cm
   * @param factor diameter inside over diameter outside
   * @return diameter inside bark in cm
   */
  public static double insideFromFactor(double outsideCm, double factor) {
    return factor * outsideCm;
  }

  /**
   * Diameter inside bark from single thickness.
   *
   * @param outsideCm diameter over bark in cm
   * @param thicknessCm thickness on one side in cm
   * @return diameter inside bark in cm
   */
  public static double insideFromThickness(double outsideCm, double thicknessCm) {
    return outsideCm - 2 * thicknessCm;
  }

  /**
   * Girth inside bark from single thickness.
   *
   * @param outsideCm girth over bark in cm
   * @param thicknessCm thickness on one side in cm
   * @return girth inside bark in cm
   */
  public static double girthInside(double outsideCm, double thicknessCm) {
    return outsideCm - 2 * Math.PI * thicknessCm;
  }

  /**
   * Share of bark in the volume at a constant factor.
   *
   * @param factor diameter inside over diameter outside
   * @return share
   */
  public static double volumeShare(double factor) {
    return (1 - factor) * (1 + factor);
  }

  /**
   * Volume inside bark at a constant factor.
   *
   * @param outsideM3 volume over bark in m³
   * @param factor diameter inside over diameter outside
   * @return volume inside bark in m³
   */
  public static double volumeInside(double outsideM3, double factor) {
    return outsideM3 * (factor * factor);
  }

  /**
   * Share of bark in the area of a section, from double thickness.
   *
   * @param outsideCm diameter over bark in cm
   * @param doubleBarkMm double thickness in mm
   * @return share in per cent
   */
  public static double areaShare(double outsideCm, double doubleBarkMm) {
    double loss = doubleBarkMm / (10 * outsideCm);
    return 100 * (loss * (2 - loss));
  }

  /**
   * Double thickness as a constant and a power of the diameter.
   *
   * @param outsideCm diameter over bark in cm
   * @param p0 constant in cm
   * @param p1 factor
   * @param p2 exponent
   * @return double thickness in cm
   */
  public static double power(double outsideCm, double p0, double p1, double p2) {
    return p0 + p1 * StrictMath.pow(outsideCm, p2);
  }

  /**
   * Double thickness as a parabola of the diameter.
   *
   * @param outsideCm diameter over bark in cm
   * @param a constant in mm
   * @param b factor of the diameter
   * @param c factor of its square
   * @return double thickness in mm
   */
  public static double parabola(double outsideCm, double a, double b, double c) {
    return a + outsideCm * (b + c * outsideCm);
  }

  /**
   * Customary deduction in whole centimetres: one figure up to a diameter, another above.
   *
   * @param outsideCm diameter over bark in cm
   * @param limitCm last diameter of the smaller deduction in cm
   * @param uptoCm deduction up to the limit in cm
   * @param aboveCm deduction above it in cm
   * @return deduction in cm
   */
  public static double customary(double outsideCm, double limitCm, double uptoCm, double aboveCm) {
    return outsideCm <= limitCm ? uptoCm : aboveCm;
  }

  /**
   * Bark allowance of an inch and a half in a foot of quarter girth.
   *
   * @param quarterGirthIn quarter girth over bark in inches
   * @return allowance in inches
   */
  public static double inchAndHalfInFoot(double quarterGirthIn) {
    return 1.5 * quarterGirthIn / 12;
  }

  /**
   * Bark allowance of a twelfth of the quarter girth.
   *
   * @param quarterGirthIn quarter girth over bark in inches
   * @return allowance in inches
   */
  public static double twelfth(double quarterGirthIn) {
    return quarterGirthIn / 12;
  }
}
