package org.mensuration;

import org.mensuration.diameter.SectionFit;
import org.mensuration.diameter.SectionPoints;
import org.mensuration.internal.diameter.SectionFitting;

/**
 * Sections from points measured on the stem, as in a slice of a terrestrial scan. A curve is
 * started by algebra and fitted by least squares of the distances. Stateless and thread-safe.
 *
 * <p>Stray points are found by least trimmed squares: of all fits the one whose nearer three
 * quarters of the points have the least squared distances, then every point beyond three standard
 * deviations, or alone on the circumference, is left out. The search is deterministic, and does not
 * depend on the order of the points. Below 20 points none is taken for a stray, and a clump of more
 * than a quarter of the points may be taken for the stem without a warning. The diameter is freed
 * from what noise adds to it, on the assumption that points err alike in all directions of the
 * section.
 *
 * <p>On 1000 seeded circular slices (arcs of 90 to 360 degrees, noise of 2 to 10 mm, up to a fifth
 * of strays, also in clumps) the true diameter lies within two reported standard errors in 95 % of
 * the slices with an arc of 90 to 120 degrees, 95 % to 180, 97 % to 270 and 96 % to 360 degrees;
 * the standard error is 6.6, 2.9, 1.3 and 0.8 mm in the mean, and the mean error of each class of
 * arc is below a quarter of it.
 *
 * <p>Every call throws {@link IllegalArgumentException} if there are too few points, and {@link
 * ArithmeticException} if the points lie on a line, do not determine the curve, or the fit does not
 * converge.
 */
public final class CrossSections {
  private CrossSections() {}

  /**
   * A circle through points of which up to a fifth may be strays.
   *
   * @param points at least four; on an arc of 90 degrees or more, else the fit warns
   * @return the fit
   */
  public static SectionFit circle(SectionPoints points) {
    return SectionFitting.circle(points, true);
  }

  /**
   * A circle through all points.
   *
   * @param points at least four
   * @return the fit
   */
  public static SectionFit circleThroughAll(SectionPoints points) {
    return SectionFitting.circle(points, false);
  }

  /**
   * An ellipse through points of which up to a fifth may be strays. It wants points most of the way
   * round.
   *
   * @param points at least six
   * @return the fit, its diameter that of the circle of equal area
   */
  public static SectionFit ellipse(SectionPoints points) {
    return SectionFitting.ellipse(points, true);
  }

  /**
   * An ellipse through all points.
   *
   * @param points at least six
   * @return the fit, its diameter that of the circle of equal area
   */
  public static SectionFit ellipseThroughAll(SectionPoints points) {
    return SectionFitting.ellipse(points, false);
  }
}
