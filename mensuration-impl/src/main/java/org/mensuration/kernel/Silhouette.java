package org.mensuration.kernel;

/**
 * What a viewer sees of a round stem: tangent lines, not the diameter. Everything is written with
 * the root of (2R - D)/(2R + D), which keeps its digits for an eye close to the bark. Unchecked:
 * NaN in, NaN out. Stateless and thread-safe.
 */
public final class Silhouette {
  private Silhouette() {}

  /**
   * Ratio between the tangent lines, level sight.
   *
   * @param diameterM diameter in m
   * @param axisDistanceM horizontal distance to the axis in m
   * @return width over distance on a flat scale
   */
  public static double ratio(double diameterM, double axisDistanceM) {
    return 2 * tangentTimes(1, diameterM, axisDistanceM);
  }

  /**
   * Ratio seen at an elevation on a scale square to the sight.
   *
   * @param diameterM diameter in m
   * @param axisDistanceM horizontal distance to the axis in m
   * @param elevationDeg elevation of the sight in degrees
   * @return width over distance on a flat scale
   */
  public static double ratioElevated(double diameterM, double axisDistanceM, double elevationDeg) {
    return Slope.cos(elevationDeg) * ratio(diameterM, axisDistanceM);
  }

  /**
   * Ratio seen of a stem that leans in the plane of sight, scale square to the sight.
   *
   * @param diameterM diameter in m
   * @param slopeDistanceM distance from the eye to the sighted point of the axis in m
   * @param elevationDeg elevation of the sight in degrees
   * @param leanDeg lean in degrees, positive away from the viewer
   * @return width over distance on a flat scale; NaN if the eye is not outside the stem
   */
  public static double ratioLeaning(
      double diameterM, double slopeDistanceM, double elevationDeg, double leanDeg) {
    double cosine = Slope.cos(elevationDeg + leanDeg);
    return cosine * ratio(diameterM / slopeDistanceM, cosine);
  }

  /**
   * Width that a tapering stem seems to have at its axis.
   *
   * @param diameterM diameter of the section in m
   * @param axisDistanceM horizontal distance to the axis in m
   * @param heightAboveEyeM height of the section above the eye in m
   * @param apexHeightM height of the cone's apex above the eye in m
   * @return width in m; NaN if the eye is not outside the cone
   */
  public static double taperingWidth(
      double diameterM, double axisDistanceM, double heightAboveEyeM, double apexHeightM) {
    double reduced = axisDistanceM * ((apexHeightM - heightAboveEyeM) / apexHeightM);
    return apparentWidth(diameterM, reduced);
  }

  /**
   * Full angle between the tangent lines, level sight.
   *
   * @param diameterM diameter in m
   * @param axisDistanceM horizontal distance to the axis in m
   * @return angle in degrees
   */
  public static double angle(double diameterM, double axisDistanceM) {
    return 2 * StrictMath.toDegrees(StrictMath.atan(tangentTimes(1, diameterM, axisDistanceM)));
  }

  /**
   * Angle between the sight lines to the two tangent points at a height.
   *
   * @param diameterM diameter in m
   * @param axisDistanceM horizontal distance to the axis in m
   * @param heightAboveEyeM height of the points above the eye in m
   * @return angle in degrees
   */
  public static double angleElevated(
      double diameterM, double axisDistanceM, double heightAboveEyeM) {
    double chord = 0.5 * tangentChord(diameterM, axisDistanceM);
    double away = chordDistance(diameterM, axisDistanceM);
    double half = StrictMath.atan2(chord, StrictMath.hypot(away, heightAboveEyeM));
    return 2 * StrictMath.toDegrees(half);
  }

  /**
   * Share of the girth that is seen.
   *
   * @param diameterM diameter in m
   * @param axisDistanceM horizontal distance to the axis in m
   * @return share
   */
  public static double visibleShare(double diameterM, double axisDistanceM) {
    double far = diameterM / (2 * axisDistanceM + diameterM);
    return StrictMath.atan2(root(diameterM, axisDistanceM), far) / Math.PI;
  }

  /**
   * Chord between the tangent points.
   *
   * @param diameterM diameter in m
   * @param axisDistanceM horizontal distance to the axis in m
   * @return chord in m
   */
  public static double tangentChord(double diameterM, double axisDistanceM) {
    return diameterM * cosine(diameterM, axisDistanceM);
  }

  /**
   * Distance from the eye to the tangent points.
   *
   * @param diameterM diameter in m
   * @param axisDistanceM horizontal distance to the axis in m
   * @return distance in m
   */
  public static double tangentDistance(double diameterM, double axisDistanceM) {
    return axisDistanceM * cosine(diameterM, axisDistanceM);
  }

  /**
   * Distance from the eye to the chord between the tangent points.
   *
   * @param diameterM diameter in m
   * @param axisDistanceM horizontal distance to the axis in m
   * @return distance in m
   */
  public static double chordDistance(double diameterM, double axisDistanceM) {
    double twice = 2 * axisDistanceM;
    return 0.5 * ((twice - diameterM) * ((twice + diameterM) / twice));
  }

  /**
   * Width that the stem seems to have at its axis, level sight.
   *
   * @param diameterM diameter in m
   * @param axisDistanceM horizontal distance to the axis in m
   * @return width in m
   */
  public static double apparentWidth(double diameterM, double axisDistanceM) {
    return diameterM / cosine(diameterM, axisDistanceM);
  }

  /**
   * Relative error of ratio times distance to the axis.
   *
   * @param diameterM diameter in m
   * @param axisDistanceM horizontal distance to the axis in m
   * @return share of the diameter by which the product is too large
   */
  public static double errorAtAxis(double diameterM, double axisDistanceM) {
    double sine = 0.5 * (diameterM / axisDistanceM);
    double cosine = cosine(diameterM, axisDistanceM);
    return sine * sine / (cosine * (1 + cosine));
  }

  /**
   * Relative error of ratio times distance to the near face.
   *
   * @param diameterM diameter in m
   * @param axisDistanceM horizontal distance to the axis in m
   * @return share of the diameter, below zero: the product is too small
   */
  public static double errorAtFace(double diameterM, double axisDistanceM) {
    double far = 2 * axisDistanceM + diameterM;
    return -2 * (diameterM / far) / (1 + root(diameterM, axisDistanceM));
  }

  /** The tangent of half the angle between the tangent lines, times a power of two. */
  static double tangentTimes(double scale, double diameterM, double axisDistanceM) {
    return scale * diameterM / (2 * axisDistanceM + diameterM) / root(diameterM, axisDistanceM);
  }

  /** Cosine of half the angle between the tangent lines. */
  private static double cosine(double diameterM, double axisDistanceM) {
    double twice = 2 * axisDistanceM;
    return root(diameterM, axisDistanceM) * ((twice + diameterM) / twice);
  }

  /** A ratio of lengths, so that no product of them under- or overflows. */
  private static double root(double diameterM, double axisDistanceM) {
    double twice = 2 * axisDistanceM;
    return Math.sqrt((twice - diameterM) / (twice + diameterM));
  }
}
