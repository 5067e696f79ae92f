package org.mensuration.diameter;

import java.util.Objects;
import javax.measure.Unit;
import javax.measure.quantity.Length;

/**
 * Points measured on the surface of a stem at one height, as a slice of a terrestrial scan.
 * Immutable and thread-safe; the arrays are copied in and out.
 */
public final class SectionPoints {
  private final double[] x;
  private final double[] y;
  private final Unit<Length> unit;

  private SectionPoints(double[] x, double[] y, Unit<Length> unit) {
    this.x = x;
    this.y = y;
    this.unit = unit;
  }

  /**
   * Points by their coordinates in the plane of the section.
   *
   * @param x abscissas
   * @param y ordinates, as many
   * @param unit unit of both
   * @return the points
   * @throws IllegalArgumentException if the numbers of coordinates differ, or one is NaN or
   *     infinite
   */
  public static SectionPoints of(double[] x, double[] y, Unit<Length> unit) {
    if (x.length != y.length) {
      throw new IllegalArgumentException(
          "section: " + x.length + " abscissas and " + y.length + " ordinates");
    }
    for (int i = 0; i < x.length; i++) {
      if (!(Math.abs(x[i]) < Double.POSITIVE_INFINITY
          && Math.abs(y[i]) < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException(
            "section: point " + i + " is (" + x[i] + ", " + y[i] + "), wanted two numbers");
      }
    }
    return new SectionPoints(x.clone(), y.clone(), Objects.requireNonNull(unit, "unit"));
  }

  /**
   * Number of points.
   *
   * @return from 0
   */
  public int size() {
    return x.length;
  }

  /**
   * Abscissas.
   *
   * @return a copy
   */
  public double[] x() {
    return x.clone();
  }

  /**
   * Ordinates.
   *
   * @return a copy
   */
  public double[] y() {
    return y.clone();
  }

  /**
   * Unit of the coordinates.
   *
   * @return the unit
   */
  public Unit<Length> unit() {
    return unit;
  }
}
