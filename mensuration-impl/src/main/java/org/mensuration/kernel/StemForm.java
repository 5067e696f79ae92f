package org.mensuration.kernel;

/**
 * Form of stems: diameters in cm, heights in m, volumes in m³ unless a name says otherwise.
 * Unchecked: NaN in, NaN out. Stateless and thread-safe.
 */
public final class StemForm {
  /** Divides π d² with d in cm to give an area in m². */
  private static final double AREA_DIVISOR = 40000.0;

  private static final double LN_4 = StrictMath.log(4);

  private StemForm() {}

  /**
   * Volume over that of a cylinder.
   *
   * @param volumeM3 volume of the stem
   * @param diameterCm diameter of the cylinder
   * @param lengthM length of the cylinder
   * @return form factor
   */
  public static double factor(double volumeM3, double diameterCm, double lengthM) {
    return AREA_DIVISOR * volumeM3 / (Math.PI * (diameterCm * diameterCm) * lengthM);
  }

  /**
   * Volume above breast height over that of the cylinder above breast height.
   *
   * @param volumeM3 volume above breast height
   * @param diameterCm diameter at breast height
   * @param heightM height of the tree
   * @param breastHeightM breast height
   * @return form factor
   */
  public static double factorAbove(
      double volumeM3, double diameterCm, double heightM, double breastHeightM) {
    return factor(volumeM3, diameterCm, heightM - breastHeightM);
  }

  /**
   * Form factor of a solid whose area grows with a power of the distance from the tip.
   *
   * @param exponent the power: 0 cylinder, 1 paraboloid, 2 cone, 3 neiloid
   * @return form factor on the base
   */
  public static double factorOfPower(double exponent) {
    return 1 / (exponent + 1);
  }

  /**
   * An upper diameter over a lower one.
   *
   * @param upper upper diameter
   * @param lower lower diameter in the same unit
   * @return form quotient
   */
  public static double quotient(double upper, double lower) {
    return upper / lower;
  }

  /**
   * Height half way between breast height and tip.
   *
   * @param heightM height of the tree
   * @param breastHeightM breast height
   * @return height in m
   */
  public static double absoluteQuotientHeight(double heightM, double breastHeightM) {
    return (heightM + breastHeightM) / 2;
  }

  /**
   * Girard form class.
   *
   * @param insideBarkIn diameter inside bark at the top of the first log in inches
   * @param breastHeightIn diameter outside bark at breast height in inches
   * @return form class in per cent
   */
  public static double girardFormClass(double insideBarkIn, double breastHeightIn) {
    return 100 * insideBarkIn / breastHeightIn;
  }

  /**
   * Height of the diameter of a form class.
   *
   * @param stumpFt stump height in feet
   * @param logFt length of the first log in feet
   * @param trimFt trim of the log in feet
   * @return height in feet
   */
  public static double formClassHeight(double stumpFt, double logFt, double trimFt) {
    return stumpFt + logFt + trimFt;
  }

  /**
   * Part of the height at which a solid has half the diameter of its base.
   *
   * @param exponent power of the area: 1 paraboloid, 2 cone, 3 neiloid
   * @return part of the height
   */
  public static double guidePoint(double exponent) {
    return -StrictMath.expm1(-LN_4 / exponent);
  }

  /**
   * Vertical height of the tip of a leaning straight stem.
   *
   * @param lengthM length along the stem
   * @param leanDeg lean from the plumb line in degrees
   * @return height in m
   */
  public static double verticalHeight(double lengthM, double leanDeg) {
    return lengthM * Slope.cos(leanDeg);
  }

  /**
   * Sectional area at breast height from the tip of a stem and its form factors with and without.
   *
   * @param tipM3 volume of the tip in m³
   * @param wholeFactor form factor of the whole stem
   * @param stemFactor form factor of the stem without the tip
   * @param heightM height of the tree in m
   * @return area in m²
   */
  public static double sectionFromTip(
      double tipM3, double wholeFactor, double stemFactor, double heightM) {
    return tipM3 / (wholeFactor - stemFactor) / heightM;
  }
}
