package org.mensuration.internal.edge;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.mensuration.edge.EdgeRule;
import org.mensuration.internal.catalogue.EdgeFormulas;
import org.mensuration.internal.catalogue.GaugeDistanceFormulas;

/** The rules for edges. Stateless and thread-safe. */
final class EdgeCounts {
  private EdgeCounts() {}

  /** What a rule does without a boundary: it counts each tree once. */
  static EdgeCount plain() {
    return new Plain(Optional.empty());
  }

  /** A rule on a boundary that it supports. */
  static EdgeCount of(EdgeRule rule, Tract tract) {
    return switch (rule) {
      case NONE -> new Plain(Optional.of(tract));
      case EXTENDED_GRID -> plain();
      case WALKTHROUGH -> new Walkthrough(tract);
      case MIRAGE -> new Images(rectangle(rule, tract), true, false);
      case TOROIDAL -> new Images(rectangle(rule, tract), false, true);
      case MIRAGE_SIDES_ONLY -> sidesOnly(tract);
    };
  }

  private static EdgeCount sidesOnly(Tract tract) {
    return tract instanceof RectangleBoundary rectangle
        ? new Images(rectangle, false, false)
        : new PolygonSides((PolygonBoundary) tract);
  }

  private static RectangleBoundary rectangle(EdgeRule rule, Tract tract) {
    if (tract instanceof RectangleBoundary rectangle) {
      return rectangle;
    }
    throw new IllegalArgumentException(
        rule.words()
            + " needs a rectangle along the axes, the boundary is a polygon; walkthrough and"
            + " extended grid take any boundary");
  }

  private static double circle(Stem stem) {
    return GaugeDistanceFormulas.INCLUSION_AREA.value(stem.factor(), stem.centimetres());
  }

  /** Counts from the point alone; what lies outside the tract, if there is one, has no points. */
  private record Plain(Optional<Tract> tract) implements EdgeCount {
    @Override
    public double weight(Stem stem, double pointX, double pointY) {
      return stem.seen(Image.SELF, pointX, pointY) ? 1 : 0;
    }

    @Override
    public Optional<ToDoubleFunction<Stem>> areas() {
      return Optional.of(
          tract.isPresent()
              ? stem -> tract.get().overlap(stem.x(), stem.y(), stem.limit())
              : EdgeCounts::circle);
    }
  }

  /** Counts twice where the spot as far behind the tree as the point is before it lies outside. */
  private record Walkthrough(Tract tract) implements EdgeCount {
    @Override
    public double weight(Stem stem, double pointX, double pointY) {
      if (!stem.seen(Image.SELF, pointX, pointY)) {
        return 0;
      }
      boolean inside = tract.holds(2 * stem.x() - pointX, 2 * stem.y() - pointY);
      return EdgeFormulas.WALKTHROUGH_WEIGHT.value(inside ? 1 : 0);
    }

    @Override
    public Optional<ToDoubleFunction<Stem>> areas() {
      return tract instanceof RectangleBoundary rectangle
          ? Optional.of(stem -> area(rectangle, stem))
          : Optional.empty();
    }

    private static double area(RectangleBoundary rectangle, Stem stem) {
      double once = rectangle.overlapBothWays(stem.x(), stem.y(), stem.limit());
      return 2 * rectangle.overlap(stem.x(), stem.y(), stem.limit()) - once;
    }
  }

  /** Counts from the point and its images by a rectangle. */
  private record Images(RectangleBoundary plot, List<Image> images) implements EdgeCount {
    Images(RectangleBoundary plot, boolean corners, boolean wrapped) {
      this(plot, wrapped ? Image.wrapped(plot) : Image.mirrored(plot, corners));
    }

    @Override
    public double weight(Stem stem, double pointX, double pointY) {
      int times = 0;
      for (Image image : images) {
        if (stem.seen(image, pointX, pointY)) {
          times++;
        }
      }
      return times;
    }

    @Override
    public Optional<ToDoubleFunction<Stem>> areas() {
      return Optional.of(this::area);
    }

    private double area(Stem stem) {
      double area = 0;
      for (Image image : images) {
        area += plot.overlap(image, stem.x(), stem.y(), stem.limit());
      }
      return area;
    }
  }

  /** Counts from the point and from where it is mirrored at each side. */
  private record PolygonSides(PolygonBoundary polygon) implements EdgeCount {
    @Override
    public double weight(Stem stem, double pointX, double pointY) {
      int times = stem.seen(Image.SELF, pointX, pointY) ? 1 : 0;
      for (int side = 0; side < polygon.sides(); side++) {
        if (polygon.innerSide(side, pointX, pointY)) {
          double x = polygon.mirroredX(side, pointX, pointY);
          double y = polygon.mirroredY(side, pointX, pointY);
          if (stem.seen(Image.SELF, x, y) && polygon.meets(side, x, y, stem.x(), stem.y())) {
            times++;
          }
        }
      }
      return times;
    }

    @Override
    public Optional<ToDoubleFunction<Stem>> areas() {
      return Optional.empty();
    }
  }
}
