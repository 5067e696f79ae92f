package org.mensuration.kernel;

/**
 * Stems on the image of a rectilinear, undistorted camera. Positions in pixels from the principal
 * point, right and up positive. Unchecked: NaN in, NaN out. Stateless and thread-safe.
 */
public final class ImagePlane {
  private ImagePlane() {}

  /**
   * Focal length in pixels.
   *
   * @param focalLengthMm focal length in mm
   * @param pixelPitchMm distance between the centres of two pixels in mm
   * @return focal length in pixels
   */
  public static double focalLengthPixels(double focalLengthMm, double pixelPitchMm) {
    return focalLengthMm / pixelPitchMm;
  }

  /**
   * Sighted ratio from a width in the middle of a level image.
   *
   * @param pixels width in pixels
   * @param focalLengthPixels focal length in pixels
   * @return ratio
   */
  public static double ratio(double pixels, double focalLengthPixels) {
    return pixels / focalLengthPixels;
  }

  /**
   * Width of a stem in the middle of a level image.
   *
   * @param diameterM diameter in m
   * @param axisDistanceM horizontal distance to the axis in m
   * @param focalLengthPixels focal length in pixels
   * @return width in pixels
   */
  public static double width(double diameterM, double axisDistanceM, double focalLengthPixels) {
    return focalLengthPixels * Silhouette.ratio(diameterM, axisDistanceM);
  }

  /**
   * Azimuth between the two edges of an upright stem. The arc tangents are joined into one, which
   * keeps the digits of a narrow stem far off the axis.
   *
   * @param leftPixels column of the left edge
   * @param rightPixels column of the right edge
   * @param rowPixels row in which they were read
   * @param focalLengthPixels focal length in pixels
   * @param pitchDeg elevation of the camera's axis in degrees
   * @return azimuth in degrees; NaN if the row lies at or beyond the zenith
   */
  public static double azimuth(
      double leftPixels,
      double rightPixels,
      double rowPixels,
      double focalLengthPixels,
      double pitchDeg) {
    double depth = depth(rowPixels, focalLengthPixels, pitchDeg);
    if (!(depth > 0)) {
      return Double.NaN;
    }
    double left = leftPixels / depth;
    double right = rightPixels / depth;
    double across = (rightPixels - leftPixels) / depth;
    return StrictMath.toDegrees(StrictMath.atan2(across, 1 + left * right));
  }

  /**
   * Elevation of a point in the middle column of the image.
   *
   * @param rowPixels row of the point
   * @param focalLengthPixels focal length in pixels
   * @param pitchDeg elevation of the camera's axis in degrees
   * @return elevation in degrees
   */
  public static double elevation(double rowPixels, double focalLengthPixels, double pitchDeg) {
    return pitchDeg + StrictMath.toDegrees(StrictMath.atan(rowPixels / focalLengthPixels));
  }

  private static double depth(double rowPixels, double focalLengthPixels, double pitchDeg) {
    double sine = Slope.sin(pitchDeg);
    return focalLengthPixels * Slope.cos(pitchDeg) - rowPixels * sine;
  }
}
