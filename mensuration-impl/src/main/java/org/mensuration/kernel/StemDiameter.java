package org.mensuration.kernel;

/**
 * Stem diameters from girth, calipers, forks and sticks. Unchecked: NaN in, NaN out. Stateless and
 * thread-safe.
 */
public final class StemDiameter {
  private StemDiameter() {}

  /**
   * Diameter from girth.
   *
   * @param girthCm girth in cm
   * @return diameter in cm
   */
  public static double fromGirth(double girthCm) {
    return girthCm / Math.PI;
  }

  /**
   * Sectional area from girth.
   *
   * @param girthCm girth in cm
   * @return area in m²
   */
  public static double areaFromGirth(double girthCm) {
    return girthCm / 100 * (girthCm / 100) / (4 * Math.PI);
  }

  /**
   * Arithmetic mean of two diameters.
   *
   * @param firstCm one diameter in cm
   * @param secondCm the other in cm
   * @return mean in cm
   */
  public static double arithmeticMean(double firstCm, double secondCm) {
    return 0.5 * firstCm + 0.5 * secondCm;
  }

  /**
   * Quadratic mean of two diameters.
   *
   * @param firstCm one diameter in cm
   * @param secondCm the other in cm
   * @return mean in cm
   */
  public static double quadraticMean(double firstCm, double secondCm) {
    return StrictMath.hypot(firstCm, secondCm) / Math.sqrt(2);
  }

  /**
   * Quadratic mean of diameters.
   *
   * @param diametersCm diameters in cm, at least one
   * @return mean in cm
   */
  public static double quadraticMean(double[] diametersCm) {
    double root = 0;
    for (double diameter : diametersCm) {
      root = StrictMath.hypot(root, diameter);
    }
    return root / Math.sqrt(diametersCm.length);
  }

  /**
   * Geometric mean of two diameters. Two roots, so that no product under- or overflows.
   *
   * @param firstCm one diameter in cm
   * @param secondCm the other in cm
   * @return mean in cm
   */
  public static double geometricMean(double firstCm, double secondCm) {
    return Math.sqrt(firstCm) * Math.sqrt(secondCm);
  }

  /**
   * Diameter from a V-fork, along its jaw.
   *
   * @param contactCm distance from the vertex to where a jaw touches in cm
   * @param halfOpeningDeg half the opening in degrees
   * @return diameter in cm
   */
  public static double forkContact(double contactCm, double halfOpeningDeg) {
    return 2 * contactCm * (Slope.sin(halfOpeningDeg) / Slope.cos(halfOpeningDeg));
  }

  /**
   * Diameter from a V-fork, along its middle.
   *
   * @param axisCm distance from the vertex to the axis in cm
   * @param halfOpeningDeg half the opening in degrees
   * @return diameter in cm
   */
  public static double forkAxis(double axisCm, double halfOpeningDeg) {
    return 2 * axisCm * Slope.sin(halfOpeningDeg);
  }

  /**
   * Diameter from a sector fork. One minus the tangent is written as a sine, which keeps its digits
   * near a right angle.
   *
   * @param pivotOffsetCm distance from the sight's pivot to the crossbar in cm
   * @param angleDeg angle of the tangent sight from the arm in degrees
   * @return diameter in cm
   */
  public static double sectorFork(double pivotOffsetCm, double angleDeg) {
    double half = Slope.sin(0.5 * angleDeg);
    double gap = Slope.sin(0.5 * (90 - angleDeg));
    return pivotOffsetCm * (Math.sqrt(2) * (half / gap));
  }

  /**
   * Diameter from a graduated straight stick, solved from the equation of its marks.
   *
   * @param markCm length read on the stick in cm
   * @param reachCm distance from the eye to the stick in cm
   * @return diameter in cm
   */
  public static double stickReading(double markCm, double reachCm) {
    double share = 0.5 * (markCm / reachCm);
    return markCm * (share + StrictMath.hypot(share, 1));
  }

  /**
   * Place of a mark on a graduated straight stick.
   *
   * @param diameterCm diameter in cm
   * @param reachCm distance from the eye to the stick in cm
   * @return length from the start of the stick in cm
   */
  public static double stickMark(double diameterCm, double reachCm) {
    return diameterCm * (Math.sqrt(reachCm) / Math.sqrt(reachCm + diameterCm));
  }

  /**
   * Diameter between two nearly parallel sights.
   *
   * @param separationCm distance between the sights at the instrument in cm
   * @param axisDistanceM distance to the axis in m
   * @param divergenceDeg angle by which the sights part, positive if they part, in degrees
   * @return diameter in cm
   */
  public static double parallelSights(
      double separationCm, double axisDistanceM, double divergenceDeg) {
    double sine = Slope.sin(divergenceDeg);
    return separationCm + 100 * axisDistanceM * (sine / Slope.cos(divergenceDeg));
  }

  /**
   * Area of an ellipse from its axes.
   *
   * @param longCm long axis in cm
   * @param shortCm short axis in cm
   * @return area in m²
   */
  public static double ellipseArea(double longCm, double shortCm) {
    return Math.PI * longCm * shortCm / 40_000;
  }

  /**
   * Relative error of the area from the arithmetic mean of an ellipse's axes.
   *
   * @param axisRatio short over long axis
   * @return share of the area
   */
  public static double arithmeticMeanExcess(double axisRatio) {
    double gap = 1 - axisRatio;
    return gap * gap / (4 * axisRatio);
  }

  /**
   * Relative error of the area from the quadratic mean of an ellipse's axes.
   *
   * @param axisRatio short over long axis
   * @return share of the area
   */
  public static double quadraticMeanExcess(double axisRatio) {
    double gap = 1 - axisRatio;
    return gap * gap / (2 * axisRatio);
  }

  /**
   * Relative error of the area from one diameter of an ellipse. The unit is taken out before the
   * subtraction, so a circle has an error of exactly zero.
   *
   * @param axisRatio short over long axis
   * @param directionDeg angle between the caliper's reading and the long axis in degrees
   * @return share of the area
   */
  public static double oneDiameterExcess(double axisRatio, double directionDeg) {
    double along = Slope.cos(directionDeg);
    double across = Slope.sin(directionDeg);
    return (1 - axisRatio) * ((along * along - axisRatio * (across * across)) / axisRatio);
  }

  /**
   * Caliper reading of an ellipse in a direction.
   *
   * @param longCm long axis in cm
   * @param shortCm short axis in cm
   * @param directionDeg angle between the reading and the long axis in degrees
   * @return distance between the jaws in cm
   */
  public static double ellipseCaliper(double longCm, double shortCm, double directionDeg) {
    return StrictMath.hypot(longCm * Slope.cos(directionDeg), shortCm * Slope.sin(directionDeg));
  }

  /**
   * Standard deviation of one caliper reading, or one view, of an ellipse in a direction left to
   * chance.
   *
   * @param axisRatio short over long axis
   * @return share of the diameter
   */
  public static double oneViewDeviation(double axisRatio) {
    return (1 - axisRatio) / (2 * Math.sqrt(2));
  }
}
