package org.mensuration.kernel;

/**
 * Volume of a whole stem from few measurements: diameters in cm, heights and lengths in m, volumes
 * in m³ unless a name says otherwise. Unchecked: NaN in, NaN out. Stateless and thread-safe.
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

  /**
   * Form factor times cylinder.
   *
   * @param formFactor form factor on the diameter
   * @param diameterCm diameter
   * @param heightM height
   * @return volume in m³
   */
  public static double fromFormFactor(double formFactor, double diameterCm, double heightM) {
    return Math.PI * (diameterCm * diameterCm) * formFactor * heightM / AREA_DIVISOR;
  }

  /**
   * A solid whose area grows with a power of the distance from the tip.
   *
   * @param baseCm diameter of the base
   * @param heightM height
   * @param exponent the power: 0 cylinder, 1 paraboloid, 2 cone, 3 neiloid
   * @return volume in m³
   */
  public static double power(double baseCm, double heightM, double exponent) {
    return Math.PI * (baseCm * baseCm) * heightM / (AREA_DIVISOR * (exponent + 1));
  }

  /**
   * Pressler.
   *
   * @param lowerCm lower diameter
   * @param lengthM length from there to half that diameter
   * @return volume in m³
   */
  public static double pressler(double lowerCm, double lengthM) {
    return Math.PI * (lowerCm * lowerCm) * lengthM / (1.5 * AREA_DIVISOR);
  }

  /**
   * Pressler from breast height, the length counted from there.
   *
   * @param diameterCm diameter at breast height
   * @param lengthM length from breast height to half that diameter
   * @param breastHeightM breast height
   * @return volume in m³
   */
  public static double presslerBreastHeight(
      double diameterCm, double lengthM, double breastHeightM) {
    return pressler(diameterCm, lengthM + 1.5 * breastHeightM);
  }

  /**
   * Pressler from a measuring point, the length counted from the felling cut.
   *
   * @param diameterCm diameter at the measuring point
   * @param guideHeightM height of half that diameter above the cut
   * @param pointHeightM height of the measuring point above the cut
   * @return volume in m³
   */
  public static double presslerFromCut(
      double diameterCm, double guideHeightM, double pointHeightM) {
    return pressler(diameterCm, guideHeightM + pointHeightM / 2);
  }

  /**
   * The same with what swells at the butt.
   *
   * @param diameterCm diameter at the measuring point
   * @param guideHeightM height of half that diameter above the cut
   * @param pointHeightM height of the measuring point above the cut
   * @param tenths how often a tenth of the diameter goes into the surplus half way up to the point
   * @return volume in m³
   */
  public static double presslerSwollen(
      double diameterCm, double guideHeightM, double pointHeightM, double tenths) {
    return pressler(diameterCm, guideHeightM + pointHeightM * (0.5 + tenths / 3));
  }

  /**
   * Volume of a tree from that of its tip and the form factors with and without the tip.
   *
   * @param tipM3 volume of the tip in m³
   * @param wholeFactor form factor of the whole stem
   * @param stemFactor form factor of the stem without the tip
   * @return volume in m³
   */
  public static double fromTip(double tipM3, double wholeFactor, double stemFactor) {
    return tipM3 * (wholeFactor / (wholeFactor - stemFactor));
  }

  /**
   * Hossfeld for a stem that runs out in a tip.
   *
   * @param thirdCm diameter a third of the length from the base
   * @param heightM length
   * @return volume in m³
   */
  public static double hossfeld(double thirdCm, double heightM) {
    return 3 * (Math.PI * (thirdCm * thirdCm) * heightM) / (4 * AREA_DIVISOR);
  }

  /**
   * Hohenadl: five sections.
   *
   * @param x diameters at 0.1, 0.3, 0.5, 0.7 and 0.9 of the height from the ground, and the height
   * @return volume in m³
   */
  public static double hohenadl(double[][] x) {
    double squares = 0;
    for (int i = 0; i < 5; i++) {
      squares += x[i][0] * x[i][0];
    }
    return Math.PI * squares * x[5][0] / (5 * AREA_DIVISOR);
  }

  /**
   * The solid of a power through two diameters, above the lower one.
   *
   * @param x lower diameter and height, upper diameter and height, height of the tip
   * @return volume in m³ above the lower diameter
   */
  public static double twoPointPower(double[][] x) {
    double lower = x[0][0];
    double upper = x[2][0];
    double fromTip = x[4][0] - x[1][0];
    double upperFromTip = x[4][0] - x[3][0];
    double ratio = lower / upper;
    // ln(1 + difference/value) keeps the digits of diameters and heights that are close.
    double log =
        ratio < 2
            ? StrictMath.log1p((lower - upper) / upper)
            : ratio < Double.POSITIVE_INFINITY
                ? StrictMath.log(ratio)
                : StrictMath.log(lower) - StrictMath.log(upper);
    double exponent = 2 * log / StrictMath.log1p((x[3][0] - x[1][0]) / upperFromTip);
    return power(lower, fromTip, exponent);
  }

  /**
   * Height accumulation by frusta of cones.
   *
   * @param lengthSum sum of the unit lengths
   * @param secondSum twice accumulated sum
   * @param taperStepIn step of diameter in inches
   * @param unitHeightFt unit of height in feet
   * @return volume in ft³
   */
  public static double heightAccumulation(
      double lengthSum, double secondSum, double taperStepIn, double unitHeightFt) {
    double units = 6 * secondSum + lengthSum;
    return Math.PI * (taperStepIn * taperStepIn) * unitHeightFt * units / 1728;
  }

  /**
   * Height accumulation by Smalian's sections.
   *
   * @param lengthSum sum of the unit lengths
   * @param secondSum twice accumulated sum
   * @param taperStepIn step of diameter in inches
   * @param unitHeightFt unit of height in feet
   * @return volume in ft³
   */
  public static double heightAccumulationSmalian(
      double lengthSum, double secondSum, double taperStepIn, double unitHeightFt) {
    double units = 4 * secondSum + lengthSum;
    return Math.PI * (taperStepIn * taperStepIn) * unitHeightFt * units / 1152;
  }

  /**
   * Surface by height accumulation.
   *
   * @param lengthSum sum of the unit lengths
   * @param firstSum once accumulated sum
   * @param taperStepIn step of diameter in inches
   * @param unitHeightFt unit of height in feet
   * @return surface in ft²
   */
  public static double heightAccumulationSurface(
      double lengthSum, double firstSum, double taperStepIn, double unitHeightFt) {
    return Math.PI * taperStepIn * unitHeightFt * (2 * firstSum + lengthSum) / 24;
  }

  /**
   * Quick rule.
   *
   * @param diameterCm diameter at breast height
   * @return volume in m³
   */
  public static double quick(double diameterCm) {
    return diameterCm * diameterCm / 1000;
  }

  /**
   * Quick rule with a correction by height.
   *
   * @param diameterCm diameter at breast height
   * @param heightM height
   * @param normalHeightM height for which the quick rule holds
   * @param correctionPercent correction in per cent a metre
   * @return volume in m³
   */
  public static double quickWithHeight(
      double diameterCm, double heightM, double normalHeightM, double correctionPercent) {
    return diameterCm * diameterCm * (100 + correctionPercent * (heightM - normalHeightM)) / 100000;
  }

  /**
   * The term of a restricted cubic spline of three knots.
   *
   * @param x where
   * @param low lowest knot
   * @param middle middle knot
   * @param high highest knot
   * @return the term
   */
  public static double splineTerm(double x, double low, double middle, double high) {
    double below = middle - low;
    double above = high - middle;
    if (x > high) {
      // The cubes and squares cancel, and a straight line is left.
      return below * (high - low) * (3 * (x - high) + below + 2 * above);
    }
    if (x > middle) {
      double v = x - middle;
      return below * (v * v * (3 - v / above) + 3 * v * below + below * below);
    }
    double u = Math.max(x - low, 0);
    return u * u * u;
  }

  /**
   * A volume equation with one spline term.
   *
   * @param x variable, coefficients b0, b1, b2, knots from the lowest up
   * @return volume in m³
   */
  public static double splineVolume(double[][] x) {
    double term = splineTerm(x[0][0], x[4][0], x[5][0], x[6][0]);
    return x[1][0] + x[2][0] * x[0][0] + x[3][0] * term;
  }

  /**
   * A straight line between two entries of a volume table.
   *
   * @param x lower height and volume, upper height and volume, height wanted
   * @return volume in the unit of the table
   */
  public static double betweenEntries(double[][] x) {
    double part = (x[4][0] - x[0][0]) / (x[2][0] - x[0][0]);
    return x[1][0] * (1 - part) + x[3][0] * part;
  }
}
