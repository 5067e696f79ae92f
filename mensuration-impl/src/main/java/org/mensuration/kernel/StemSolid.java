package org.mensuration.kernel;

/**
 * Solids of a whole stem: diameters in cm, heights and lengths in m, volumes in m³. Unchecked: NaN
 * in, NaN out. Stateless and thread-safe.
 */
public final class StemSolid {
  /** Divides π d² with d in cm to give an area in m². */
  private static final double AREA_DIVISOR = 40000.0;

  private StemSolid() {}

  /**
   * The area of a circle from its squared diameter; of an integral of squared diameters over metres
   * the volume in m³.
   *
   * @param squareCm2 squared diameter in cm²
   * @return area in m²
   */
  public static double area(double squareCm2) {
    return Math.PI * squareCm2 / AREA_DIVISOR;
  }
}
