package org.mensuration;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.FixedPlots;
import org.mensuration.gauge.FixedPlots.Circle;
import org.mensuration.gauge.PlotRadii;
import org.mensuration.gauge.SlopeLayout;
import org.mensuration.internal.plot.NestedPlots;
import org.mensuration.internal.plot.SlopeRadii;
import org.mensuration.units.Measures;

/** Plots of fixed area around sample points. Stateless and thread-safe. */
public final class FixedAreaPlots {
  private FixedAreaPlots() {}

  /**
   * One circle for all trees.
   *
   * @param area horizontal area, above zero
   * @return the plots
   * @throws OutOfDomainException if the area is not above zero or not finite
   */
  public static FixedPlots of(Quantity<Area> area) {
    return nested(circle(area, Measures.metres(0)));
  }

  /**
   * Nested circles. Each tree is expanded by the area of its own circle, the largest whose smallest
   * diameter it reaches.
   *
   * @param circles in any order, made by {@link #circle}
   * @return the plots
   * @throws IllegalArgumentException if there is none, or two begin at one diameter
   * @throws OutOfDomainException if an area is not above zero or not finite
   */
  public static FixedPlots nested(Circle... circles) {
    return NestedPlots.of(List.of(circles));
  }

  /**
   * A circle and the diameter from which it takes trees.
   *
   * @param area horizontal area, above zero
   * @param smallestDiameter trees count from this diameter on; zero for all
   * @return the circle
   */
  public static Circle circle(Quantity<Area> area, Quantity<Length> smallestDiameter) {
    return new Circle(area, smallestDiameter);
  }

  /**
   * How to stake a circular plot on a slope.
   *
   * @param area horizontal area, above zero
   * @param slope slope of the ground, from 0° and below 90°
   * @param layout the way of laying it out; the ways must not be mixed
   * @return radii on the ground, and what the results are multiplied by
   * @throws OutOfDomainException if a value is outside
   */
  public static PlotRadii onSlope(Quantity<Area> area, Quantity<Angle> slope, SlopeLayout layout) {
    return SlopeRadii.of(area, slope, layout);
  }
}
