package org.mensuration.edge;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Area;

/**
 * The edge of a tract: a rectangle along the axes or a polygon with straight sides. What lies on
 * the edge belongs to the tract. Implementations are immutable and thread-safe.
 */
public interface Boundary {

  /**
   * Whether a place belongs to the tract.
   *
   * @param position the place
   * @return true inside and on the edge
   * @throws IllegalArgumentException if a coordinate is not finite
   */
  boolean contains(Position position);

  /**
   * The area inside.
   *
   * @return the area
   */
  Quantity<Area> area();

  /**
   * The corners in their order; the last joins the first.
   *
   * @return at least three
   */
  List<Position> corners();

  /**
   * Whether all rules for edges can be used: the boundary is a rectangle along the axes.
   *
   * @return true for a rectangle
   */
  boolean rectangle();
}
