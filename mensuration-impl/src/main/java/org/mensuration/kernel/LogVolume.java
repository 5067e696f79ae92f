package org.mensuration.kernel;

/**
 * Solid volume of a log: diameters in cm, length in m, volume in m³. Unchecked: NaN in, NaN out.
 * Stateless and thread-safe. The weights of the rules that weigh areas stand in {@link
 * WeightedAreas}.
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
    return WeightedAreas.HUBER.volume(middleCm, 0, 0, 0, lengthM);
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
    return WeightedAreas.SMALIAN.volume(largeCm, smallCm, 0, 0, lengthM);
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
    return WeightedAreas.NEWTON.volume(largeCm, middleCm, smallCm, 0, lengthM);
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

  /**
   * Cylinder of the mean of the end diameters.
   *
   * @param largeCm diameter of the large end in cm
   * @param smallCm diameter of the small end in cm
   * @param lengthM length in m
   * @return volume in m³
   */
  public static double meanDiameter(double largeCm, double smallCm, double lengthM) {
    return huber((largeCm + smallCm) / 2, lengthM);
  }

  /**
   * Frustum of a neiloid. The powers of the areas by thirds are powers of the cube roots of the
   * diameters.
   *
   * @param largeCm diameter of the large end in cm
   * @param smallCm diameter of the small end in cm
   * @param lengthM length in m
   * @return volume in m³
   */
  public static double neiloidFrustum(double largeCm, double smallCm, double lengthM) {
    double large = StrictMath.cbrt(largeCm);
    double small = StrictMath.cbrt(smallCm);
    double largeSquared = large * large;
    double smallSquared = small * small;
    double squares =
        largeCm * largeCm
            + largeSquared * smallSquared * (largeSquared + smallSquared)
            + smallCm * smallCm;
    return Math.PI * squares * lengthM / (4 * AREA_DIVISOR);
  }

  /**
   * Butt-log rule: a quarter of the large area and three quarters of the small, times length.
   *
   * @param largeCm diameter of the large end in cm
   * @param smallCm diameter of the small end in cm
   * @param lengthM length in m
   * @return volume in m³
   */
  public static double bruceButt(double largeCm, double smallCm, double lengthM) {
    return WeightedAreas.BRUCE_BUTT.volume(largeCm, smallCm, 0, 0, lengthM);
  }

  /**
   * Hossfeld: three times the area a third from the large end and once the top, a quarter of it.
   *
   * @param thirdCm diameter a third of the length from the large end in cm
   * @param topCm diameter of the top in cm
   * @param lengthM length in m
   * @return volume in m³
   */
  public static double hossfeld(double thirdCm, double topCm, double lengthM) {
    return WeightedAreas.HOSSFELD.volume(thirdCm, topCm, 0, 0, lengthM);
  }

  /**
   * Simony: twice the outer quarter areas less the middle, a third of it, times length.
   *
   * @param quarterCm diameter at a quarter of the length in cm
   * @param middleCm diameter at the middle in cm
   * @param threeQuarterCm diameter at three quarters of the length in cm
   * @param lengthM length in m
   * @return volume in m³
   */
  public static double simony(
      double quarterCm, double middleCm, double threeQuarterCm, double lengthM) {
    return WeightedAreas.SIMONY.volume(quarterCm, middleCm, threeQuarterCm, 0, lengthM);
  }

  /**
   * Three-eighths rule: ends once and the thirds three times, an eighth of it, times length.
   *
   * @param largeCm diameter of the large end in cm
   * @param firstThirdCm diameter a third of the length from the large end in cm
   * @param secondThirdCm diameter two thirds of the length from the large end in cm
   * @param smallCm diameter of the small end in cm
   * @param lengthM length in m
   * @return volume in m³
   */
  public static double threeEighths(
      double largeCm, double firstThirdCm, double secondThirdCm, double smallCm, double lengthM) {
    return WeightedAreas.THREE_EIGHTHS.volume(
        largeCm, firstThirdCm, secondThirdCm, smallCm, lengthM);
  }

  /**
   * Cylinder of the small end.
   *
   * @param smallCm diameter of the small end in cm
   * @param lengthM length in m
   * @return volume in m³
   */
  public static double smallEndCylinder(double smallCm, double lengthM) {
    return huber(smallCm, lengthM);
  }

  /**
   * Sorenson: the middle diameter from the small end and a taper of one inch in ten feet.
   *
   * @param smallIn diameter of the small end in inches
   * @param lengthFt length in feet
   * @return volume in cubic feet
   */
  public static double sorenson(double smallIn, double lengthFt) {
    double middle = smallIn + 0.05 * lengthFt;
    return Math.PI * (middle * middle) * lengthFt / 576;
  }
}
