package org.mensuration.edge;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.CountPoint;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.quantity.StemsPerArea;

/**
 * Counts the trees of a map from sample points. A tree at the limit is in. Whether it is, is
 * decided without rounding: four times the factor times the squared distance is compared with the
 * squared diameter as the numbers stand. Implementations are immutable and thread-safe.
 */
public interface MapTally {

  /**
   * The gauge that counts.
   *
   * @return the gauge
   */
  AngleGauge gauge();

  /**
   * The rule for edges.
   *
   * @return the rule
   */
  EdgeRule rule();

  /**
   * Counts from a point. The edge weight of a counted tree is how often it counts from there: with
   * mirage the number of the point and its images that see it, with walkthrough 1 or 2.
   *
   * @param id name of the point
   * @param point the place; for all rules but the extended grid inside the tract or on its edge
   * @return the counted trees in the order of the map, each with its diameter and edge weight; with
   *     the extended grid marked as {@link CountPoint#beyondEdge()} if the place is outside
   * @throws IllegalArgumentException if the point lies outside the tract and the rule does not have
   *     points there
   */
  CountPoint countFrom(String id, Position point);

  /**
   * The names of the trees counted from a point.
   *
   * @param point the place, as for {@link #countFrom(String, Position)}
   * @return names in the order of the map, each as often as the tree counts
   * @throws IllegalArgumentException as for {@link #countFrom(String, Position)}
   */
  List<String> idsFrom(Position point);

  /**
   * The area of points from which a tree is counted, each part as often as the tree counts from
   * there. Where the rule is exact it is the full circle of the limiting distance.
   *
   * @param treeId name of the tree
   * @return the area; empty for walkthrough and for mirage at sides only in a polygon, where it has
   *     no closed form here: count from many points instead
   * @throws IllegalArgumentException if there is no such tree
   */
  Optional<Quantity<Area>> countedArea(String treeId);

  /**
   * Basal area per area on the average of all points of the tract. Where the rule is exact it is
   * the basal area of all trees over the area of the tract.
   *
   * @return the mean; empty without a boundary and where counted areas are empty
   */
  Optional<Quantity<BasalAreaPerArea>> expectedBasalArea();

  /**
   * Stems per area on the average of all points of the tract.
   *
   * @return the mean; empty without a boundary and where counted areas are empty
   */
  Optional<Quantity<StemsPerArea>> expectedStems();
}
