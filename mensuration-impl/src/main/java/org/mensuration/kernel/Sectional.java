package org.mensuration.kernel;

/**
 * Sums over the sections of a stem: diameters in cm, lengths in m, volumes in m³. All arrays are of
 * one length. Unchecked: NaN in, NaN out. Stateless and thread-safe.
 */
public final class Sectional {
  private Sectional() {}

  /**
   * Sections by Huber.
   *
   * @param middleCm diameters of the middles in cm
   * @param lengthM lengths in m
   * @return volume in m³
   */
  public static double huber(double[] middleCm, double[] lengthM) {
    double[] sections = new double[lengthM.length];
    for (int i = 0; i < sections.length; i++) {
      sections[i] = LogVolume.huber(middleCm[i], lengthM[i]);
    }
    return Compensated.sum(sections);
  }

  /**
   * Sections by Smalian.
   *
   * @param largeCm diameters of the large ends in cm
   * @param smallCm diameters of the small ends in cm
   * @param lengthM lengths in m
   * @return volume in m³
   */
  public static double smalian(double[] largeCm, double[] smallCm, double[] lengthM) {
    double[] sections = new double[lengthM.length];
    for (int i = 0; i < sections.length; i++) {
      sections[i] = LogVolume.smalian(largeCm[i], smallCm[i], lengthM[i]);
    }
    return Compensated.sum(sections);
  }

  /**
   * Sections by Newton.
   *
   * @param largeCm diameters of the large ends in cm
   * @param middleCm diameters of the middles in cm
   * @param smallCm diameters of the small ends in cm
   * @param lengthM lengths in m
   * @return volume in m³
   */
  public static double newton(
      double[] largeCm, double[] middleCm, double[] smallCm, double[] lengthM) {
    double[] sections = new double[lengthM.length];
    for (int i = 0; i < sections.length; i++) {
      sections[i] = LogVolume.newton(largeCm[i], middleCm[i], smallCm[i], lengthM[i]);
    }
    return Compensated.sum(sections);
  }

  /**
   * Sections by the areas of their middles.
   *
   * @param middleM2 areas of the middles in m²
   * @param lengthM lengths in m
   * @return volume in m³
   */
  public static double areas(double[] middleM2, double[] lengthM) {
    return Compensated.products(middleM2, lengthM);
  }
}
