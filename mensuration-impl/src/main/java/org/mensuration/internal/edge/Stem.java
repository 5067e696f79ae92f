package org.mensuration.internal.edge;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.edge.MapTree;
import org.mensuration.internal.catalogue.GaugeDistanceFormulas;
import org.mensuration.internal.gauge.FactorGauge;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.UnitReader;

/**
 * A tree of a map in numbers. Immutable and thread-safe.
 *
 * @param id name
 * @param diameter diameter as it was given
 * @param x first coordinate in m
 * @param y second coordinate in m
 * @param centimetres diameter in cm
 * @param factor factor of the gauge in m²/ha
 * @param limit limiting distance in m
 */
record Stem(
    String id,
    Quantity<Length> diameter,
    double x,
    double y,
    double centimetres,
    double factor,
    double limit) {
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);

  static Stem of(MapTree tree, FactorGauge gauge) {
    String name = "tree " + tree.id();
    double centimetres = CENTIMETRES.read(tree.diameter());
    return new Stem(
        tree.id(),
        tree.diameter(),
        Coordinates.metres(name, tree.position().x()),
        Coordinates.metres(name, tree.position().y()),
        centimetres,
        gauge.metric(),
        GaugeDistanceFormulas.LIMITING_DISTANCE_CENTRE.value(gauge.metric(), centimetres));
  }

  /** Whether the stem is at its limit or nearer, seen from an image of a point. */
  boolean seen(Image image, double pointX, double pointY) {
    return Exact.within(factor, centimetres, image, pointX, pointY, x, y);
  }
}
