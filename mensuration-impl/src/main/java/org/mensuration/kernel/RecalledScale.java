package org.mensuration.kernel;

/**
 * Rules of countries recalled without their standards, with the constants as recalled. Unchecked:
 * NaN in, NaN out. Stateless and thread-safe.
 */
public final class RecalledScale {
  private static final double SQUARE_CENTIMETRES = 10000;

  private RecalledScale() {}

  /**
   * Cubic scale of the national forests of the United States.
   *
   * @param largeIn diameter class of the large end in inches
   * @param smallIn diameter class of the small end in inches
   * @param lengthFt length in feet
   * @return cubic feet
   */
  public static double nationalCubic(double largeIn, double smallIn, double lengthFt) {
    return 0.002727 * (smallIn * smallIn + largeIn * largeIn) * lengthFt;
  }

  /**
   * Three-dimensional rule of New Zealand: the cylinder of the small end and what tapers around it.
   *
   * @param largeCm diameter of the large end in cm, above that of the small end
   * @param smallCm diameter of the small end in cm
   * @param lengthM length in m
   * @return m³
   */
  public static double threeDimensional(double largeCm, double smallCm, double lengthM) {
    // The printed logarithms as powers: their sum would lose digits before it is raised again.
    double taperWood =
        StrictMath.pow(lengthM, 1.944157)
            * StrictMath.exp(0.029931 * smallCm - 0.038675)
            * StrictMath.pow((largeCm - smallCm) / lengthM, 0.884711);
    return taperWood / 1000 + 0.00007854 * (smallCm * smallCm) * lengthM;
  }

  /**
   * Top diameter and a taper of 1 in 120.
   *
   * @param topCm diameter of the top in cm
   * @param lengthM length in m
   * @return m³
   */
  public static double britishTop(double topCm, double lengthM) {
    double middleCm = topCm + 100 * lengthM / 240;
    return Math.PI / 4 * (middleCm * middleCm) * lengthM / SQUARE_CENTIMETRES;
  }
}
