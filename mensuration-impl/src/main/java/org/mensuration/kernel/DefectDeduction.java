package org.mensuration.kernel;

/**
 * What defects take off a scaled log: board feet, or a share of the log's scale. Diameters and
 * defects in inches, lengths in feet. Ratios of like sizes are taken first, so that the thinnest
 * and shortest do not underflow. Unchecked: NaN in, NaN out. Stateless and thread-safe.
 */
public final class DefectDeduction {
  private DefectDeduction() {}

  /**
   * Squared defect: the box around the defect, an inch wider and higher, less a fifth for kerf.
   *
   * @param widthIn width of the defect in inches
   * @param heightIn height of the defect in inches
   * @param lengthFt length of the defect in feet
   * @return board feet lost
   */
  public static double squaredDefect(double widthIn, double heightIn, double lengthFt) {
    return (widthIn + 1) * (heightIn + 1) * lengthFt / 15;
  }

  /**
   * Sector: the part of the circle that is lost, over the length of the defect.
   *
   * @param defectFt length of the defect in feet
   * @param logFt length of the log in feet
   * @param angleDeg angle of the sector in degrees
   * @return share of the scale lost
   */
  public static double sector(double defectFt, double logFt, double angleDeg) {
    return defectFt / logFt * (angleDeg / 360);
  }

  /**
   * Length cut: everything over the length of the defect.
   *
   * @param defectFt length of the defect in feet
   * @param logFt length of the log in feet
   * @return share of the scale lost
   */
  public static double lengthCut(double defectFt, double logFt) {
    return defectFt / logFt;
  }

  /**
   * Interior defect of a width and a height, an inch added to each, beside the diameter less an
   * inch.
   *
   * @param widthIn width of the defect in inches
   * @param heightIn height of the defect in inches
   * @param logIn small-end diameter of the log in inches
   * @param defectFt length of the defect in feet
   * @param logFt length of the log in feet
   * @return share of the scale lost
   */
  public static double interior(
      double widthIn, double heightIn, double logIn, double defectFt, double logFt) {
    double area = (widthIn + 1) * (heightIn + 1) / ((logIn - 1) * (logIn - 1));
    return area * (defectFt / logFt);
  }

  /**
   * Interior rot that is as wide as it is high.
   *
   * @param defectIn diameter of the rot in inches
   * @param logIn small-end diameter of the log in inches
   * @param defectFt length of the rot in feet
   * @param logFt length of the log in feet
   * @return share of the scale lost
   */
  public static double interiorRot(double defectIn, double logIn, double defectFt, double logFt) {
    return interior(defectIn, defectIn, logIn, defectFt, logFt);
  }

  /**
   * Sweep of a log of sixteen feet: what exceeds two inches, beside the diameter.
   *
   * @param sweepIn departure from a straight line in inches
   * @param logIn small-end diameter of the log in inches
   * @return share of the scale lost
   */
  public static double sweep(double sweepIn, double logIn) {
    return sweepIn > 2 ? (sweepIn - 2) / logIn : 0;
  }

  /**
   * Crook: its deflection beside the diameter, over its part of the length.
   *
   * @param deflectionIn deflection of the crook in inches
   * @param logIn small-end diameter of the log in inches
   * @param crookFt length of the crook in feet
   * @param logFt length of the log in feet
   * @return share of the scale lost
   */
  public static double crook(double deflectionIn, double logIn, double crookFt, double logFt) {
    return deflectionIn / logIn * (crookFt / logFt);
  }
}
