package org.mensuration.internal.edge;

import java.math.BigDecimal;

/**
 * Decisions on doubles without rounding: first in doubles, and where that leaves a doubt in
 * decimals, which hold every double exactly. Stateless and thread-safe.
 */
final class Exact {
  /** Far above what a few roundings can do (each 1.2e-16), so nothing is decided wrongly. */
  private static final double DOUBT = 1e-13;

  private static final BigDecimal FOUR = BigDecimal.valueOf(4);

  private Exact() {}

  /**
   * Whether a tree is at its limiting distance or nearer: 4 k r² ≤ d².
   *
   * @param factor factor of the gauge in m²/ha
   * @param diameter diameter in cm
   * @param image where the point is seen from
   * @param pointX first coordinate of the point in m
   * @param pointY second coordinate of the point in m
   * @param treeX first coordinate of the tree in m
   * @param treeY second coordinate of the tree in m
   */
  static boolean within(
      double factor,
      double diameter,
      Image image,
      double pointX,
      double pointY,
      double treeX,
      double treeY) {
    double imageX = image.x(pointX);
    double imageY = image.y(pointY);
    double dx = imageX - treeX;
    double dy = imageY - treeY;
    double square = dx * dx + dy * dy;
    double limit = diameter * diameter / (4 * factor);
    // The place of the image is rounded too, in proportion to what it is added from.
    double reach =
        Math.max(
            Math.max(Math.abs(imageX), Math.abs(pointX)),
            Math.max(Math.abs(imageY), Math.abs(pointY)));
    if (Math.abs(square - limit) > DOUBT * (limit + reach * reach)) {
      return square < limit;
    }
    BigDecimal exactX = image.exactX(pointX).subtract(new BigDecimal(treeX));
    BigDecimal exactY = image.exactY(pointY).subtract(new BigDecimal(treeY));
    BigDecimal exact = exactX.multiply(exactX).add(exactY.multiply(exactY));
    BigDecimal width = new BigDecimal(diameter);
    return FOUR.multiply(new BigDecimal(factor)).multiply(exact).compareTo(width.multiply(width))
        <= 0;
  }

  /**
   * On which side of the line from a to b a place lies: 1 to the left, −1 to the right, 0 on it.
   */
  static int side(double ax, double ay, double bx, double by, double px, double py) {
    double left = (bx - ax) * (py - ay);
    double right = (by - ay) * (px - ax);
    double difference = left - right;
    // Each product is off by a few roundings of its own size.
    if (Math.abs(difference) > DOUBT * (Math.abs(left) + Math.abs(right))) {
      return (int) Math.signum(difference);
    }
    BigDecimal exact =
        minus(bx, ax).multiply(minus(py, ay)).subtract(minus(by, ay).multiply(minus(px, ax)));
    return exact.signum();
  }

  private static BigDecimal minus(double left, double right) {
    return new BigDecimal(left).subtract(new BigDecimal(right));
  }
}
