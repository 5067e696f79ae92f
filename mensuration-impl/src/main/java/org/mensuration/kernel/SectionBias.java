package org.mensuration.kernel;

/**
 * What solid rules give too much of a whole solid of revolution that is cut into sections of equal
 * length, in per cent. The sectional area is in proportion to a power of the distance from the tip;
 * distances are counted in sections. Unchecked: NaN in, NaN out. Stateless and thread-safe.
 */
public final class SectionBias {
  private SectionBias() {}

  /**
   * Error of the summed volume by Huber.
   *
   * @param exponent power of the distance from the tip
   * @param sections number of sections
   * @return bias in per cent
   */
  public static double totalHuber(double exponent, double sections) {
    double sum = 0;
    for (int i = 1; i <= sections; i++) {
      sum += StrictMath.pow((2 * i - 1) / (2 * sections), exponent);
    }
    return total(sum, exponent, sections);
  }

  /**
   * Error of the summed volume by Smalian.
   *
   * @param exponent power of the distance from the tip
   * @param sections number of sections
   * @return bias in per cent
   */
  public static double totalSmalian(double exponent, double sections) {
    double sum = 0.5;
    for (int i = 1; i < sections; i++) {
      sum += StrictMath.pow(i / sections, exponent);
    }
    return total(sum, exponent, sections);
  }

  /**
   * Error of the summed volume by the mean of the end diameters.
   *
   * @param exponent power of the distance from the tip
   * @param sections number of sections
   * @return bias in per cent
   */
  public static double totalMeanDiameter(double exponent, double sections) {
    double sum = 0;
    double small = 0;
    for (int i = 1; i <= sections; i++) {
      double large = StrictMath.pow(i / sections, exponent / 2);
      double mean = (small + large) / 2;
      sum += mean * mean;
      small = large;
    }
    return total(sum, exponent, sections);
  }

  private static double total(double sum, double exponent, double sections) {
    return 100 * (sum * (exponent + 1) / sections - 1);
  }

  /**
   * Mean over the sections of the absolute error of each, by Huber.
   *
   * @param exponent power of the distance from the tip
   * @param sections number of sections
   * @return error in per cent
   */
  public static double meanHuber(double exponent, double sections) {
    double sum = 0;
    for (int i = 1; i <= sections; i++) {
      double middle = StrictMath.pow((2 * i - 1) / (2.0 * i), exponent);
      sum += Math.abs(middle / section(exponent, i) - 1);
    }
    return 100 * sum / sections;
  }

  /**
   * Mean over the sections of the absolute error of each, by Smalian.
   *
   * @param exponent power of the distance from the tip
   * @param sections number of sections
   * @return error in per cent
   */
  public static double meanSmalian(double exponent, double sections) {
    double sum = 0;
    for (int i = 1; i <= sections; i++) {
      double small = StrictMath.pow((i - 1) / (double) i, exponent);
      sum += Math.abs((1 + small) / 2 / section(exponent, i) - 1);
    }
    return 100 * sum / sections;
  }

  /** True mean area of a section over that of its large end; log1p(-1) makes the tip 1/(k+1). */
  private static double section(double exponent, int i) {
    double power = exponent + 1;
    return -i * StrictMath.expm1(power * StrictMath.log1p(-1.0 / i)) / power;
  }
}
