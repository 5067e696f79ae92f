package org.mensuration.internal.edge;

import java.math.BigDecimal;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import org.mensuration.edge.Boundary;
import org.mensuration.edge.Position;
import org.mensuration.kernel.CircleOverlap;
import org.mensuration.units.Measures;

/**
 * A rectangle along the axes, in m. Immutable and thread-safe.
 *
 * @param west least first coordinate
 * @param south least second coordinate
 * @param east largest first coordinate
 * @param north largest second coordinate
 */
public record RectangleBoundary(double west, double south, double east, double north)
    implements Boundary, Tract {

  /**
   * The rectangle between two opposite corners.
   *
   * @param corner one corner
   * @param opposite the opposite corner
   * @return the rectangle
   * @throws IllegalArgumentException if a side has no length
   */
  public static RectangleBoundary between(Position corner, Position opposite) {
    double x1 = Coordinates.metres("rectangle", corner.x());
    double y1 = Coordinates.metres("rectangle", corner.y());
    double x2 = Coordinates.metres("rectangle", opposite.x());
    double y2 = Coordinates.metres("rectangle", opposite.y());
    if (!(x1 != x2 && y1 != y2)) {
      throw new IllegalArgumentException(
          "rectangle: corners ("
              + x1
              + ", "
              + y1
              + ") m and ("
              + x2
              + ", "
              + y2
              + ") m enclose no area; wanted opposite corners");
    }
    return new RectangleBoundary(
        Math.min(x1, x2), Math.min(y1, y2), Math.max(x1, x2), Math.max(y1, y2));
  }

  BigDecimal exactWest() {
    return new BigDecimal(west);
  }

  BigDecimal exactEast() {
    return new BigDecimal(east);
  }

  BigDecimal exactSouth() {
    return new BigDecimal(south);
  }

  BigDecimal exactNorth() {
    return new BigDecimal(north);
  }

  double shorterSide() {
    return Math.min(east - west, north - south);
  }

  @Override
  public boolean holds(double x, double y) {
    return x >= west && x <= east && y >= south && y <= north;
  }

  @Override
  public double squareMetres() {
    return (east - west) * (north - south);
  }

  @Override
  public double overlap(double x, double y, double radius) {
    return CircleOverlap.area(
        new double[] {west, east, east, west},
        new double[] {south, south, north, north},
        x,
        y,
        radius);
  }

  /** What a circle shares with the copy of the rectangle that an image looks from. */
  double overlap(Image image, double x, double y, double radius) {
    // Moving the circle the other way is the same as moving the rectangle.
    double movedX = image.signX() * (x - image.shiftX());
    double movedY = image.signY() * (y - image.shiftY());
    return overlap(movedX, movedY, radius);
  }

  /** What a circle shares with the rectangle and its mirror image through the circle's centre. */
  double overlapBothWays(double x, double y, double radius) {
    double reachX = Math.min(x - west, east - x);
    double reachY = Math.min(y - south, north - y);
    return new RectangleBoundary(x - reachX, y - reachY, x + reachX, y + reachY)
        .overlap(x, y, radius);
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
    return List.of(place(west, south), place(east, south), place(east, north), place(west, north));
  }

  @Override
  public boolean rectangle() {
    return true;
  }

  private static Position place(double x, double y) {
    return Position.of(Measures.metres(x), Measures.metres(y));
  }
}
