package org.mensuration.kernel;

/**
 * Squared timber with rectangular ends: sides in inches, length in feet, volume in cubic feet.
 * Unchecked: NaN in, NaN out. Stateless and thread-safe.
 */
public final class Prismoid {
  private Prismoid() {}

  /**
   * Both ends and four times the middle section, a sixth of it, times length.
   *
   * @param largeWidthIn width of the large end in inches
   * @param largeDepthIn depth of the large end in inches
   * @param smallWidthIn width of the small end in inches
   * @param smallDepthIn depth of the small end in inches
   * @param lengthFt length in feet
   * @return volume in cubic feet
   */
  public static double volume(
      double largeWidthIn,
      double largeDepthIn,
      double smallWidthIn,
      double smallDepthIn,
      double lengthFt) {
    double middle = (largeWidthIn + smallWidthIn) * (largeDepthIn + smallDepthIn);
    double sections = largeWidthIn * largeDepthIn + middle + smallWidthIn * smallDepthIn;
    return sections * lengthFt / 864;
  }

  /**
   * The section of the mean width and the mean depth times length.
   *
   * @param largeWidthIn width of the large end in inches
   * @param largeDepthIn depth of the large end in inches
   * @param smallWidthIn width of the small end in inches
   * @param smallDepthIn depth of the small end in inches
   * @param lengthFt length in feet
   * @return volume in cubic feet
   */
  public static double meanSection(
      double largeWidthIn,
      double largeDepthIn,
      double smallWidthIn,
      double smallDepthIn,
      double lengthFt) {
    return (largeWidthIn + smallWidthIn) * (largeDepthIn + smallDepthIn) * lengthFt / 576;
  }
}
