package org.mensuration.internal.edge;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import org.mensuration.edge.Boundary;
import org.mensuration.edge.EdgeRule;
import org.mensuration.edge.MapTally;
import org.mensuration.edge.MapTree;
import org.mensuration.edge.Position;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.internal.catalogue.EdgeFormulas;
import org.mensuration.internal.gauge.FactorGauge;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.quantity.StemsPerArea;
import org.mensuration.units.Measures;

/** Counts the trees of a map. Immutable and thread-safe. */
public final class PlotTally implements MapTally {
  private final FactorGauge gauge;
  private final EdgeRule rule;
  private final Optional<Tract> tract;
  private final Map<String, Stem> stems;
  private final EdgeCount count;

  private PlotTally(
      FactorGauge gauge, EdgeRule rule, Optional<Tract> tract, Map<String, Stem> stems) {
    this.gauge = gauge;
    this.rule = rule;
    this.tract = tract;
    this.stems = stems;
    this.count = tract.isPresent() ? EdgeCounts.of(rule, tract.get()) : EdgeCounts.plain();
  }

  /**
   * A tally.
   *
   * @param trees the trees of the map
   * @param gauge the gauge
   * @param rule the rule for edges
   * @param boundary the boundary
   * @return the tally
   * @throws IllegalArgumentException if two trees have one name, a tree lies outside, the rule
   *     needs a boundary or another one, or a circle is too wide for it
   */
  public static PlotTally of(
      Iterable<MapTree> trees, AngleGauge gauge, EdgeRule rule, Optional<Boundary> boundary) {
    FactorGauge factor = FactorGauge.of(gauge.factor());
    Optional<Tract> tract = boundary.map(PlotTally::numbers);
    if (rule != EdgeRule.NONE && !tract.isPresent()) {
      throw new IllegalArgumentException(
          rule.words() + " on a map needs the boundary of the tract, and none is given");
    }
    Map<String, Stem> stems = new LinkedHashMap<>();
    for (MapTree tree : trees) {
      Stem stem = Stem.of(tree, factor);
      if (stems.put(stem.id(), stem) != null) {
        throw new IllegalArgumentException("tree " + stem.id() + " is given twice");
      }
      if (tract.isPresent() && !tract.get().holds(stem.x(), stem.y())) {
        throw new IllegalArgumentException(
            "tree "
                + stem.id()
                + " at ("
                + stem.x()
                + ", "
                + stem.y()
                + ") m lies outside the boundary; only trees of the tract are counted");
      }
    }
    PlotTally tally = new PlotTally(factor, rule, tract, stems);
    if ((rule == EdgeRule.MIRAGE || rule == EdgeRule.TOROIDAL) && tract.isPresent()) {
      tally.requireRoom((RectangleBoundary) tract.get());
    }
    return tally;
  }

  private static Tract numbers(Boundary boundary) {
    if (boundary instanceof Tract tract) {
      return tract;
    }
    List<Position> corners = boundary.corners();
    return boundary.rectangle()
        ? RectangleBoundary.between(corners.get(0), corners.get(2))
        : PolygonBoundary.of(corners);
  }

  /** A circle wider than the plot would need more images than the rule has. */
  private void requireRoom(RectangleBoundary plot) {
    for (Stem stem : stems.values()) {
      if (!(stem.limit() <= plot.shorterSide())) {
        throw new IllegalArgumentException(
            rule.words()
                + ": tree "
                + stem.id()
                + " has a limiting distance of "
                + stem.limit()
                + " m, allowed up to the shorter side of the plot, "
                + plot.shorterSide()
                + " m");
      }
    }
  }

  @Override
  public AngleGauge gauge() {
    return gauge;
  }

  @Override
  public EdgeRule rule() {
    return rule;
  }

  @Override
  public CountPoint countFrom(String id, Position point) {
    List<CountedTree> counted = new ArrayList<>();
    for (Counted one : counted(point)) {
      CountedTree tree = CountedTree.of(one.stem().diameter());
      counted.add(rule == EdgeRule.NONE ? tree : tree.withEdgeWeight(one.weight()));
    }
    CountPoint inside = new CountPoint(id, counted);
    return holds(point) ? inside : inside.beyondEdge();
  }

  @Override
  public List<String> idsFrom(Position point) {
    List<String> ids = new ArrayList<>();
    for (Counted one : counted(point)) {
      ids.addAll(Collections.nCopies((int) one.weight(), one.stem().id()));
    }
    return List.copyOf(ids);
  }

  private boolean holds(Position point) {
    double x = Coordinates.metres("point", point.x());
    double y = Coordinates.metres("point", point.y());
    return !tract.isPresent() || tract.get().holds(x, y);
  }

  private List<Counted> counted(Position point) {
    double x = Coordinates.metres("point", point.x());
    double y = Coordinates.metres("point", point.y());
    if (rule != EdgeRule.EXTENDED_GRID && !holds(point)) {
      throw new IllegalArgumentException(
          "point ("
              + x
              + ", "
              + y
              + ") m lies outside the boundary; "
              + rule.words()
              + " takes points inside, only the extended grid has points outside");
    }
    List<Counted> found = new ArrayList<>();
    for (Stem stem : stems.values()) {
      double weight = count.weight(stem, x, y);
      if (weight > 0) {
        found.add(new Counted(stem, weight));
      }
    }
    return found;
  }

  /** A stem and how often it counts from a point. */
  private record Counted(Stem stem, double weight) {}

  @Override
  public Optional<Quantity<Area>> countedArea(String treeId) {
    Stem stem = stems.get(treeId);
    if (stem == null) {
      throw new IllegalArgumentException("there is no tree " + treeId + " on the map");
    }
    return count.areas().map(area -> Measures.squareMetres(area.applyAsDouble(stem)));
  }

  @Override
  public Optional<Quantity<BasalAreaPerArea>> expectedBasalArea() {
    return expected(
            (area, whole) ->
                EdgeFormulas.EXPECTED_BASAL_AREA.applyTo(one(gauge.metric()), all(area), whole))
        .map(Measures::squareMetresPerHectare);
  }

  @Override
  public Optional<Quantity<StemsPerArea>> expectedStems() {
    return expected(
            (area, whole) ->
                EdgeFormulas.EXPECTED_STEMS.applyTo(
                    one(gauge.metric()), all(Stem::centimetres), all(area), whole))
        .map(Measures::perHectare);
  }

  /** A mean over all points, given the counted areas and the tract; 0 on a map without trees. */
  private Optional<Double> expected(BiFunction<ToDoubleFunction<Stem>, double[], Double> mean) {
    return tract.flatMap(
        whole ->
            count
                .areas()
                .map(area -> stems.isEmpty() ? 0.0 : mean.apply(area, one(whole.squareMetres()))));
  }

  private double[] all(ToDoubleFunction<Stem> value) {
    return stems.values().stream().mapToDouble(value).toArray();
  }

  private static double[] one(double value) {
    return new double[] {value};
  }
}
