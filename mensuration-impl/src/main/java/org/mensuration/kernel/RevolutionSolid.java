package org.mensuration.kernel;

/**
 * Solids of revolution whose sectional area is in proportion to a power of the distance from the
 * tip: power 0 a cylinder, 1 a paraboloid, 2 a cone, 3 a neiloid. Diameters in cm, length in m,
 * volume in m³. Unchecked: NaN in, NaN out. Stateless and thread-safe.
 */
public final class RevolutionSolid {
  private RevolutionSolid() {}

  /**
   * Frustum: the integral of the area from the small end to the large. With the distances of the
   * ends from the tip in the ratio u it is g L (1 - u^(k+1)) / ((k + 1)(1 - u)).
   *
   * @param largeCm diameter of the large end in cm
   * @param smallCm diameter of the small end in cm
   * @param lengthM length in m
   * @param exponent power of the distance from the tip
   * @return volume in m³
   */
  public static double frustum(double largeCm, double smallCm, double lengthM, double exponent) {
    double cylinder = LogVolume.huber(largeCm, lengthM);
    return smallCm == largeCm ? cylinder : cylinder * share(exponent, smallCm / largeCm);
  }

  /**
   * Volume of a frustum as a share of the cylinder over its large end.
   *
   * @param exponent power of the distance from the tip
   * @param diameterRatio small end over large end
   * @return the share
   */
  static double share(double exponent, double diameterRatio) {
    if (diameterRatio == 1) {
      return 1;
    }
    // expm1 keeps 1 - u when the ends are nearly alike; for a tip log(0) makes both of them -1.
    double log = 2 / exponent * StrictMath.log(diameterRatio);
    return StrictMath.expm1((exponent + 1) * log) / ((exponent + 1) * StrictMath.expm1(log));
  }

  /**
   * Distances of the ends from the tip, small over large.
   *
   * @param exponent power of the distance from the tip
   * @param diameterRatio small end over large end
   * @return the ratio
   */
  static double distanceRatio(double exponent, double diameterRatio) {
    return StrictMath.pow(diameterRatio, 2 / exponent);
  }
}
