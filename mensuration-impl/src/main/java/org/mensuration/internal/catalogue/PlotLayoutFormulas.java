package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.cosDegrees;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.sym;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.CountingWorks;
import org.mensuration.kernel.PlotAndLine;

/** Layout of plots on slopes. Immutable and thread-safe. */
public final class PlotLayoutFormulas {
  private static final Domain SLOPE = Domain.fromBelow(0, 90);

  /** Long radius of the ellipse. */
  public static final BoundFormula ELLIPSE_RADIUS_ALONG =
      Definition.of(
              "plot/ellipse-radius-along",
              "Radius along the slope of a plot laid out as an ellipse",
              Nature.GEOMETRIC)
          .input("radius", "R", "m", Domain.above(0), "horizontal radius, laid out across")
          .input("slope", "a", "deg", SLOPE, "slope of the ground")
          .gives("radius_along", "R_a", "m", over(sym("R"), cosDegrees(sym("a"))))
          .definedBy(CountingWorks.AG_S29, "text, R across and R/cos along the slope")
          .note("not to be mixed with the circle on the slope, R over the root of cos(a)")
          .kernel2(PlotAndLine::ellipseRadiusAlong);

  /** Uncorrected circle. */
  public static final BoundFormula SLOPE_AREA_FACTOR =
      Definition.of(
              "plot/slope-area-factor",
              "Correction of a circle laid out on the slope with its horizontal radius",
              Nature.GEOMETRIC)
          .input("slope", "a", "deg", SLOPE, "slope of the ground")
          .gives("factor", "c", "1", over(num(1), cosDegrees(sym("a"))))
          .definedBy(CountingWorks.AG_S29, "example of an uncorrected circle")
          .note("the results per area are multiplied by it")
          .kernel1(PlotAndLine::slopeAreaFactor);

  /** The topic's second part. */
  public static final List<BoundFormula> ALL = List.of(ELLIPSE_RADIUS_ALONG, SLOPE_AREA_FACTOR);

  private PlotLayoutFormulas() {}
}
