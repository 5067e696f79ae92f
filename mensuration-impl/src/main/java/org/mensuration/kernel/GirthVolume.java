package org.mensuration.kernel;

/**
 * Volume of logs by girth rules. Imperial rules take the girth in inches and the length in feet,
 * metric ones both in metres. Unchecked: NaN in, NaN out. Stateless and thread-safe.
 */
public final class GirthVolume {
  private static final double SQUARE_INCHES = 144.0;

  private GirthVolume() {}

  /**
   * Quarter girth: a quarter of the girth, squared, times length.
   *
   * @param girthIn girth of the middle in inches
   * @param lengthFt length in feet
   * @return Hoppus feet
   */
  public static double hoppus(double girthIn, double lengthFt) {
    double quarter = girthIn / 4;
    return quarter * quarter * lengthFt / SQUARE_INCHES;
  }

  /**
   * Quarter girth with the divisor 113, which brings it near the true volume.
   *
   * @param girthIn girth of the middle in inches
   * @param lengthFt length in feet
   * @return cubic feet
   */
  public static double quarterGirth113(double girthIn, double lengthFt) {
    double quarter = girthIn / 4;
    return quarter * quarter * lengthFt / 113;
  }

  /**
   * Fifth girth: twice the square of a fifth of the girth, times length.
   *
   * @param girthIn girth in inches
   * @param lengthFt length in feet
   * @return cubic feet
   */
  public static double fifthGirth(double girthIn, double lengthFt) {
    double fifth = girthIn / 5;
    return 2 * lengthFt * (fifth * fifth) / SQUARE_INCHES;
  }

  /**
   * Cylinder of a girth by the printed constant.
   *
   * @param girthIn girth in inches
   * @param lengthFt length in feet
   * @return cubic feet
   */
  public static double cylinderByConstant(double girthIn, double lengthFt) {
    return 0.000552622 * (girthIn * girthIn) * lengthFt;
  }

  /**
   * Cylinder of a girth by the printed divisor.
   *
   * @param girthIn girth in inches
   * @param lengthFt length in feet
   * @return cubic feet
   */
  public static double cylinderByDivisor(double girthIn, double lengthFt) {
    return girthIn * girthIn * lengthFt / 1809.5;
  }

  /**
   * Cylinder of a girth from the content of one foot, rounded to thousandths with halves down.
   *
   * @param girthIn girth in inches
   * @param lengthFt length in feet
   * @return cubic feet
   */
  public static double cylinderByTable(double girthIn, double lengthFt) {
    double thousandths = 1000 * (0.000552622 * (girthIn * girthIn));
    return Math.ceil(thousandths - 0.5) / 1000 * lengthFt;
  }

  /**
   * Quarter girth without deduction.
   *
   * @param girthM girth of the middle in m
   * @param lengthM length in m
   * @return the rule's cubic metres
   */
  public static double quarterMetric(double girthM, double lengthM) {
    double quarter = girthM / 4;
    return quarter * quarter * lengthM;
  }

  /**
   * Fifth deducted: a fifth of the girth, squared, times length.
   *
   * @param girthM girth of the middle in m
   * @param lengthM length in m
   * @return the rule's cubic metres
   */
  public static double fifthDeducted(double girthM, double lengthM) {
    double fifth = girthM / 5;
    return fifth * fifth * lengthM;
  }

  /**
   * Sixth deducted: five twenty-fourths of the girth, squared, times length.
   *
   * @param girthM girth of the middle in m
   * @param lengthM length in m
   * @return the rule's cubic metres
   */
  public static double sixthDeducted(double girthM, double lengthM) {
    double side = 5 * girthM / 24;
    return side * side * lengthM;
  }

  /**
   * Cylinder of a girth.
   *
   * @param girthM girth of the middle in m
   * @param lengthM length in m
   * @return cubic metres
   */
  public static double cylinder(double girthM, double lengthM) {
    return girthM * girthM * lengthM / (4 * Math.PI);
  }

  /**
   * Girth of a circle.
   *
   * @param diameterCm diameter in cm
   * @return girth in cm
   */
  public static double girth(double diameterCm) {
    return Math.PI * diameterCm;
  }

  /**
   * Side of the square that the quarter-girth rule puts for a circle.
   *
   * @param diameterCm diameter in cm
   * @return side in cm
   */
  public static double quarterSide(double diameterCm) {
    return Math.PI * diameterCm / 4;
  }

  /**
   * Cubic feet in a number of Hoppus feet.
   *
   * @param hoppusFeet Hoppus feet
   * @return cubic feet
   */
  public static double cubicFeet(double hoppusFeet) {
    return 4 * hoppusFeet / Math.PI;
  }

  /**
   * Hoppus feet in a number of cubic feet.
   *
   * @param cubicFeet cubic feet
   * @return Hoppus feet
   */
  public static double hoppusFeet(double cubicFeet) {
    return Math.PI * cubicFeet / 4;
  }

  /**
   * Two-thirds rule: two thirds of the diameter, squared, times length.
   *
   * @param diameterIn diameter in inches
   * @param lengthFt length in feet
   * @return cubic feet of squared timber
   */
  public static double twoThirds(double diameterIn, double lengthFt) {
    double side = 2 * diameterIn / 3;
    return side * side * lengthFt / SQUARE_INCHES;
  }

  /**
   * Inscribed square: the square on the diagonal, times length.
   *
   * @param diameterIn diameter in inches
   * @param lengthFt length in feet
   * @return cubic feet of squared timber
   */
  public static double inscribedSquare(double diameterIn, double lengthFt) {
    return diameterIn * diameterIn * lengthFt / (2 * SQUARE_INCHES);
  }
}
