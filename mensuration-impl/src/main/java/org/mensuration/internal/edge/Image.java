package org.mensuration.internal.edge;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * A place from which a point looks at the tract again: itself, mirrored at sides along the axes, or
 * moved by whole widths. Immutable and thread-safe.
 *
 * @param signX 1, or −1 if mirrored along the first axis
 * @param addX what is added along the first axis in m, exact
 * @param signY 1, or −1 if mirrored along the second axis
 * @param addY what is added along the second axis in m, exact
 * @param shiftX the first addition as a double
 * @param shiftY the second addition as a double
 */
record Image(int signX, BigDecimal addX, int signY, BigDecimal addY, double shiftX, double shiftY) {
  /** The point itself. */
  static final Image SELF = of(1, BigDecimal.ZERO, 1, BigDecimal.ZERO);

  private static Image of(int signX, BigDecimal addX, int signY, BigDecimal addY) {
    return new Image(signX, addX, signY, addY, addX.doubleValue(), addY.doubleValue());
  }

  /** Itself, mirrored at the four sides, and if wanted through the four corners. */
  static List<Image> mirrored(RectangleBoundary plot, boolean corners) {
    BigDecimal two = BigDecimal.valueOf(2);
    BigDecimal[] addX = {
      BigDecimal.ZERO, two.multiply(plot.exactWest()), two.multiply(plot.exactEast())
    };
    BigDecimal[] addY = {
      BigDecimal.ZERO, two.multiply(plot.exactSouth()), two.multiply(plot.exactNorth())
    };
    List<Image> images = new ArrayList<>();
    for (int i = 0; i < addX.length; i++) {
      for (int j = 0; j < addY.length; j++) {
        if (corners || i == 0 || j == 0) {
          images.add(of(i == 0 ? 1 : -1, addX[i], j == 0 ? 1 : -1, addY[j]));
        }
      }
    }
    return List.copyOf(images);
  }

  /** Itself and moved by one width or height to all eight sides. */
  static List<Image> wrapped(RectangleBoundary plot) {
    BigDecimal width = plot.exactEast().subtract(plot.exactWest());
    BigDecimal height = plot.exactNorth().subtract(plot.exactSouth());
    List<Image> images = new ArrayList<>();
    for (int i = -1; i <= 1; i++) {
      for (int j = -1; j <= 1; j++) {
        images.add(
            of(
                1,
                width.multiply(BigDecimal.valueOf(i)),
                1,
                height.multiply(BigDecimal.valueOf(j))));
      }
    }
    return List.copyOf(images);
  }

  double x(double pointX) {
    return signX * pointX + shiftX;
  }

  double y(double pointY) {
    return signY * pointY + shiftY;
  }

  BigDecimal exactX(double pointX) {
    return new BigDecimal(signX * pointX).add(addX);
  }

  BigDecimal exactY(double pointY) {
    return new BigDecimal(signY * pointY).add(addY);
  }
}
