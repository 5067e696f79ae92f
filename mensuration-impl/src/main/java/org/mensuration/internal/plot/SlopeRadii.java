package org.mensuration.internal.plot;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import org.mensuration.gauge.PlotRadii;
import org.mensuration.gauge.SlopeLayout;
import org.mensuration.gauge.SweepCorrection;
import org.mensuration.internal.catalogue.PlotFormulas;
import org.mensuration.internal.catalogue.PlotLayoutFormulas;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/** Radii of plots on slopes. Stateless and thread-safe. */
public final class SlopeRadii {
  private static final UnitReader<Area> SQUARE_METRES = UnitReader.in(ForestUnits.SQUARE_METRE);
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);

  private SlopeRadii() {}

  /**
   * The radii of a layout.
   *
   * @param area horizontal area
   * @param slope slope of the ground
   * @param layout the layout
   * @return the radii
   */
  public static PlotRadii of(Quantity<Area> area, Quantity<Angle> slope, SlopeLayout layout) {
    double radius = PlotFormulas.RADIUS.value(SQUARE_METRES.read(area));
    double degrees = DEGREES.read(slope);
    double along = PlotLayoutFormulas.ELLIPSE_RADIUS_ALONG.value(radius, degrees);
    double onSlope = PlotFormulas.SLOPE_RADIUS.value(radius, degrees);
    double factor = PlotLayoutFormulas.SLOPE_AREA_FACTOR.value(degrees);
    return switch (layout) {
      case HORIZONTAL -> radii(layout, radius, radius, SweepCorrection.NONE);
      case ELLIPSE -> radii(layout, radius, along, SweepCorrection.NONE);
      case CIRCLE_ON_SLOPE -> radii(layout, onSlope, onSlope, SweepCorrection.NONE);
      case UNCORRECTED ->
          radii(
              layout,
              radius,
              radius,
              new SweepCorrection("plot laid out on a slope of " + degrees + " degrees", factor));
    };
  }

  private static PlotRadii radii(
      SlopeLayout layout, double across, double along, SweepCorrection correction) {
    return new PlotRadii(layout, Measures.metres(across), Measures.metres(along), correction);
  }
}
