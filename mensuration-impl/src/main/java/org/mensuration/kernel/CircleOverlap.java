package org.mensuration.kernel;

/**
 * How much of a circle lies inside a polygon. All lengths in m, areas in m². Unchecked: NaN in, NaN
 * out. Stateless and thread-safe.
 */
public final class CircleOverlap {
  private CircleOverlap() {}

  /**
   * Area inside a polygon, positive if its corners run against the clock.
   *
   * @param xM first coordinates of the corners in m
   * @param yM second coordinates of the corners in m
   * @return signed area in m²
   */
  public static double polygonArea(double[] xM, double[] yM) {
    double twice = 0;
    for (int i = 0; i < xM.length; i++) {
      int next = i + 1 == xM.length ? 0 : i + 1;
      // Taken from the first corner, so that far coordinates do not cancel.
      twice += (xM[i] - xM[0]) * (yM[next] - yM[0]) - (xM[next] - xM[0]) * (yM[i] - yM[0]);
    }
    return twice / 2;
  }

  /**
   * Area of the circle that lies inside a polygon whose corners run against the clock: the sum over
   * its sides of the signed part between the centre and the side.
   *
   * @param xM first coordinates of the corners in m
   * @param yM second coordinates of the corners in m
   * @param centreX first coordinate of the centre in m
   * @param centreY second coordinate of the centre in m
   * @param radiusM radius in m
   * @return area in m²
   */
  public static double area(
      double[] xM, double[] yM, double centreX, double centreY, double radiusM) {
    double area = 0;
    for (int i = 0; i < xM.length; i++) {
      int next = i + 1 == xM.length ? 0 : i + 1;
      area +=
          side(xM[i] - centreX, yM[i] - centreY, xM[next] - centreX, yM[next] - centreY, radiusM);
    }
    return area;
  }

  /** Signed area common to the circle about the origin and the triangle from there to a side. */
  private static double side(double ax, double ay, double bx, double by, double radius) {
    double ux = bx - ax;
    double uy = by - ay;
    double length = ux * ux + uy * uy;
    double square = radius * radius;
    // Where the side's line meets the circle, as parts of the side from a to b.
    double foot = -(ax * ux + ay * uy) / length;
    double cross = ax * by - ay * bx;
    double chord = square * length - cross * cross;
    if (!(chord > 0)) {
      return sector(ax, ay, bx, by, square);
    }
    double half = Math.sqrt(chord) / length;
    double enter = Math.max(0, foot - half);
    double leave = Math.min(1, foot + half);
    if (!(enter < leave)) {
      return sector(ax, ay, bx, by, square);
    }
    double area = (leave - enter) * cross / 2;
    if (enter > 0) {
      area += sector(ax, ay, ax + enter * ux, ay + enter * uy, square);
    }
    if (leave < 1) {
      area += sector(ax + leave * ux, ay + leave * uy, bx, by, square);
    }
    return area;
  }

  private static double sector(double ax, double ay, double bx, double by, double square) {
    return square / 2 * StrictMath.atan2(ax * by - ay * bx, ax * bx + ay * by);
  }
}
