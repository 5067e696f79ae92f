package org.mensuration.kernel;

/**
 * Height of a tree from its diameter at breast height: diameters in cm, heights in m. Unchecked:
 * NaN in, NaN out. Stateless and thread-safe.
 */
public final class HeightCurve {
  private HeightCurve() {}

  /**
   * Näslund.
   *
   * @param diameterCm diameter at breast height in cm
   * @param breastHeightM breast height in m
   * @param b0 first coefficient
   * @param b1 second coefficient
   * @return height in m
   */
  public static double naslund(double diameterCm, double breastHeightM, double b0, double b1) {
    double root = diameterCm / (b0 + b1 * diameterCm);
    return breastHeightM + root * root;
  }

  /**
   * Petterson.
   *
   * @param diameterCm diameter at breast height in cm
   * @param breastHeightM breast height in m
   * @param b0 first coefficient
   * @param b1 second coefficient
   * @return height in m
   */
  public static double petterson(double diameterCm, double breastHeightM, double b0, double b1) {
    double root = b0 + b1 / diameterCm;
    return breastHeightM + 1 / (root * root * root);
  }

  /**
   * Curtis.
   *
   * @param diameterCm diameter at breast height in cm
   * @param breastHeightM breast height in m
   * @param b0 first coefficient
   * @param b1 second coefficient
   * @return height in m
   */
  public static double curtis(double diameterCm, double breastHeightM, double b0, double b1) {
    return breastHeightM + StrictMath.exp(b0 + b1 / diameterCm);
  }

  /**
   * A power of the diameter.
   *
   * @param diameterCm diameter at breast height in cm
   * @param breastHeightM breast height in m
   * @param b0 factor
   * @param b1 exponent
   * @return height in m
   */
  public static double power(double diameterCm, double breastHeightM, double b0, double b1) {
    return breastHeightM + b0 * StrictMath.pow(diameterCm, b1);
  }

  /**
   * An exponential of the reciprocal of the diameter plus one.
   *
   * @param diameterCm diameter at breast height in cm
   * @param breastHeightM breast height in m
   * @param b0 first coefficient
   * @param b1 second coefficient
   * @return height in m
   */
  public static double shiftedReciprocal(
      double diameterCm, double breastHeightM, double b0, double b1) {
    return breastHeightM + StrictMath.exp(b0 + b1 / (diameterCm + 1));
  }
}
