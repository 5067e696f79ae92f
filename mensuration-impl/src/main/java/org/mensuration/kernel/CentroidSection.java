package org.mensuration.kernel;

/**
 * Section from the ends and the area where half the volume of a paraboloid frustum lies on either
 * side. Diameters in cm, length in m, volume in m³. Unchecked: NaN in, NaN out. Stateless and
 * thread-safe.
 */
public final class CentroidSection {
  /** Divides π d² with d in cm to give an area in m². */
  private static final double AREA_DIVISOR = 40000.0;

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
    return (1 + areaRatio) / (root(areaRatio) + 2 * areaRatio);
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
    double mean = mean(largeCm * largeCm, centroidCm * centroidCm, smallCm * smallCm);
    return Math.PI * mean * lengthM / AREA_DIVISOR;
  }

  /**
   * Mean of the quadratic through the areas of the ends and of the place between them. With the
   * share s of the place the weights are (2 - 3s)/(6(1 - s)), 1/(6s(1 - s)) and (3s - 1)/(6s). The
   * first passes through zero where the small area is a seventh of the large one, and is written by
   * its factors so that it keeps its digits there. For equal ends they are Newton's.
   */
  static double mean(double large, double centroid, double small) {
    double ratio = small / large;
    double root = root(ratio);
    double whole = root + 2 * ratio;
    double rest = root + (ratio - 1);
    double first = (7 * ratio - 1) * (1 + ratio) / ((2 * root + (3 - ratio)) * (6 * rest));
    double second = whole * whole / (6 * ((1 + ratio) * rest));
    double third = (3 + ratio - root) / (6 * (1 + ratio));
    return first * large + second * centroid + third * small;
  }

  private static double root(double areaRatio) {
    return Math.sqrt(2 * (1 + areaRatio * areaRatio));
  }
}
