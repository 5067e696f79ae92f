package org.mensuration.kernel;

/**
 * Solid volume of a log: diameters in cm, length in m, volume in m³. Unchecked: NaN in, NaN out.
 * Stateless and thread-safe.
 */
public final class LogVolume {
  /** Divides π d² with d in cm to give an area in m². */
  private static final double AREA_DIVISOR = 40000.0;

  private LogVolume() {}

  /**
   * Huber: area of the middle times length.
   *
   * @param middleCm diameter of the middle in cm
   * @param lengthM length in m
   * @return volume in m³
   */
  public static double huber(double middleCm, double lengthM) {
    return Math.PI * (middleCm * middleCm) * lengthM / AREA_DIVISOR;
  }

  /**
   * Smalian: mean of the two end areas times length.
   *
   * @param largeCm diameter of the large end in cm
   * @param smallCm diameter of the small end in cm
   * @param lengthM length in m
   * @return volume in m³
   */
  public static double smalian(double largeCm, double smallCm, double lengthM) {
    return Math.PI * (largeCm * largeCm + smallCm * smallCm) * lengthM / (2 * AREA_DIVISOR);
  }

  /**
   * Newton: ends once and the middle four times, a sixth of it, times length.
   *
   * @param largeCm diameter of the large end in cm
   * @param middleCm diameter of the middle in cm
   * @param smallCm diameter of the small end in cm
   * @param lengthM length in m
   * @return volume in m³
   */
  public static double newton(double largeCm, double middleCm, double smallCm, double lengthM) {
    return Math.PI
        * (largeCm * largeCm + 4 * (middleCm * middleCm) + smallCm * smallCm)
        * lengthM
        / (6 * AREA_DIVISOR);
  }

  /**
   * Frustum of a cone.
   *
   * @param largeCm diameter of the large end in cm
   * @param smallCm diameter of the small end in cm
   * @param lengthM length in m
   * @return volume in m³
   */
  public static double coneFrustum(double largeCm, double smallCm, double lengthM) {
    return Math.PI
        * (largeCm * largeCm + largeCm * smallCm + smallCm * smallCm)
        * lengthM
        / (3 * AREA_DIVISOR);
  }
}
