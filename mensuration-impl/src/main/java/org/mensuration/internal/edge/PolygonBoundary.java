package org.mensuration.internal.edge;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import org.mensuration.edge.Boundary;
import org.mensuration.edge.Position;
import org.mensuration.kernel.CircleOverlap;
import org.mensuration.units.Measures;

/** A polygon that does not cross itself, its corners against the clock. Immutable, thread-safe. */
public final class PolygonBoundary implements Boundary, Tract {
  private final double[] x;
  private final double[] y;

  private PolygonBoundary(double[] x, double[] y) {
    this.x = x;
    this.y = y;
  }

  /**
   * A polygon.
   *
   * @param corners its corners in order, either way round; the last joins the first
   * @return the polygon
   * @throws IllegalArgumentException if there are fewer than three corners, or sides cross or touch
   *     elsewhere than at their common corner
   */
  public static PolygonBoundary of(List<Position> corners) {
    int n = corners.size();
    if (n < 3) {
      throw new IllegalArgumentException("polygon: " + n + " corners, wanted at least 3");
    }
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      String name = "polygon, corner " + (i + 1);
      x[i] = Coordinates.metres(name, corners.get(i).x());
      y[i] = Coordinates.metres(name, corners.get(i).y());
    }
    if (CircleOverlap.polygonArea(x, y) < 0) {
      reverse(x);
      reverse(y);
    }
    PolygonBoundary polygon = new PolygonBoundary(x, y);
    polygon.requireSimple();
    return polygon;
  }

  private static void reverse(double[] values) {
    for (int i = 0, j = values.length - 1; i < j; i++, j--) {
      double kept = values[i];
      values[i] = values[j];
      values[j] = kept;
    }
  }

  private void requireSimple() {
    int n = x.length;
    for (int i = 0; i < n; i++) {
      if (x[i] == x[next(i)] && y[i] == y[next(i)]) {
        throw new IllegalArgumentException("polygon: the corner " + place(i) + " is given twice");
      }
    }
    for (int i = 0; i < n; i++) {
      int a = next(i);
      if (onSide(i, x[next(a)], y[next(a)]) || onSide(a, x[i], y[i])) {
        throw new IllegalArgumentException(
            "polygon: the side at " + place(a) + " runs back on itself");
      }
      for (int j = i + 2; j < n; j++) {
        if (next(j) != i && meets(i, x[j], y[j], x[next(j)], y[next(j)])) {
          throw new IllegalArgumentException(
              "polygon: the sides from "
                  + place(i)
                  + " and from "
                  + place(j)
                  + " meet; wanted sides that meet at their common corners only");
        }
      }
    }
  }

  private String place(int corner) {
    return "(" + x[corner] + ", " + y[corner] + ") m";
  }

  int sides() {
    return x.length;
  }

  private int next(int corner) {
    return corner + 1 == x.length ? 0 : corner + 1;
  }

  /** Whether a line between two places meets a side, its ends included. */
  boolean meets(int side, double px, double py, double qx, double qy) {
    int end = next(side);
    int p = Exact.side(x[side], y[side], x[end], y[end], px, py);
    int q = Exact.side(x[side], y[side], x[end], y[end], qx, qy);
    int a = Exact.side(px, py, qx, qy, x[side], y[side]);
    int b = Exact.side(px, py, qx, qy, x[end], y[end]);
    if (p * q < 0 && a * b < 0) {
      return true;
    }
    return onSide(side, px, py)
        || onSide(side, qx, qy)
        || (a == 0 && between(px, py, qx, qy, x[side], y[side]))
        || (b == 0 && between(px, py, qx, qy, x[end], y[end]));
  }

  /** Whether a place is on the inner side of the line through a side. */
  boolean innerSide(int side, double px, double py) {
    int end = next(side);
    return Exact.side(x[side], y[side], x[end], y[end], px, py) >= 0;
  }

  /** First coordinate of a place mirrored at the line through a side. */
  double mirroredX(int side, double px, double py) {
    int end = next(side);
    return px - 2 * (y[side] - y[end]) * height(side, px, py);
  }

  /** Second coordinate of a place mirrored at the line through a side. */
  double mirroredY(int side, double px, double py) {
    int end = next(side);
    return py - 2 * (x[end] - x[side]) * height(side, px, py);
  }

  /** Height of a place over a side's line, over the length of the side. */
  private double height(int side, double px, double py) {
    int end = next(side);
    double ux = x[end] - x[side];
    double uy = y[end] - y[side];
    return (ux * (py - y[side]) - uy * (px - x[side])) / (ux * ux + uy * uy);
  }

  private boolean onSide(int side, double px, double py) {
    int end = next(side);
    return Exact.side(x[side], y[side], x[end], y[end], px, py) == 0
        && between(x[side], y[side], x[end], y[end], px, py);
  }

  private static boolean between(double ax, double ay, double bx, double by, double px, double py) {
    return px >= Math.min(ax, bx)
        && px <= Math.max(ax, bx)
        && py >= Math.min(ay, by)
        && py <= Math.max(ay, by);
  }

  @Override
  public boolean holds(double px, double py) {
    boolean inside = false;
    for (int i = 0; i < x.length; i++) {
      if (onSide(i, px, py)) {
        return true;
      }
      int end = next(i);
      // A ray to the east crosses sides that start on one side of it and end on the other.
      if (y[i] > py != y[end] > py) {
        int left = Exact.side(x[i], y[i], x[end], y[end], px, py);
        if (y[end] > y[i] == left > 0) {
          inside = !inside;
        }
      }
    }
    return inside;
  }

  @Override
  public double squareMetres() {
    return CircleOverlap.polygonArea(x, y);
  }

  @Override
  public double overlap(double centreX, double centreY, double radius) {
    return CircleOverlap.area(x, y, centreX, centreY, radius);
  }

  @Override
  public boolean contains(Position position) {
    return holds(
        Coordinates.metres("position", position.x()), Coordinates.metres("position", position.y()));
  }

  @Override
  public Quantity<Area> area() {
    return Measures.squareMetres(squareMetres());
  }

  @Override
  public List<Position> corners() {
    List<Position> corners = new ArrayList<>();
    for (int i = 0; i < x.length; i++) {
      corners.add(Position.of(Measures.metres(x[i]), Measures.metres(y[i])));
    }
    return List.copyOf(corners);
  }

  @Override
  public boolean rectangle() {
    return false;
  }
}
