package org.mensuration.kernel;

/**
 * What solid rules give too much of a solid of revolution whose sectional area is in proportion to
 * a power of the distance from the tip, in per cent of its true volume. Areas are counted in that
 * of the large end. Unchecked: NaN in, NaN out. Stateless and thread-safe.
 */
public final class RuleBias {
  private RuleBias() {}

  /**
   * Huber.
   *
   * @param exponent power of the distance from the tip
   * @param diameterRatio small end over large end
   * @return bias in per cent
   */
  public static double huber(double exponent, double diameterRatio) {
    return percent(area(exponent, diameterRatio, 1, 1, 2), exponent, diameterRatio);
  }

  /**
   * Smalian.
   *
   * @param exponent power of the distance from the tip
   * @param diameterRatio small end over large end
   * @return bias in per cent
   */
  public static double smalian(double exponent, double diameterRatio) {
    return percent((1 + diameterRatio * diameterRatio) / 2, exponent, diameterRatio);
  }

  /**
   * Newton.
   *
   * @param exponent power of the distance from the tip
   * @param diameterRatio small end over large end
   * @return bias in per cent
   */
  public static double newton(double exponent, double diameterRatio) {
    double middle = area(exponent, diameterRatio, 1, 1, 2);
    double mean = (1 + 4 * middle + diameterRatio * diameterRatio) / 6;
    return percent(mean, exponent, diameterRatio);
  }

  /**
   * Frustum of a cone.
   *
   * @param exponent power of the distance from the tip
   * @param diameterRatio small end over large end
   * @return bias in per cent
   */
  public static double coneFrustum(double exponent, double diameterRatio) {
    double mean = (1 + diameterRatio + diameterRatio * diameterRatio) / 3;
    return percent(mean, exponent, diameterRatio);
  }

  /**
   * Cylinder of the mean diameter.
   *
   * @param exponent power of the distance from the tip
   * @param diameterRatio small end over large end
   * @return bias in per cent
   */
  public static double meanDiameter(double exponent, double diameterRatio) {
    double mean = (1 + diameterRatio) / 2;
    return percent(mean * mean, exponent, diameterRatio);
  }

  /**
   * Frustum of a neiloid.
   *
   * @param exponent power of the distance from the tip
   * @param diameterRatio small end over large end
   * @return bias in per cent
   */
  public static double neiloidFrustum(double exponent, double diameterRatio) {
    double root = StrictMath.cbrt(diameterRatio);
    double third = root * root;
    double mean = (1 + third + third * third + diameterRatio * diameterRatio) / 4;
    return percent(mean, exponent, diameterRatio);
  }

  /**
   * Butt-log rule.
   *
   * @param exponent power of the distance from the tip
   * @param diameterRatio small end over large end
   * @return bias in per cent
   */
  public static double bruceButt(double exponent, double diameterRatio) {
    double mean = 0.25 + 0.75 * (diameterRatio * diameterRatio);
    return percent(mean, exponent, diameterRatio);
  }

  /**
   * Hossfeld.
   *
   * @param exponent power of the distance from the tip
   * @param diameterRatio small end over large end
   * @return bias in per cent
   */
  public static double hossfeld(double exponent, double diameterRatio) {
    double third = area(exponent, diameterRatio, 2, 1, 3);
    double mean = (3 * third + diameterRatio * diameterRatio) / 4;
    return percent(mean, exponent, diameterRatio);
  }

  /**
   * Simony.
   *
   * @param exponent power of the distance from the tip
   * @param diameterRatio small end over large end
   * @return bias in per cent
   */
  public static double simony(double exponent, double diameterRatio) {
    double mean =
        (2 * area(exponent, diameterRatio, 3, 1, 4)
                - area(exponent, diameterRatio, 1, 1, 2)
                + 2 * area(exponent, diameterRatio, 1, 3, 4))
            / 3;
    return percent(mean, exponent, diameterRatio);
  }

  /**
   * Three-eighths rule.
   *
   * @param exponent power of the distance from the tip
   * @param diameterRatio small end over large end
   * @return bias in per cent
   */
  public static double threeEighths(double exponent, double diameterRatio) {
    double mean =
        (1
                + 3 * area(exponent, diameterRatio, 2, 1, 3)
                + 3 * area(exponent, diameterRatio, 1, 2, 3)
                + diameterRatio * diameterRatio)
            / 8;
    return percent(mean, exponent, diameterRatio);
  }

  /**
   * Centroid rule.
   *
   * @param exponent power of the distance from the tip
   * @param diameterRatio small end over large end
   * @return bias in per cent
   */
  public static double centroid(double exponent, double diameterRatio) {
    double small = diameterRatio * diameterRatio;
    double share = CentroidSection.share(small);
    double centroid = area(exponent, diameterRatio, share, 1 - share, 1);
    return percent(CentroidSection.mean(1, centroid, small), exponent, diameterRatio);
  }

  /**
   * Cylinder of the small end.
   *
   * @param exponent power of the distance from the tip
   * @param diameterRatio small end over large end
   * @return bias in per cent
   */
  public static double smallEndCylinder(double exponent, double diameterRatio) {
    return percent(diameterRatio * diameterRatio, exponent, diameterRatio);
  }

  /** Area where the distances of the large and the small end from the tip have these weights. */
  private static double area(
      double exponent, double diameterRatio, double large, double small, double sum) {
    double distance = RevolutionSolid.distanceRatio(exponent, diameterRatio);
    return StrictMath.pow((large + small * distance) / sum, exponent);
  }

  private static double percent(double mean, double exponent, double diameterRatio) {
    return 100 * (mean / RevolutionSolid.share(exponent, diameterRatio) - 1);
  }
}
