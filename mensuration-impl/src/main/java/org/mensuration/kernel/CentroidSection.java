package org.mensuration.kernel;

/**
 * Section from the ends and the area where half the volume of a paraboloid frustum lies on either
 * side. Diameters in cm, length in m, volume in m³. Unchecked: NaN in, NaN out. Stateless and
 * thread-safe.
 */
public final class CentroidSection {
  /** Divides π d² with d in cm to give an area in m². */
  private static final double AREA_DIVISOR = 40000.0;

  private static final double ROOT_2 = Math.sqrt(2);

  private CentroidSection() {}

  /**
   * Distance of the place from the small end. The printed form is nought over nought for equal ends
   * and divides by the small end; multiplied by its conjugate it does neither.
   *
   * @param largeCm diameter of the large end in cm
   * @param smallCm diameter of the small end in cm
   * @param lengthM length in m
   * @return distance in m
   */
  public static double position(double largeCm, double smallCm, double lengthM) {
    double ratio = smallCm / largeCm;
    return lengthM * share(ratio * ratio);
  }

  /**
   * Distance of the place from the small end as a share of the length.
   *
   * @param areaRatio area of the small end over that of the large end
   * @return the share, from a half to the root of a half
   */
  static double share(double areaRatio) {
    return (1 + areaRatio) / (ROOT_2 * (Math.sqrt(1 + areaRatio * areaRatio) + ROOT_2 * areaRatio));
  }

  /**
   * Integral of the area that is quadratic along the log and meets the three areas.
   *
   * @param largeCm diameter of the large end in cm
   * @param centroidCm diameter at the place in cm
   * @param smallCm diameter of the small end in cm
   * @param lengthM length in m
   * @return volume in m³
   */
  public static double volume(double largeCm, double centroidCm, double smallCm, double lengthM) {
    double ratio = smallCm / largeCm;
    double mean =
        mean(largeCm * largeCm, centroidCm * centroidCm, smallCm * smallCm, share(ratio * ratio));
    return Math.PI * mean * lengthM / AREA_DIVISOR;
  }

  /**
   * Mean of the quadratic through three areas, the middle one at a share from the small end. The
   * weights sum to one; at a half they are Newton's.
   */
  static double mean(double large, double centroid, double small, double share) {
    double rest = 1 - share;
    return (2 - 3 * share) / (6 * rest) * large
        + centroid / (6 * (share * rest))
        + (3 * share - 1) / (6 * share) * small;
  }
}
